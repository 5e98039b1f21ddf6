/** Every screen of a conversation as a member sees it, kept beside the test: a change of words or layout is seen. */
import type { Message } from 'grammy/types';
import { expect, test } from 'vitest';
import { group, Person } from './server/actors.ts';
import { screen } from './server/screen.ts';
import { bot } from './server/world.ts';
import { raise } from './stage.ts';

/** Figures that change with every edition of the rules say nothing about the screen. */
const steady = (text: string): string => text.replace(/\b(?=[a-z]*\d)[0-9a-z]{8,}\b/g, '…');

const dataOf = (message: Message | undefined): string[] =>
  (message?.reply_markup?.inline_keyboard.flat() ?? []).map((button) =>
    'callback_data' in button ? button.callback_data : '',
  );

interface Script {
  readonly language: string;
  readonly question: string;
  readonly inWords: string;
  readonly whole: string;
  readonly refused: string;
}

const scripts: readonly Script[] = [
  {
    language: 'en',
    question: '/material',
    inWords: 'limestone',
    whole: 'which glue for a glue-in in wet sandstone at 5 C?',
    refused: 'can you certify this anchor?',
  },
  {
    language: 'es',
    question: '/material',
    inWords: 'caliza',
    whole: '¿qué resina para un químico en arenisca mojada a 5 °C?',
    refused: '¿puedes certificar este anclaje?',
  },
];

for (const { language, question, inWords, whole, refused } of scripts) {
  test(`a talk in private, ${language}`, async () => {
    const stage = await raise({ pace: null });
    const { answer, server, own } = stage;
    const member = new Person(server, 301, 'Nerea', language);
    const room = member.private;
    member.say(room, '/start');
    await answer(room, 1);
    member.say(room, question);
    const asked = await answer(room, 2);
    const [choice] = asked.reply_markup?.inline_keyboard.flat() ?? [];
    member.press(asked, choice?.text ?? '');
    await answer(room, 3);
    await server.until('the choice is shown', () => own(room)[1]?.text?.includes('✓') === true);
    member.say(room, inWords);
    await answer(room, 4);
    member.say(room, whole);
    let said = 5;
    let told = await answer(room, said);
    // Asked on, the member does not know, until there is an answer.
    for (; !dataOf(told).some((data) => data.endsWith(':c:why')); said += 1) {
      const last = told.reply_markup?.inline_keyboard.flat().at(-1)?.text ?? '';
      member.press(told, last);
      told = await answer(room, said + 1);
    }
    member.press(told, told.reply_markup?.inline_keyboard.flat()[0]?.text ?? '');
    await server.until('the reasons came to their end', () =>
      dataOf(own(room).at(-1)).some((data) => data.endsWith(':c:back')),
    );
    member.say(room, refused);
    await answer(room, own(room).length + 1);
    await server.until('all choices are shown', () => server.callsOf('editMessageText').length === said - 4);
    await expect(steady(screen(room))).toMatchFileSnapshot(`screens/private-${language}.txt`);
    await stage.end();
  });

  test(`a talk in a group, ${language}`, async () => {
    const stage = await raise({ pace: null });
    const { answer, server } = stage;
    const member = new Person(server, 302, 'Iker', language);
    const room = group(server, -600, [[member, 'administrator']]);
    member.place(room, 'left', 'member');
    const greeting = await answer(room, 1);
    member.say(room, inWords, { replyTo: greeting });
    await answer(room, 2);
    member.say(room, `@${bot.username} ${whole}`);
    await answer(room, 3);
    member.say(room, '/cautions');
    await answer(room, 4);
    await expect(steady(screen(room))).toMatchFileSnapshot(`screens/group-${language}.txt`);
    await stage.end();
  });
}
