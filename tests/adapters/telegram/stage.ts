/** The real adapter with the real client, rules and store against the protocol server, and people who use it. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Message } from 'grammy/types';
import { pino } from 'pino';
import { expect } from 'vitest';
import type { LimitOptions } from '../../../src/adapters/limits.ts';
import type { Post } from '../../../src/adapters/post.ts';
import type { TelegramOptions } from '../../../src/adapters/telegram/options.ts';
import { startTelegram, type Telegram } from '../../../src/adapters/telegram/start.ts';
import { makeApp } from '../../../src/app.ts';
import { safely } from '../../../src/ops/redact.ts';
import { posts } from '../../../src/platforms.ts';
import { keepNothing } from '../../../src/store/nothing.ts';
import { openSqlite } from '../../../src/store/sqlite.ts';
import type { Store } from '../../../src/store/store.ts';
import { rulesFolder } from '../../support/desk.ts';
import { Person } from './server/actors.ts';
import { TelegramServer, testToken } from './server/server.ts';
import { bot, type Room } from './server/world.ts';

export interface Stage {
  readonly server: TelegramServer;
  readonly store: Store;
  readonly post: Post;
  telegram: Telegram;
  readonly ana: Person;
  readonly ben: Person;
  readonly logs: string[];
  /** Stops and starts again over the same store, as after a restart. */
  again(options?: Partial<TelegramOptions>): Promise<void>;
  /** The bot's messages in a room, as they are now. */
  own(room: Room): Message[];
  /** Waits for so many messages of the bot in a room and gives the last. */
  answer(room: Room, count: number): Promise<Message>;
  end(): Promise<void>;
}

export const roomy: LimitOptions = { memberIn10s: 10_000, chatInMinute: 100_000 };
export const freshFile = (): string => join(mkdtempSync(join(tmpdir(), 'chough-')), 'store.sqlite');

/** Rules and words are loaded once a file: the program's store is whichever stage stands. */
let standing: Store | undefined;
const through = <T extends object>(standingPart: () => T | undefined): T =>
  new Proxy({} as T, {
    get: (_, name) => {
      const part = standingPart();
      const value: unknown = part === undefined ? undefined : Reflect.get(part, name);
      return typeof value === 'function' ? value.bind(part) : value;
    },
  });
const records = through(() => standing?.records);
const store = new Proxy(
  through(() => standing),
  { get: (target, name) => (name === 'records' ? records : Reflect.get(target, name)) },
);
const apps = Promise.all([
  makeApp(rulesFolder, store, { oneShot: false }),
  makeApp(rulesFolder, keepNothing, { oneShot: true }),
]);

async function makePost(on: Store, limits: LimitOptions = roomy): Promise<Post> {
  standing = on;
  const [app, once] = await apps;
  return (await posts({ rulesFolder, app, once, store, limits }))('telegram');
}

/** `before`: what is done to the server before the adapter starts. `wrap`: to break the post on purpose. */
export async function raise(
  options: Partial<TelegramOptions> & {
    readonly before?: (server: TelegramServer) => void;
    readonly wrap?: (post: Post) => Post;
    readonly limits?: LimitOptions;
    readonly file?: string;
  } = {},
): Promise<Stage> {
  const { before, wrap, limits, file = ':memory:', ...more } = options;
  const server = await new TelegramServer().start();
  before?.(server);
  const store = await openSqlite(file);
  const made = await makePost(store, limits);
  const post = wrap?.(made) ?? made;
  const logs: string[] = [];
  const start = (again: Partial<TelegramOptions> = {}): Promise<Telegram> =>
    startTelegram(post, {
      token: testToken,
      apiRoot: server.root,
      log: pino({ level: 'trace', base: null, ...safely }, { write: (line: string) => logs.push(line) }),
      pollSeconds: 1,
      callSeconds: 1,
      retryMilliseconds: 50,
      ...more,
      ...again,
    });
  const own = (room: Room): Message[] =>
    [...room.messages.values()].filter(({ from }) => from?.id === bot.id);
  const stage: Stage = {
    server,
    store,
    post,
    telegram: await start(),
    ana: new Person(server, 101, 'Ana', 'en'),
    ben: new Person(server, 102, 'Ben', 'en'),
    logs,
    own,
    async again(changed) {
      await stage.telegram.stop();
      stage.telegram = await start(changed);
    },
    async answer(room, count) {
      await server.until(
        `the bot said ${count} things in "${room.chat.id}" (${own(room).length}: ${JSON.stringify(own(room).map(({ text }) => text))})`,
        () => own(room).length >= count,
      );
      const last = own(room)[count - 1];
      if (last === undefined) throw new Error('nothing');
      return last;
    },
    async end() {
      await stage.telegram.stop();
      await server.stop();
      await store.close();
      // No published limit was broken, and no log holds the token or what a member wrote.
      expect(server.breaches).toEqual([]);
      expect(logs.join('')).not.toContain(testToken.slice(-24));
      for (const word of ['granite', 'limestone', 'granito', 'sea cliff'])
        expect(logs.join('')).not.toContain(word);
    },
  };
  stage.telegram.ended.catch(() => undefined);
  return stage;
}

/** Time for something not to happen. */
export const lull = (milliseconds = 150): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));
