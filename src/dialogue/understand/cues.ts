import { type Match, PhraseTree, type Word } from './phrases.ts';
import type { Token } from './tokens.ts';

const WIDEST_GAP = 4;

interface Gapped<T> {
  readonly segments: readonly (readonly Token[])[];
  readonly said: T;
}

const fits = (words: readonly Word[], at: number, segment: readonly Token[]): boolean =>
  segment.every((token, index) => words[at + index]?.forms.includes(token.text) === true);

/** Phrases that may have holes: "how * deep" is "how far in and deep" as well as "how deep". */
export class Cues<T> {
  readonly #whole = new PhraseTree<T>();
  readonly #gapped = new Map<string, Gapped<T>[]>();

  add(phrase: readonly Token[], said: T): void {
    const segments: Token[][] = [[]];
    for (const token of phrase) {
      if (token.text === '*') segments.push([]);
      else segments.at(-1)?.push(token);
    }
    const first = segments[0]?.[0];
    if (segments.length === 1 || first === undefined) this.#whole.add(phrase, said);
    else this.#gapped.set(first.text, [...(this.#gapped.get(first.text) ?? []), { segments, said }]);
  }

  find(words: readonly Word[]): Match<T>[] {
    const found = this.#whole.all(words);
    if (this.#gapped.size === 0) return found;
    words.forEach((word, from) => {
      for (const form of word.forms)
        for (const cue of this.#gapped.get(form) ?? []) {
          const to = this.#end(words, from, cue.segments);
          if (to !== null) found.push({ from, to, said: [cue.said] });
        }
    });
    return found.sort((a, b) => a.from - b.from);
  }

  #end(words: readonly Word[], from: number, segments: Gapped<T>['segments']): number | null {
    let at = from;
    for (const [index, segment] of segments.entries()) {
      const last = index === 0 ? at : at + WIDEST_GAP;
      while (at <= last && !(fits(words, at, segment) && words[at]?.sentence === words[from]?.sentence)) at++;
      if (at > last) return null;
      at += segment.length;
    }
    return at;
  }
}
