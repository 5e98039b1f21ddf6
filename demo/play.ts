/** Plays a group conversation of an invented club through the real program (its pipe) and prints it as a chat. */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { Message } from '../src/contracts/message.ts';
import type { Reply, Silence } from '../src/contracts/reply.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const lines = readFileSync(join(root, 'demo', 'conversation.jsonl'), 'utf8')
  .trim()
  .split('\n');
const store = mkdtempSync(join(tmpdir(), 'chough-demo-'));

const program = spawn('node', [join(root, 'dist', 'chough.js'), 'pipe'], {
  env: { ...process.env, CHOUGH_DB: join(store, 'demo.sqlite') },
  stdio: ['pipe', 'pipe', 'inherit'],
});
const replies = createInterface({ input: program.stdout })[Symbol.asyncIterator]();

const indent = (text: string): string => text.replaceAll('\n', '\n    ');

console.log('The Seagull Bay Climbing Club asks. Club, crags and people are invented.\n');
let labels = new Map<string, string>();
for (const line of lines) {
  const message = JSON.parse(line) as Message;
  const said = message.text ?? `[taps: ${labels.get(message.press ?? '') ?? message.press}]`;
  console.log(`${message.user}: ${said}\n`);
  program.stdin.write(`${line}\n`);
  const { value, done } = await replies.next();
  if (done) throw new Error('the program ended before it had answered everything');
  const reply = JSON.parse(value) as Reply | Silence | { error: string };
  if ('error' in reply) throw new Error(reply.error);
  if ('silent' in reply) continue;
  labels = new Map(reply.choices.map(({ id, label }) => [id, label]));
  console.log(`Chough:\n    ${indent(reply.text)}`);
  if (reply.choices.length > 0)
    console.log(`\n    ${reply.choices.map(({ label }) => `[${label}]`).join(' ')}`);
  console.log('');
}
program.stdin.end();
program.on('close', (code) => {
  rmSync(store, { recursive: true });
  process.exitCode = code ?? 1;
});
