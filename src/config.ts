import { homedir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';

/** An empty variable is one that is not set. */
const text = z.preprocess((value) => (value === '' ? undefined : value), z.string().min(1).optional());
const count = (least: number) =>
  z.preprocess((value) => (value === '' ? undefined : value), z.coerce.number().int().min(least).optional());

const settingsSchema = z.object({
  CHOUGH_DB: text,
  DATABASE_URL: text,
  TELEGRAM_TOKEN: text,
  TELEGRAM_API_ROOT: text,
  TELEGRAM_WEBHOOK_URL: text,
  TELEGRAM_WEBHOOK_SECRET: text,
  DISCORD_TOKEN: text,
  DISCORD_API_ROOT: text,
  DISCORD_SHARDS: z.preprocess(
    (value) => (value === '' ? undefined : value),
    z.union([z.literal('auto'), z.coerce.number().int().min(1)]).optional(),
  ),
  DISCORD_GUILD: text,
  CHOUGH_HTTP_PORT: count(0),
  CHOUGH_MEMBER_LIMIT: count(1),
  CHOUGH_CHAT_LIMIT: count(1),
  CHOUGH_LOCALE: z.string().min(2).max(35).default('en'),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('warn'),
  XDG_DATA_HOME: z.string().optional(),
});

export interface Settings {
  /** The SQLite file. */
  readonly db: string;
  readonly locale: string;
  readonly logLevel: string;
  /** PostgreSQL instead of the file. */
  readonly databaseUrl: string | undefined;
  readonly telegram: TelegramSettings | undefined;
  readonly discord: DiscordSettings | undefined;
  readonly httpPort: number | undefined;
  /** Messages of one member in ten seconds, and of one chat in a minute. */
  readonly limits: { readonly memberIn10s: number; readonly chatInMinute: number };
}

export interface TelegramSettings {
  readonly token: string;
  readonly apiRoot: string | undefined;
  readonly webhook: { readonly url: string; readonly secret: string } | undefined;
}

export interface DiscordSettings {
  readonly token: string;
  readonly apiRoot: string | undefined;
  readonly shards: 'auto' | number | undefined;
  /** Commands of this one server only, for developing. */
  readonly guild: string | undefined;
}

/** A setting that cannot be used: the message names the variable and what it takes. */
export class SettingError extends Error {
  override readonly name = 'SettingError';
}

export function readSettings(environment: NodeJS.ProcessEnv): Settings {
  const parsed = settingsSchema.safeParse(environment);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    throw new SettingError(`The setting ${issue?.path.join('.')} cannot be used: ${issue?.message}.`);
  }
  const read = parsed.data;
  const dataFolder = read.XDG_DATA_HOME ?? join(homedir(), '.local', 'share');
  return {
    db: read.CHOUGH_DB ?? join(dataFolder, 'chough', 'chough.sqlite'),
    databaseUrl: read.DATABASE_URL,
    locale: read.CHOUGH_LOCALE,
    logLevel: read.LOG_LEVEL,
    telegram: telegramIn(read),
    discord:
      read.DISCORD_TOKEN === undefined
        ? undefined
        : {
            token: read.DISCORD_TOKEN,
            apiRoot: read.DISCORD_API_ROOT,
            shards: read.DISCORD_SHARDS,
            guild: read.DISCORD_GUILD,
          },
    httpPort: read.CHOUGH_HTTP_PORT,
    limits: { memberIn10s: read.CHOUGH_MEMBER_LIMIT ?? 6, chatInMinute: read.CHOUGH_CHAT_LIMIT ?? 40 },
  };
}

function telegramIn(read: z.infer<typeof settingsSchema>): TelegramSettings | undefined {
  const { TELEGRAM_TOKEN, TELEGRAM_API_ROOT, TELEGRAM_WEBHOOK_URL, TELEGRAM_WEBHOOK_SECRET } = read;
  if (TELEGRAM_TOKEN === undefined) return undefined;
  if (TELEGRAM_WEBHOOK_URL !== undefined && TELEGRAM_WEBHOOK_SECRET === undefined)
    throw new SettingError(
      'TELEGRAM_WEBHOOK_URL is set without TELEGRAM_WEBHOOK_SECRET: anybody could then speak as any member. Set both, or none for long polling.',
    );
  if (TELEGRAM_WEBHOOK_URL !== undefined && read.CHOUGH_HTTP_PORT === undefined)
    throw new SettingError(
      'TELEGRAM_WEBHOOK_URL needs CHOUGH_HTTP_PORT: the port where the webhook is heard.',
    );
  const webhook =
    TELEGRAM_WEBHOOK_URL === undefined || TELEGRAM_WEBHOOK_SECRET === undefined
      ? undefined
      : { url: TELEGRAM_WEBHOOK_URL, secret: TELEGRAM_WEBHOOK_SECRET };
  return { token: TELEGRAM_TOKEN, apiRoot: TELEGRAM_API_ROOT, webhook };
}
