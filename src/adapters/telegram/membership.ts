/** The bot's own place in a chat: added, thrown out, blocked, and groups that got another id. */
import type { ChatMemberUpdated, Message as Sent } from 'grammy/types';
import { chatKey, writeAddress } from './address.ts';
import type { Desk } from './desk.ts';

type Member = ChatMemberUpdated['new_chat_member'];

const isIn = (member: Member): boolean =>
  member.status === 'restricted' ? member.is_member : !['left', 'kicked'].includes(member.status);

export async function membership(desk: Desk, update: ChatMemberUpdated): Promise<void> {
  const { chat, from, old_chat_member: before, new_chat_member: now } = update;
  if (chat.type === 'channel') return;
  if (!isIn(now)) return desk.post.left(chatKey(chat.id));
  if (isIn(before)) return;
  const locale = from.language_code?.slice(0, 35);
  const address = writeAddress({ chat: chat.id, ...(locale === undefined ? {} : { locale }) });
  const greeting = await desk.post.joined(chatKey(chat.id), address, locale);
  if (greeting === null) return;
  // Whoever unblocks the bot writes to it next, and knows it.
  if (chat.type === 'private') await desk.post.delivered(greeting.id);
  else await desk.outgoing.parcel(greeting);
}

/** Both chats tell of it; whichever is read first moves everything. */
export async function migration(desk: Desk, sent: Sent): Promise<boolean> {
  const { migrate_to_chat_id: to, migrate_from_chat_id: from } = sent;
  if (to !== undefined) await desk.post.moved(chatKey(sent.chat.id), chatKey(to));
  else if (from !== undefined) await desk.post.moved(chatKey(from), chatKey(sent.chat.id));
  return to !== undefined || from !== undefined;
}
