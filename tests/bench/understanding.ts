/** One message understood in its own language; then messages of 10 000 characters made of real ones. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Languages } from '../../src/languages.ts';
import { rules, rulesFolder } from '../support/desk.ts';
import { measure, row } from './measure.ts';

const folder = fileURLToPath(new URL('../dialogue/understand/', import.meta.url));

function messagesOf(code: string): string[] {
  const place = code === 'en' ? folder : `${folder}${code}`;
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .filter((name) => name.startsWith('messages') && name.endsWith('.json'))
    .flatMap((name) =>
      JSON.parse(readFileSync(`${place}/${name}`, 'utf8')).cases.map((one: { say: string }) => one.say),
    );
}

export async function run(): Promise<void> {
  const languages = await Languages.find(rulesFolder, rules);
  for (const code of languages.codes) {
    const understand = await languages.understand(code);
    const messages = messagesOf(code);
    const one = (index: number): string => messages[index % messages.length] ?? '';
    console.log(row(`${code}, one message`, await measure(1000, async (index) => understand(one(index)))));
    const long = (index: number): string =>
      Array.from({ length: 400 }, (_, step) => one(index * 37 + step))
        .join(' ')
        .slice(0, 10_000);
    console.log(
      row(`${code}, 10 000 characters`, await measure(30, async (index) => understand(long(index)))),
    );
  }
}
