/** Inline mode, menus, and the bot's own place in chats. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { group } from './server/actors.ts';
import { lull, raise, type Stage } from './stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await raise();
});
afterEach(() => stage.end());

async function inline(query: string) {
  const { ana, server } = stage;
  const id = ana.inline(query);
  await server.until('it was answered', () => server.inlineAnswers.has(id));
  const answer = server.inlineAnswers.get(id);
  if (answer === undefined) throw new Error('no answer');
  return answer;
}

test('inline: one answer with verdict, cautions and deferral, for this member only, nothing kept', async () => {
  const { results, is_personal, button } = await inline(
    'which metal for a limestone sea cliff in the Mediterranean?',
  );
  expect(results).toHaveLength(1);
  const [result] = results;
  const words = result?.input_message_content.text ?? '';
  expect(words).toContain(`<b>${result?.title.slice(0, 40)}`);
  expect(words).toContain('Take care');
  expect(words).toContain('This is advice, not a certificate');
  expect(is_personal).toBe(true);
  expect(button).toEqual({ text: 'Ask me in private', start_parameter: 'inline' });
  expect(
    await stage.store.loadSession({ chat: 'telegram:inline', room: '', user: 'telegram:101' }),
  ).toBeNull();
});

test('inline: without a question, or with one that has no advice for an answer, only the way to the private chat', async () => {
  expect((await inline('')).results).toEqual([]);
  expect((await inline('good morning')).results).toEqual([]);
  expect((await inline('<b>& \u202e')).results).toEqual([]);
});

test('inline: the longest query is answered within the limits, an answer that comes too late is passed over', async () => {
  await inline('which metal for granite inland '.repeat(10).slice(0, 256));
  stage.server.faults.plan('answerInlineQuery', {
    kind: 'error',
    code: 400,
    description: 'Bad Request: query is too old and response timeout expired or query ID is invalid',
  });
  stage.ana.inline('granite');
  await lull();
  expect(stage.logs.filter((line) => JSON.parse(line).level >= 40)).toEqual([]);
});

test('menus: per scope and language, administrators see more, written only where they differ', async () => {
  const { server } = stage;
  const written = () => server.callsOf('setMyCommands').length;
  await server.until('all menus are there', () => server.descriptions.size === 14);
  expect(written()).toBe(21);
  const names = (key: string) => server.commands.get(key)?.map(({ command }) => command) ?? [];
  expect(names('all_group_chats/es')).toContain('material');
  expect(names('all_group_chats/es')).not.toContain('club');
  expect(names('all_chat_administrators/es')).toContain('club');
  expect(names('all_private_chats/')).toEqual(names('all_private_chats/en'));
  const german = server.commands.get('all_private_chats/de')?.[0]?.description;
  expect(german).not.toBe(server.commands.get('all_private_chats/en')?.[0]?.description);
  server.commands.set('all_group_chats/fr', []);
  await stage.again();
  await server.until('the menus were looked at', () => server.callsOf('getMyShortDescription').length === 14);
  expect(written()).toBe(22);
  expect(server.callsOf('setMyDescription')).toHaveLength(7);
});

test('menus that cannot be written keep nobody from an answer', async () => {
  const { ana, server, answer } = stage;
  server.faults.plan('getMyCommands', { kind: 'page', code: 502 }, { times: 100 });
  await stage.again();
  ana.say(ana.private, '/help');
  await answer(ana.private, 1);
});

test('a group that the bot is added to is greeted once for ever, in the language of who added it', async () => {
  const { ana, server, answer, own } = stage;
  ana.user.language_code = 'es';
  const room = group(server, -560, [[ana, 'creator']]);
  ana.place(room, 'left', 'member');
  expect((await answer(room, 1)).text).toContain('Hola');
  ana.place(room, 'member', 'administrator');
  ana.place(room, 'administrator', 'kicked');
  await expect.poll(() => stage.store.isPaused('telegram:-560')).toBe(true);
  ana.place(room, 'left', 'member');
  await expect.poll(() => stage.store.isPaused('telegram:-560')).toBe(false);
  await lull();
  expect(own(room)).toHaveLength(1);
});

test('a member who blocks the bot is left alone', async () => {
  const { ana } = stage;
  ana.place(ana.private, 'member', 'kicked');
  await expect.poll(() => stage.store.isPaused('telegram:101')).toBe(true);
});

test('a group that becomes a supergroup keeps its settings and talks, told from both sides', async () => {
  const { ana, server, answer, store } = stage;
  const old = group(server, -570, [[ana, 'creator']]);
  ana.say(old, '/club granite');
  await answer(old, 1);
  const next = ana.upgrade(old, -1000570);
  await expect
    .poll(async () => (await store.loadClub('telegram:-1000570')).facts)
    .toMatchObject({ rock: 'granite' });
  ana.say(next, '/help');
  await answer(next, 1);
  expect((await store.loadClub('telegram:-570')).facts).toEqual({});
});
