/** Telegram: updates come by long polling or by a webhook, are taken one after the other for each member, and answered. */
import { setMaxListeners } from 'node:events';
import { autoRetry } from '@grammyjs/auto-retry';
import { Bot, type Context, GrammyError } from 'grammy';
import type { Update } from 'grammy/types';
import type { Post } from '../post.ts';
import { Admins } from './admin.ts';
import type { Desk } from './desk.ts';
import { Edits } from './edits.ts';
import { fetcher } from './file.ts';
import { presentSelf } from './menus.ts';
import { TelegramError, type TelegramOptions } from './options.ts';
import { Outgoing } from './outgoing.ts';
import { publishedPace } from './pace.ts';
import { runPolling, runWebhook, type Source } from './source.ts';
import { timeLimit } from './time-limit.ts';
import { checkSecret } from './webhook.ts';
import { wire } from './wire.ts';

/** Longer waits are not slept through inside a call: the lane of the chat waits instead. */
const longestRetry = 30;
/** Of ten seconds, what is left for closing the store. */
const mostClosing = 8000;

export interface Telegram {
  readonly username: string;
  /** Fetches no more, finishes what was begun, sends what is due: within ten seconds. */
  stop(): Promise<void>;
  /** Rejects with what stopped it, if it was not `stop`. */
  readonly ended: Promise<void>;
}

/** Without a way out it asks until there is one. */
async function introduce(bot: Bot): Promise<void> {
  try {
    await bot.init();
  } catch (error) {
    if (error instanceof GrammyError && [401, 404].includes(error.error_code))
      throw new TelegramError(
        'Telegram does not take this token (TELEGRAM_TOKEN). It comes from @BotFather.',
      );
    throw error;
  }
}

export async function startTelegram(post: Post, options: TelegramOptions): Promise<Telegram> {
  const { token, log, apiRoot = 'https://api.telegram.org', callSeconds = 30 } = options;
  const {
    pollSeconds = 30,
    retryMilliseconds = 1000,
    fileMilliseconds = 20_000,
    pace = publishedPace,
  } = options;
  if (options.webhook !== undefined) checkSecret(options.webhook);
  const bot = new Bot<Context>(token, { client: { apiRoot } });
  bot.api.config.use(
    timeLimit(callSeconds * 1000),
    autoRetry({
      maxDelaySeconds: longestRetry,
      maxRetryAttempts: 3,
      // Telegram has no key against doubles: what may have arrived is not sent again blindly.
      rethrowHttpErrors: true,
      rethrowInternalServerErrors: true,
    }),
  );
  log.info('telegram: asking the platform who I am');
  await introduce(bot);
  const me = bot.botInfo;
  log.info({ bot: me.username, hearsAll: me.can_read_all_group_messages }, 'telegram: started');

  const stopping = new AbortController();
  setMaxListeners(0, stopping.signal);
  const outgoing = new Outgoing(bot.api, post, log, { pace, retryMilliseconds });
  const commands = await post.commands(post.languages[0] ?? 'en');
  const desk: Desk = {
    bot,
    post,
    outgoing,
    admins: new Admins(bot.api, log),
    edits: new Edits(),
    hearing: { me, commands: new Set([...commands.map(({ name }) => name), 'start']) },
    fetchFile: fetcher(bot.api, token, apiRoot, fileMilliseconds, stopping.signal),
    log,
  };
  wire(desk);
  for (const parcel of await post.undelivered()) await outgoing.parcel(parcel, 1);
  const handle = (update: Update): Promise<void> => bot.handleUpdate(update);
  const source: Source =
    options.webhook === undefined
      ? await runPolling(desk, handle, { pollSeconds, retryMilliseconds })
      : await runWebhook(desk, handle, options.webhook);

  // Dozens of small calls: members need not wait for them.
  const presented = presentSelf(bot.api, post, log, stopping.signal);

  let stopped: Promise<void> | undefined;
  const stop = async (): Promise<void> => {
    const began = performance.now();
    const left = (): number => Math.max(0, mostClosing - (performance.now() - began));
    setTimeout(() => stopping.abort(), mostClosing / 2).unref();
    await source.stop(left());
    await outgoing.close(left());
    stopping.abort();
    await presented;
    log.info('telegram: stopped');
  };
  return {
    username: me.username,
    ended: source.ended,
    stop: () => {
      stopped ??= stop();
      return stopped;
    },
  };
}
