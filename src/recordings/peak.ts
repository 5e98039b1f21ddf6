/** The greatest load, freed from noise: the top of a noisy curve always lies too high. */
import type { Detail, ReadDetail } from './detail.ts';
import type { Segment } from './segments.ts';
import type { Signal } from './signal.ts';

export interface Peak {
  readonly kn: number;
  readonly time: number;
  readonly row: number;
}

/** Noise that is left in a peak, of its load. */
const wantedShare = 0.0008;
const mostHalf = 200;
/** Never smoothed over more than this share of the rise. */
const riseShare = 0.004;

/** Rows to either side that have to be taken together. */
export function halfWidth(noise: number, kn: number, rowsOfRise: number): number {
  const needed = Math.ceil((noise / (wantedShare * kn)) ** 2 / 2 - 0.5);
  return Math.max(0, Math.min(needed, mostHalf, Math.floor(riseShare * rowsOfRise)));
}

/** A straight line through the rows around each one, evaluated there; at an edge it leans on the rows inside. */
export function smoothTop({ kn, time, firstRow }: Detail, from: number, to: number, half: number): Peak {
  let best = from;
  let bestKn = Number.NEGATIVE_INFINITY;
  const wide = 2 * half + 1;
  for (let i = from; i < to; i += 1) {
    const start = Math.max(from, Math.min(i - half, to - wide));
    const end = Math.min(to, start + wide);
    const count = end - start;
    let [sum, lever] = [0, 0];
    const centre = (start + end - 1) / 2;
    for (let j = start; j < end; j += 1) {
      sum += kn[j] as number;
      lever += (j - centre) * (kn[j] as number);
    }
    const inertia = (count * (count * count - 1)) / 12;
    const value = sum / count + (inertia === 0 ? 0 : (lever / inertia) * (i - centre));
    if (value > bestKn) [best, bestKn] = [i, value];
  }
  // Along a staircase the line shoots over: no peak lies above all that was measured.
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i += 1) highest = Math.max(highest, kn[i] as number);
  return { kn: Math.min(bestKn, highest), time: time[best] as number, row: firstRow + best };
}

/** Block with the greatest load, means of neighbours taken together while they are noisy. */
export function topBlock({ kn, blockNoise, top }: Signal, { from, to }: Segment): number {
  const half = Math.max(0, Math.min(50, Math.ceil((blockNoise / (2 * wantedShare * top)) ** 2 / 2 - 0.5)));
  let best = from;
  let bestKn = Number.NEGATIVE_INFINITY;
  for (let i = from; i <= to; i += 1) {
    let sum = 0;
    let count = 0;
    for (let j = Math.max(from, i - half); j <= Math.min(to, i + half); j += 1) {
      sum += kn[j] as number;
      count += 1;
    }
    if (sum / count > bestKn) [best, bestKn] = [i, sum / count];
  }
  return best;
}

/** The peak in the rows around a block; `edge` is a row behind which something gave way. */
export async function peakNear(
  signal: Signal,
  segment: Segment,
  block: number,
  edge: number | null,
  read: ReadDetail,
): Promise<Peak> {
  const { size } = signal.blocks;
  const half = halfWidth(
    signal.noise,
    Math.max(1e-6, signal.kn[block] as number),
    (block - segment.from) * size,
  );
  const around = Math.max(2 * size + 3 * half, 64);
  const detail = await read(
    Math.max(segment.from * size, block * size - around),
    Math.min(
      (segment.to + 1) * size,
      (block + 1) * size + around,
      edge === null ? Number.POSITIVE_INFINITY : edge + 1,
    ),
  );
  let peak = smoothTop(detail, 0, detail.kn.length, half);
  // Each time the peak is cut out of its fall more closely.
  for (let round = 0; round < 3 && half > 0; round += 1)
    peak = smoothTop(detail, 0, whereItFalls(detail, peak, signal.noise), half);
  return peak;
}

/** A load taken off right after its peak may not be smoothed into it: the row by which it clearly falls. */
function whereItFalls({ kn, firstRow }: Detail, peak: Peak, noise: number): number {
  const level = peak.kn - 2.5 * noise;
  for (let i = peak.row - firstRow + 1; i + 1 < kn.length; i += 1)
    if ((kn[i] as number) < level && (kn[i + 1] as number) < level) return i;
  return kn.length;
}
