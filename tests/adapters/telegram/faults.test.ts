/** What goes wrong between bot and platform while answers are sent. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Post } from '../../../src/adapters/post.ts';
import { group } from './server/actors.ts';
import { badGateway, blocked, internal, kicked, tooMany } from './server/faults.ts';
import { lull, raise, type Stage } from './stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await raise();
});
afterEach(() => stage.end());

const repeat = 'Sent again';
const sends = () => stage.server.callsOf('sendMessage');
const waiting = async (): Promise<number> => (await stage.post.undelivered()).length;

test('429: waits exactly as told, and the answer comes once and unmarked', async () => {
  const { ana, server, answer, own } = stage;
  server.faults.plan('sendMessage', tooMany(1));
  ana.say(ana.private, '/help');
  expect((await answer(ana.private, 1)).text).not.toContain(repeat);
  const [first, second] = sends();
  const waited = (second?.at ?? 0) - (first?.at ?? 0);
  expect(waited).toBeGreaterThanOrEqual(995);
  expect(waited).toBeLessThan(1500);
  expect(own(ana.private)).toHaveLength(1);
});

test('429 in one chat does not hold up another', async () => {
  const { ana, ben, server, answer } = stage;
  server.faults.plan('sendMessage', tooMany(2), { chat: ana.user.id });
  ana.say(ana.private, '/help');
  await server.until('the first was refused', () => sends().length === 1);
  ben.say(ben.private, '/help');
  const from = performance.now();
  await answer(ben.private, 1);
  expect(performance.now() - from).toBeLessThan(1000);
  await answer(ana.private, 1);
});

test('a wait that is longer than a call may last is kept by the chat, not by the call', async () => {
  const { ana, server, answer } = stage;
  await stage.again({ callSeconds: 0.2 });
  server.faults.plan('sendMessage', tooMany(1));
  ana.say(ana.private, '/help');
  expect((await answer(ana.private, 1)).text).not.toContain(repeat);
});

test('500 and 502: sent again, marked as a repeat, for it may have arrived', async () => {
  const { ana, server, answer } = stage;
  for (const [at, fault] of [internal, badGateway].entries()) {
    server.faults.plan('sendMessage', fault);
    ana.say(ana.private, '/help');
    const message = await answer(ana.private, at + 1);
    expect(message.text).toContain(repeat);
    expect(message.entities?.[0]).toMatchObject({ type: 'bold' });
  }
});

test.each(['reset', 'half-close', 'hang'] as const)(
  '%s after the message was taken: the member has it twice, the second time marked',
  async (kind) => {
    const { ana, server, answer, own } = stage;
    server.faults.plan('sendMessage', { kind, after: true });
    ana.say(ana.private, '/help');
    const second = await answer(ana.private, 2);
    expect(own(ana.private)[0]?.text).not.toContain(repeat);
    expect(second.text).toContain(repeat);
    await lull();
    expect(own(ana.private)).toHaveLength(2);
    await expect.poll(waiting).toBe(0);
  },
);

test('a long answer goes on where it was broken off; the parts before are not sent again', async () => {
  const { ana, server, answer, own } = stage;
  ana.say(ana.private, 'cautions for limestone');
  await answer(ana.private, 1);
  ana.say(ana.private, 'why');
  await server.until(
    'the parts came',
    () => own(ana.private).at(-1)?.reply_markup !== undefined && own(ana.private).length > 2,
  );
  const parts = own(ana.private).length - 1;
  expect(parts).toBeGreaterThan(1);
  const before = own(ana.private).length;
  ana.say(ana.private, 'why');
  await server.until('its first part', () => own(ana.private).length === before + 1);
  server.faults.plan('sendMessage', internal);
  await answer(ana.private, before + parts);
  await lull();
  const marked = own(ana.private)
    .slice(before)
    .map(({ text }) => text?.includes(repeat));
  expect(marked).toHaveLength(parts);
  expect(marked.filter((one) => one === true)).toHaveLength(1);
  expect(marked[0]).toBe(false);
});

test('blocked or removed: the chat is left alone and nothing waits for it', async () => {
  const { ana, ben, server, answer, store } = stage;
  const room = group(server, -520, [[ben, 'member']]);
  server.faults.plan('sendMessage', blocked, { chat: ana.user.id });
  server.faults.plan('sendMessage', kicked, { chat: -520 });
  ana.say(ana.private, '/help');
  ben.say(room, '/help');
  await server.until('both were refused', () => sends().length === 2);
  ben.say(ben.private, '/help');
  await answer(ben.private, 1);
  await expect.poll(waiting).toBe(0);
  await expect.poll(() => store.isPaused('telegram:101')).toBe(true);
  await expect.poll(() => store.isPaused('telegram:-520')).toBe(true);
});

test('an answer that the platform refuses for ever is passed over, the next one comes', async () => {
  const { ana, server, answer, logs } = stage;
  server.faults.plan('sendMessage', { kind: 'error', code: 400, description: 'Bad Request: something new' });
  ana.say(ana.private, '/help');
  ana.say(ana.private, '/material');
  await answer(ana.private, 1);
  expect(logs.some((line) => line.includes('something new'))).toBe(true);
  await server.until('nothing waits', () => sends().length === 2);
  await expect.poll(waiting).toBe(0);
});

test('a group that became a supergroup while an answer was under way gets it there, with its settings', async () => {
  const { ana, server, answer } = stage;
  const old = group(server, -530, [[ana, 'administrator']]);
  ana.say(old, '/club granite');
  await answer(old, 1);
  const next = ana.upgrade(old, -1000530, 'untold');
  // The platform tells of it by the error only.
  old.migratedTo = null;
  server.faults.plan('sendMessage', {
    kind: 'error',
    code: 400,
    description: 'Bad Request: group chat was upgraded to a supergroup chat',
    parameters: { migrate_to_chat_id: -1000530 },
  });
  ana.say(old, '/help');
  await answer(next, 1);
  expect((await stage.store.loadClub('telegram:-1000530')).facts).toMatchObject({ rock: 'granite' });
  expect((await stage.store.loadClub('telegram:-530')).facts).toEqual({});
  await expect.poll(waiting).toBe(0);
});

test('a handler that breaks tells the member so, and the others go on', async () => {
  await stage.end();
  const breaking = (post: Post): Post => {
    const take = post.take.bind(post);
    post.take = (incoming) =>
      incoming.message.text?.startsWith('break') ? Promise.reject(new Error('planned')) : take(incoming);
    return post;
  };
  stage = await raise({ wrap: breaking });
  const { ana, ben, answer, logs } = stage;
  ana.say(ana.private, 'break it');
  ben.say(ben.private, '/help');
  expect((await answer(ana.private, 1)).text).toContain('Something in me failed');
  await answer(ben.private, 1);
  ana.say(ana.private, '/help');
  await answer(ana.private, 2);
  expect(logs.some((line) => line.includes('an update failed'))).toBe(true);
});

test('names and words that look like markup arrive as they are, and marks that turn the reading are gone', async () => {
  const { ana, answer } = stage;
  ana.say(ana.private, 'cost: <b>M&M</b> <script>"12 x 100"</script> &amp; \u202egranite\u202c <3');
  const message = await answer(ana.private, 1);
  expect(message.text).not.toMatch(/[\u202a-\u202e]/);
});
