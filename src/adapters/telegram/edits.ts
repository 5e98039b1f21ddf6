/** Tells a corrected question from an edit that changed no words: a link that got its preview, a live location. */
import { createHash } from 'node:crypto';

const mostKept = 2000;

export class Edits {
  readonly #known = new Map<string, string>();

  /** Keeps what a message says now. False: it says the same as before. */
  changed(chat: number, message: number, text: string): boolean {
    const key = `${chat}:${message}`;
    const print = createHash('sha256').update(text).digest('base64');
    if (this.#known.get(key) === print) return false;
    this.#known.delete(key);
    this.#known.set(key, print);
    if (this.#known.size > mostKept)
      for (const oldest of this.#known.keys()) {
        this.#known.delete(oldest);
        break;
      }
    return true;
  }
}
