import { pino } from 'pino';
import { safely } from './redact.ts';

/** Logs go to stderr, answers to stdout. What members wrote is never logged: only ids of messages and what failed. */
export const log = pino(
  { level: process.env.LOG_LEVEL ?? 'warn', base: null, redact: ['*.text', '*.token'], ...safely },
  pino.destination({ dest: 2, sync: true }),
);
