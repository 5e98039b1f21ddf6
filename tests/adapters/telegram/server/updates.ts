/** The queue of updates: kept until confirmed, given to one poller, or called out to a webhook. */
import type { Update } from 'grammy/types';
import { Refused } from './world.ts';

type News = Omit<Update, 'update_id'>;
export type Kind = keyof News;

interface Poller {
  readonly end: (updates: Update[] | Refused) => void;
  readonly limit: number;
}

const conflict = (): Refused =>
  new Refused(
    409,
    'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
  );

export class Updates {
  #queue: Update[] = [];
  #next = 5001;
  #anew = false;
  #poller: Poller | null = null;
  #allowed: readonly string[] | null = null;
  /** The highest offset that a poller confirmed up to. */
  confirmed = 0;
  /** Told of each new update: the webhook. */
  onNew: (() => void) | null = null;

  /** Counts on from another number, as the platform may after a quiet week; an offset beyond it is none. */
  renumber(next: number): void {
    this.#next = next;
    this.#anew = true;
  }

  /** How many updates there ever were. */
  get made(): number {
    return this.#next - 5001;
  }

  get waiting(): readonly Update[] {
    return this.#queue;
  }

  push(news: News): Update {
    const update = { update_id: this.#next, ...news } as Update;
    this.#next += 1;
    const [kind] = Object.keys(news);
    if (this.#allowed !== null && !this.#allowed.includes(kind ?? '')) return update;
    this.put(update);
    return update;
  }

  /** Puts an update in as it is: a second time, or out of order. */
  put(update: Update): void {
    this.#queue.push(update);
    this.#serve();
    this.onNew?.();
  }

  allow(kinds: readonly string[] | undefined): void {
    if (kinds !== undefined) this.#allowed = kinds.length === 0 ? null : kinds;
  }

  get allowed(): readonly string[] | null {
    return this.#allowed;
  }

  remove(update: Update): void {
    this.#queue = this.#queue.filter((one) => one !== update);
  }

  clear(): void {
    this.#queue = [];
  }

  poll(offset: number, limit: number, seconds: number, gone: (leave: () => void) => void): Promise<Update[]> {
    this.#poller?.end(conflict());
    if (offset <= this.#next) this.#anew = false;
    if (offset > 0 && !this.#anew) {
      this.confirmed = Math.max(this.confirmed, offset);
      this.#queue = this.#queue.filter((update) => update.update_id >= offset);
    }
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => poller.end([]), seconds * 1000);
      const poller: Poller = {
        limit,
        end: (answer) => {
          clearTimeout(timer);
          if (this.#poller === poller) this.#poller = null;
          if (answer instanceof Refused) reject(answer);
          else resolve(answer);
        },
      };
      this.#poller = poller;
      gone(() => poller.end([]));
      this.#serve();
    });
  }

  get polled(): boolean {
    return this.#poller !== null;
  }

  #serve(): void {
    if (this.#poller === null || this.#queue.length === 0) return;
    const { end, limit } = this.#poller;
    end(this.#queue.slice(0, limit));
  }
}
