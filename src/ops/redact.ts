/**
 * Keeps secrets and members' words out of logs, whatever is logged. Secrets go by their shape, in every string of the
 * finished line, because clients hide them deep in their errors. Of errors only what tells the fault is kept: the
 * rest of them carries whole requests, with what members wrote.
 */
import type { LoggerOptions } from 'pino';

const shapes: readonly (readonly [RegExp, string])[] = [
  // A Telegram token, also within an address of a call or a file.
  [/\d{5,}:[\w-]{20,}/g, '[secret]'],
  // A Discord token: three parts, the first the bot's id in base 64.
  [/[\w-]{23,30}\.[\w-]{6,7}\.[\w-]{27,}/g, '[secret]'],
  // What lets anybody answer an interaction for a quarter of an hour.
  [/((?:interactions|webhooks)\/\d+\/)[\w-]+/g, '$1[secret]'],
];

export function redact(line: string): string {
  let clean = line;
  for (const [shape, instead] of shapes) clean = clean.replace(shape, instead);
  return clean;
}

export interface ShownError {
  readonly type: string;
  readonly message: string;
  readonly stack?: string;
  readonly code?: string | number;
  readonly method?: string;
  readonly cause?: ShownError;
}

const deepest = 4;

export function showError(error: unknown, depth = 0): ShownError {
  if (!(error instanceof Error)) return { type: typeof error, message: 'not an error' };
  const part = (key: string): unknown => Reflect.get(error, key);
  const code = part('error_code') ?? part('code');
  const method = part('method');
  // grammY keeps the error beneath in `error`.
  const beneath = part('cause') ?? part('error');
  return {
    type: error.name,
    message: error.message,
    ...(error.stack === undefined ? {} : { stack: error.stack }),
    ...(typeof code === 'string' || typeof code === 'number' ? { code } : {}),
    ...(typeof method === 'string' ? { method } : {}),
    ...(beneath instanceof Error && depth < deepest ? { cause: showError(beneath, depth + 1) } : {}),
  };
}

/** For every logger of the program. */
export const safely: Pick<LoggerOptions, 'serializers' | 'hooks'> = {
  serializers: { err: (error: unknown) => showError(error) },
  hooks: { streamWrite: redact },
};
