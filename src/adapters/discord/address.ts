/** Where an answer goes, as it is kept with the answer until it is delivered. It holds a token for 15 minutes: it is never logged. */
import { z } from 'zod';
import { addressBook } from '../address.ts';

const addressSchema = z.strictObject({
  channel: z.string(),
  chat: z.string(),
  /** The message that is answered. */
  replyTo: z.string().optional(),
  /** The channel that a thread belongs to, if the thread is closed by then. */
  parent: z.string().optional(),
  locale: z.string().optional(),
  /** Only the asker sees it: never posted to the channel. */
  hidden: z.boolean(),
  hook: z
    .strictObject({
      application: z.string(),
      token: z.string(),
      /** A button was pressed under this message. */
      pressed: z.boolean(),
    })
    .optional(),
});

export type Address = z.infer<typeof addressSchema>;

export const { write: writeAddress, read: readAddress } = addressBook(addressSchema);

export const guildChat = (guild: string): string => `discord:${guild}`;
export const directChat = (channel: string): string => `discord:dm:${channel}`;

/** The shard that a guild's events come to; direct messages come to the first. */
export function shardOf(chat: string, count: number): number {
  const [, guild = ''] = /^discord:(\d+)$/.exec(chat) ?? [];
  return guild === '' ? 0 : Number((BigInt(guild) >> 22n) % BigInt(count));
}
