import type { Kysely, Migration } from 'kysely';

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
};
