/** Updates: none lost, none counted twice, whatever happens to the process or the line. */

import { pino } from 'pino';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Post } from '../../../src/adapters/post.ts';
import { startTelegram } from '../../../src/adapters/telegram/start.ts';
import { group, Person } from './server/actors.ts';
import { badGateway, internal, tooMany } from './server/faults.ts';
import { testToken } from './server/server.ts';
import { lull, raise, type Stage } from './stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await raise();
});
afterEach(() => stage.end());

/** The highest update that the platform may forget. */
const confirmed = (): number => stage.server.updates.confirmed - 1;

test('an update is confirmed only when what it led to is stored', async () => {
  await stage.end();
  let release: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const slow = (post: Post): Post => {
    const take = post.take.bind(post);
    post.take = async (incoming) => {
      if (incoming.message.user === 'telegram:101') await held;
      return take(incoming);
    };
    return post;
  };
  stage = await raise({ wrap: slow });
  const { ana, ben, server, answer } = stage;
  ana.say(ana.private, '/help');
  const first = server.updates.made + 5000;
  // Others are answered meanwhile; the platform keeps everything from the first on.
  ben.say(ben.private, '/help');
  await answer(ben.private, 1);
  ben.say(ben.private, '/help');
  await answer(ben.private, 2);
  expect(confirmed()).toBeLessThan(first);
  expect(server.updates.waiting.map(({ update_id }) => update_id)).toContain(first);
  release();
  await answer(ana.private, 1);
  await server.until('all is confirmed', () => confirmed() === first + 2);
  await lull();
  expect(stage.own(ben.private)).toHaveLength(2);
});

test('while one is in work the line is not polled without a pause', async () => {
  await stage.end();
  let release: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  stage = await raise({
    wrap: (post) => {
      const take = post.take.bind(post);
      post.take = (incoming) => held.then(() => take(incoming));
      return post;
    },
  });
  const { ana, server, answer } = stage;
  ana.say(ana.private, '/help');
  await lull(500);
  expect(server.callsOf('getUpdates').length).toBeLessThan(12);
  release();
  await answer(ana.private, 1);
});

test('the same update a second time counts once, after a restart too', async () => {
  const { ana, server, answer, own } = stage;
  const one = { update_id: 8001, message: ana.send(ana.private, { text: '/help' }) } as never;
  server.updates.put(one);
  await answer(ana.private, 1);
  server.updates.put(one);
  await lull(300);
  expect(own(ana.private)).toHaveLength(1);
  await stage.again();
  server.updates.put(one);
  await lull();
  expect(own(ana.private)).toHaveLength(1);
});

test('when the platform begins to count anew, lower, the bot goes on hearing', async () => {
  const { ana, server, answer, own } = stage;
  for (const text of ['/help', '/material']) ana.say(ana.private, text);
  await answer(ana.private, 2);
  server.updates.renumber(17);
  ana.say(ana.private, '/help');
  await answer(ana.private, 3);
  ana.say(ana.private, '/help');
  await answer(ana.private, 4);
  await lull(300);
  expect(own(ana.private)).toHaveLength(4);
  expect(server.callsOf('getUpdates').length).toBeLessThan(20);
});

test('updates of one batch in the wrong order are all taken', async () => {
  const { ana, ben, server, answer } = stage;
  await stage.telegram.stop();
  server.updates.put({ update_id: 9002, message: ana.send(ana.private, { text: '/help' }) } as never);
  server.updates.put({ update_id: 9001, message: ben.send(ben.private, { text: '/help' }) } as never);
  await stage.again();
  await answer(ana.private, 1);
  await answer(ben.private, 1);
});

test('what one member says is taken in the order of saying', async () => {
  const { ana, store } = stage;
  const words = ['granite', 'sorry, limestone', 'sorry, gneiss', 'sorry, sandstone'];
  for (const text of words) ana.say(ana.private, text);
  await expect
    .poll(
      async () => (await store.loadSession({ chat: 'telegram:101', room: '', user: 'telegram:101' }))?.turn,
    )
    .toBe(4);
  const session = await store.loadSession({ chat: 'telegram:101', room: '', user: 'telegram:101' });
  expect(session?.entries.filter(({ fact }) => fact === 'rock').at(-1)?.value).toContain('sandstone');
});

