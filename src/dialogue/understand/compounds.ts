/** Words made of several, as German has them: "Sandsteinwand", "Bohrlochtiefe". */
import { fold } from './normalise.ts';
import type { Vocabulary } from './vocabulary.ts';

const SHORTEST = 6;
const LONGEST = 45;
const MOST_PIECES = 5;

/** Both take a folded word apart, or give null: no piece may be left that is not on the list. */
export interface Splitter {
  /** As the vocabulary tells for this very word. */
  told(word: string): readonly string[] | null;
  found(word: string): readonly string[] | null;
}

export function makeSplitter(compounds: Vocabulary['compounds'], endings: readonly string[]): Splitter {
  if (compounds === undefined) return { told: () => null, found: () => null };
  const parts = new Set(compounds.parts.map(fold));
  const links = ['', ...compounds.links.map(fold)];
  const told = new Map(Object.entries(compounds.told).map(([word, apart]) => [fold(word), fold(apart)]));
  const isLast = (piece: string): boolean =>
    parts.has(piece) || endings.some((end) => piece.endsWith(end) && parts.has(piece.slice(0, -end.length)));

  const split = (rest: string, left: number): string[] | null => {
    if (isLast(rest)) return [rest];
    if (left === 1) return null;
    for (let end = rest.length - 2; end >= 2; end--) {
      const piece = rest.slice(0, end);
      if (!parts.has(piece)) continue;
      for (const link of links) {
        const more = rest.startsWith(link, end) ? split(rest.slice(end + link.length), left - 1) : null;
        if (more !== null) return [piece, ...more];
      }
    }
    return null;
  };
  return {
    told: (word) => told.get(word)?.split(' ') ?? null,
    found: (word) => {
      if (word.length < SHORTEST || word.length > LONGEST) return null;
      const pieces = split(word, MOST_PIECES);
      return pieces !== null && pieces.length > 1 ? pieces : null;
    },
  };
}
