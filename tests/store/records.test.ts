import { describe, expect, it } from 'vitest';
import { emptySession } from '../../src/contracts/session.ts';
import { openSqlite } from '../../src/store/sqlite.ts';

const at = '2026-11-25T08:00:00Z';
const talk = { chat: 'c', room: '', user: 'ana' };
const body = { facts: { rock: 'granite', pulls_kn: [36.5] }, texts: { note: 'glue came out clean' } };

describe('records', () => {
  it('keep every step: added, corrected, withdrawn', async () => {
    const store = await openSqlite(':memory:');
    await store.keep({ talk, at, changes: [{ do: 'add', id: 'tabc', kind: 'test', body }] });
    const better = { ...body, facts: { ...body.facts, pulls_kn: [34] } };
    const later = { ...talk, user: 'ben' };
    await store.keep({ talk: later, at, changes: [{ do: 'correct', id: 'tabc', version: 1, body: better }] });
    expect((await store.records.list('c', 'test'))[0]).toMatchObject({
      author: 'ana',
      version: 2,
      body: better,
    });
    await store.keep({ talk, at, changes: [{ do: 'withdraw', id: 'tabc', version: 2 }] });
    expect(await store.records.list('c', 'test')).toEqual([]);
    expect((await store.records.find('c', 'tabc'))?.withdrawn).toBe(true);
    expect((await store.records.history('c', 'tabc')).map(({ did, by }) => [did, by])).toEqual([
      ['added', 'ana'],
      ['corrected', 'ben'],
      ['withdrawn', 'ana'],
    ]);
    expect(await store.records.find('other', 'tabc')).toBeNull();
  });

  it('change nothing at all when somebody else was faster', async () => {
    const store = await openSqlite(':memory:');
    await store.keep({ talk, at, changes: [{ do: 'add', id: 'tabc', kind: 'test', body }] });
    const late = store.keep({
      talk,
      at,
      session: { ...emptySession, pending: 'rock' },
      changes: [
        { do: 'add', id: 'tnew', kind: 'test', body },
        { do: 'correct', id: 'tabc', version: 7, body },
      ],
    });
    await expect(late).rejects.toThrow('changed meanwhile');
    expect(await store.loadSession(talk)).toBeNull();
    expect((await store.records.list('c', 'test')).map(({ id }) => id)).toEqual(['tabc']);
    expect(await store.records.history('c', 'tabc')).toHaveLength(1);
  });

  it('take in ten thousand in one go', async () => {
    const store = await openSqlite(':memory:');
    const changes = Array.from({ length: 10_000 }, (_, index) => ({
      do: 'add' as const,
      id: `a${index}`,
      kind: 'anchor' as const,
      body,
    }));
    await store.keep({ talk, at, changes });
    expect(await store.records.list('c', 'anchor')).toHaveLength(10_000);
  });
});
