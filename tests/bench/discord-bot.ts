/** The bots that are compared, each in a process of its own: `tsx discord-bot.ts bare|adapter|ours <rest address>`. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Client, Events, GatewayIntentBits } from 'discord.js';
import { pino } from 'pino';
import { startDiscord } from '../../src/adapters/discord/start.ts';
import { noticeOf, Post } from '../../src/adapters/post.ts';
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

/** The adapter alone: every question has the same short answer, and nothing is kept. */
async function adapter(): Promise<void> {
  const post = new Post({
    platform: 'discord',
    ledger: keepNothing,
    languages: ['en'],
    handle: async (message) => noticeOf(message, message.text ?? ''),
    askOnce: async (message) => noticeOf(message, ''),
    say: async (_, { say }) => say,
    suggest: async () => [],
    commands: async () => [],
    rooms: async () => [],
    limits: { memberIn10s: 1e9, chatInMinute: 1e9 },
  });
  await startDiscord(post, { token, apiRoot, log: pino({ level: 'silent' }) });
}

const bots = new Map([
  ['bare', bare],
  ['adapter', adapter],
  ['ours', ours],
]);
await bots.get(which)?.();
process.send?.('ready');
