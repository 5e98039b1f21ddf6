/** A member's message becomes a `Message` and is taken; what comes back is sent. */
import type { Context } from 'grammy';
import type { Message as Sent } from 'grammy/types';
import type { Message } from '../../contracts/message.ts';
import { type Address, chatKey, writeAddress } from './address.ts';
import { claimOf, type Desk } from './desk.ts';
import { hear } from './hear.ts';

/** Topics are rooms; the id of a reply chain is none, nor is the general topic. */
const threadOf = (sent: Sent): number | undefined =>
  sent.is_topic_message === true ? sent.message_thread_id : undefined;

export function addressOf(sent: Sent): Address {
  const { chat, from, message_id } = sent;
  const thread = threadOf(sent);
  return {
    chat: chat.id,
    ...(thread === undefined ? {} : { thread }),
    ...(chat.type === 'private' ? {} : { replyTo: message_id }),
    ...(from === undefined ? {} : { owner: from.id }),
    ...(from?.language_code === undefined ? {} : { locale: from.language_code.slice(0, 35) }),
  };
}

/** A member who writes as a channel or as the group is that, not the account that stands in for it. */
const userOf = (sent: Sent): string => chatKey(sent.sender_chat?.id ?? sent.from?.id ?? 0);

/** About a hundred metres: enough for the distance to the sea, too coarse for a front door. */
const coarse = (degrees: number): number => Math.round(degrees * 1000) / 1000;

/** Things with a content that the bot cannot take in; all else without words is news of the platform. */
const unreadable = [
  'photo',
  'video',
  'voice',
  'audio',
  'video_note',
  'sticker',
  'animation',
  'contact',
  'poll',
  'story',
] as const;

type Content = Pick<Message, 'text' | 'place' | 'file'>;

export class Inbox {
  readonly #desk: Desk;

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  async message(context: Context, sent: Sent): Promise<void> {
    const { edits, hearing } = this.#desk;
    const heard = hear(sent, hearing);
    if (heard === null) return;
    const words = sent.text ?? sent.caption;
    if (words !== undefined) edits.changed(sent.chat.id, sent.message_id, words);
    const content = await this.#content(sent, heard.text);
    if (content !== null) await this.#take(context, sent, content);
  }

  /** A question that was corrected is answered anew, as what was said last; all other edits are passed over. */
  async edited(context: Context, sent: Sent): Promise<void> {
    const { edits, hearing } = this.#desk;
    if (sent.text === undefined) return;
    const heard = hear(sent, hearing);
    if (heard?.text === undefined || !edits.changed(sent.chat.id, sent.message_id, sent.text)) return;
    await this.#take(context, sent, { text: heard.text });
  }

  async #content(sent: Sent, text: string | undefined): Promise<Content | null> {
    if (sent.location !== undefined) {
      const { latitude, longitude } = sent.location;
      return { place: { lat: coarse(latitude), lon: coarse(longitude) } };
    }
    if (sent.document !== undefined && sent.animation === undefined) return this.#file(sent, text);
    if (unreadable.some((kind) => sent[kind] !== undefined)) {
      await this.#say(sent, 'telegram-only-words');
      return text === undefined ? null : { text };
    }
    if (text !== undefined) return { text };
    // A bare mention asks for help; a message without words is news of the platform.
    return sent.text === undefined ? null : { text: '/help' };
  }

  async #file(sent: Sent, text: string | undefined): Promise<Content | null> {
    if (sent.document === undefined) return null;
    const fetched = await this.#desk.fetchFile(sent.document);
    if (fetched.kind === 'file')
      return {
        file: { name: fetched.name, base64: fetched.base64 },
        ...(text === undefined ? {} : { text }),
      };
    if (fetched.kind === 'failed') this.#desk.log.warn({ err: fetched.error }, 'a file could not be fetched');
    await this.#say(sent, fetched.kind === 'too-big' ? 'telegram-file-too-big' : 'telegram-file-failed');
    return null;
  }

  async #say(sent: Sent, phrase: string): Promise<void> {
    const to = addressOf(sent);
    this.#desk.outgoing.notice(to, await this.#desk.post.say(to.locale, { say: phrase }));
  }

  async #take(context: Context, sent: Sent, content: Content): Promise<void> {
    const { post, outgoing, admins } = this.#desk;
    const to = addressOf(sent);
    const chat = chatKey(to.chat);
    const room = to.thread === undefined ? undefined : String(to.thread);
    const admin = await admins.sentByAdmin(sent);
    // Whoever looks after the chat must be able to take a limit back from wherever it was set.
    if (!admin && !(await post.allowedRoom(chat, room))) return;
    const claim = claimOf(this.#desk, context.update.update_id);
    const parcel = await post.take({
      message: {
        id: claim,
        chat,
        user: userOf(sent),
        ...(room === undefined ? {} : { room }),
        admin,
        ...(to.locale === undefined ? {} : { locale: to.locale }),
        at: new Date((sent.edit_date ?? sent.date) * 1000).toISOString(),
        ...content,
      },
      claim,
      address: writeAddress(to),
    });
    if (parcel !== null) await outgoing.parcel(parcel);
  }
}
