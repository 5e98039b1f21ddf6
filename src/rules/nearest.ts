/** Edit distance in which two neighbouring letters that changed places count once. */
export function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      const cells = [(last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same];
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) cells.push((before[j - 2] ?? 0) + 1);
      row.push(Math.min(...cells));
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** The known word that was most likely meant, or null when none is near. */
export function nearest(word: string, known: readonly string[]): string | null {
  const limit = Math.max(1, Math.floor(word.length / 3));
  let best: string | null = null;
  let least = limit + 1;
  for (const candidate of known) {
    const steps = distance(word, candidate);
    if (steps < least) {
      best = candidate;
      least = steps;
    }
  }
  return best;
}
