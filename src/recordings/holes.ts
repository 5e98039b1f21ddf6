/** A cell that drops out falls at once and is back at once; a load that was lost has to be built up again. */
import type { Signal } from './signal.ts';

const longestS = 2;
const fallShare = 0.15;
const backShare = 0.8;

export function fillHoles(signal: Signal): void {
  const { kn, least, most, count, blockNoise, blockStep, holes, time } = signal;
  const reach = Math.max(4, Math.ceil(longestS / blockStep));
  let greatest = 0;
  for (let i = 1; i < count - 1; i += 1) {
    const before = kn[i - 1] as number;
    if (before > greatest) greatest = before;
    const fall = before - (kn[i] as number);
    if (fall < fallShare * greatest || fall < 10 * blockNoise || before <= 0) continue;
    const back = endOfHole(kn, i, Math.min(count - 1, i + reach));
    if (back === null) continue;
    const after = kn[back] as number;
    const span = (time[back] as number) - (time[i - 1] as number);
    for (let inside = i; inside < back; inside += 1) {
      const share = ((time[inside] as number) - (time[i - 1] as number)) / span;
      const laid = before + (after - before) * share;
      kn[inside] = laid;
      least[inside] = laid;
      most[inside] = laid;
    }
    holes.push([i, back - 1]);
    i = back;
  }
}

/** The first block at which the load is back, if it came back within two blocks. */
function endOfHole(kn: Float64Array, from: number, last: number): number | null {
  const before = kn[from - 1] as number;
  const lost = before - (kn[from] as number);
  for (let i = from + 1; i <= last; i += 1) {
    const now = kn[i] as number;
    if (now < before * backShare) continue;
    const earlier = kn[Math.max(from, i - 2)] as number;
    // It may have gone on rising meanwhile, at twice its pace before at most.
    const risen = Math.max(0, before - (kn[Math.max(0, from - 1 - (i - from))] as number));
    return now - earlier > 0.6 * lost && now < before * 1.1 + 2 * risen ? i : null;
  }
  return null;
}
