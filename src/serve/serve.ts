/** `chough serve`: every platform whose token is set, in one process, until somebody asks it to stop. */
import { setTimeout as sleep } from 'node:timers/promises';
import { isShard } from '../adapters/discord/is-shard.ts';
import { appOver, loadParts } from '../app.ts';
import type { Settings } from '../config.ts';
import { log } from '../ops/log.ts';
import { posts } from '../platforms.ts';
import { keepNothing } from '../store/nothing.ts';
import { openStore } from '../store/open.ts';
import { noTokenGuide } from './guide.ts';
import { openHttp } from './http.ts';
import { makeMetrics } from './metrics.ts';
import { type Side, startDiscordSide, startShards, startTelegramSide } from './sides.ts';

/** Claims older than this are forgotten: platforms keep an update for a day. */
const claimsKeptMs = 48 * 3600 * 1000;
const tidyEveryMs = 3600 * 1000;
/** A supervisor kills after ten seconds. */
const stopWithinMs = 9000;

export interface ServeOptions {
  /** Only looks at the settings, the rules, the store and the tokens. */
  readonly check: boolean;
}

export async function serve(settings: Settings, rulesFolder: string, options: ServeOptions): Promise<number> {
  const { telegram, discord } = settings;
  if (telegram === undefined && discord === undefined) {
    process.stdout.write(noTokenGuide);
    return 2;
  }
  const store = await openStore(settings);
  const { locale } = settings;
  const parts = await loadParts(rulesFolder, locale);
  const app = appOver(parts, store, { oneShot: false, locale });
  const once = appOver(parts, keepNothing, { oneShot: true, locale });
  const metrics = makeMetrics();
  const postOf = await posts({ rulesFolder, app, once, store, limits: settings.limits, metrics });

  const sides: Side[] = [];
  const http =
    settings.httpPort === undefined || isShard(process.env)
      ? undefined
      : await openHttp(settings.httpPort, '0.0.0.0', {
          live: () => sides.every((side) => side.live()),
          ready: async () => {
            await store.seen('ready');
            return sides.length > 0 && sides.every((side) => side.live());
          },
          metrics: () => metrics.show(),
        });
  const close = async (): Promise<void> => {
    await Promise.all(sides.map((side) => side.stop()));
    await http?.close();
    await store.close();
  };
  try {
    if (telegram !== undefined && !isShard(process.env))
      sides.push(await startTelegramSide(postOf('telegram'), telegram, http, log));
    if (discord !== undefined)
      sides.push(
        discord.shards === undefined || isShard(process.env)
          ? await startDiscordSide(postOf('discord'), discord, log)
          : await startShards(discord, log),
      );
  } catch (error) {
    await close();
    throw error;
  }
  for (const side of sides) process.stdout.write(side.said);
  if (http !== undefined)
    process.stdout.write(`Health and metrics: port ${http.port}, /live /ready /metrics\n`);
  if (options.check) {
    await close();
    process.stdout.write('The settings can be used.\n');
    return 0;
  }
  const tidy = setInterval(() => {
    const before = new Date(Date.now() - claimsKeptMs).toISOString();
    store.forgetClaims(before).catch((error: unknown) => log.error({ err: error }, 'old claims stay'));
  }, tidyEveryMs);
  const failure = await untilStopped(sides);
  clearInterval(tidy);
  const closed = close().then(() => true);
  const inTime = await Promise.race([closed, sleep(stopWithinMs, false, { ref: false })]);
  if (!inTime) log.error('not all could be finished in time');
  if (failure !== undefined) throw failure;
  return inTime ? 0 : 1;
}

/** Until SIGTERM or SIGINT, or until a platform ends by itself: then with what ended it. A second signal does not wait. */
function untilStopped(sides: readonly Side[]): Promise<Error | undefined> {
  return new Promise((resolve) => {
    let asked = false;
    for (const signal of ['SIGTERM', 'SIGINT'] as const)
      process.on(signal, () => {
        if (asked) process.exit(1);
        asked = true;
        resolve(undefined);
      });
    for (const { ended } of sides)
      ended.then(
        () => resolve(new Error('A platform ended the connection for good.')),
        (error: unknown) => resolve(error instanceof Error ? error : new Error(String(error))),
      );
  });
}
