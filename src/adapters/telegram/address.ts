/** Where an answer goes: kept with it as text, so that it can be sent after a restart. */
import { z } from 'zod';
import { addressBook } from '../address.ts';

const addressSchema = z.strictObject({
  chat: z.number().int(),
  /** A topic of a forum; its general topic has none. */
  thread: z.number().int().optional(),
  /** The message that is answered, in groups. */
  replyTo: z.number().int().optional(),
  /** Who may press the buttons. */
  owner: z.number().int().optional(),
  locale: z.string().optional(),
});

export type Address = z.infer<typeof addressSchema>;

export const { write: writeAddress, read: readAddress } = addressBook(addressSchema);

/** Ids of other platforms are numbers too: ours say whose they are. */
export const chatKey = (id: number): string => `telegram:${id}`;

/** Groups and supergroups have negative ids. */
export const isGroup = (chat: number): boolean => chat < 0;
