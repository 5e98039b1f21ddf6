/** The client of the platform's own library: what it listens to, what it remembers, how it calls. */
import { Client, GatewayIntentBits, MessageFlags, Options, Partials, REST } from 'discord.js';

/** Commands, mentions, replies and direct messages come without the right to read everybody's messages. */
export const intents = [
  GatewayIntentBits.Guilds,
  GatewayIntentBits.GuildMessages,
  GatewayIntentBits.DirectMessages,
];

export interface ClientOptions {
  /** Another address of the REST interface, without the version: for tests and proxies. */
  readonly apiRoot?: string | undefined;
  /** Milliseconds until a call is given up. */
  readonly timeoutMs?: number | undefined;
  /** Requests a second over the bot's token: the platform's own limit unless a test says otherwise. */
  readonly perSecond?: number | undefined;
}

const restOptions = ({ apiRoot, timeoutMs, perSecond }: ClientOptions) => ({
  ...(apiRoot === undefined ? {} : { api: apiRoot }),
  ...(timeoutMs === undefined ? {} : { timeout: timeoutMs }),
  ...(perSecond === undefined ? {} : { globalRequestsPerSecond: perSecond }),
});

export function makeClient(options: ClientOptions): Client {
  const client: Client = new Client({
    intents,
    // A direct message comes from a channel that was never seen before.
    partials: [Partials.Channel],
    allowedMentions: { parse: [], repliedUser: false },
    failIfNotExists: false,
    rest: restOptions(options),
    // Memory must not grow with members and messages; nothing of them is needed after the event.
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: 0,
      PresenceManager: 0,
      ReactionManager: 0,
      ReactionUserManager: 0,
      GuildEmojiManager: 0,
      GuildStickerManager: 0,
      GuildScheduledEventManager: 0,
      GuildInviteManager: 0,
      GuildBanManager: 0,
      VoiceStateManager: 0,
      StageInstanceManager: 0,
      AutoModerationRuleManager: 0,
      ThreadMemberManager: 0,
      UserManager: { maxSize: 0, keepOverLimit: ({ id }) => id === client.user?.id },
      // One besides the bot itself: whoever wrote the message being handled, for the rights it came with.
      GuildMemberManager: { maxSize: 1, keepOverLimit: ({ id }) => id === client.user?.id },
    }),
    sweepers: {
      ...Options.DefaultSweeperSettings,
      threads: { interval: 3600, lifetime: 14_400 },
    },
  });
  return client;
}

/**
 * For the messages after the first answer to an interaction. The platform counts them outside of the bot's limit; and
 * a blind retry of the library would post one twice, for they have no number.
 */
export const makeHooks = (options: ClientOptions): REST =>
  new REST({
    version: '10',
    ...restOptions(options),
    retries: 0,
    globalRequestsPerSecond: Number.POSITIVE_INFINITY,
  });

export const isHidden = (flags: number): boolean => (flags & MessageFlags.Ephemeral) !== 0;
