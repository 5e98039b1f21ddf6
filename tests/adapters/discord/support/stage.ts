/** The real client against the protocol server, with the real rules and a store in memory. */
import { setTimeout as sleep } from 'node:timers/promises';
import { pino } from 'pino';
import { expect } from 'vitest';
import { readAddress } from '../../../../src/adapters/discord/address.ts';
import { type DiscordOptions, type Running, startDiscord } from '../../../../src/adapters/discord/start.ts';
import type { LimitOptions } from '../../../../src/adapters/limits.ts';
import type { Post } from '../../../../src/adapters/post.ts';
import { type Handle, makeApp } from '../../../../src/app.ts';
import type { Parcel } from '../../../../src/contracts/ledger.ts';
import { posts } from '../../../../src/platforms.ts';
import { keepNothing } from '../../../../src/store/nothing.ts';
import { openSqlite } from '../../../../src/store/sqlite.ts';
import type { Store } from '../../../../src/store/store.ts';
import { rulesFolder } from '../../../support/desk.ts';
import type { Interaction } from '../server/interaction.ts';
import { Member } from '../server/member.ts';
import type { Posted } from '../server/messages.ts';
import { DiscordServer, type ServerOptions } from '../server/server.ts';
import { type Channel, channel, type Guild, guild, person } from '../server/world.ts';

export interface StageOptions {
  readonly server?: ServerOptions;
  readonly bot?: Partial<DiscordOptions>;
  readonly limits?: LimitOptions;
  readonly store?: Store;
  /** Puts something between the post and the program: to make it slow, or fail. */
  readonly wrap?: (handle: Handle) => Handle;
}

const free: LimitOptions = { memberIn10s: 1000, chatInMinute: 1000 };

export async function realPost(
  store: Store,
  limits = free,
  wrap: (handle: Handle) => Handle = (handle) => handle,
): Promise<Post> {
  const made = await makeApp(rulesFolder, store, { oneShot: false });
  const once = await makeApp(rulesFolder, keepNothing, { oneShot: true });
  const app = { ...made, handle: wrap(made.handle) };
  return (await posts({ rulesFolder, app, once, store, limits }))('discord');
}

/** Waits for something to come true, and says what did not. */
export async function until<T>(
  what: string,
  look: () => T | null | undefined | false,
  ms = 8000,
): Promise<T> {
  const end = Date.now() + ms;
  for (;;) {
    const found = look();
    if (found) return found;
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await sleep(5);
  }
}

export class Stage {
  readonly logs: string[] = [];
  private members = 0;
  private constructor(
    readonly server: DiscordServer,
    readonly club: Guild,
    readonly store: Store,
    readonly post: Post,
  ) {}
  bot!: Running;
  private options: StageOptions = {};

  static async set(options: StageOptions = {}): Promise<Stage> {
    const club = options.server?.guilds?.[0] ?? guild('Gannet Wall Club');
    const server = await new DiscordServer({ guilds: [club], ...options.server }).start();
    const store = options.store ?? (await openSqlite(':memory:'));
    const post = await realPost(store, options.limits, options.wrap);
    const stage = new Stage(server, club, store, post);
    stage.options = options;
    // The greeting of a server that was joined while the bot was off is a test of its own.
    if (options.server?.guilds === undefined)
      await store.joined(`discord:${club.id}`, 'discord', new Date().toISOString());
    await stage.startBot();
    return stage;
  }

  async startBot(more: Partial<DiscordOptions> = {}, sign = 'commands are registered'): Promise<void> {
    const before = this.logs.length;
    const log = pino({ level: 'debug' }, { write: (text: string) => void this.logs.push(text) });
    this.bot = await startDiscord(this.post, {
      token: this.server.token,
      apiRoot: this.server.api,
      log,
      retryMs: [50, 100, 200],
      ...this.options.bot,
      ...more,
    });
    await until(sign, () => this.logs.slice(before).some((text) => text.includes(sign)));
  }

  /** A channel of its own for a test, so that tests do not see each other's messages nor their rate limits. */
  room(name = 'anchors', more: Partial<Channel> = {}): Channel {
    return this.server.open(channel(this.club.id, name, more));
  }

  member(where: Channel = this.room(), locale = 'en-GB', admin = false): Member {
    this.members += 1;
    return new Member(this.server, person(`member-${this.members}`), where.id, locale, admin);
  }

  direct(locale = 'en-GB'): Member {
    return this.member(this.server.open(channel(undefined, 'direct')), locale);
  }

  /** What the bot posted in the member's channel, oldest first. */
  posted({ channel: id }: { readonly channel: string }): readonly Posted[] {
    return this.server.messages.all.filter(
      ({ byBot, channel, deleted }) => byBot && channel === id && !deleted,
    );
  }

  async nth(member: Member, count = 1): Promise<Posted> {
    await until(`message ${count}`, () => this.posted(member).length >= count);
    const found = this.posted(member)[count - 1];
    if (found === undefined) throw new Error('no message');
    return found;
  }

  /** What is still to be delivered to the member's channel. */
  async outstanding({ channel: id }: { readonly channel: string }): Promise<readonly Parcel[]> {
    const all = await this.post.undelivered();
    return all.filter(({ address }) => readAddress(address)?.channel === id);
  }

  /** All parts of all answers have come. */
  async delivered(member: Member, ms = 10_000): Promise<readonly Posted[]> {
    const end = Date.now() + ms;
    while ((await this.outstanding(member)).length > 0 && Date.now() < end) await sleep(20);
    expect(await this.outstanding(member)).toEqual([]);
    return this.posted(member);
  }

  /** Everything that was under way has come to rest. */
  async quiet(ms = 60): Promise<void> {
    for (let calls = -1; calls !== this.server.calls.length; await sleep(ms))
      calls = this.server.calls.length;
  }

  async settled(one: Interaction): Promise<Interaction> {
    await until('an answer', () => !['new', 'thinking', 'update-deferred'].includes(one.state));
    await this.quiet();
    return one;
  }

  /** The first message that an interaction was answered with. */
  async answer(one: Interaction): Promise<Posted> {
    await this.settled(one);
    if (one.original === null) throw new Error(`an answer of state ${one.state} has no message`);
    return one.original;
  }

  /** At the end of each test: no published limit was breached, and no secret stands in a log. */
  check(): void {
    // One test's breach is not the next one's.
    const breaches = this.server.breaches.splice(0);
    this.server.faults.clear();
    expect(breaches).toEqual([]);
    const log = this.logs.join('');
    expect(log).not.toContain(this.server.token);
    for (const { token } of this.server.interactions.values()) expect(log).not.toContain(token);
  }

  async strike(): Promise<void> {
    await this.bot.stop();
    await this.server.stop();
    await this.store.close();
  }
}
