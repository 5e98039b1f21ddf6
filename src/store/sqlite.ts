import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, Migrator, SqliteDialect } from 'kysely';
import { LRUCache } from 'lru-cache';
import { keeping } from './keeping.ts';
import { migrations } from './migrations.ts';
import type { Tables } from './shapes.ts';
import type { Store } from './store.ts';

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
  rememberStatements(database);
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
  return keeping(db);
}

/** The query builder has the database prepare a statement at each run; the same text need not be prepared twice. */
function rememberStatements(database: Database.Database): void {
  const known = new LRUCache<string, Database.Statement>({ max: 200 });
  const prepareAnew = database.prepare.bind(database);
  const prepare = (text: string): Database.Statement => {
    const statement = known.get(text) ?? prepareAnew(text);
    known.set(text, statement);
    return statement;
  };
  database.prepare = prepare as typeof database.prepare;
}
