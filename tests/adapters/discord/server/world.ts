/** Guilds, channels and people of the test: an invented club. Objects as the documentation shows them, cut to what is read. */
import { PermissionFlagsBits } from 'discord.js';
import { snowflake } from './ids.ts';

export interface Channel {
  readonly id: string;
  readonly type: 0 | 1 | 11;
  readonly name: string;
  readonly guild: string | undefined;
  readonly parent?: string;
  archived: boolean;
  /** Permissions taken from everyone here. */
  readonly deny: bigint;
}

export interface Guild {
  readonly id: string;
  readonly name: string;
  readonly locale: string;
  readonly system: string | null;
  readonly channels: readonly Channel[];
  readonly adminRole: string;
  readonly botPermissions: bigint;
}

export interface Person {
  readonly id: string;
  readonly username: string;
}

export const person = (username: string): Person => ({ id: snowflake(), username });

export const channel = (guild: string | undefined, name: string, more: Partial<Channel> = {}): Channel => ({
  id: snowflake(),
  type: guild === undefined ? 1 : 0,
  name,
  guild,
  archived: false,
  deny: 0n,
  ...more,
});

const basic =
  PermissionFlagsBits.ViewChannel |
  PermissionFlagsBits.SendMessages |
  PermissionFlagsBits.SendMessagesInThreads |
  PermissionFlagsBits.AttachFiles |
  PermissionFlagsBits.ReadMessageHistory |
  PermissionFlagsBits.UseApplicationCommands;

export function guild(
  name: string,
  more: Partial<Guild> & { readonly rooms?: readonly string[] } = {},
): Guild {
  const id = snowflake();
  const channels = more.channels ?? (more.rooms ?? ['general', 'anchors']).map((room) => channel(id, room));
  return {
    id,
    name,
    locale: 'en-US',
    system: channels[0]?.id ?? null,
    adminRole: snowflake(),
    botPermissions: basic,
    ...more,
    channels,
  };
}

export const userObject = ({ id, username }: Person, bot = false): object => ({
  id,
  username,
  discriminator: '0',
  global_name: username,
  avatar: null,
  bot,
});

export const memberObject = (roles: readonly string[] = []): object => ({
  roles,
  joined_at: '2026-01-01T00:00:00.000Z',
  deaf: false,
  mute: false,
  flags: 0,
  nick: null,
});

export function channelObject(one: Channel, recipients: readonly object[] = []): object {
  if (one.type === 1) return { id: one.id, type: 1, recipients, last_message_id: null, flags: 0 };
  return {
    id: one.id,
    type: one.type,
    name: one.name,
    guild_id: one.guild,
    parent_id: one.parent ?? null,
    position: 0,
    permission_overwrites:
      one.deny === 0n ? [] : [{ id: one.guild, type: 0, allow: '0', deny: String(one.deny) }],
    ...(one.type === 11
      ? {
          thread_metadata: {
            archived: one.archived,
            locked: one.archived,
            auto_archive_duration: 1440,
            archive_timestamp: '2026-01-01T00:00:00.000Z',
          },
          owner_id: one.guild,
          message_count: 1,
          member_count: 1,
          total_message_sent: 1,
        }
      : {}),
  };
}

const role = (id: string, name: string, permissions: bigint): object => ({
  id,
  name,
  permissions: String(permissions),
  color: 0,
  colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  hoist: false,
  position: 0,
  managed: false,
  mentionable: false,
  flags: 0,
});

export function guildObject(one: Guild, bot: Person): object & { readonly id: string } {
  const { id } = one;
  const told: object = {
    name: one.name,
    owner_id: snowflake(),
    preferred_locale: one.locale,
    system_channel_id: one.system,
    unavailable: false,
    joined_at: '2026-01-01T00:00:00.000Z',
    large: false,
    member_count: 3,
    features: [],
    roles: [
      role(one.id, '@everyone', one.botPermissions),
      role(one.adminRole, 'committee', PermissionFlagsBits.ManageGuild),
    ],
    emojis: [],
    stickers: [],
    members: [{ ...memberObject(), user: userObject(bot, true) }],
    channels: one.channels.filter(({ type }) => type === 0).map((each) => channelObject(each)),
    threads: one.channels.filter(({ type }) => type === 11).map((each) => channelObject(each)),
    voice_states: [],
    presences: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  };
  return { id, ...told };
}
