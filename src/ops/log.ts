import { pino } from 'pino';

/** Logs go to stderr, answers to stdout. What members wrote is never logged: only ids of messages and what failed. */
export const log = pino(
  { level: process.env.LOG_LEVEL ?? 'warn', base: null, redact: ['*.text', '*.token'] },
  pino.destination({ dest: 2, sync: true }),
);
