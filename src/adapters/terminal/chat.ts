import { createInterface } from 'node:readline/promises';
import type { Readable, Writable } from 'node:stream';
import type { Choice, Message } from '../../contracts/message.ts';
import { isSilence, type Respond } from '../respond.ts';

export interface TerminalTexts {
  readonly greeting: string;
  readonly choose: string;
}

const letter = (index: number): string => String.fromCharCode('a'.charCodeAt(0) + index);

/** Choices are lettered in a terminal: "b" taps the second one, and a number is always an answer in itself. */
function toMessage(line: string, id: string, choices: readonly Choice[]): Message {
  const sender = { id, chat: 'terminal', user: 'me' };
  const chosen = line.trim().toLowerCase();
  const choice = choices.find((_, index) => letter(index) === chosen);
  return choice ? { ...sender, press: choice.id } : { ...sender, text: line };
}

export async function runChat(
  respond: Respond,
  input: Readable,
  output: Writable,
  texts: TerminalTexts,
): Promise<void> {
  const terminal = 'isTTY' in input && input.isTTY === true;
  const lines = createInterface({ input, output, terminal, prompt: terminal ? '> ' : '' });
  output.write(`${texts.greeting}\n\n`);
  lines.prompt();
  let choices: readonly Choice[] = [];
  let count = 0;
  for await (const line of lines) {
    count += 1;
    const reply = await respond(toMessage(line, String(count), choices));
    if (!isSilence(reply)) {
      choices = reply.choices;
      const numbered = choices.map(({ label }, index) => `  ${letter(index)}  ${label}`);
      output.write(
        `\n${[reply.text, numbered.length > 0 ? [texts.choose, ...numbered].join('\n') : ''].filter(Boolean).join('\n\n')}\n\n`,
      );
    }
    lines.prompt();
  }
}
