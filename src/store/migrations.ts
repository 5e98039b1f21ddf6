import { type Kysely, type Migration, sql } from 'kysely';

/** Steps forward, by name in order. A step that has been released is never changed: add another. */
export const migrations: Record<string, Migration> = {
  '001-sessions': {
    async up(db: Kysely<unknown>): Promise<void> {
      await db.schema
        .createTable('sessions')
        .addColumn('chat', 'text', (column) => column.notNull())
        .addColumn('member', 'text', (column) => column.notNull())
        .addColumn('body', 'text', (column) => column.notNull())
        .addColumn('updated', 'text', (column) => column.notNull())
        .addPrimaryKeyConstraint('sessions_key', ['chat', 'member'])
        .execute();
    },
  },
  '002-clubs': {
    async up(db: Kysely<unknown>): Promise<void> {
      await db.schema
        .createTable('clubs')
        .addColumn('chat', 'text', (column) => column.primaryKey().notNull())
        .addColumn('facts', 'text', (column) => column.notNull())
        .execute();
    },
  },
  '003-rooms-and-post': {
    async up(db: Kysely<unknown>): Promise<void> {
      await db.schema
        .createTable('talks')
        .addColumn('chat', 'text', (column) => column.notNull())
        .addColumn('room', 'text', (column) => column.notNull())
        .addColumn('member', 'text', (column) => column.notNull())
        .addColumn('body', 'text', (column) => column.notNull())
        .addColumn('updated', 'text', (column) => column.notNull())
        .addPrimaryKeyConstraint('talks_key', ['chat', 'room', 'member'])
        .execute();
      await sql`insert into talks select chat, '', member, body, updated from sessions`.execute(db);
      await db.schema.dropTable('sessions').execute();
      await db.schema.alterTable('clubs').addColumn('settings', 'text').execute();
      await db.schema
        .createTable('claims')
        .addColumn('claim', 'text', (column) => column.primaryKey().notNull())
        .addColumn('at', 'text', (column) => column.notNull())
        .execute();
      await db.schema
        .createTable('outbox')
        .addColumn('id', 'text', (column) => column.primaryKey().notNull())
        .addColumn('platform', 'text', (column) => column.notNull())
        .addColumn('address', 'text', (column) => column.notNull())
        .addColumn('body', 'text', (column) => column.notNull())
        .addColumn('at', 'text', (column) => column.notNull())
        .execute();
      await db.schema
        .createTable('chats')
        .addColumn('chat', 'text', (column) => column.primaryKey().notNull())
        .addColumn('platform', 'text', (column) => column.notNull())
        .addColumn('joined', 'text', (column) => column.notNull())
        .addColumn('paused', 'integer', (column) => column.notNull())
        .execute();
    },
  },
  '004-records': {
    async up(db: Kysely<unknown>): Promise<void> {
      await db.schema
        .createTable('records')
        .addColumn('chat', 'text', (column) => column.notNull())
        .addColumn('id', 'text', (column) => column.notNull())
        .addColumn('kind', 'text', (column) => column.notNull())
        .addColumn('author', 'text')
        .addColumn('at', 'text', (column) => column.notNull())
        .addColumn('version', 'integer', (column) => column.notNull())
        .addColumn('withdrawn', 'integer', (column) => column.notNull())
        .addColumn('body', 'text', (column) => column.notNull())
        .addPrimaryKeyConstraint('records_key', ['chat', 'id'])
        .execute();
      await db.schema
        .createIndex('records_of_a_kind')
        .on('records')
        .columns(['chat', 'kind', 'at'])
        .execute();
      await db.schema
        .createTable('record_steps')
        .addColumn('chat', 'text', (column) => column.notNull())
        .addColumn('id', 'text', (column) => column.notNull())
        .addColumn('version', 'integer', (column) => column.notNull())
        .addColumn('did', 'text', (column) => column.notNull())
        .addColumn('member', 'text')
        .addColumn('at', 'text', (column) => column.notNull())
        .addColumn('body', 'text', (column) => column.notNull())
        .addPrimaryKeyConstraint('record_steps_key', ['chat', 'id', 'version'])
        .execute();
    },
  },
};
