/** The bots that are compared, each in a process of its own: `tsx telegram-bots.ts echo|courier|chough <root>`. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run, sequentialize } from '@grammyjs/runner';
import { Bot } from 'grammy';
import { pino } from 'pino';
import { startTelegram } from '../../src/adapters/telegram/start.ts';
import { type App, makeApp } from '../../src/app.ts';
import { safely } from '../../src/ops/redact.ts';
import { posts } from '../../src/platforms.ts';
import { keepNothing } from '../../src/store/nothing.ts';
import { openSqlite } from '../../src/store/sqlite.ts';
import { testToken } from '../adapters/telegram/server/server.ts';
import { rulesFolder } from '../support/desk.ts';
import { questions } from './telegram-questions.ts';

/** The least that a bot can do: says back what it was told. */
function echo(apiRoot: string): void {
  const bot = new Bot(testToken, { client: { apiRoot } });
  bot.use(sequentialize((context) => `${context.chat?.id}:${context.from?.id}`));
  bot.on('message:text', (context) => context.reply(context.message.text));
  run(bot);
}

/** `answering`: without it every message gets the same answer, kept and sent like any other: adapter and store alone. */
async function chough(apiRoot: string, answering: boolean): Promise<void> {
  const store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'chough-bench-')), 'store.sqlite'));
  const [app, once] = await Promise.all([
    makeApp(rulesFolder, store, { oneShot: false }),
    makeApp(rulesFolder, keepNothing, { oneShot: true }),
  ]);
  const limits = { memberIn10s: 1_000_000, chatInMinute: 1_000_000 };
  const given = await app.handle({ id: '1', chat: 'bench', user: 'bench', text: questions[0] });
  const fixed: App = {
    ...app,
    async handle(message, posting) {
      const { id, chat, user } = message;
      if (given === null || 'silent' in given || posting === undefined) return given;
      const rendered = { ...given, reply: { ...given.reply, inReplyTo: id, chat, user } };
      await store.keep({ talk: { chat, room: '', user }, at: new Date().toISOString(), posting, rendered });
      return rendered;
    },
  };
  const parts = { rulesFolder, app: answering ? app : fixed, once, store, limits };
  const post = (await posts(parts))('telegram');
  const log = pino({ level: 'warn', base: null, ...safely });
  await startTelegram(post, { token: testToken, apiRoot, log, pace: null });
}

const [, , which, root = ''] = process.argv;
if (which === 'echo') echo(root);
else await chough(root, which === 'chough');
