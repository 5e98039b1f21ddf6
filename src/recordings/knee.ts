/** The very row after which a sharp fall begins. */
import type { Detail, ReadDetail } from './detail.ts';
import { type Fall, spanOf } from './falls.ts';
import type { Signal } from './signal.ts';

export interface Knee {
  readonly row: number;
  readonly time: number;
  /** Load at the knee, by the line before it. */
  readonly kn: number;
}

const fewestBefore = 40;
const mostBefore = 400;

interface Line {
  readonly at: (index: number) => number;
}

function lineThrough(kn: Float64Array, from: number, to: number): Line {
  const count = to - from;
  let [sum, sumX, sumXX, sumXY] = [0, 0, 0, 0];
  for (let i = from; i < to; i += 1) {
    const x = i - from;
    const y = kn[i] as number;
    sum += y;
    sumX += x;
    sumXX += x * x;
    sumXY += x * y;
  }
  const spread = count * sumXX - sumX * sumX;
  const slope = spread === 0 ? 0 : (count * sumXY - sumX * sum) / spread;
  const start = (sum - slope * sumX) / count;
  return { at: (index) => start + slope * (index - from) };
}

/** First row below the level, and the next one as well. */
function crossing(kn: Float64Array, level: number, from: number): number {
  for (let i = from; i < kn.length; i += 1)
    if ((kn[i] as number) < level && (i + 1 >= kn.length || (kn[i + 1] as number) < level)) return i;
  return kn.length - 1;
}

/** Last row before `from` that is still at or above the level. */
function stillAbove(kn: Float64Array, level: number, from: number): number {
  let i = from;
  while (i > 0 && (kn[i] as number) < level) i -= 1;
  return i;
}

/**
 * The load goes on along its line up to the knee and then falls by a straight line: of all rows that the knee may be at,
 * the one that leaves the least squares.
 */
function hinge(kn: Float64Array, before: Line, first: number, last: number): number {
  let best = first;
  let bestSquares = Number.POSITIVE_INFINITY;
  const start = Math.max(0, first - (last - first));
  for (let knee = first; knee < last; knee += 1) {
    let [xy, xx] = [0, 0];
    for (let i = knee + 1; i <= last; i += 1) {
      const x = i - knee;
      xy += x * ((kn[i] as number) - before.at(i));
      xx += x * x;
    }
    const slope = xx === 0 ? 0 : xy / xx;
    let squares = 0;
    for (let i = start; i <= last; i += 1) {
      const rest = (kn[i] as number) - before.at(i) - (i > knee ? slope * (i - knee) : 0);
      squares += rest * rest;
    }
    if (squares < bestSquares) [best, bestSquares] = [knee, squares];
  }
  return best;
}

function kneeIn({ kn, time, firstRow }: Detail, fall: Fall, noise: number, from: number): Knee {
  const height = fall.fromKn - fall.toKn;
  const half = crossing(kn, fall.toKn + height / 2, from);
  const high = stillAbove(kn, fall.toKn + 0.85 * height, half);
  const low = crossing(kn, fall.toKn + 0.15 * height, high);
  const length = Math.max(1, (low - high) / 0.7);
  const reach = Math.ceil(1.5 * length) + 3;
  const clear = Math.max(2, high - reach);
  const back = Math.min(mostBefore, Math.max(fewestBefore, Math.round(length)));
  const line = lineThrough(kn, Math.max(0, clear - back), clear);
  let row = high;
  if (length > 3) row = hinge(kn, line, clear, Math.max(high + 1, Math.round((high + half) / 2)));
  else {
    // A row or two: the last one that is not yet part of it.
    const slack = Math.max(4 * noise, 0.03 * height);
    while (row > clear && (kn[row - 1] as number) - (kn[row] as number) > slack) row -= 1;
  }
  const kneeKn =
    length > 3 || noise > 0.001 * fall.fromKn
      ? line.at(row)
      : Math.max(...kn.subarray(Math.max(0, row - 2), row + 1));
  return { row: firstRow + row, time: time[row] as number, kn: kneeKn };
}

export async function kneeOf(signal: Signal, fall: Fall, read: ReadDetail): Promise<Knee> {
  const { size } = signal.blocks;
  const span = spanOf(signal);
  const before = Math.max(2 * span * size, fewestBefore + 8);
  const detail = await read(fall.from * size - before, (fall.to + span + 1) * size);
  const from = Math.max(0, (fall.from - 1) * size - detail.firstRow);
  return kneeIn(detail, fall, signal.noise, from);
}
