/** Starts the adapter for Discord over the platform's own client library, and stops it without losing an answer. */
import { setTimeout as sleep } from 'node:timers/promises';
import { type Client, Events, RESTEvents, Routes } from 'discord.js';
import type { Logger } from 'pino';
import { z } from 'zod';
import type { Post } from '../post.ts';
import { deferAfterMs } from './acknowledge.ts';
import { readAddress, shardOf } from './address.ts';
import type { FetchLimits } from './attachments.ts';
import { Calls } from './calls.ts';
import { type ClientOptions, makeClient, makeHooks } from './client.ts';
import { commandBodies, emptyGuildCommands, registerCommands } from './commands.ts';
import type { Context } from './context.ts';
import { type Counters, noCounts } from './counters.ts';
import { Delivery } from './deliver.ts';
import { Guilds } from './guilds.ts';
import { Interactions } from './interactions.ts';
import { inviteLink } from './invite.ts';
import { Messages } from './messages.ts';
import { LastLocales, Recent } from './recent.ts';
import { told, withoutSecrets } from './secrets.ts';

export interface DiscordOptions extends ClientOptions {
  readonly token: string;
  readonly log: Logger;
  /** Commands of one server only, seen at once: for developing. */
  readonly guild?: string | undefined;
  readonly fetchLimits?: FetchLimits | undefined;
  readonly deferAfterMs?: number | undefined;
  readonly retryMs?: readonly number[] | undefined;
}

/** The platform does not take this bot: the message says what to look at. */
export class DiscordError extends Error {
  override readonly name = 'DiscordError';
}

export interface Running {
  readonly client: Client<true>;
  /** Rejects when the platform ends the connection for good; it never resolves. */
  readonly ended: Promise<never>;
  readonly counters: Readonly<Counters>;
  readonly invite: string;
  /** When the gateway last answered a heartbeat; 0 before the first. */
  lastHeartbeat(): number;
  stop(): Promise<void>;
}

const usualRetries = [2000, 10_000, 60_000];
/** A supervisor kills after 10 seconds. */
const stopWithinMs = 8000;
const rememberedLocales = 5000;
/** Servers that are looked through for commands left over from developing. */
const fewGuilds = 10;
/** More identifies than this a day look like a program that crashes and starts again and again. */
const fewIdentifies = 900;

const gatewaySchema = z.looseObject({ session_start_limit: z.looseObject({ remaining: z.int() }) });

export async function startDiscord(post: Post, options: DiscordOptions): Promise<Running> {
  const { log, token, guild, apiRoot } = options;
  const counters = noCounts();
  const client = makeClient(options);
  const calls = new Calls(client.rest, makeHooks(options));
  const retryMs = options.retryMs ?? usualRetries;
  const delivery = new Delivery({ post, calls, counters, log, retryMs });
  const bodies = await commandBodies(post);
  const admins = (await post.commands('en')).filter(({ admin }) => admin).map(({ name }) => name);
  const context: Context = {
    post,
    calls,
    delivery,
    counters,
    log,
    adminCommands: new Set(admins),
    apiRoot,
    fetchLimits: options.fetchLimits,
    deferAfterMs: options.deferAfterMs ?? deferAfterMs,
    locales: new LastLocales(rememberedLocales),
    strayCommands: (stray) => {
      if (guild === undefined) guard(stray, () => emptyCopies(stray));
    },
    stopping: false,
  };
  const emptyCopies = async (stray: string): Promise<void> => {
    const application = client.application?.id;
    if (application !== undefined) await emptyGuildCommands(client.rest, application, stray);
  };
  const underWay = new Set<Promise<void>>();
  /** What goes wrong with one event is written down and touches no other. */
  const guard = (id: string, work: () => Promise<void>): void => {
    const done = work()
      .catch((error: unknown) => {
        counters.failures += 1;
        log.error({ event: id, fault: told(error) }, 'an event could not be handled');
      })
      .finally(() => underWay.delete(done));
    underWay.add(done);
  };
  const ended = watch(client, counters, log);
  // Whoever waits for it hears of it; nobody has to.
  ended.catch(() => undefined);
  listen(client, context, guard);

  const ready = new Promise<Client<true>>((resolve) => client.once(Events.ClientReady, resolve));
  client.rest.setToken(token);
  const gateway = await client.rest.get(Routes.gatewayBot()).catch(refused);
  const { session_start_limit } = gatewaySchema.parse(gateway);
  counters.identifiesLeft = session_start_limit.remaining;
  if (counters.identifiesLeft < fewIdentifies)
    log.warn({ left: counters.identifiesLeft }, 'the gateway was entered very often today');
  await client.login(token).catch(refused);
  const running = await ready;
  const application = running.application.id;

  // A command that cannot be registered now is registered at the next start; mentions work without.
  guard('commands', async () => {
    // Every shard would do the same.
    if ((client.shard?.ids[0] ?? 0) !== 0) return;
    const { written } = await registerCommands(client.rest, application, bodies, guild);
    log.info({ written }, 'commands are registered');
    // Where there are many servers, copies are found when one is used.
    const few = guild === undefined && client.guilds.cache.size <= fewGuilds;
    for (const one of few ? client.guilds.cache.keys() : []) await emptyCopies(one);
  });
  guard('undelivered', () => deliverAgain(post, delivery, client, log));
  const guilds = new Guilds(context);
  guard('guilds', async () => {
    for (const one of client.guilds.cache.values()) if (one.available) await guilds.joined(one);
  });

  return {
    client: running,
    ended,
    counters,
    invite: inviteLink(application),
    lastHeartbeat: () => Math.max(0, ...client.ws.shards.map((shard) => shard.lastPingTimestamp)),
    async stop() {
      context.stopping = true;
      const settled = Promise.allSettled([...underWay, delivery.end()]);
      await Promise.race([settled, sleep(stopWithinMs, undefined, { ref: false })]);
      await client.destroy();
    },
  };
}

