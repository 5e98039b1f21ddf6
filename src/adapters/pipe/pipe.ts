import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { messageSchema } from '../../contracts/message.ts';
import type { Respond } from '../respond.ts';

function readMessage(line: string): { error: string } | { message: ReturnType<typeof messageSchema.parse> } {
  let parsed: unknown;
  try {
    parsed = JSON.parse(line);
  } catch {
    return { error: 'not a JSON object' };
  }
  const checked = messageSchema.safeParse(parsed);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    return { error: `${issue?.path.join('.') || 'message'}: ${issue?.message}` };
  }
  const { text, press, place, file } = checked.data;
  if (text === undefined && press === undefined && place === undefined && file === undefined)
    return { error: 'one of text, press, place or file is needed' };
  return { message: checked.data };
}

/**
 * JSON Lines in, JSON Lines out. Messages are answered one after the other, so replies keep their order; a line
 * that cannot be read is reported with its number and the stream goes on.
 */
export async function runPipe(respond: Respond, input: Readable, output: Writable): Promise<void> {
  const lines = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY });
  const write = async (value: object): Promise<void> => {
    if (!output.write(`${JSON.stringify(value)}\n`))
      await new Promise((resolve) => output.once('drain', resolve));
  };
  let number = 0;
  for await (const line of lines) {
    number += 1;
    if (line.trim() === '') continue;
    const read = readMessage(line);
    await write(
      'error' in read
        ? { error: `line ${number}: ${read.error}`, line: number }
        : await respond(read.message),
    );
  }
}
