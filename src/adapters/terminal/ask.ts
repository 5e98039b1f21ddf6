import type { Writable } from 'node:stream';
import { isSilence, type Respond } from '../respond.ts';

/** One question, one answer. */
export async function runAsk(
  respond: Respond,
  question: string,
  json: boolean,
  output: Writable,
): Promise<void> {
  const reply = await respond({ id: '1', chat: 'ask', user: 'me', text: question });
  if (isSilence(reply)) return;
  output.write(`${json ? JSON.stringify(reply) : reply.text}\n`);
}
