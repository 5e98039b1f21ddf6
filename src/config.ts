import { homedir } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';

const settingsSchema = z.object({
  CHOUGH_DB: z.string().min(1).optional(),
  CHOUGH_LOCALE: z.string().min(2).max(35).default('en'),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent']).default('warn'),
  XDG_DATA_HOME: z.string().optional(),
});

export interface Settings {
  /** The SQLite file. */
  readonly db: string;
  readonly locale: string;
  readonly logLevel: string;
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
  const { CHOUGH_DB, CHOUGH_LOCALE, LOG_LEVEL, XDG_DATA_HOME } = parsed.data;
  const dataFolder = XDG_DATA_HOME ?? join(homedir(), '.local', 'share');
  return {
    db: CHOUGH_DB ?? join(dataFolder, 'chough', 'chough.sqlite'),
    locale: CHOUGH_LOCALE,
    logLevel: LOG_LEVEL,
  };
}
