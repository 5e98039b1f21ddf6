/** The recording as blocks, put upright: load positive, reading at rest taken off, noise known. */
import type { Blocks } from './blocks.ts';

export interface Signal {
  readonly blocks: Blocks;
  readonly count: number;
  /** Mean load of each block. */
  readonly kn: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
  readonly mm: Float64Array | null;
  /** Middle of each block. */
  readonly time: Float64Array;
  readonly top: number;
  readonly sign: 1 | -1;
  readonly restKn: number;
  /** It never comes back to zero, and whether that is pre-load or an error of the zero nobody can tell. */
  readonly neverRests: boolean;
  /** Spread of the noise of one row, and of the mean of a block. */
  readonly noise: number;
  readonly blockNoise: number;
  /** Seconds between rows and between blocks. */
  readonly step: number;
  readonly blockStep: number;
  /** Parts in which the cell dropped out and came back; laid straight. First and last block. */
  readonly holes: (readonly [first: number, last: number])[];
}

export const middle = (values: readonly number[] | Float64Array): number => {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[half] as number)
    : ((sorted[half - 1] as number) + (sorted[half] as number)) / 2;
};

const fewestBends = 0.02;

/** Second differences of white noise have √6 its spread; 0.6745 is the quartile of the normal curve. */
function noiseOf({ bends }: Blocks): number {
  if (bends.length === 0) return 0;
  const typical = middle(bends) / (0.6745 * Math.sqrt(6));
  const bent = bends.filter((bend) => bend > 1e-9).toSorted((a, b) => a - b);
  // Few bends in an even rise are its ends, not its digits.
  const digit = bent.length > fewestBends * bends.length ? (bent[Math.floor(bent.length / 20)] as number) : 0;
  // A cell that shows few digits is no finer than its last one (uniform within it: a twelfth of its square).
  return Math.max(typical, digit / Math.sqrt(12));
}

/** The lowest load that the recording stays at. */
function restOf(sorted: Float64Array, noise: number, top: number): number {
  const from = sorted[Math.min(sorted.length - 1, Math.max(2, Math.floor(sorted.length * 0.005)))] as number;
  const reach = 4 * noise + 0.002 * top;
  const near = sorted.filter((value) => Math.abs(value - from) <= reach);
  return middle(near);
}

/** A cell at rest reads within so much of zero, of the greatest load; more than that is a load that stays on. */
const mostRest = 0.04;

export function signalOf(blocks: Blocks, hasMove: boolean): Signal {
  const { count, size, rows } = blocks;
  const kn = blocks.mean.slice(0, count);
  let sorted = kn.slice().sort();
  const at = (share: number): number => sorted[Math.round(share * (count - 1))] as number;
  const sign = -at(0.001) > 2 * Math.abs(at(0.999)) ? -1 : 1;
  let least = blocks.least.slice(0, count);
  let most = blocks.most.slice(0, count);
  if (sign < 0) {
    for (const values of [kn, least, most])
      for (let i = 0; i < count; i += 1) values[i] = -(values[i] as number);
    [least, most] = [most, least];
    sorted = kn.slice().sort();
  }
  const noise = noiseOf(blocks);
  const blockNoise = noise / Math.sqrt(size);
  const highest = at(1);
  const rest = restOf(sorted, blockNoise, highest);
  const restKn = Math.abs(rest) <= mostRest * (highest - rest) ? rest : 0;
  for (const values of [kn, least, most])
    for (let i = 0; i < count; i += 1) values[i] = (values[i] as number) - restKn;
  const time = blocks.first.slice(0, count);
  for (let i = 0; i < count; i += 1) time[i] = ((time[i] as number) + (blocks.last[i] as number)) / 2;
  const steps = time.slice(1);
  for (let i = 0; i < steps.length; i += 1) steps[i] = (time[i + 1] as number) - (time[i] as number);
  const blockStep = middle(steps);
  return {
    blocks,
    count,
    kn,
    least,
    most,
    mm: hasMove ? blocks.mm.slice(0, count) : null,
    time,
    top: highest - restKn,
    sign,
    restKn,
    neverRests: restKn === 0 && Math.abs(rest) > mostRest * (highest - rest),
    noise,
    blockNoise,
    step: count === rows ? blockStep : blockStep / size,
    blockStep,
    holes: [],
  };
}
