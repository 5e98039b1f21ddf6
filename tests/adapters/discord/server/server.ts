/**
 * A server that speaks enough of Discord's REST v10 and gateway for the real client, written from the platform's
 * documentation. It checks every call against the published limits and keeps what was breached.
 */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { Buckets } from './buckets.ts';
import type { SentCommand } from './command-limits.ts';
import { type Answer, type Call, problem, readCall, write } from './exchange.ts';
import { cut, Faults } from './faults.ts';
import { Gateway } from './gateway.ts';
import { snowflake } from './ids.ts';
import type { Interaction } from './interaction.ts';
import { Messages, type Posted } from './messages.ts';
import { route } from './routes.ts';
import { type Channel, channelObject, type Guild, guildObject, type Person, userObject } from './world.ts';

export interface ServerOptions {
  readonly guilds?: readonly Guild[];
  readonly perBucket?: number;
  readonly bucketMs?: number;
  readonly perSecond?: number;
  readonly identifiesLeft?: number;
  readonly shards?: number;
  readonly heartbeatMs?: number;
  /** Keeps no messages and calls: for load. */
  readonly forget?: boolean;
}

export class DiscordServer {
  readonly token = `MTE.${'x'.repeat(20)}.server-test-token-${process.pid}`;
  readonly application: string = snowflake();
  readonly bot: Person = { id: this.application, username: 'Chough' };
  readonly breaches: string[] = [];
  readonly calls: Call[] = [];
  readonly faults = new Faults();
  readonly messages = new Messages();
  readonly interactions = new Map<string, Interaction>();
  readonly commands = new Map<string, readonly SentCommand[]>();
  readonly commandWrites: string[] = [];
  readonly guilds: Guild[];
  readonly channels = new Map<string, Channel>();
  /** What the content network has: path → bytes. */
  readonly downloads = new Map<string, { readonly bytes: Buffer; readonly delayMs?: number }>();
  readonly typed: string[] = [];
  /** Told of each message that answers an interaction. */
  onAnswer: (one: Interaction, posted: Posted) => void = () => undefined;
  readonly #http: Server;
  readonly #buckets: Buckets;
  #gateway: Gateway | null = null;
  #port = 0;

