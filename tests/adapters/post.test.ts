import { describe, expect, it } from 'vitest';
import { makeApp } from '../../src/app.ts';
import type { Message } from '../../src/contracts/message.ts';
import { posts } from '../../src/platforms.ts';
import { keepNothing } from '../../src/store/nothing.ts';
import { openSqlite } from '../../src/store/sqlite.ts';
import { rulesFolder } from '../support/desk.ts';

async function freshPost(limits = { memberIn10s: 100, chatInMinute: 100 }) {
  const store = await openSqlite(':memory:');
  const app = await makeApp(rulesFolder, store, { oneShot: false });
  const once = await makeApp(rulesFolder, keepNothing, { oneShot: true });
  const post = (await posts({ rulesFolder, app, once, store, limits }))('telegram');
  let claims = 0;
  const take = (message: Partial<Message>, claim = `telegram:1:${++claims}`) =>
    post.take({ message: { id: claim, chat: 'c', user: 'u', ...message }, claim, address: '{}' });
  return { post, take, store };
}

describe('the post', () => {
  it('answers an update once, however often it comes, and keeps the answer until it is delivered', async () => {
    const { post, take } = await freshPost();
    const [first, second] = await Promise.all([
      take({ text: 'which glue in granite?' }, 'telegram:1:77'),
      take({ text: 'which glue in granite?' }, 'telegram:1:77'),
    ]);
    expect(first?.rendered.reply.text).toContain('granite');
    expect(second).toBeNull();
    const [kept] = await post.undelivered();
    expect(kept?.again).toBe(true);
    expect(kept?.rendered).toEqual(first?.rendered);
    await post.delivered('telegram:1:77');
    expect(await post.undelivered()).toEqual([]);
  });

  it("takes a member's messages one after the other", async () => {
    const { take } = await freshPost();
    const parcels = await Promise.all(
      ['which glue?', 'granite', '8 °C', 'dry hole', 'not overhead'].map((text) => take({ text })),
    );
    expect(parcels.at(-1)?.rendered.reply.facts).toMatchObject({ rock: 'granite', temperature_c: 8 });
  });

  it('says once that somebody is too fast, then is silent, and leaves the others alone', async () => {
    const { take } = await freshPost({ memberIn10s: 2, chatInMinute: 100 });
    const texts = [];
    for (let time = 0; time < 5; time++) texts.push((await take({ text: 'hello' }))?.rendered.reply.text);
    expect(texts[2]).toContain('too fast');
    expect(texts.slice(3)).toEqual([undefined, undefined]);
    expect((await take({ user: 'other', text: 'hello' }))?.rendered.reply.text).toContain('Hello');
  });

  it('greets a group once, with cautions and deferral', async () => {
    const { post } = await freshPost();
    const greeting = await post.joined('telegram:-5', '{}', 'de');
    expect(greeting?.rendered.reply.text).toContain('bescheinige nie');
    expect(await post.joined('telegram:-5', '{}', 'de')).toBeNull();
    await post.left('telegram:-5');
    expect(await post.joined('telegram:-5', '{}', 'de')).toBeNull();
  });

  it('answers only in the rooms that a chat was limited to', async () => {
    const { post, take } = await freshPost();
    expect(await post.allowedRoom('c', 'a')).toBe(true);
    const set = await take({ text: '/club only here', room: 'a', admin: true });
    expect(set?.rendered.reply.text).toContain('one topic or channel');
    expect(await post.allowedRoom('c', 'a')).toBe(true);
    expect(await post.allowedRoom('c', 'b')).toBe(false);
    expect(await post.allowedRoom('c', undefined)).toBe(false);
    await take({ text: '/club everywhere', room: 'a', admin: true });
    expect(await post.allowedRoom('c', 'b')).toBe(true);
  });

  it('completes names while somebody types, within the limits of the platforms', async () => {
    const { post } = await freshPost();
    expect(await post.suggest('is epoxy ok in gra', 'en')).toContain('is epoxy ok in granite');
    expect(await post.suggest('Kalks', 'de')).not.toEqual(['Kalks']);
    expect((await post.suggest('', 'fr')).length).toBe(25);
    const long = await post.suggest(`${'x'.repeat(200)} gra`, 'en');
    expect(long.every(({ length }) => length <= 100)).toBe(true);
    expect(await post.suggest('zzzz', 'en')).toEqual(['zzzz']);
  });

  it('has commands in every language', async () => {
    const { post } = await freshPost();
    const all = await Promise.all(post.languages.map((language) => post.commands(language)));
    for (const commands of all) {
      expect(commands.map(({ name }) => name)).toEqual(all[0]?.map(({ name }) => name));
      expect(new Set(commands.map(({ localName }) => localName)).size).toBe(commands.length);
    }
  });

  it('answers one question with nothing kept', async () => {
    const { post, store } = await freshPost();
    const rendered = await post.askOnce({
      id: '1',
      chat: 'i',
      user: 'u',
      text: 'how long does epoxy cure at 8 °C?',
    });
    expect(rendered.reply.advice?.cautions.length).toBeGreaterThan(0);
    expect(await store.loadSession({ chat: 'i', room: '', user: 'u' })).toBeNull();
  });
});
