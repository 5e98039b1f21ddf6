import { inspect } from 'node:util';
import { Bot, GrammyError, HttpError } from 'grammy';
import { pino } from 'pino';
import { expect, test } from 'vitest';
import { redact, safely } from '../../src/ops/redact.ts';

const token = '7000000001:AAtest-token_which-must-never-be-seen-in-a-log';
// The shape is from memory: id in base 64, time, signature.
const discordToken = `${'M'.repeat(26)}.GaBcDe.${'x'.repeat(38)}`;

function logged(write: (log: ReturnType<typeof pino>) => void): string {
  const lines: string[] = [];
  write(pino({ base: null, ...safely }, { write: (line: string) => lines.push(line) }));
  return lines.join('');
}

test('a secret goes wherever in a line it stands, and the rest stays', () => {
  const line = logged((log) =>
    log.warn(
      { deep: [{ url: `http://x/file/bot${token}/a.csv` }], key: discordToken },
      `call to bot${token}`,
    ),
  );
  expect(line).not.toContain(token.slice(-20));
  expect(line).not.toContain(discordToken.slice(-20));
  expect(line).toContain('/a.csv');
  expect(redact('https://x/api/v10/interactions/12345/aW50ZXJhY3Rpb24-abc/callback')).toBe(
    'https://x/api/v10/interactions/12345/[secret]/callback',
  );
  expect(redact('{"time":1760000000000,"message":"telegram:7000000001:5001"}')).toBe(
    '{"time":1760000000000,"message":"telegram:7000000001:5001"}',
  );
});

test('the error of a call that failed on the wire holds the token, and the log does not', async () => {
  const bot = new Bot(token, { client: { apiRoot: 'http://127.0.0.1:1' } });
  const error: unknown = await bot.api.sendMessage(1, 'is my bolt rusty?').catch((one: unknown) => one);
  expect(error).toBeInstanceOf(HttpError);
  expect(inspect(error)).toContain(token);
  const line = logged((log) => log.error({ err: error }, 'failed'));
  expect(line).not.toContain(token);
  expect(line).toContain('ECONNREFUSED');
});

test('what a member wrote stands in the error of a refused call, and not in the log', () => {
  const error = new GrammyError(
    'Call failed',
    { ok: false, error_code: 400, description: 'Bad Request: something' },
    'sendMessage',
    { chat_id: 1, text: 'is my bolt rusty?' },
  );
  expect(inspect(error)).toContain('rusty');
  const line = logged((log) => log.error({ err: error }, 'failed'));
  expect(line).not.toContain('rusty');
  expect(JSON.parse(line).err).toMatchObject({ type: 'GrammyError', code: 400, method: 'sendMessage' });
});
