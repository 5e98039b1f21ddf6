/** Phrases in a tree of words: the longest one that starts at a word is found in one walk. */
import type { Token } from './tokens.ts';

/** A token with the forms under which the vocabulary may know it: itself, without ending, corrected. */
export interface Word extends Token {
  readonly forms: readonly string[];
}

export interface Match<T> {
  readonly from: number;
  /** One past the last word. */
  readonly to: number;
  readonly said: readonly T[];
}

interface Node<T> {
  readonly next: Map<string, Node<T>>;
  readonly said: T[];
}

/** "À la": so many articles in a row. */
const MOST_SKIPPED = 2;

const emptyNode = <T>(): Node<T> => ({ next: new Map(), said: [] });
/** "A4" and "A 4" are different phrases. */
const keyOf = (text: string, glued: boolean): string => (glued ? `~${text}` : text);

export class PhraseTree<T> {
  readonly #root: Node<T> = emptyNode();
  readonly #skipped: ReadonlySet<string>;

  /** `skipped`: articles, which may stand inside a phrase without being part of it. */
  constructor(skipped: ReadonlySet<string> = new Set()) {
    this.#skipped = skipped;
  }

  add(phrase: readonly Token[], said: T): void {
    let node = this.#root;
    phrase.forEach((token, index) => {
      const key = keyOf(token.text, index > 0 && token.glued);
      let next = node.next.get(key);
      if (next === undefined) {
        next = emptyNode();
        node.next.set(key, next);
      }
      node = next;
    });
    if (phrase.length > 0 && !node.said.includes(said)) node.said.push(said);
  }

  /** The longest phrase that starts at `from`; a word as it was written wins over a corrected one. */
  longest(words: readonly Word[], from: number, looseEnd = false): Match<T> | null {
    // Most words start no phrase of most trees.
    if (words[from]?.forms.some((form) => this.#root.next.has(form)) !== true) return null;
    let best: Match<T> | null = null;
    const walk = (node: Node<T>, at: number, skipped = 0): void => {
      const after = words[at];
      const ends = looseEnd || after === undefined || !after.glued;
      if (skipped === 0 && node.said.length > 0 && ends && at > (best?.to ?? from))
        best = { from, to: at, said: node.said };
      const word = after;
      if (word === undefined || node.next.size === 0) return;
      for (const form of word.forms) {
        const next = node.next.get(keyOf(form, at > from && word.glued));
        if (next !== undefined) walk(next, at + 1);
      }
      if (at > from && skipped < MOST_SKIPPED && this.#skipped.has(word.text))
        walk(node, at + 1, skipped + 1);
    };
    walk(this.#root, from);
    return best;
  }

  /** Left to right, longest first, without overlap. */
  all(words: readonly Word[], free: (index: number) => boolean = () => true): Match<T>[] {
    const matches: Match<T>[] = [];
    for (let at = 0; at < words.length; ) {
      const match = free(at) && words[at]?.glued !== true ? this.longest(words, at) : null;
      if (match !== null) matches.push(match);
      at = match?.to ?? at + 1;
    }
    return matches;
  }

  /** The longest at every word, also where they overlap, but none that lies inside another. */
  everywhere(words: readonly Word[]): Match<T>[] {
    const matches: Match<T>[] = [];
    words.forEach((word, at) => {
      const match = word.glued ? null : this.longest(words, at);
      if (match !== null && match.to > (matches.at(-1)?.to ?? 0)) matches.push(match);
    });
    return matches;
  }

  /** Both: "hole for a" and "a 12 mm" share a word, and either may be what is meant. */
  either(words: readonly Word[]): Match<T>[] {
    const plain = this.all(words);
    const ends = new Map(plain.map(({ from, to }) => [from, to]));
    const more = this.everywhere(words).filter(({ from, to }) => ends.get(from) !== to);
    return [...plain, ...more].sort((a, b) => a.from - b.from || a.to - b.to);
  }

  /** Whether a phrase covers exactly these words. */
  covers(words: readonly Word[]): boolean {
    return words.length > 0 && this.longest(words, 0)?.to === words.length;
  }
}
