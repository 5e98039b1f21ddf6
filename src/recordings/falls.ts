/**
 * Sharp falls of the load. Something that gives way does so within a tenth of a second and then is over; a valve that is
 * opened takes longer, so that as much is lost in the tenth before or after. This, and not the size, tells them apart.
 */
import type { Segment } from './segments.ts';
import type { Signal } from './signal.ts';

export interface Fall {
  /** Block before it, and block by which it is over. */
  readonly from: number;
  readonly to: number;
  readonly fromKn: number;
  readonly toKn: number;
}

const spanS = 0.1;
/** Of the greatest load so far in this pull. */
export const leastFall = 0.05;
const fromShare = 0.4;
/** The tenth of a second with the fall loses so many times more than its neighbours. */
const contrast = 2.5;

export const spanOf = ({ blockStep }: Signal): number => Math.max(2, Math.ceil(spanS / blockStep - 1e-6));

export function fallsIn(signal: Signal, { from, to }: Segment): Fall[] {
  const { kn, count, blockNoise } = signal;
  const span = spanOf(signal);
  const at = (i: number): number => kn[Math.min(count - 1, Math.max(0, i))] as number;
  // Means of the rows before and after, never of the fall itself: noise alone makes no fall.
  const few = Math.max(1, Math.floor(span / 3));
  const start = from - 3 * span;
  const sums = new Float64Array(to - from + 9 * span);
  for (let j = 1; j < sums.length; j += 1) sums[j] = (sums[j - 1] as number) + at(start + j - 1);
  const mean = (first: number): number =>
    ((sums[first + few - start] as number) - (sums[first - start] as number)) / few;
  const lost = (i: number): number => mean(i - few + 1) - mean(i + span);
  const slack = 2 * blockNoise * Math.sqrt(2 / few);
  const found: Fall[] = [];
  let greatest = 0;
  for (let i = from; i <= to && i < count - 1; i += 1) {
    if (at(i) > greatest) greatest = at(i);
    const enough = Math.max(leastFall * greatest, 8 * blockNoise);
    if (at(i) - at(i + span) < enough / 2 || lost(i) < enough || at(i) < fromShare * greatest) continue;
    let best = i;
    for (let j = i + 1; j <= i + span && j < count - 1; j += 1) {
      if (at(j) > greatest) greatest = at(j);
      if (lost(j) > lost(best)) best = j;
    }
    // The last block that is still up: the mean over the fall itself says little.
    const fall = lost(best);
    const before = mean(Math.max(from, best - span) - few + 1) - mean(best - few + 1);
    const after = mean(best + span) - mean(best + 2 * span);
    const cutOff = best + 2 * span > count - 1;
    const isolated =
      fall > contrast * (Math.max(0, before, after) + slack) && (!cutOff || fall > 0.5 * at(best));
    if (!isolated) {
      i += span >> 2;
      continue;
    }
    found.push({
      from: best,
      to: Math.min(count - 1, best + span),
      fromKn: at(best),
      toKn: settled(at, best, span),
    });
    i = best + span;
  }
  return found;
}

/** Where the load comes to rest after a fall: the lowest mean of three. */
function settled(at: (i: number) => number, from: number, span: number): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = from + 1; i <= from + span + Math.ceil(span / 2); i += 1)
    lowest = Math.min(lowest, span > 4 ? (at(i) + at(i + 1) + at(i + 2)) / 3 : at(i));
  return Math.max(0, lowest);
}