function listen(
  client: Client,
  context: Context,
  guard: (id: string, work: () => Promise<void>) => void,
): void {
  const interactions = new Interactions(context);
  const messages = new Messages(context);
  const guilds = new Guilds(context);
  // The gateway sends an event again after a resume; acknowledging it twice is an error.
  const recent = new Recent(1000);
  client.on(Events.InteractionCreate, (interaction) => {
    if (recent.isNew(interaction.id)) guard(interaction.id, () => interactions.handle(interaction));
  });
  client.on(Events.MessageCreate, (message) => {
    if (recent.isNew(message.id)) guard(message.id, () => messages.handle(message));
  });
  client.on(Events.GuildCreate, (guild) => guard(guild.id, () => guilds.joined(guild)));
  client.on(Events.GuildDelete, (guild) => guard(guild.id, () => guilds.left(guild)));
}

/** Without a listener for errors the process would end. */
function watch(client: Client, counters: Counters, log: Logger): Promise<never> {
  client.on(Events.Error, (error) => log.error({ fault: told(error) }, 'the client reports an error'));
  client.on(Events.Warn, (text) => log.warn({ text: told(text).error }, 'the client warns'));
  client.on(Events.ShardError, (error, shard) =>
    log.error({ shard, fault: told(error) }, 'the gateway reports an error'),
  );
  client.on(Events.ShardReconnecting, (shard) => {
    counters.reconnects += 1;
    log.info({ shard }, 'the gateway is entered again');
  });
  client.on(Events.ShardResume, (shard, events) => {
    counters.resumes += 1;
    log.info({ shard, events }, 'the gateway goes on where it was');
  });
  client.rest.on(RESTEvents.RateLimited, ({ global, timeToReset, method }) => {
    counters.rateLimited += 1;
    log.info({ global, timeToReset, method }, 'the platform asks to wait');
  });
  return new Promise((_, reject) => {
    const end = (why: string): void => {
      log.fatal(why);
      reject(new DiscordError(why));
    };
    client.on(Events.Invalidated, () => end('Discord ended the session for good.'));
    client.on(Events.ShardDisconnect, ({ code }, shard) =>
      end(
        `Discord refuses this bot (shard ${shard}, close code ${code}): look at its token, intents and shards.`,
      ),
    );
  });
}

/** What whoever starts the program can act upon. */
function refused(error: unknown): never {
  const code = error instanceof Error && 'status' in error ? error.status : undefined;
  const what = error instanceof Error ? withoutSecrets(error.message) : 'unknown';
  throw new DiscordError(
    code === 401 || /token/i.test(what)
      ? 'Discord does not take DISCORD_TOKEN: make a new one in the developer portal and set it.'
      : `Discord cannot be reached or refuses this bot: ${what}`,
  );
}

async function deliverAgain(post: Post, delivery: Delivery, client: Client, log: Logger): Promise<void> {
  const [own = 0] = client.shard?.ids ?? [0];
  const count = client.shard?.count ?? 1;
  for (const parcel of await post.undelivered()) {
    const chat = readAddress(parcel.address)?.chat ?? '';
    if (shardOf(chat, count) !== own) continue;
    try {
      await delivery.again(parcel);
    } catch (error) {
      log.error({ parcel: parcel.id, fault: told(error) }, 'an old answer could not be sent');
    }
  }
}
