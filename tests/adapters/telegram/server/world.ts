/** Chats, members and messages as the platform holds them. */
import type { Chat, Message, MessageEntity, User } from 'grammy/types';

/** An error that the platform answers with. */
export class Refused extends Error {
  override readonly name = 'Refused';
  constructor(
    readonly code: number,
    description: string,
    readonly parameters?: { readonly retry_after?: number; readonly migrate_to_chat_id?: number },
  ) {
    super(description);
  }
}

export type Standing = 'creator' | 'administrator' | 'member' | 'left' | 'kicked';

export interface Room {
  chat: Chat;
  readonly standings: Map<number, Standing>;
  readonly topics: Set<number>;
  readonly messages: Map<number, Message>;
  nextId: number;
  /** The bot's own place in it. */
  botMay: 'write' | 'kicked' | 'blocked';
  migratedTo: number | null;
}

export const bot: User & { username: string } = {
  id: 7000000001,
  is_bot: true,
  first_name: 'Chough',
  username: 'chough_test_bot',
};

/** Who an administrator that stays anonymous is shown as: the id is from memory. */
export const anonymous: User = {
  id: 1087968824,
  is_bot: true,
  first_name: 'Group',
  username: 'GroupAnonymousBot',
};

export interface Content {
  readonly text?: string;
  readonly caption?: string;
  readonly entities?: MessageEntity[];
  readonly markup?: Message['reply_markup'];
  readonly thread?: number | undefined;
  readonly replyTo?: { message_id: number; allow_sending_without_reply?: boolean | undefined } | undefined;
  readonly media?: Partial<Message>;
}

export class World {
  readonly rooms = new Map<number, Room>();

  add(chat: Chat, standings: Iterable<readonly [number, Standing]> = []): Room {
    const room: Room = {
      chat,
      standings: new Map(standings),
      topics: new Set(),
      messages: new Map(),
      nextId: 1,
      botMay: 'write',
      migratedTo: null,
    };
    this.rooms.set(chat.id, room);
    return room;
  }

  room(id: number): Room {
    const room = this.rooms.get(id);
    if (room === undefined) throw new Refused(400, 'Bad Request: chat not found');
    return room;
  }

  /** A room that the bot may write into, or the error that the platform answers with. */
  writable(id: number): Room {
    const room = this.room(id);
    if (room.migratedTo !== null)
      throw new Refused(400, 'Bad Request: group chat was upgraded to a supergroup chat', {
        migrate_to_chat_id: room.migratedTo,
      });
    if (room.botMay === 'kicked')
      throw new Refused(403, `Forbidden: bot was kicked from the ${room.chat.type} chat`);
    if (room.botMay === 'blocked') throw new Refused(403, 'Forbidden: bot was blocked by the user');
    return room;
  }

  post(room: Room, from: User, content: Content, extra: Partial<Message> = {}): Message {
    const { text, caption, entities, markup, thread, replyTo, media } = content;
    if (thread !== undefined && !room.topics.has(thread))
      throw new Refused(400, 'Bad Request: message thread not found');
    const answered = replyTo === undefined ? undefined : room.messages.get(replyTo.message_id);
    if (replyTo !== undefined && answered === undefined && replyTo.allow_sending_without_reply !== true)
      throw new Refused(400, 'Bad Request: message to be replied not found');
    const message = {
      message_id: room.nextId,
      date: Math.floor(Date.now() / 1000),
      chat: room.chat,
      from,
      ...(thread === undefined ? {} : { message_thread_id: thread, is_topic_message: true }),
      ...(answered === undefined ? {} : { reply_to_message: { ...answered, reply_to_message: undefined } }),
      ...(text === undefined ? {} : { text }),
      ...(caption === undefined ? {} : { caption }),
      ...(entities === undefined || entities.length === 0
        ? {}
        : { [caption === undefined ? 'entities' : 'caption_entities']: entities }),
      ...(markup === undefined ? {} : { reply_markup: markup }),
      ...media,
      ...extra,
    } as Message;
    room.nextId += 1;
    room.messages.set(message.message_id, message);
    return message;
  }

  own(room: Room, id: number): Message {
    const message = room.messages.get(id);
    if (message === undefined) throw new Refused(400, 'Bad Request: message to edit not found');
    if (message.from?.id !== bot.id) throw new Refused(400, "Bad Request: message can't be edited");
    return message;
  }
}
