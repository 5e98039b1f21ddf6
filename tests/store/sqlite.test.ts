import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { emptySession, type Session } from '../../src/contracts/session.ts';
import { openSqlite, StoreError } from '../../src/store/sqlite.ts';

let folder: string;
let file: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'chough-store-'));
  file = join(folder, 'deep', 'er', 'store.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true }));

const session: Session = {
  ...emptySession,
  turn: 3,
  entries: [
    { turn: 1, fact: 'rock', value: 'granite', from: 'said' },
    { turn: 2, fact: 'diameter_mm', value: 12.7, from: 'club' },
  ],
  topics: [{ turn: 1, topic: 'embedment' }],
  pending: 'adhesive',
  asked: ['adhesive'],
  answered: { topic: 'embedment', facts: { rock: { value: 'granite', from: 'said' } } },
};

const talk = { chat: 'chat', room: '', user: 'user' };
const at = '2026-11-25T08:00:00Z';

describe('the SQLite store', () => {
  it('keeps a session across closing and opening', async () => {
    const store = await openSqlite(file);
    await store.keep({ talk, at, session });
    await store.close();
    const again = await openSqlite(file);
    expect(await again.loadSession(talk)).toEqual(session);
    await again.close();
  });

  it('keeps the sessions of members and chats apart, and replaces the older one', async () => {
    const store = await openSqlite(file);
    const [one, two] = [
      { ...talk, user: 'one' },
      { ...talk, user: 'two' },
    ];
    await store.keep({ talk: one, at, session });
    await store.keep({ talk: two, at, session: { ...session, pending: null } });
    await store.keep({ talk: { ...one, room: 'other' }, at, session: { ...session, pending: 'metal' } });
    await store.keep({ talk: one, at, session: { ...session, pending: 'rock' } });
    expect((await store.loadSession(one))?.pending).toBe('rock');
    expect((await store.loadSession(two))?.pending).toBeNull();
    expect(await store.loadSession({ ...one, chat: 'other' })).toBeNull();
    await store.close();
  });

  it('does not guess at a session of another shape', async () => {
    const store = await openSqlite(file);
    await store.keep({ talk, at, session });
    const raw = new Database(file);
    raw.prepare('update talks set body = ?').run('{"turn":"three"}');
    raw.close();
    expect(await store.loadSession(talk)).toBeNull();
    await store.close();
  });

  it('says what to do when the file cannot be used', async () => {
    const text = join(folder, 'text.sqlite');
    writeFileSync(text, 'this is no database, however long it may be, and it goes on for a while');
    await expect(openSqlite(text)).rejects.toThrow(StoreError);
    await expect(openSqlite(text)).rejects.toThrow('CHOUGH_DB');
    await expect(openSqlite(folder)).rejects.toThrow('CHOUGH_DB');
  });

  it('refuses a file that a newer program has brought forward', async () => {
    const store = await openSqlite(file);
    await store.close();
    const raw = new Database(file);
    raw.prepare('insert into kysely_migration (name, timestamp) values (?, ?)').run('999-newer', '2030');
    raw.close();
    await expect(openSqlite(file)).rejects.toThrow('newer Chough');
  });
});
