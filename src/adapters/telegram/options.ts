import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Logger } from 'pino';
import type { Pace } from './pace.ts';

export interface TelegramOptions {
  readonly token: string;
  /** Where the Bot API is; absent: the platform's own. */
  readonly apiRoot?: string;
  /** Absent: long polling, which needs nothing but a way out. */
  readonly webhook?: WebhookOptions;
  readonly log: Logger;
  /** Absent: the published limits. Null: as fast as it goes, for benchmarks. */
  readonly pace?: Pace | null;
  /** How long one long poll lasts. */
  readonly pollSeconds?: number;
  /** After so long a call that has no answer is given up. */
  readonly callSeconds?: number;
  /** The first wait after a failure; doubled each time. */
  readonly retryMilliseconds?: number;
  /** How long a member's file may take to arrive. */
  readonly fileMilliseconds?: number;
}

export interface WebhookOptions {
  /** As the platform reaches it, `https://…`; an unguessable path is added. */
  readonly url: string;
  /** What the platform must say with each call. */
  readonly secret: string;
  /** A server that others use as well hands its calls over; absent: a server of its own. */
  readonly hear?: (handler: (request: IncomingMessage, response: ServerResponse) => Promise<void>) => void;
  readonly port?: number;
  readonly host?: string;
}

/** What stops the adapter, said to whoever looks after it. */
export class TelegramError extends Error {
  override readonly name = 'TelegramError';
}
