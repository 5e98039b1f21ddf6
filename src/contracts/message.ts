import { z } from 'zod';

/** One thing a member sent, whatever the platform. The pipe protocol is this object, one a line. */
export const messageSchema = z.strictObject({
  id: z.string().min(1).max(200),
  chat: z.string().min(1).max(200),
  user: z.string().min(1).max(200),
  /** A channel, thread or topic within the chat: a member's talk is one a room, the club's settings one a chat. */
  room: z.string().min(1).max(200).optional(),
  /** May this member change the chat's settings? Absent where the bridge does not tell: then it is trusted. */
  admin: z.boolean().optional(),
  text: z.string().optional(),
  locale: z.string().max(35).optional(),
  at: z.iso.datetime({ offset: true }).optional(),
  press: z.string().max(200).optional(),
  place: z.strictObject({ lat: z.number(), lon: z.number() }).optional(),
  file: z.strictObject({ name: z.string().max(255), base64: z.string() }).optional(),
});

export type Message = z.infer<typeof messageSchema>;

export interface Choice {
  readonly id: string;
  readonly label: string;
}

export interface ReplyFile {
  readonly name: string;
  readonly mime: string;
  readonly base64: string;
  /** Alternative text: what a member who cannot see the picture needs to know. */
  readonly alt: string;
}
