/**
 * Long polling that loses nothing when the program is killed. The platform forgets an update when a later poll asks
 * beyond it; here a poll asks beyond an update only when everything it led to is stored. While one is still in work,
 * polls begin at it, and those that are known are passed over.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import { type Api, GrammyError } from 'grammy';
import type { Update } from 'grammy/types';
import type { Logger } from 'pino';
import { TelegramError } from './options.ts';
import { callSignal, limited } from './time-limit.ts';

export const kinds = [
  'message',
  'edited_message',
  'callback_query',
  'inline_query',
  'my_chat_member',
] as const;

const batch = 100;
const longestWait = 15_000;
const mostPause = 1000;

export interface PollOptions {
  readonly api: Api;
  readonly log: Logger;
  readonly seconds: number;
  readonly retryMilliseconds: number;
  /** Resolves when there is room for more. */
  readonly room: () => Promise<void>;
}

export class Poll {
  readonly #options: PollOptions;
  readonly #open = new Set<number>();
  #beyond = 0;
  #onDone: (() => void)[] = [];

  constructor(options: PollOptions) {
    this.#options = options;
  }

  /** What an update led to is stored. */
  done(update: number): void {
    this.#open.delete(update);
    if (this.#open.size === 0) for (const go of this.#onDone.splice(0)) go();
  }

  /** All that were fetched are stored. */
  settled(): Promise<void> {
    return this.#open.size === 0 ? Promise.resolve() : new Promise((go) => this.#onDone.push(go));
  }

  /** The next updates, as @grammyjs/runner asks for them. */
  async supply(signal: AbortSignal): Promise<Update[]> {
    for (let looks = 1; ; looks += 1) {
      await this.#options.room();
      if (this.#open.size > 0) await Promise.race([this.settled(), sleep(Math.min(mostPause, 100 * looks))]);
      if (signal.aborted) throw new Error('stopped');
      const fresh = this.#open.size > 0 ? await this.#lookPast(signal) : await this.#wait(signal);
      if (fresh === null) continue;
      for (const { update_id } of fresh) this.#open.add(update_id);
      return fresh;
    }
  }

  /** All is stored: waits for what comes. After a quiet week the platform may begin to count anew, even lower. */
  async #wait(signal: AbortSignal): Promise<Update[]> {
    const updates = await this.#fetch(this.#beyond, this.#options.seconds, signal);
    if (updates.length > 0) this.#beyond = Math.max(...updates.map(({ update_id }) => update_id + 1));
    return updates;
  }

  /** Something is in work: what came after it; null when there is nothing yet. */
  async #lookPast(signal: AbortSignal): Promise<Update[] | null> {
    const updates = await this.#fetch(Math.min(...this.#open), 0, signal);
    const fresh = updates.filter(({ update_id }) => update_id >= this.#beyond && !this.#open.has(update_id));
    if (fresh.length === 0) return null;
    this.#beyond = Math.max(...fresh.map(({ update_id }) => update_id + 1));
    return fresh;
  }

  /** Tells the platform what was stored last, so that it is not sent again. */
  async confirm(signal: AbortSignal): Promise<void> {
    if (this.#beyond === 0 || this.#open.size > 0) return;
    await this.#options.api.getUpdates({ offset: this.#beyond, limit: 1, timeout: 0 }, callSignal(signal));
  }

  async #fetch(offset: number, seconds: number, signal: AbortSignal): Promise<Update[]> {
    const { api, log, retryMilliseconds } = this.#options;
    for (let wait = retryMilliseconds; ; wait = Math.min(longestWait, wait * 2)) {
      try {
        // A socket that died without a word must not stop us for long.
        return await limited(signal, (seconds + 10) * 1000, (ending) =>
          api.getUpdates(
            { offset, limit: batch, timeout: seconds, allowed_updates: [...kinds] },
            callSignal(ending),
          ),
        );
      } catch (error) {
        if (signal.aborted) throw error;
        throwIfHopeless(error);
        log.warn({ err: error, again: wait }, 'updates could not be fetched');
        const told = error instanceof GrammyError ? (error.parameters.retry_after ?? 0) * 1000 : 0;
        await limited(signal, Math.max(told, wait), (ending) => once(ending));
      }
    }
  }
}

const once = (ending: AbortSignal): Promise<void> =>
  new Promise((resolve) => {
    if (ending.aborted) resolve();
    ending.addEventListener('abort', () => resolve());
  });

function throwIfHopeless(error: unknown): void {
  if (!(error instanceof GrammyError)) return;
  if (error.error_code === 409)
    throw new TelegramError(
      'Another process fetches the updates of this bot with the same token. Only one may: stop the other, then start this one again.',
    );
  if (error.error_code === 401 || error.error_code === 404)
    throw new TelegramError(
      'Telegram does not take this token. Was it revoked? A new one comes from @BotFather.',
    );
}
