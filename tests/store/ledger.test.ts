import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { noticeOf } from '../../src/adapters/post.ts';
import { emptyClub, emptySession } from '../../src/contracts/session.ts';
import { openSqlite } from '../../src/store/sqlite.ts';

const at = '2026-11-25T08:00:00Z';
const talk = { chat: 'telegram:-1', room: '', user: '7' };
const rendered = noticeOf({ id: 'm', chat: talk.chat, user: talk.user }, 'text');
const posting = { claim: 'telegram:1:5', platform: 'telegram', address: '{"to":5}' };

describe('the ledger', () => {
  it('takes an update in once, with all that it changed, or not at all', async () => {
    const store = await openSqlite(':memory:');
    const session = { ...emptySession, pending: 'rock' };
    expect(await store.seen(posting.claim)).toBe(false);
    expect(await store.keep({ talk, at, session, posting, rendered })).toBe(true);
    expect(await store.seen(posting.claim)).toBe(true);
    const again = { ...session, pending: 'metal' };
    expect(await store.keep({ talk, at, session: again, posting, rendered })).toBe(false);
    expect((await store.loadSession(talk))?.pending).toBe('rock');
    expect(await store.undelivered('telegram')).toEqual([
      { id: posting.claim, address: posting.address, rendered, again: true },
    ]);
    expect(await store.undelivered('discord')).toEqual([]);
    await store.delivered(posting.claim);
    expect(await store.undelivered('telegram')).toEqual([]);
  });

  it('knows a chat that was joined before, and whether it was left', async () => {
    const store = await openSqlite(':memory:');
    expect(await store.joined('c', 'telegram', at)).toBe(true);
    await store.left('c');
    expect(await store.isPaused('c')).toBe(true);
    expect(await store.joined('c', 'telegram', at)).toBe(false);
    expect(await store.isPaused('c')).toBe(false);
  });

  it('moves talks, settings and membership to the new id of a chat', async () => {
    const store = await openSqlite(':memory:');
    const club = { ...emptyClub, facts: { rock: 'granite' }, units: 'imperial' as const };
    await store.joined(talk.chat, 'telegram', at);
    await store.keep({ talk, at, session: emptySession, club });
    await store.moved(talk.chat, 'telegram:-100');
    expect(await store.loadSession(talk)).toBeNull();
    expect(await store.loadSession({ ...talk, chat: 'telegram:-100' })).toEqual(emptySession);
    expect(await store.loadClub('telegram:-100')).toEqual(club);
    expect(await store.joined('telegram:-100', 'telegram', at)).toBe(false);
  });

  it('forgets old claims', async () => {
    const store = await openSqlite(':memory:');
    await store.keep({ talk, at, posting, rendered: null });
    await store.forgetClaims('2026-11-26T00:00:00Z');
    expect(await store.seen(posting.claim)).toBe(false);
  });

  it('brings a file of the first version forward with its talks', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'chough-store-'));
    const file = join(folder, 'old.sqlite');
    const old = new Database(file);
    const { units, either, ...asItWas } = emptySession;
    old.exec(`create table sessions (chat text not null, member text not null, body text not null, updated text not null, primary key (chat, member));
      create table clubs (chat text primary key not null, facts text not null);
      create table kysely_migration (name varchar(255) primary key not null, timestamp varchar(255) not null);
      create table kysely_migration_lock (id varchar(255) primary key not null, is_locked integer default 0 not null);
      insert into kysely_migration_lock values ('migration_lock', 0);
      insert into kysely_migration values ('001-sessions', '2026-11-20T00:00:00Z'), ('002-clubs', '2026-11-21T00:00:00Z');`);
    old
      .prepare('insert into sessions values (?, ?, ?, ?)')
      .run('c', 'u', JSON.stringify({ ...asItWas, pending: 'rock' }), at);
    old.prepare('insert into clubs values (?, ?)').run('c', '{"rock":"granite"}');
    old.close();
    const store = await openSqlite(file);
    expect([units, either]).toEqual([null, null]);
    expect(await store.loadSession({ chat: 'c', room: '', user: 'u' })).toEqual({
      ...emptySession,
      pending: 'rock',
    });
    expect(await store.loadClub('c')).toEqual({ ...emptyClub, facts: { rock: 'granite' } });
    await store.close();
    rmSync(folder, { recursive: true });
  });
});
