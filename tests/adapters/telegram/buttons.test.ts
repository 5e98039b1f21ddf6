/** Buttons over the wire: answered at once, for the one who was asked, once, after any time. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { buttonData, keyboard, readPress } from '../../../src/adapters/telegram/keyboard.ts';
import type { Person } from './server/actors.ts';
import { group } from './server/actors.ts';
import type { Room } from './server/world.ts';
import { lull, raise, type Stage } from './stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await raise();
});
afterEach(() => stage.end());

const labels = (room: Room, id: number): string[] =>
  (room.messages.get(id)?.reply_markup?.inline_keyboard.flat() ?? []).map(({ text }) => text);

const pressed = async (person: Person, ...press: Parameters<Person['press']>) => {
  const id = person.press(...press);
  await stage.server.until('the press was answered', () => stage.server.pressed.get(id)?.answer != null);
  return stage.server.pressed.get(id)?.answer;
};

test('a press is answered at once, its question shows the choice taken, the answer is a new message', async () => {
  const { ana, answer, server } = stage;
  const room = ana.private;
  ana.say(room, '/material');
  const asked = await answer(room, 1);
  const [first = ''] = labels(room, asked.message_id);
  expect(await pressed(ana, asked, first)).toEqual({});
  await answer(room, 2);
  await server.until(
    'the choice is shown',
    () => room.messages.get(asked.message_id)?.text?.endsWith(`✓ ${first}`) === true,
  );
  expect(labels(room, asked.message_id)).toEqual([]);
  const order = server.calls
    .filter(({ method }) => ['answerCallbackQuery', 'sendMessage', 'editMessageText'].includes(method))
    .map(({ method }) => method);
  expect(order).toEqual(['sendMessage', 'answerCallbackQuery', 'sendMessage', 'editMessageText']);
});

test('a press by somebody else changes nothing and gets a kind word that only they see', async () => {
  const { ana, ben, answer, server, own } = stage;
  const room = group(server, -510, [
    [ana, 'member'],
    [ben, 'administrator'],
  ]);
  ana.say(room, '/material');
  const asked = await answer(room, 1);
  const [first = ''] = labels(room, asked.message_id);
  const alert = await pressed(ben, asked, first);
  expect(alert).toMatchObject({ show_alert: true });
  expect(alert?.text).toContain('Ask me yourself');
  await lull();
  expect(own(room)).toHaveLength(1);
  expect(labels(room, asked.message_id)).toContain(first);
});

test('a button of an older version, or a made-up one, is answered with one line', async () => {
  const { ana, answer, own } = stage;
  ana.say(ana.private, '/material');
  const asked = await answer(ana.private, 1);
  for (const data of [
    '0:2t:f:rock:granite',
    'rock=granite',
    '1:2t:',
    `1:${'z'.repeat(12)}:x`,
    '1:2t:f:rock:'.padEnd(64, 'é'),
  ]) {
    const alert = await pressed(ana, asked, '', data);
    expect(alert).toMatchObject({ show_alert: true });
    expect(alert?.text).toContain('older version');
  }
  await lull();
  expect(own(ana.private)).toHaveLength(1);
});

test('a choice that nobody offers any more is read without harm', async () => {
  const { ana, answer } = stage;
  ana.say(ana.private, '/material');
  const asked = await answer(ana.private, 1);
  ana.press(asked, '', buttonData(ana.user.id, 'f:no_such_fact:no-such-value'));
  expect((await answer(ana.private, 2)).text).not.toContain('failed');
});

test('two taps at once: one after the other, "not modified" and "too old" are passed over, nothing is logged as an error', async () => {
  const { ana, answer, server, logs } = stage;
  const room = ana.private;
  ana.say(room, '/material');
  const asked = await answer(room, 1);
  const [first = ''] = labels(room, asked.message_id);
  server.faults.plan('answerCallbackQuery', {
    kind: 'error',
    code: 400,
    description: 'Bad Request: query is too old and response timeout expired or query ID is invalid',
  });
  ana.press(asked, first);
  ana.press(asked, first);
  await answer(room, 3);
  await server.until('both edits', () => server.callsOf('editMessageText').length === 2);
  await lull(50);
  expect(logs.filter((line) => JSON.parse(line).level >= 40)).toEqual([]);
});

test('another refusal of an edit is logged, and the answer comes all the same', async () => {
  const { ana, answer, server, logs } = stage;
  const room = ana.private;
  ana.say(room, '/material');
  const asked = await answer(room, 1);
  const [first = ''] = labels(room, asked.message_id);
  ana.press(asked, first);
  // Deleted while the answer is worked out.
  room.messages.delete(asked.message_id);
  await answer(room, 1);
  await server.until('the edit was tried', () => server.callsOf('editMessageText').length === 1);
  await server.until('it was logged', () => logs.some((line) => line.includes('message to edit not found')));
});

test('a press under a message too old to be shown is still taken', async () => {
  const { ana, answer, server } = stage;
  const room = ana.private;
  ana.say(room, '/material');
  const asked = await answer(room, 1);
  const [first = ''] = labels(room, asked.message_id);
  const data = asked.reply_markup?.inline_keyboard[0]?.[0];
  ana.press(
    { ...asked, message_id: 999, date: 0 } as typeof asked,
    first,
    data && 'callback_data' in data ? data.callback_data : '',
  );
  await answer(room, 2);
  expect(server.callsOf('editMessageText')).toEqual([]);
});

test('buttons work after a restart', async () => {
  const { ana, answer } = stage;
  ana.say(ana.private, '/material');
  const asked = await answer(ana.private, 1);
  const [first = ''] = labels(ana.private, asked.message_id);
  await stage.again();
  ana.press(asked, first);
  await answer(ana.private, 2);
});

test('the answer to a deleted message comes without the link to it', async () => {
  const { ana, answer, server } = stage;
  const room = group(server, -511, [[ana, 'member']]);
  server.faults.plan('getChatMember', {
    kind: 'error',
    code: 429,
    description: 'Too Many Requests: retry after 1',
    parameters: { retry_after: 1 },
  });
  const sent = ana.say(room, '/help');
  room.messages.delete(sent.message_id);
  expect((await answer(room, 1)).reply_to_message).toBeUndefined();
});

test('data is read as it was written, and never longer than the platform takes', () => {
  // A Telegram id has at most 52 significant bits (reference, User.id).
  const owner = 2 ** 52 - 1;
  const choice = 'f:'.padEnd(50, 'x');
  expect(Buffer.byteLength(buttonData(owner, choice))).toBeLessThanOrEqual(64);
  expect(readPress(buttonData(owner, choice))).toEqual({ owner, choice });
  const rows = keyboard(owner, [
    { id: 'f:a:b', label: 'yes' },
    { id: 'x'.repeat(60), label: 'too long to be a button' },
  ]);
  expect(rows?.inline_keyboard.flat()).toHaveLength(1);
});

test('rows: three short ones, fewer long ones, two columns over five', () => {
  const shape = (all: readonly string[]): number[] =>
    keyboard(
      1,
      all.map((label, at) => ({ id: `c:${at}`, label })),
    )?.inline_keyboard.map(({ length }) => length) ?? [];
  expect(shape(['yes', 'no', "don't know"])).toEqual([3]);
  expect(shape(['hole points upwards', 'hole not overhead', "Don't know"])).toEqual([2, 1]);
  expect(shape(['kind of anchor: glue-in, two legs', 'why'])).toEqual([1, 1]);
  expect(shape(Array.from({ length: 7 }, () => 'granite'))).toEqual([2, 2, 2, 1]);
  expect(shape([])).toEqual([]);
});
