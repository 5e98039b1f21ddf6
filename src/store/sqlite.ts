import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, Migrator, SqliteDialect } from 'kysely';
import { z } from 'zod';
import type { ClubFacts, Session } from '../contracts/session.ts';
import { migrations } from './migrations.ts';
import type { Store } from './store.ts';

interface Tables {
  sessions: { chat: string; member: string; body: string; updated: string };
  clubs: { chat: string; facts: string };
}

const value = z.union([z.string(), z.number(), z.array(z.number())]);
const from = z.enum(['said', 'assumed', 'club', 'map', 'measured']);
const clubSchema: z.ZodType<ClubFacts> = z.record(z.string(), value);
const sessionSchema: z.ZodType<Session> = z.strictObject({
  turn: z.number().int(),
  entries: z.array(
    z.strictObject({
      turn: z.number().int(),
      fact: z.string(),
      value,
      from,
    }),
  ),
  topics: z.array(z.strictObject({ turn: z.number().int(), topic: z.string() })),
  pending: z.string().nullable(),
  asked: z.array(z.string()),
  language: z.string().nullable(),
  at: z.string().nullable(),
  answered: z
    .strictObject({ topic: z.string(), facts: z.record(z.string(), z.strictObject({ value, from })) })
    .nullable(),
});

/** The store file cannot be used: where, why, and what to do. */
export class StoreError extends Error {
  override readonly name = 'StoreError';
}

/** Opens the file, makes it when it is not there, and brings it forward to this program's version. */
export async function openSqlite(file: string): Promise<Store> {
  let database: Database.Database;
  try {
    if (file !== ':memory:') mkdirSync(dirname(file), { recursive: true });
    database = new Database(file);
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = NORMAL');
    database.pragma('busy_timeout = 5000');
  } catch (error) {
    throw new StoreError(
      `The store ${file} cannot be opened (${(error as Error).message}). Set CHOUGH_DB to a file that may be written.`,
    );
  }
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
  const { error } = await new Migrator({
    db,
    provider: { getMigrations: () => Promise.resolve(migrations) },
  }).migrateToLatest();
  if (error !== undefined) {
    await db.destroy();
    throw new StoreError(
      `The store ${file} cannot be brought to this version (${error instanceof Error ? error.message : 'unknown'}). ` +
        'It may come from a newer Chough: use that one, or another file.',
    );
  }
  return {
    async loadSession(chat, user) {
      const row = await db
        .selectFrom('sessions')
        .select('body')
        .where('chat', '=', chat)
        .where('member', '=', user)
        .executeTakeFirst();
      if (!row) return null;
      // A session of another shape (an older program) is not guessed at: the conversation starts afresh.
      const parsed = sessionSchema.safeParse(JSON.parse(row.body));
      return parsed.success ? parsed.data : null;
    },
    async saveSession(chat, user, session, at) {
      const body = JSON.stringify(session);
      await db
        .insertInto('sessions')
        .values({ chat, member: user, body, updated: at })
        .onConflict((conflict) => conflict.columns(['chat', 'member']).doUpdateSet({ body, updated: at }))
        .execute();
    },
    async loadClub(chat) {
      const row = await db.selectFrom('clubs').select('facts').where('chat', '=', chat).executeTakeFirst();
      const parsed = clubSchema.safeParse(row === undefined ? {} : JSON.parse(row.facts));
      return parsed.success ? parsed.data : {};
    },
    async saveClub(chat, facts) {
      const body = JSON.stringify(facts);
      await db
        .insertInto('clubs')
        .values({ chat, facts: body })
        .onConflict((conflict) => conflict.column('chat').doUpdateSet({ facts: body }))
        .execute();
    },
    close: () => db.destroy(),
  };
}
