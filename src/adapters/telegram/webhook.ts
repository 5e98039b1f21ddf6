/** Updates that the platform brings: only with the secret, and answered 200 when what they led to is stored. */
import { createHash, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { Update } from 'grammy/types';
import { TelegramError, type WebhookOptions } from './options.ts';

const mostBytes = 2 ** 20;
const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Not to be guessed without the secret and the token. */
export const pathOf = (secret: string, token: string): string =>
  `/telegram/${createHash('sha256').update(`${token}\n${secret}`).digest('hex').slice(0, 40)}`;

export function checkSecret({ secret, url }: WebhookOptions): void {
  if (!/^[A-Za-z0-9_-]{16,256}$/.test(secret))
    throw new TelegramError(
      'A webhook needs a secret of 16 to 256 letters, digits, "_" or "-" (TELEGRAM_WEBHOOK_SECRET): without one anybody could speak as any member.',
    );
  if (!URL.canParse(url)) throw new TelegramError('TELEGRAM_WEBHOOK_URL is not an address.');
}

async function body(request: IncomingMessage): Promise<string | null> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request) {
    size += (chunk as Buffer).length;
    if (size > mostBytes) return null;
    chunks.push(chunk as Buffer);
  }
  return Buffer.concat(chunks).toString('utf8');
}

function updateOf(text: string): Update | null {
  try {
    const read: unknown = JSON.parse(text);
    return typeof read === 'object' &&
      read !== null &&
      'update_id' in read &&
      Number.isSafeInteger(read.update_id)
      ? (read as Update)
      : null;
  } catch {
    return null;
  }
}

/** `take` resolves when what the update led to is stored. */
export function listener(path: string, secret: string, take: (update: Update) => Promise<void>) {
  const expected = digest(secret);
  const told = (request: IncomingMessage): string => {
    const header = request.headers['x-telegram-bot-api-secret-token'];
    return typeof header === 'string' ? header : '';
  };
  return async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const end = (status: number): void => {
      response.writeHead(status, status === 200 ? {} : { connection: 'close' }).end();
    };
    if (request.method !== 'POST' || request.url !== path) return end(404);
    if (!timingSafeEqual(digest(told(request)), expected)) return end(401);
    const text = await body(request);
    const update = text === null ? null : updateOf(text);
    if (update === null) return end(text === null ? 413 : 400);
    await take(update);
    end(200);
  };
}

export async function listen(
  server: Server,
  { port = 0, host = '127.0.0.1' }: WebhookOptions,
): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, resolve);
  });
}

export const httpServer = (handle: ReturnType<typeof listener>): Server =>
  createServer({ requestTimeout: 10_000, headersTimeout: 5000 }, (request, response) => {
    handle(request, response).catch(() => {
      if (!response.headersSent) response.writeHead(500).end();
    });
  });
