/**
 * What every platform adapter needs besides the answer: each update counts once, each answer is kept until it is
 * delivered, nobody floods a group, a new group is greeted once. Adapters turn platform events into `Incoming`
 * and parcels into platform calls; nothing else.
 */
import type { Ledger, Parcel, Posting } from '../contracts/ledger.ts';
import type { Message } from '../contracts/message.ts';
import type { Phrase } from '../contracts/phrase.ts';
import type { Rendered, Silence } from '../contracts/reply.ts';
import { Lanes } from './lanes.ts';
import { type LimitOptions, Limits, usualLimits } from './limits.ts';

export interface Incoming extends Omit<Posting, 'platform'> {
  readonly message: Message;
}

export interface CommandText {
  readonly name: string;
  readonly description: string;
  /** The name as Discord shows it to members of that language. */
  readonly localName: string;
  /** Only those who look after a chat may use it. */
  readonly admin: boolean;
}

/** Told to whoever measures; nothing of who or what was said. */
export interface PostCounts {
  answered(topic: string, platform: string, seconds: number): void;
  refused(platform: string, why: 'too-fast' | 'seen'): void;
}

/** What the post needs of the rest of the program. */
export interface PostParts {
  readonly platform: string;
  readonly ledger: Ledger;
  readonly languages: readonly string[];
  handle(message: Message, posting: Posting): Promise<Rendered | Silence | null>;
  askOnce(message: Message): Promise<Rendered>;
  say(locale: string | undefined, phrase: Phrase): Promise<string>;
  suggest(typed: string, locale: string | undefined): Promise<readonly string[]>;
  commands(language: string): Promise<readonly CommandText[]>;
  /** Rooms of the chat that are answered in; empty: all. */
  rooms(chat: string): Promise<readonly string[]>;
  readonly limits?: LimitOptions;
  readonly counts?: PostCounts;
  now?(): Date;
}

/** A line of the program's own, without an advice. */
export function noticeOf(message: Pick<Message, 'id' | 'chat' | 'user'>, text: string): Rendered {
  return {
    groups: [[{ text, first: true }]],
    reply: {
      inReplyTo: message.id,
      chat: message.chat,
      user: message.user,
      text,
      choices: [],
      files: [],
      topic: 'unknown',
      facts: {},
      assumed: [],
      missing: [],
      advice: null,
    },
  };
}

export class Post {
  readonly #parts: PostParts;
  readonly #lanes = new Lanes();
  readonly #limits: Limits;

  constructor(parts: PostParts) {
    this.#parts = parts;
    this.#limits = new Limits(parts.limits ?? usualLimits);
  }

  get languages(): readonly string[] {
    return this.#parts.languages;
  }

  /** Null: taken in before, nothing to say, or more than the limit allows (after one polite line). */
  take({ message, claim, address }: Incoming): Promise<Parcel | null> {
    const { chat, user, room = '' } = message;
    return this.#lanes.run(JSON.stringify([chat, room, user]), async () => {
      const { ledger, platform } = this.#parts;
      const { counts } = this.#parts;
      const began = performance.now();
      if (await ledger.seen(claim)) {
        counts?.refused(platform, 'seen');
        return null;
      }
      const leave = await this.#limits.ask(chat, user);
      if (leave !== 'go') counts?.refused(platform, 'too-fast');
      if (leave === 'silent') return null;
      if (leave === 'say-once') {
        const text = await this.say(message.locale, { say: 'too-fast' });
        return { id: claim, address, rendered: noticeOf(message, text), again: false };
      }
      const rendered = await this.#parts.handle(message, { claim, platform, address });
      if (rendered === null || 'silent' in rendered) return null;
      counts?.answered(rendered.reply.topic, platform, (performance.now() - began) / 1000);
      return { id: claim, address, rendered, again: false };
    });
  }

  delivered(id: string): Promise<void> {
    return this.#parts.ledger.delivered(id);
  }

  /** What had not been delivered when the program was stopped. */
  undelivered(): Promise<readonly Parcel[]> {
    return this.#parts.ledger.undelivered(this.#parts.platform);
  }

  /** One answer, nothing kept. */
  askOnce(message: Message): Promise<Rendered> {
    return this.#parts.askOnce(message);
  }

  /** The greeting of a new group, once for ever; null where it was greeted before. */
  async joined(chat: string, address: string, locale?: string): Promise<Parcel | null> {
    const { ledger, platform } = this.#parts;
    const at = (this.#parts.now?.() ?? new Date()).toISOString();
    if (!(await ledger.joined(chat, platform, at))) return null;
    const id = `greeting:${chat}`;
    const text = await this.say(locale, { say: 'group-greeting' });
    const rendered = noticeOf({ id, chat, user: 'chough' }, text);
    const posted = await ledger.post({ claim: id, platform, address }, rendered, at);
    return posted ? { id, address, rendered, again: false } : null;
  }

  /** Blocked, removed, gone: nothing is sent there until it is joined again. */
  left(chat: string): Promise<void> {
    return this.#parts.ledger.left(chat);
  }

  moved(from: string, to: string): Promise<void> {
    return this.#parts.ledger.moved(from, to);
  }

  async allowedRoom(chat: string, room: string | undefined): Promise<boolean> {
    const rooms = await this.#parts.rooms(chat);
    return rooms.length === 0 || (room !== undefined && rooms.includes(room));
  }

  suggest(typed: string, locale?: string): Promise<readonly string[]> {
    return this.#parts.suggest(typed, locale);
  }

  commands(language: string): Promise<readonly CommandText[]> {
    return this.#parts.commands(language);
  }

  say(locale: string | undefined, phrase: Phrase): Promise<string> {
    return this.#parts.say(locale, phrase);
  }
}
