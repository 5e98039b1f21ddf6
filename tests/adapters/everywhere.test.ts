/** One dialogue on four roads: the same talks through terminal, pipe, Telegram and Discord come to the same advices. */
import { readFileSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runPipe } from '../../src/adapters/pipe/pipe.ts';
import type { Respond } from '../../src/adapters/respond.ts';
import { runChat } from '../../src/adapters/terminal/chat.ts';
import { freshApp } from '../support/app.ts';
import { Stage as DiscordStage } from './discord/support/stage.ts';
import { Person } from './telegram/server/actors.ts';
import { raise, type Stage as TelegramStage } from './telegram/stage.ts';

interface Talk {
  readonly name: string;
  readonly turns: readonly { readonly text?: string; readonly [key: string]: unknown }[];
}

const file = new URL('../dialogue/talks/talks.json', import.meta.url);
const read = JSON.parse(readFileSync(file, 'utf8')) as readonly Talk[] | { talks: readonly Talk[] };
const all = 'talks' in read ? read.talks : read;
/** Of one member, by words alone, in the language that the message is in. */
const plain = all.filter(({ turns }) =>
  turns.every(
    (turn) =>
      typeof turn.text === 'string' &&
      // A terminal takes a line at a time.
      !turn.text.includes('\n') &&
      turn.text.trim() !== '' &&
      !turn.text.startsWith('/') &&
      turn.text.length < 1500 &&
      ['user', 'chat', 'press', 'at', 'kill', 'locale'].every((key) => turn[key] === undefined),
  ),
);
/** More, so that there are at least thirty. */
const more: readonly string[][] = [
  ['which glue for a damp hole in limestone at 6 °C', "don't know", "don't know"],
  ['how long must vinyl ester cure at 8 °C?', 'why'],
  ['how far from the edge for a 12x100?', 'and for 10x80?'],
  ['¿qué anclaje para un acantilado marino tropical?', 'no sé', 'por qué'],
  ['wie lange muss Epoxid bei 6 °C aushärten?', 'warum'],
  ['comment nettoyer le trou pour un scellement ?'],
  ['quale resina per un foro umido a 8 °C?', 'non so', 'non so'],
  ['que metal para uma falésia junto ao mar?', 'não sei', 'não sei'],
  ['how long does 50 µm of zinc last on an inland crag?'],
  ['brown stain under a 304 hanger on a sea cliff, can I trust it?', "don't know"],
  ['somebody is hanging from a bolt that pulled out, help'],
  ['can you certify this anchor?'],
  ['how do I clean the hole for a glue-in?', 'thanks'],
  ['which kind of anchor for a belay in soft sandstone?', "don't know", "don't know"],
  ['how much glue for 20 bolts 12 x 100?', '10 x 80'],
  ['fall factor 1.7, 80 kg: what load on the bolt?', "don't know"],
  ['316 or titanium on a tropical sea cliff?', "don't know", 'and the other one?'],
  ['five pulls failed at 31, 28, 35, 30, 33 kN, what does it prove?', "don't know"],
];
const talks = [
  ...plain.map(({ name, turns }) => ({ name, texts: turns.map(({ text = '' }) => text) })),
  ...more.map((texts) => ({ name: texts[0] ?? '', texts })),
];

const footer = /(?:Answer|Respuesta|Resposta|Réponse|Risposta|Antwort) ([0-9a-z]{8})\b/g;
const idsIn = (text: string): string[] => [...text.matchAll(footer)].flatMap(([, id]) => id ?? []);

const app = await freshApp();
let chats = 0;
/** The same program in a chat of its own. */
function fresh(): Respond {
  chats += 1;
  const chat = `chat ${chats}`;
  return (message) => app.respond({ ...message, chat });
}

async function byTerminal(texts: readonly string[]): Promise<string[]> {
  const [input, output] = [new PassThrough(), new PassThrough()];
  let shown = '';
  output.on('data', (chunk: Buffer) => {
    shown += chunk.toString('utf8');
  });
  const chat = runChat(fresh(), input, output, { greeting: 'hello', choose: 'choose' });
  input.end(`${texts.join('\n')}\n`);
  await chat;
  return idsIn(shown);
}

async function byPipe(texts: readonly string[]): Promise<string[]> {
  const [input, output] = [new PassThrough(), new PassThrough()];
  let lines = '';
  output.on('data', (chunk: Buffer) => {
    lines += chunk.toString('utf8');
  });
  const messages = texts.map((text, index) =>
    JSON.stringify({ id: String(index), chat: 'c', user: 'u', text }),
  );
  input.end(`${messages.join('\n')}\n`);
  await runPipe(fresh(), input, output);
  return idsIn(
    lines
      .trim()
      .split('\n')
      .map((line) => (JSON.parse(line) as { text?: string }).text ?? '')
      .join('\n'),
  );
}

let telegram: TelegramStage;
let discord: DiscordStage;
let people = 1000;

/** Until something new was said and nothing more is under way. */
async function said(count: () => number, before: number, open: () => Promise<number>): Promise<void> {
  const end = Date.now() + 20_000;
  while (Date.now() < end && (count() === before || (await open()) > 0)) await sleep(5);
  expect(count()).toBeGreaterThan(before);
}

async function byTelegram(texts: readonly string[]): Promise<string[]> {
  people += 1;
  const person = new Person(telegram.server, people, 'Ana', 'en');
  const room = person.private;
  for (const text of texts) {
    const before = telegram.own(room).length;
    person.say(room, text);
    await said(
      () => telegram.own(room).length,
      before,
      async () => (await telegram.post.undelivered()).length,
    );
  }
  return idsIn(
    telegram
      .own(room)
      .map(({ text = '' }) => text)
      .join('\n'),
  );
}

async function byDiscord(texts: readonly string[]): Promise<string[]> {
  const member = discord.direct();
  for (const text of texts) {
    const before = discord.posted(member).length;
    member.types(text);
    await said(
      () => discord.posted(member).length,
      before,
      async () => (await discord.outstanding(member)).length,
    );
  }
  return idsIn(
    discord
      .posted(member)
      .map(({ content }) => content)
      .join('\n'),
  );
}

describe('the same talk on every platform', () => {
  beforeAll(async () => {
    telegram = await raise({ pace: null });
    discord = await DiscordStage.set();
  }, 60_000);
  afterAll(async () => {
    await telegram.end();
    await discord.strike();
  });

  it('is played at least thirty times', () => {
    expect(talks.length).toBeGreaterThanOrEqual(30);
  });

  it.each(talks)('$name', { timeout: 60_000 }, async ({ texts }) => {
    const expected = await byPipe(texts);
    expect(await byTerminal(texts)).toEqual(expected);
    expect(await byTelegram(texts)).toEqual(expected);
    expect(await byDiscord(texts)).toEqual(expected);
  });
});