  constructor(readonly options: ServerOptions = {}) {
    this.guilds = [...(options.guilds ?? [])];
    for (const guild of this.guilds) this.know(guild);
    this.#buckets = new Buckets(options.perBucket ?? 5, options.bucketMs ?? 5000, options.perSecond ?? 50);
    this.#http = createServer((request, response) => {
      this.#answer(request, response).catch((error: unknown) => {
        this.breaches.push(`server: ${String(error)}`);
        write(response, problem(500, 0, 'server'));
      });
    });
  }

  know(guild: Guild): void {
    for (const channel of guild.channels) this.channels.set(channel.id, channel);
  }

  /** A channel or thread that comes into being while the bot is there. */
  open(channel: Channel): Channel {
    this.channels.set(channel.id, channel);
    const event = channel.type === 11 ? 'THREAD_CREATE' : 'CHANNEL_CREATE';
    if (channel.guild) this.gateway.dispatch(event, channelObject(channel), channel.guild);
    return channel;
  }

  get api(): string {
    return `http://127.0.0.1:${this.#port}/api`;
  }

  get url(): string {
    return `ws://127.0.0.1:${this.#port}/gateway`;
  }

  get gateway(): Gateway {
    if (this.#gateway === null) throw new Error('the server is not started');
    return this.#gateway;
  }

  async start(): Promise<this> {
    await new Promise<void>((resolve) => this.#http.listen(0, '127.0.0.1', resolve));
    this.#port = (this.#http.address() as AddressInfo).port;
    this.#gateway = new Gateway(this, this.#http);
    this.#gateway.heartbeatMs = this.options.heartbeatMs ?? this.#gateway.heartbeatMs;
    return this;
  }

  async stop(): Promise<void> {
    for (const { timer } of this.interactions.values()) if (timer) clearTimeout(timer);
    await this.gateway.close();
    this.#http.closeAllConnections();
    await new Promise((resolve) => this.#http.close(resolve));
  }

  ready(session: { readonly shard: readonly [number, number] }): {
    ready: object;
    guilds: (object & { id: string })[];
  } {
    const [index, count] = session.shard;
    return {
      ready: { v: 10, user: userObject(this.bot, true), application: { id: this.application, flags: 0 } },
      guilds: this.guilds
        .filter(({ id }) => Number((BigInt(id) >> 22n) % BigInt(count)) === index)
        .map((guild) => guildObject(guild, this.bot)),
    };
  }

  guildOf(channel: string): string | undefined {
    return this.channels.get(channel)?.guild;
  }

  channelObject(id: string): object {
    const found = this.channels.get(id);
    return found ? channelObject(found) : { id, type: 0 };
  }

  messageObject(posted: Posted): object {
    const guild = this.guildOf(posted.channel);
    return {
      id: posted.id,
      type: posted.replyTo ? 19 : 0,
      channel_id: posted.channel,
      ...(guild ? { guild_id: guild } : { channel_type: 1 }),
      author: userObject({ id: posted.author, username: posted.byBot ? 'Chough' : 'member' }, posted.byBot),
      content: posted.content,
      timestamp: new Date().toISOString(),
      edited_timestamp: null,
      tts: false,
      mention_everyone: false,
      mentions: [],
      mention_roles: [],
      attachments: [],
      embeds: [],
      components: posted.components,
      pinned: false,
      flags: posted.private ? 64 : 0,
      ...(posted.nonce ? { nonce: posted.nonce } : {}),
    };
  }

  /** What the bot posts comes back to it as an event, as on the platform. */
  announce(posted: Posted): void {
    if (posted.private) return;
    this.gateway.dispatch('MESSAGE_CREATE', this.messageObject(posted), this.guildOf(posted.channel));
  }

  async #answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const call = await readCall(request);
    if (this.options.forget !== true) this.calls.push(call);
    const fault = this.faults.take(call.method, call.path);
    if (fault?.kind === 'hang') return;
    if (fault?.kind === 'reset' && !fault.after) return cut(response);
    if (fault?.kind === 'slow') await sleep(fault.ms);
    if (fault?.kind === 'error') {
      if (fault.delayMs) await sleep(fault.delayMs);
      return write(response, problem(fault.status, fault.code ?? 0, fault.message ?? 'refused'));
    }
    if (fault?.kind === 'rate-limit')
      return write(response, {
        status: 429,
        headers: {
          'retry-after': String(fault.retryAfter),
          ...(fault.global ? { 'x-ratelimit-global': 'true' } : {}),
          'x-ratelimit-scope': fault.global ? 'global' : 'shared',
        },
        body: { message: 'You are being rate limited.', retry_after: fault.retryAfter, global: fault.global },
      });
    const answer = this.#limited(call) ?? (await route(this, call));
    if (fault?.kind === 'reset') return cut(response);
    if (fault?.kind === 'error-after') return write(response, problem(fault.status, 0, 'after the fact'));
    write(response, answer);
  }

  #limited(call: Call): Answer | null {
    const [, kind = '', first = '', second = ''] = call.path.split('/');
    if (kind === 'attachments') return null;
    const interaction = kind === 'interactions' || kind === 'webhooks';
    const key = `${call.method} ${kind}/${first}/${interaction ? second : ''}`;
    const { retryAfter, global, headers } = this.#buckets.count(key, interaction);
    if (retryAfter === null) return null;
    return {
      status: 429,
      headers: { ...headers, 'retry-after': String(Math.ceil(retryAfter)) },
      body: { message: 'You are being rate limited.', retry_after: retryAfter, global },
    };
  }
}
