/** Typing errors: the one word of the vocabulary that must have been meant, or none. */

/** Damerau's distance (neighbouring letters swapped count once), or `limit + 1` as soon as it is above. */
export function distance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > limit) return limit + 1;
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? limit + 1;
}

export interface KnownWord {
  readonly word: string;
  /** Words with the same meaning may be confused with each other, others not. */
  readonly meaning: string;
  /** Names of metals, adhesives, rocks: guessed only from a near word. */
  readonly guarded: boolean;
}

const CACHE = 5000;

export function makeCorrector(words: readonly KnownWord[]): (word: string) => string | null {
  const byFirst = new Map<string, KnownWord[]>();
  for (const known of words) {
    if (known.word.length < 4 || /\d/.test(known.word)) continue;
    const first = known.word.charAt(0);
    byFirst.set(first, [...(byFirst.get(first) ?? []), known]);
  }
  const cache = new Map<string, string | null>();
  const search = (word: string): string | null => {
    let best: KnownWord[] = [];
    let nearest = word.length >= 8 ? 2 : 1;
    for (const known of byFirst.get(word.charAt(0)) ?? []) {
      const far = distance(word, known.word, nearest);
      if (far > nearest || (far > 1 && known.guarded && word.length < 10)) continue;
      if (far < nearest) best = [];
      nearest = far;
      best.push(known);
    }
    const [first] = best;
    if (first === undefined || best.some((other) => other.meaning !== first.meaning)) return null;
    return first.word;
  };
  return (word) => {
    if (word.length < 5 || word.length > 30) return null;
    const known = cache.get(word);
    if (known !== undefined) return known;
    if (cache.size >= CACHE) cache.clear();
    const fixed = search(word);
    cache.set(word, fixed);
    return fixed;
  };
}
