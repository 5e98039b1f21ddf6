/** Who may change a chat's settings: everybody in private, administrators in groups. */
import type { Api } from 'grammy';
import type { Message } from 'grammy/types';
import type { Logger } from 'pino';

/** The account that administrators who stay anonymous write as. */
export const anonymousAdmin = 1087968824;

const keptFor = 60_000;
const mostKept = 5000;

export class Admins {
  readonly #known = new Map<string, { readonly until: number; readonly is: Promise<boolean> }>();
  readonly #api: Api;
  readonly #log: Logger;

  constructor(api: Api, log: Logger) {
    this.#api = api;
    this.#log = log;
  }

  /** Asked once a minute and member at most. When the platform does not say, nobody is one. */
  isAdmin(chat: number, user: number): Promise<boolean> {
    const key = `${chat}:${user}`;
    const now = Date.now();
    const known = this.#known.get(key);
    if (known !== undefined && known.until > now) return known.is;
    const is = this.#ask(chat, user);
    this.#known.delete(key);
    this.#known.set(key, { until: now + keptFor, is });
    for (const [old, { until }] of this.#known) {
      if (until > now && this.#known.size <= mostKept) break;
      this.#known.delete(old);
    }
    return is;
  }

  async sentByAdmin(message: Message): Promise<boolean> {
    if (message.chat.type === 'private') return true;
    if (message.sender_chat !== undefined) return message.sender_chat.id === message.chat.id;
    return message.from !== undefined && this.isAdmin(message.chat.id, message.from.id);
  }

  async #ask(chat: number, user: number): Promise<boolean> {
    try {
      const { status } = await this.#api.getChatMember(chat, user);
      return status === 'creator' || status === 'administrator';
    } catch (error) {
      this.#known.delete(`${chat}:${user}`);
      this.#log.warn({ err: error }, 'the rights of a member could not be asked for');
      return false;
    }
  }
}
