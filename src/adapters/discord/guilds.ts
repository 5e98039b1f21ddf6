/** Taken into a server, and removed from one. */
import { ChannelType, type Guild, PermissionFlagsBits, type TextChannel } from 'discord.js';
import { guildChat, writeAddress } from './address.ts';
import type { Context } from './context.ts';

const needed = [PermissionFlagsBits.ViewChannel, PermissionFlagsBits.SendMessages];

/** Where a greeting belongs: the channel the server has for that, or else the first one that may be written to. */
function greetingChannel(guild: Guild): TextChannel | null {
  const me = guild.members.me;
  if (me === null) return null;
  const writable = (channel: TextChannel): boolean => channel.permissionsFor(me).has(needed);
  if (guild.systemChannel && writable(guild.systemChannel)) return guild.systemChannel;
  const texts = [...guild.channels.cache.values()].filter(
    (channel): channel is TextChannel => channel.type === ChannelType.GuildText,
  );
  texts.sort((a, b) => a.rawPosition - b.rawPosition || (BigInt(a.id) < BigInt(b.id) ? -1 : 1));
  return texts.find(writable) ?? null;
}

export class Guilds {
  constructor(private readonly context: Context) {}

  async joined(guild: Guild): Promise<void> {
    const channel = greetingChannel(guild);
    if (channel === null) return;
    const { post, delivery } = this.context;
    const chat = guildChat(guild.id);
    const address = writeAddress({ channel: channel.id, chat, locale: guild.preferredLocale, hidden: false });
    const parcel = await post.joined(chat, address, guild.preferredLocale);
    if (parcel !== null) await delivery.message(parcel);
  }

  left(guild: Guild): Promise<void> {
    return this.context.post.left(guildChat(guild.id));
  }
}
