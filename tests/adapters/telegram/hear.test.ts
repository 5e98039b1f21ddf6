/** Whom the bot answers, over the wire. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { group } from './server/actors.ts';
import { bot } from './server/world.ts';
import { lull, raise, type Stage } from './stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await raise();
});
afterEach(() => stage.end());

const question = 'which bolt for a sea cliff of limestone?';

test('in private every message is answered, the first line bold', async () => {
  const { ana, answer } = stage;
  ana.say(ana.private, question);
  const message = await answer(ana.private, 1);
  expect(message.entities?.[0]).toMatchObject({ type: 'bold', offset: 0 });
  expect(message.reply_to_message).toBeUndefined();
});

test('in a group only commands, replies to it and mentions of it are answered', async () => {
  const { ana, ben, server, answer, own } = stage;
  const room = group(server, -500, [
    [ana, 'member'],
    [ben, 'member'],
  ]);
  ana.say(room, question);
  ana.say(room, '/help@some_other_bot');
  ana.say(room, '/ban everybody');
  ana.say(room, 'ask @some_other_bot or mail me@chough_test_bot.example');
  ben.say(room, 'which one?', { replyTo: ana.say(room, 'see above') });
  await lull();
  expect(own(room)).toEqual([]);

  ana.say(room, `@${bot.username} ${question}`);
  const first = await answer(room, 1);
  expect(first.reply_to_message?.from?.id).toBe(ana.user.id);
  ana.say(room, '/help');
  await answer(room, 2);
  ana.say(room, `/help@${bot.username.toUpperCase()}`);
  await answer(room, 3);
  ben.say(room, 'is a 12x100 in granite deep enough?', { replyTo: first });
  await answer(room, 4);
  expect(server.callsOf('sendMessage').every(({ params }) => params.disable_notification === true)).toBe(
    true,
  );
});

test('a mention is taken out of the question wherever it stands, and alone asks for help', async () => {
  const { ana, server, answer } = stage;
  const room = group(server, -501, [[ana, 'member']]);
  ana.say(room, `how do I clean the hole, @${bot.username}?`);
  const { text } = await answer(room, 1);
  const asked = ana.private;
  ana.say(asked, 'how do I clean the hole?');
  expect((await answer(asked, 1)).text).toBe(text);
  ana.say(room, `@${bot.username}`);
  const help = await answer(room, 2);
  ana.say(asked, '/help');
  expect((await answer(asked, 2)).text).toBe(help.text);
});

test('a command for another bot is left to it, in private too; /start with a payload is help', async () => {
  const { ana, answer, own } = stage;
  ana.say(ana.private, '/help@some_other_bot');
  await lull();
  expect(own(ana.private)).toEqual([]);
  ana.say(ana.private, '/start inline');
  expect((await answer(ana.private, 1)).text).toBeDefined();
});

test('bots, messages by way of the bot itself and forwards of a channel are not answered', async () => {
  const { ana, server, own } = stage;
  const room = group(server, -502, [[ana, 'member']], { supergroup: true });
  const text = `@${bot.username} ${question}`;
  ana.say(room, text, { extra: { from: { ...ana.user, is_bot: true } } });
  ana.say(room, text, { extra: { via_bot: bot } });
  ana.say(room, text, { extra: { is_automatic_forward: true } });
  ana.say(room, '', { extra: { text: undefined, new_chat_title: 'Penrock' } as never });
  await lull();
  expect(own(room)).toEqual([]);
});

test('a topic is a room of its own and is answered in; the general topic has no id', async () => {
  const { ana, server, answer } = stage;
  const room = group(server, -1003, [[ana, 'member']], { topics: [77, 78] });
  ana.say(room, '/material', { thread: 77 });
  const question77 = await answer(room, 1);
  expect(question77).toMatchObject({ message_thread_id: 77, is_topic_message: true });
  ana.say(room, '/why', { thread: 78 });
  const elsewhere = await answer(room, 2);
  expect(elsewhere.message_thread_id).toBe(78);
  // A chain of replies in the general topic carries an id that is no topic.
  ana.say(room, '/material', { extra: { message_thread_id: 3 } });
  const general = await answer(room, 3);
  expect(general.message_thread_id).toBeUndefined();
  expect(
    await stage.store.loadSession({ chat: 'telegram:-1003', room: '77', user: 'telegram:101' }),
  ).not.toBeNull();
});

test('a group that is answered in some topics only stays silent in the others', async () => {
  const { ana, ben, server, answer, own } = stage;
  const room = group(
    server,
    -1004,
    [
      [ana, 'creator'],
      [ben, 'member'],
    ],
    { topics: [77, 78] },
  );
  await stage.store.keep({
    talk: { chat: 'telegram:-1004', room: '', user: 'telegram:101' },
    at: new Date().toISOString(),
    club: { ...(await stage.store.loadClub('telegram:-1004')), rooms: ['77'] },
  });
  ben.say(room, '/help', { thread: 78 });
  await lull();
  expect(own(room)).toEqual([]);
  ben.say(room, '/help', { thread: 77 });
  await answer(room, 1);
  ana.say(room, '/club', { thread: 78 });
  await answer(room, 2);
});

test('whether a member may change settings is asked of the platform once a minute', async () => {
  const { ana, ben, server, answer } = stage;
  const room = group(server, -505, [
    [ana, 'administrator'],
    [ben, 'member'],
  ]);
  ben.say(room, '/club granite');
  await answer(room, 1);
  expect((await stage.store.loadClub('telegram:-505')).facts).toEqual({});
  ana.say(room, '/club granite');
  await answer(room, 2);
  expect((await stage.store.loadClub('telegram:-505')).facts).toMatchObject({ rock: 'granite' });
  ana.say(room, '/help');
  await answer(room, 3);
  expect(server.callsOf('getChatMember')).toHaveLength(2);
});

test('an administrator who stays anonymous is one, and may press what was asked of the group', async () => {
  const { ana, ben, server, answer } = stage;
  const room = group(
    server,
    -1006,
    [
      [ana, 'administrator'],
      [ben, 'member'],
    ],
    { supergroup: true },
  );
  ana.say(room, '/club granite', { anonymously: true });
  await answer(room, 1);
  expect((await stage.store.loadClub('telegram:-1006')).facts).toMatchObject({ rock: 'granite' });
  ana.say(room, '/material', { anonymously: true });
  const asked = await answer(room, 2);
  const label = asked.reply_markup?.inline_keyboard[0]?.[0]?.text ?? '';
  const refused = ben.press(asked, label);
  await server.until('the press was answered', () => server.pressed.get(refused)?.answer !== null);
  expect(server.pressed.get(refused)?.answer?.show_alert).toBe(true);
  ana.press(asked, label);
  await answer(room, 3);
});

test('when the platform does not tell, nobody is an administrator', async () => {
  const { ana, server, answer } = stage;
  const room = group(server, -507, [[ana, 'creator']]);
  server.faults.plan('getChatMember', { kind: 'page', code: 502 });
  ana.say(room, '/club granite');
  await answer(room, 1);
  expect((await stage.store.loadClub('telegram:-507')).facts).toEqual({});
});