test('errors of the line are waited out: 500, 502, 429, a reset, a half-closed socket', async () => {
  const { ana, server, answer } = stage;
  const faults = [
    internal,
    badGateway,
    tooMany(1),
    { kind: 'reset' as const },
    { kind: 'half-close' as const },
  ];
  for (const [at, fault] of faults.entries()) {
    server.faults.plan('getUpdates', fault);
    ana.say(ana.private, '/help');
    await answer(ana.private, at + 1);
  }
});

test('a second poller is noticed and said clearly', async () => {
  const ended = expect(stage.telegram.ended).rejects.toThrow(/Another process fetches the updates/);
  // As another copy of the program would.
  const other = fetch(`${stage.server.root}/bot${testToken}/getUpdates`);
  await ended;
  await other;
});

test('a token that is not taken stops the start with a sentence', async () => {
  const options = { token: '1:wrong', apiRoot: stage.server.root, log: pino({ level: 'silent' }) };
  await expect(startTelegram(stage.post, options)).rejects.toThrow(/does not take this token/);
});

test('stopping takes less than ten seconds, sends what is due and confirms what was taken', async () => {
  const { ana, server, own } = stage;
  server.faults.plan('sendMessage', tooMany(1));
  ana.say(ana.private, '/help');
  await server.until('it was tried', () => server.callsOf('sendMessage').length === 1);
  const from = performance.now();
  await stage.telegram.stop();
  expect(performance.now() - from).toBeLessThan(10_000);
  expect(own(ana.private)).toHaveLength(1);
  expect(server.updates.waiting).toEqual([]);
});

test('what could not be sent before the end is sent at the next start, marked, after new answers', async () => {
  const { ana, ben, server, answer, own } = stage;
  const people = Array.from({ length: 6 }, (_, at) => new Person(server, 3000 + at, 'Somebody', 'en'));
  server.faults.plan('sendMessage', { kind: 'hang' }, { times: 100 });
  for (const person of people) person.say(person.private, '/help');
  await server.until('all were tried', () => server.callsOf('sendMessage').length >= people.length);
  const from = performance.now();
  await stage.telegram.stop();
  expect(performance.now() - from).toBeLessThan(10_000);
  expect(people.flatMap((one) => own(one.private))).toEqual([]);
  server.faults.clear();
  const before = server.callsOf('sendMessage').length;
  ben.say(ben.private, '/help');
  const few = { most: 1, milliseconds: 100 };
  await stage.again({ pace: { chat: few, group: few, all: few } });
  await answer(ben.private, 1);
  for (const person of people) expect((await answer(person.private, 1)).text).toContain('Sent again');
  const order = server
    .callsOf('sendMessage')
    .slice(before)
    .map(({ params }) => params.chat_id);
  expect(order).toHaveLength(people.length + 1);
  expect(order.indexOf(ben.user.id)).toBeLessThan(3);
  await expect.poll(async () => (await stage.post.undelivered()).length).toBe(0);
  expect(own(ana.private)).toEqual([]);
}, 30_000);

test('a corrected question is answered anew; an edit that changes no words, and a live location, are not', async () => {
  const { ana, server, answer, own } = stage;
  const room = ana.private;
  const asked = ana.say(room, 'which metal for an inland crag?');
  await answer(room, 1);
  ana.edit(asked, {});
  ana.edit(ana.send(room, {}), { location: { latitude: 50, longitude: -5, live_period: 900 } } as never);
  await lull();
  expect(own(room)).toHaveLength(1);
  ana.edit(asked, { text: 'which metal for a sea cliff?' });
  await answer(room, 2);
  // In a group an edit is heard where the message would have been.
  const chat = group(server, -540, [[ana, 'member']]);
  const said = ana.say(chat, 'good morning');
  ana.edit(said, { text: 'good evening' });
  await lull();
  expect(own(chat)).toEqual([]);
  ana.edit(said, { text: '/help' });
  await answer(chat, 1);
});
