/**
 * Plays a group conversation of an invented club through the real program (its pipe) and prints it as a chat:
 * `npm run demo`, or `npm run demo -- pulls`. In a script `tap` presses the button whose id begins so, `send` sends a file.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { Message } from '../src/contracts/message.ts';
import type { Reply, Silence } from '../src/contracts/reply.ts';

interface Step extends Partial<Message> {
  readonly user: string;
  readonly tap?: string;
  readonly send?: string;
}

const root = fileURLToPath(new URL('..', import.meta.url));
const name = process.argv[2] ?? 'conversation';
const script = join(root, 'demo', `${name}.jsonl`);
if (!/^[a-z]+$/.test(name) || !existsSync(script)) {
  console.error(`There is no demo/${name}.jsonl to play.`);
  process.exit(2);
}
const steps = readFileSync(script, 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Step);
const store = mkdtempSync(join(tmpdir(), 'chough-demo-'));
/** What Chough sends is left here, to be looked at. */
const sent = mkdtempSync(join(tmpdir(), 'chough-demo-files-'));

const program = spawn('node', [join(root, 'dist', 'chough.js'), 'pipe'], {
  env: { ...process.env, CHOUGH_DB: join(store, 'demo.sqlite') },
  stdio: ['pipe', 'pipe', 'inherit'],
});
const replies = createInterface({ input: program.stdout })[Symbol.asyncIterator]();

const indent = (text: string): string => text.replaceAll('\n', '\n    ');
let buttons: Reply['choices'] = [];

function messageOf({ tap, send, ...step }: Step, place: number): Message {
  const pressed = tap === undefined ? undefined : buttons.find(({ id }) => id.startsWith(tap))?.id;
  if (tap !== undefined && pressed === undefined) throw new Error(`there is no button ${tap} to tap`);
  return {
    id: `demo-${place}`,
    chat: 'seagull-bay',
    ...step,
    ...(pressed === undefined ? {} : { press: pressed }),
    ...(send === undefined
      ? {}
      : {
          file: { name: basename(send), base64: readFileSync(join(root, 'demo', send)).toString('base64') },
        }),
  };
}

function said({ text, press, file }: Message): string {
  if (file !== undefined) return `[sends ${file.name}]`;
  return text ?? `[taps: ${buttons.find(({ id }) => id === press)?.label ?? press}]`;
}

console.log('The Seagull Bay Climbing Club asks. Club, crags and people are invented.\n');
for (const [place, step] of steps.entries()) {
  const message = messageOf(step, place);
  console.log(`${message.user}: ${said(message)}\n`);
  program.stdin.write(`${JSON.stringify(message)}\n`);
  const { value, done } = await replies.next();
  if (done) throw new Error('the program ended before it had answered everything');
  const reply = JSON.parse(value) as Reply | Silence | { error: string };
  if ('error' in reply) throw new Error(reply.error);
  if ('silent' in reply) continue;
  buttons = reply.choices;
  console.log(`Chough:\n    ${indent(reply.text)}`);
  for (const file of reply.files) {
    const path = join(sent, `${place + 1}-${basename(file.name)}`);
    writeFileSync(path, Buffer.from(file.base64, 'base64'));
    console.log(`\n    [${path}: ${file.alt}]`);
  }
  if (buttons.length > 0) console.log(`\n    ${buttons.map(({ label }) => `[${label}]`).join(' ')}`);
  console.log('');
}
program.stdin.end();
program.on('close', (code) => {
  rmSync(store, { recursive: true });
  process.exitCode = code ?? 1;
});
