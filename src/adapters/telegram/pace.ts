/** How fast to send: the platform's published limits, kept here so that it need not refuse. */

/** At most `most` in any stretch of `milliseconds`. */
export interface Limit {
  readonly most: number;
  readonly milliseconds: number;
}

export interface Pace {
  readonly chat: Limit;
  readonly group: Limit;
  readonly all: Limit;
}

/** core.telegram.org/bots/faq: about one a second in a chat with short bursts, 20 a minute in a group, 30 a second in all. */
export const publishedPace: Pace = {
  chat: { most: 3, milliseconds: 3000 },
  group: { most: 20, milliseconds: 60_000 },
  all: { most: 30, milliseconds: 1000 },
};

export class Window {
  readonly #limit: Limit;
  #sent: number[] = [];

  constructor(limit: Limit) {
    this.#limit = limit;
  }

  /** How long until one more may go; 0: now. */
  wait(now: number): number {
    const { most, milliseconds } = this.#limit;
    if (this.#sent.length < most) return 0;
    return Math.max(0, (this.#sent[this.#sent.length - most] ?? 0) + milliseconds - now);
  }

  count(now: number): void {
    this.#sent.push(now);
    if (this.#sent.length > this.#limit.most) this.#sent = this.#sent.slice(-this.#limit.most);
  }

  idle(now: number): boolean {
    return (this.#sent.at(-1) ?? 0) + this.#limit.milliseconds <= now;
  }
}
