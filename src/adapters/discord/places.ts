/** Where something was said, in our terms: a server is a chat, its channels and threads are rooms. */
import type { Channel } from 'discord.js';
import { directChat, guildChat } from './address.ts';
import type { Place } from './context.ts';

export const placeOf = (guild: string | null, channel: string): Place =>
  guild === null
    ? { chat: directChat(channel), direct: true }
    : { chat: guildChat(guild), room: channel, direct: false };

/** A thread belongs to its channel: where the one is allowed, so is the other. */
export function rooms(id: string | null, channel: Channel | null): readonly string[] {
  const parent = channel?.isThread() ? channel.parentId : null;
  return [...(id === null ? [] : [id]), ...(parent === null ? [] : [parent])];
}
