/** Where updates come from. Either way an update counts as taken only when everything it led to is stored. */
import { createConcurrentSink, createRunner, createSource } from '@grammyjs/runner';
import type { Update } from 'grammy/types';
import type { Desk } from './desk.ts';
import type { WebhookOptions } from './options.ts';
import { kinds, Poll } from './poll.ts';
import { httpServer, listen, listener, pathOf } from './webhook.ts';

export interface Source {
  stop(milliseconds: number): Promise<void>;
  readonly ended: Promise<void>;
}

type Handle = (update: Update) => Promise<void>;

/** More than this many answers waiting: fetch no further. */
const mostWaiting = 2000;

const within = (task: Promise<unknown>, milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    const timer = setTimeout(resolve, milliseconds);
    void task
      .catch(() => undefined)
      .then(() => {
        clearTimeout(timer);
        resolve();
      });
  });

export async function runPolling(
  { bot, outgoing, log }: Desk,
  handle: Handle,
  options: { readonly pollSeconds: number; readonly retryMilliseconds: number },
): Promise<Source> {
  await bot.api.deleteWebhook();
  const poll = new Poll({
    api: bot.api,
    log,
    seconds: options.pollSeconds,
    retryMilliseconds: options.retryMilliseconds,
    room: () => outgoing.room(mostWaiting),
  });
  const source = createSource<Update>({ supply: (_, signal) => poll.supply(signal as AbortSignal) });
  const sink = createConcurrentSink<Update>(
    { consume: (update) => handle(update).finally(() => poll.done(update.update_id)) },
    async (error) => log.error({ err: error }, 'an update could not be dealt with'),
  );
  const runner = createRunner(source, sink);
  runner.start();
  return {
    ended: runner.task() ?? Promise.resolve(),
    async stop(milliseconds) {
      const ending = (runner.stop() ?? Promise.resolve()).then(() => poll.settled());
      await within(ending, milliseconds);
      const patience = AbortSignal.timeout(Math.min(2000, Math.max(1, milliseconds)));
      await poll.confirm(patience).catch(() => undefined);
    },
  };
}

export async function runWebhook({ bot }: Desk, handle: Handle, options: WebhookOptions): Promise<Source> {
  const url = new URL(options.url);
  const path = pathOf(options.secret, bot.token);
  const inWork = new Set<Promise<void>>();
  const heard = listener(path, options.secret, async (update) => {
    const task = handle(update);
    inWork.add(task);
    await task.finally(() => inWork.delete(task));
  });
  const { hear } = options;
  const server = hear === undefined ? httpServer(heard) : undefined;
  if (server === undefined) hear?.(heard);
  else await listen(server, options);
  url.pathname = `${url.pathname.replace(/\/$/, '')}${path}`;
  await bot.api.setWebhook(url.href, { secret_token: options.secret, allowed_updates: [...kinds] });
  return {
    ended: new Promise((resolve) => server?.once('close', resolve)),
    async stop(milliseconds) {
      server?.close();
      server?.closeIdleConnections();
      await within(Promise.allSettled(inWork), milliseconds);
      server?.closeAllConnections();
    },
  };
}
