/** Runs the built program as a user would: arguments, standard input, exit code. */
import { spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Message } from '../../src/contracts/message.ts';
import type { Reply } from '../../src/contracts/reply.ts';

export const root = fileURLToPath(new URL('../..', import.meta.url));
const program = join(root, 'dist', 'chough.js');

export interface Ran {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export const freshStore = (): string => join(mkdtempSync(join(tmpdir(), 'chough-test-')), 'store.sqlite');

export function run(
  args: readonly string[],
  input = '',
  db = freshStore(),
  file = program,
  env: Readonly<Record<string, string>> = {},
): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn('node', [file, ...args], {
      env: { ...process.env, CHOUGH_DB: db, ...env },
      stdio: 'pipe',
    });
    let stdout = '';
    let stderr = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      stdout += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      stderr += text;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, stdout, stderr }));
    child.stdin.on('error', () => undefined);
    child.stdin.end(input);
  });
}

export type Line = Reply & { readonly error?: string; readonly line?: number; readonly silent?: true };

/** Sends messages through `chough pipe`; each without an id, chat or user gets one. */
export async function pipe(
  messages: readonly Partial<Message>[],
  db = freshStore(),
): Promise<readonly Line[]> {
  const lines = messages.map((message, index) =>
    JSON.stringify({ id: String(index + 1), chat: 'chat', user: 'user', ...message }),
  );
  const { stdout, code, stderr } = await run(['pipe'], `${lines.join('\n')}\n`, db);
  if (code !== 0) throw new Error(`the pipe ended with ${code}: ${stderr}`);
  return stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Line);
}

/** Sends messages one by one, each after the reply to the one before, and then kills the program outright. */
export function pipeAndKill(messages: readonly Partial<Message>[], db: string): Promise<readonly Line[]> {
  return new Promise((resolve, reject) => {
    const child = spawn('node', [program, 'pipe'], {
      env: { ...process.env, CHOUGH_DB: db },
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const replies: Line[] = [];
    const send = (): void => {
      const message = messages[replies.length];
      if (message === undefined) child.kill('SIGKILL');
      else
        child.stdin.write(
          `${JSON.stringify({ id: String(replies.length + 1), chat: 'chat', user: 'user', ...message })}\n`,
        );
    };
    let rest = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      const lines = (rest + text).split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) {
        replies.push(JSON.parse(line) as Line);
        send();
      }
    });
    child.on('error', reject);
    child.on('close', () => resolve(replies));
    send();
  });
}
