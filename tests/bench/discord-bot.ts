/** The bots that are compared, each in a process of its own: `tsx discord-bot.ts bare|ours <rest address>`. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client, Events, GatewayIntentBits } from 'discord.js';
import { pino } from 'pino';
import { startDiscord } from '../../src/adapters/discord/start.ts';
import { makeApp } from '../../src/app.ts';
import { posts } from '../../src/platforms.ts';
import { keepNothing } from '../../src/store/nothing.ts';
import { openSqlite } from '../../src/store/sqlite.ts';
import { rulesFolder } from '../support/desk.ts';

const [which = '', apiRoot = ''] = process.argv.slice(2);
const token = process.env.DISCORD_TOKEN ?? '';

/** The least that a bot can be. */
async function bare(): Promise<void> {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds],
    allowedMentions: { parse: [] },
    rest: { api: apiRoot },
  });
  client.on(Events.InteractionCreate, async (interaction) => {
    if (!interaction.isChatInputCommand()) return;
    await interaction.reply(interaction.options.getString('question') ?? '');
  });
  const ready = new Promise((resolve) => client.once(Events.ClientReady, resolve));
  await client.login(token);
  await ready;
}

/** The whole program, with a database on disk. */
async function ours(): Promise<void> {
  const store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'chough-bench-')), 'store.sqlite'));
  const app = await makeApp(rulesFolder, store, { oneShot: false });
  const once = await makeApp(rulesFolder, keepNothing, { oneShot: true });
  const limits = { memberIn10s: 1e9, chatInMinute: 1e9 };
  const post = (await posts({ rulesFolder, app, once, store, limits }))('discord');
  await startDiscord(post, { token, apiRoot, log: pino({ level: 'silent' }) });
}

await (which === 'bare' ? bare() : ours());
process.send?.('ready');
