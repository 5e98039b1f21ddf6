/** The platforms as `serve` sees them: started with a token, living, stopped. Each client is loaded only when it is wanted. */
import type { Logger } from 'pino';
import type { Post } from '../adapters/post.ts';
import type { DiscordSettings, TelegramSettings } from '../config.ts';
import { discordReady, telegramReady } from './guide.ts';
import type { HttpServer } from './http.ts';

export interface Side {
  /** What whoever starts the program reads. */
  readonly said: string;
  /** Settles only when the platform ends by itself. */
  readonly ended: Promise<unknown>;
  live(): boolean;
  stop(): Promise<void>;
}

const never = new Promise<never>(() => {});

/** The gateway sends a heartbeat about every 41 s; three missed are no life. */
const heartbeatMs = 150_000;

export async function startTelegramSide(
  post: Post,
  { token, apiRoot, webhook }: TelegramSettings,
  http: HttpServer | undefined,
  log: Logger,
): Promise<Side> {
  const { startTelegram } = await import('../adapters/telegram/start.ts');
  const telegram = await startTelegram(post, {
    token,
    log,
    ...(apiRoot === undefined ? {} : { apiRoot }),
    ...(webhook === undefined || http === undefined
      ? {}
      : { webhook: { ...webhook, hear: (handler) => http.hear(handler) } }),
  });
  let live = true;
  telegram.ended.then(
    () => {
      live = false;
    },
    () => {
      live = false;
    },
  );
  return {
    said: telegramReady(telegram.username),
    ended: telegram.ended,
    live: () => live,
    stop: () => telegram.stop(),
  };
}

export async function startDiscordSide(post: Post, settings: DiscordSettings, log: Logger): Promise<Side> {
  const { token, apiRoot, guild } = settings;
  const { startDiscord } = await import('../adapters/discord/start.ts');
  const started = Date.now();
  const discord = await startDiscord(post, { token, log, guild, apiRoot });
  return {
    said: discordReady(discord.client.user.username, discord.invite),
    ended: discord.ended,
    live: () => Date.now() - Math.max(started, discord.lastHeartbeat()) < heartbeatMs,
    stop: () => discord.stop(),
  };
}

/** Many servers: the library's own manager runs this same program once a shard. */
export async function startShards(settings: DiscordSettings, log: Logger): Promise<Side> {
  const { manageShards } = await import('../adapters/discord/shards.ts');
  const { token, apiRoot, shards = 'auto' } = settings;
  const [, file = ''] = process.argv;
  const manager = await manageShards({ token, shards, apiRoot, file, args: ['serve'], log });
  return {
    said: `Discord: ${manager.count} shards are running.\n`,
    ended: never,
    live: () => true,
    stop: () => manager.stop(),
  };
}
