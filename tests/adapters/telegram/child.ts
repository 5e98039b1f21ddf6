/** The adapter with a store on disk in a process of its own, to be killed: `tsx child.ts <root> <store>`. */
import { pino } from 'pino';
import { startTelegram } from '../../../src/adapters/telegram/start.ts';
import { makeApp } from '../../../src/app.ts';
import { safely } from '../../../src/ops/redact.ts';
import { posts } from '../../../src/platforms.ts';
import { keepNothing } from '../../../src/store/nothing.ts';
import { openSqlite } from '../../../src/store/sqlite.ts';
import { rulesFolder } from '../../support/desk.ts';
import { testToken } from './server/server.ts';

const [, , apiRoot = '', file = ''] = process.argv;
const store = await openSqlite(file);
const app = await makeApp(rulesFolder, store, { oneShot: false });
const once = await makeApp(rulesFolder, keepNothing, { oneShot: true });
const limits = { memberIn10s: 10_000, chatInMinute: 100_000 };
const post = (await posts({ rulesFolder, app, once, store, limits }))('telegram');
const log = pino({ level: 'error', base: null, ...safely });
await startTelegram(post, { token: testToken, apiRoot, log, pace: null, pollSeconds: 1 });
