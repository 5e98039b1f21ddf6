/**
 * Answers and next questions are pure functions of topic, facts and rule set: the same question of the next member
 * need not be worked out again. The key is all that goes in, so nothing can go stale; a new rule set means a new memo.
 */
import { LRUCache } from 'lru-cache';

/** Enough for a club's season of different questions, and bounded: an advice takes some ten kilobytes. */
const remembered = { advice: 1500, question: 10_000 };

export class Memo<T extends object> {
  readonly #known: LRUCache<string, Promise<T>>;

  constructor(kind: keyof typeof remembered) {
    this.#known = new LRUCache({ max: remembered[kind] });
  }

  get(key: readonly unknown[], work: () => Promise<T>): Promise<T> {
    const name = JSON.stringify(key);
    const known = this.#known.get(name);
    if (known !== undefined) return known;
    const result = work();
    this.#known.set(name, result);
    // What failed is worked out anew when it is asked again.
    result.catch(() => this.#known.delete(name));
    return result;
  }
}
