/**
 * What is meant for the bot: everything in private; in groups commands, replies to it and mentions of it. To all else
 * it is silent, also where it may read along.
 */
import type { Message, User } from 'grammy/types';
import { anonymousAdmin } from './admin.ts';

export interface Hearing {
  readonly me: Pick<User, 'id'> & { readonly username: string };
  /** Names of commands: a bare command of another bot is none of ours. */
  readonly commands: ReadonlySet<string>;
}

/** `text` without the mention; undefined where there is none. */
export type Heard = { readonly text: string | undefined } | null;

const commandPattern = /^\/([a-z0-9_]{1,32})(?:@(\w+))?(?=\s|$)/i;

/** For another bot, though it is heard in private or by a reply. */
const forOther = (text: string, me: string): boolean => {
  const to = commandPattern.exec(text)?.[2];
  return to !== undefined && to.toLowerCase() !== me.toLowerCase();
};

/** From the end to the start, so that the places before stay right. */
function withoutMention(message: Message, hearing: Hearing): { text: string; mentioned: boolean } {
  let text = message.text ?? message.caption ?? '';
  let mentioned = false;
  const entities = message.entities ?? message.caption_entities ?? [];
  for (const entity of [...entities].sort((a, b) => b.offset - a.offset)) {
    const { offset, length } = entity;
    const named = text.slice(offset, offset + length);
    const ours =
      (entity.type === 'mention' && named.toLowerCase() === `@${hearing.me.username.toLowerCase()}`) ||
      (entity.type === 'text_mention' && entity.user.id === hearing.me.id);
    if (!ours) continue;
    mentioned = true;
    text = `${text.slice(0, offset).trimEnd()} ${text.slice(offset + length).trimStart()}`;
  }
  return { text: text.trim(), mentioned };
}

function ofNobody(message: Message, me: number): boolean {
  const { from, sender_chat, via_bot, is_automatic_forward } = message;
  if (is_automatic_forward === true || via_bot?.id === me) return true;
  // Other bots are not answered; a member who writes as a channel or as the group is no bot.
  return from === undefined || (from.is_bot && sender_chat === undefined && from.id !== anonymousAdmin);
}

export function hear(message: Message, hearing: Hearing): Heard {
  const { me, commands } = hearing;
  if (message.chat.type === 'channel' || ofNobody(message, me.id)) return null;
  const { text, mentioned } = withoutMention(message, hearing);
  if (forOther(text, me.username)) return null;
  const words = text === '' ? undefined : text;
  if (message.chat.type === 'private') return { text: words };
  const [, name, to] = commandPattern.exec(text) ?? [];
  const commanded = name !== undefined && (to !== undefined || commands.has(name.toLowerCase()));
  const replied = message.reply_to_message?.from?.id === me.id;
  return commanded || replied || mentioned ? { text: words } : null;
}
