/** People of an invented club and what they do in their apps, as updates. */
import type { Chat, Message, MessageEntity, Update, User } from 'grammy/types';
import type { TelegramServer } from './server.ts';
import { anonymous, bot, type Room, type Standing } from './world.ts';

export interface SayOptions {
  readonly replyTo?: Message;
  readonly thread?: number;
  readonly extra?: Partial<Message>;
  /** As the group itself: an administrator who stays anonymous. */
  readonly anonymously?: boolean;
}

/** Commands and mentions, as the platform marks them. */
function entitiesOf(text: string): MessageEntity[] {
  const found = (pattern: RegExp, type: 'bot_command' | 'mention'): MessageEntity[] =>
    [...text.matchAll(pattern)].map((match) => ({
      type,
      offset: match.index + (match[0].length - match[0].trimStart().length),
      length: match[0].trim().length,
    }));
  return [
    ...found(/(^|\s)\/[a-z0-9_]{1,32}(@\w+)?/gi, 'bot_command'),
    ...found(/(^|\s)@\w{5,32}/g, 'mention'),
  ].sort((a, b) => a.offset - b.offset);
}

export const group = (
  server: TelegramServer,
  id: number,
  standings: Iterable<readonly [Person, Standing]> = [],
  more: { supergroup?: boolean; topics?: readonly number[] } = {},
): Room => {
  const forum = (more.topics ?? []).length > 0;
  const chat = {
    id,
    title: 'Penrock Rebolters',
    type: more.supergroup === true || forum ? 'supergroup' : 'group',
    ...(forum ? { is_forum: true } : {}),
  } as Chat;
  const room = server.world.add(
    chat,
    [...standings].map(([person, standing]) => [person.user.id, standing] as const),
  );
  for (const topic of more.topics ?? []) room.topics.add(topic);
  return room;
};

export class Person {
  readonly user: User;
  readonly server: TelegramServer;

  constructor(server: TelegramServer, id: number, name: string, language?: string) {
    this.server = server;
    this.user = {
      id,
      is_bot: false,
      first_name: name,
      ...(language === undefined ? {} : { language_code: language }),
    };
  }

  /** The private chat with the bot. */
  get private(): Room {
    const { rooms } = this.server.world;
    return (
      rooms.get(this.user.id) ??
      this.server.world.add({ id: this.user.id, type: 'private', first_name: this.user.first_name })
    );
  }

  send(
    room: Room,
    content: { text?: string; caption?: string; media?: Partial<Message> },
    options: SayOptions = {},
  ): Message {
    const { replyTo, thread, extra, anonymously } = options;
    const words = content.text ?? content.caption;
    return this.server.world.post(
      room,
      anonymously === true ? anonymous : this.user,
      {
        ...content,
        ...(words === undefined ? {} : { entities: entitiesOf(words) }),
        thread,
        replyTo: replyTo === undefined ? undefined : { message_id: replyTo.message_id },
      },
      { ...(anonymously === true ? { sender_chat: room.chat } : {}), ...extra } as Partial<Message>,
    );
  }

  #news(message: Message): Update {
    return this.server.updates.push({ message } as Omit<Update, 'update_id'>);
  }

  say(room: Room, text: string, options: SayOptions = {}): Message {
    const message = this.send(room, { text }, options);
    this.#news(message);
    return message;
  }

  show(
    room: Room,
    content: { caption?: string; media: Partial<Message> },
    options: SayOptions = {},
  ): Message {
    const message = this.send(room, content, options);
    this.#news(message);
    return message;
  }

  /** `size`: what the platform tells of the size, where it is not that of the bytes. */
  upload(
    room: Room,
    name: string,
    bytes: Buffer,
    options: SayOptions & { caption?: string; size?: number } = {},
  ): Message {
    const file = this.server.files.keep(name, bytes);
    const document = {
      ...file,
      file_name: name,
      ...(options.size === undefined ? {} : { file_size: options.size }),
    };
    return this.show(
      room,
      { ...(options.caption === undefined ? {} : { caption: options.caption }), media: { document } },
      options,
    );
  }

  edit(message: Message, change: Partial<Message>): Update {
    const edited = {
      ...message,
      ...change,
      ...(change.text === undefined ? {} : { entities: entitiesOf(change.text) }),
      edit_date: Math.floor(Date.now() / 1000),
    } as Message;
    this.server.world.room(message.chat.id).messages.set(message.message_id, edited);
    return this.server.updates.push({ edited_message: edited } as Omit<Update, 'update_id'>);
  }

  /** Presses a button as it stands under the message now, by its label or, made up, by its data. */
  press(message: Message, label: string, data?: string): string {
    const now = this.server.world.room(message.chat.id).messages.get(message.message_id) ?? message;
    const buttons = now.reply_markup?.inline_keyboard.flat() ?? [];
    const button = buttons.find(({ text }) => text === label);
    const sent =
      data ?? (button !== undefined && 'callback_data' in button ? button.callback_data : undefined);
    if (sent === undefined)
      throw new Error(`no button "${label}" among ${buttons.map(({ text }) => `"${text}"`).join(', ')}`);
    const id = String(4_000_000_000 + this.server.pressed.size);
    this.server.pressed.set(id, { id, answer: null });
    this.server.updates.push({
      callback_query: { id, from: this.user, message: now, chat_instance: '1', data: sent },
    });
    return id;
  }

  /** Types into the inline field of another chat. */
  inline(query: string): string {
    const id = String(9_000_000 + this.server.updates.made);
    this.server.updates.push({ inline_query: { id, from: this.user, query, offset: '' } });
    return id;
  }

  /** Adds the bot to a chat, throws it out, or blocks it. */
  place(room: Room, before: Standing, after: Standing): void {
    if (after === 'kicked' || after === 'left')
      room.botMay = room.chat.type === 'private' ? 'blocked' : 'kicked';
    else room.botMay = 'write';
    this.server.updates.push({
      my_chat_member: {
        chat: room.chat,
        from: this.user,
        date: Math.floor(Date.now() / 1000),
        old_chat_member: { status: before, user: bot },
        new_chat_member: { status: after, user: bot },
      },
    } as unknown as Omit<Update, 'update_id'>);
  }

  /** Makes a supergroup of a group: a new id, and a service message in each. */
  upgrade(old: Room, id: number, news: 'told' | 'untold' = 'told'): Room {
    const next = this.server.world.add(
      { id, type: 'supergroup', title: (old.chat as Chat.GroupChat).title },
      old.standings,
    );
    old.migratedTo = id;
    if (news === 'told') {
      this.#news(this.send(old, {}, { extra: { migrate_to_chat_id: id } as Partial<Message> }));
      this.#news(this.send(next, {}, { extra: { migrate_from_chat_id: old.chat.id } as Partial<Message> }));
    }
    return next;
  }
}
