/** How much one member and one chat may ask: beyond it one polite line, then silence until the time is over. */
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';

export interface LimitOptions {
  /** Messages of one member in ten seconds. */
  readonly memberIn10s: number;
  /** Messages of one chat in a minute. */
  readonly chatInMinute: number;
}

export const usualLimits: LimitOptions = { memberIn10s: 6, chatInMinute: 40 };

export type Leave = 'go' | 'say-once' | 'silent';

export class Limits {
  readonly #member: RateLimiterMemory;
  readonly #chat: RateLimiterMemory;
  readonly #said: RateLimiterMemory;

  constructor({ memberIn10s, chatInMinute }: LimitOptions) {
    this.#member = new RateLimiterMemory({ points: memberIn10s, duration: 10, keyPrefix: 'member' });
    this.#chat = new RateLimiterMemory({ points: chatInMinute, duration: 60, keyPrefix: 'chat' });
    this.#said = new RateLimiterMemory({ points: 1, duration: 60, keyPrefix: 'said' });
  }

  async ask(chat: string, user: string): Promise<Leave> {
    const member = await has(this.#member, JSON.stringify([chat, user]));
    // What a member is refused does not use up what the chat has.
    if (member && (await has(this.#chat, chat))) return 'go';
    const whose = member ? chat : JSON.stringify([chat, user]);
    return (await has(this.#said, whose)) ? 'say-once' : 'silent';
  }
}

async function has(limiter: RateLimiterMemory, key: string): Promise<boolean> {
  try {
    await limiter.consume(key);
    return true;
  } catch (error) {
    if (error instanceof RateLimiterRes) return false;
    throw error;
  }
}
