/** One shard as the program starts it, in a process of its own: `node --import tsx shard.ts <rest address> <store>`. */
import { pino } from 'pino';
import { startDiscord } from '../../../../src/adapters/discord/start.ts';
import { makeApp } from '../../../../src/app.ts';
import { posts } from '../../../../src/platforms.ts';
import { keepNothing } from '../../../../src/store/nothing.ts';
import { openSqlite } from '../../../../src/store/sqlite.ts';
import { rulesFolder } from '../../../support/desk.ts';

const [apiRoot = '', file = ''] = process.argv.slice(2);
const store = await openSqlite(file);
const app = await makeApp(rulesFolder, store, { oneShot: false });
const once = await makeApp(rulesFolder, keepNothing, { oneShot: true });
const post = (await posts({ rulesFolder, app, once, store }))('discord');
const log = pino({ level: 'warn' });
const bot = await startDiscord(post, { token: process.env.DISCORD_TOKEN ?? '', apiRoot, log });
process.once('SIGTERM', async () => {
  await bot.stop();
  await store.close();
  process.exit(0);
});
