import { type Match, PhraseTree, type Word } from './phrases.ts';
import type { Token } from './tokens.ts';

/** How many words may stand in a hole: `*`, `**`. */
const WIDEST = [0, 2, 5];

interface Gapped<T> {
  readonly segments: readonly (readonly Token[])[];
  readonly holes: readonly number[];
  readonly said: T;
}

const fits = (words: readonly Word[], at: number, segment: readonly Token[]): boolean =>
  segment.every((token, index) => words[at + index]?.forms.includes(token.text) === true);

/** Phrases that may have holes: "how * deep" is "how far in and deep" as well as "how deep". */
export class Cues<T> {
  readonly #whole: PhraseTree<T>;
  readonly #gapped = new Map<string, Gapped<T>[]>();

  constructor(articles: ReadonlySet<string> = new Set()) {
    this.#whole = new PhraseTree(articles);
  }

  add(phrase: readonly Token[], said: T): void {
    const segments: Token[][] = [[]];
    const holes: number[] = [];
    for (const [index, token] of phrase.entries()) {
      if (token.text !== '*') segments.at(-1)?.push(token);
      else if (phrase[index - 1]?.text === '*') holes[holes.length - 1] = 2;
      else {
        segments.push([]);
        holes.push(1);
      }
    }
    const first = segments[0]?.[0];
    if (segments.length === 1 || first === undefined) this.#whole.add(phrase, said);
    else this.#gapped.set(first.text, [...(this.#gapped.get(first.text) ?? []), { segments, holes, said }]);
  }

  find(words: readonly Word[]): Match<T>[] {
    const found = this.#whole.everywhere(words);
    if (this.#gapped.size === 0) return found;
    // Most cues need a word that the message does not have.
    const there = new Set(words.flatMap(({ forms }) => forms));
    const able = new Map<string, readonly Gapped<T>[]>();
    for (const form of there) {
      const cues = this.#gapped
        .get(form)
        ?.filter(({ segments }) => segments.every((segment) => segment.every(({ text }) => there.has(text))));
      if (cues !== undefined && cues.length > 0) able.set(form, cues);
    }
    if (able.size === 0) return found;
    words.forEach((word, from) => {
      for (const form of word.forms)
        for (const cue of able.get(form) ?? []) {
          const to = this.#end(words, from, cue);
          if (to !== null) found.push({ from, to, said: [cue.said] });
        }
    });
    return found.sort((a, b) => a.from - b.from);
  }

  #end(words: readonly Word[], from: number, { segments, holes }: Gapped<T>): number | null {
    let at = from;
    for (const [index, segment] of segments.entries()) {
      const last = index === 0 ? at : at + (WIDEST[holes[index - 1] ?? 0] ?? 0);
      while (at <= last && !(fits(words, at, segment) && words[at]?.sentence === words[from]?.sentence)) at++;
      if (at > last) return null;
      at += segment.length;
    }
    return at;
  }
}
