/** What the load does after its peak: holds on at a lower level, slides down, or is taken off. */
import type { Plateau } from '../contracts/recording.ts';
import { type Fall, spanOf } from './falls.ts';
import type { Segment } from './segments.ts';
import { middle, type Signal } from './signal.ts';

const plateauShare = 0.08;
const plateauBand = 0.15;
const shortestS = 0.5;
const mostPoints = 400;

/** The longest stretch after a fall in which the load stays within a band around its middle. */
export function plateauAfter(signal: Signal, fall: Fall, segment: Segment): Plateau | null {
  const { kn, time, blockStep, blockNoise } = signal;
  const first = fall.to + spanOf(signal);
  const last = segment.to;
  const every = Math.max(1, Math.ceil((last - first) / mostPoints));
  const levels: number[] = [];
  const blocks: number[] = [];
  for (let i = first; i + every - 1 <= last; i += every) {
    levels.push(middle(kn.subarray(i, i + every)));
    blocks.push(i);
  }
  let best: readonly [number, number] | null = null;
  for (let i = 0; i < levels.length; i += 1) {
    let [low, high] = [levels[i] as number, levels[i] as number];
    let j = i;
    while (j + 1 < levels.length) {
      const next = levels[j + 1] as number;
      if (
        Math.max(high, next) - Math.min(low, next) >
        2 * plateauBand * Math.max(high, next) + 4 * blockNoise
      )
        break;
      low = Math.min(low, next);
      high = Math.max(high, next);
      j += 1;
    }
    if (low > plateauShare * fall.fromKn && (best === null || j - i > best[1] - best[0])) best = [i, j];
  }
  if (best === null) return null;
  const [from, to] = [blocks[best[0]] as number, Math.min(last, (blocks[best[1]] as number) + every - 1)];
  const long = (time[to] as number) - (time[from] as number);
  if (long < Math.max(shortestS, 4 * blockStep)) return null;
  return { fromS: time[from] as number, toS: time[to] as number, levelKn: middle(kn.subarray(from, to + 1)) };
}

export type Ending = 'ends-loaded' | 'taken-off' | 'slow-fall' | 'moved-on';

/** A load that is held relaxes by less than this. */
const relaxShare = 0.12;
const stepShare = 0.05;
/** Used where no rate is known: kN/s for each kN of peak. */
const usualRate = 0.05;

/**
 * A fall that is no faster than the rise was happens while the pump goes on: the anchor gives. One that is faster and
 * smooth is the valve: what gives way in that manner would run away and be over in a tenth of a second.
 */
export function endingAfter(
  signal: Signal,
  segment: Segment,
  peak: { readonly block: number; readonly kn: number },
  rate: number | null,
  stiffness: number | null,
): Ending {
  const { kn, count, blockStep, mm, blockNoise } = signal;
  const step = Math.max(stepShare * peak.kn, 6 * blockNoise);
  const window = Math.max(2, Math.round(step / (rate ?? usualRate * peak.kn) / blockStep));
  let released = -1;
  const few = Math.max(1, window >> 2);
  let [here, there] = [0, 0];
  const at = (i: number): number => kn[Math.min(count - 1, i)] as number;
  for (let j = 0; j < few; j += 1) {
    here += at(peak.block + j);
    there += at(peak.block + window + j);
  }
  for (let i = peak.block; i <= segment.to && released < 0; i += 1) {
    if (here - there >= step * few) released = i;
    here += at(i + few) - at(i);
    there += at(i + window + few) - at(i + window);
  }
  const until = released < 0 ? Math.min(count - 1, segment.to) : released;
  const lost = 1 - (kn[until] as number) / peak.kn;
  if (mm !== null && stiffness !== null && lost > relaxShare) {
    const turned = (mm[peak.block] as number) < (mm[segment.from] as number) ? -1 : 1;
    const moved = turned * ((mm[until] as number) - (mm[peak.block] as number));
    // Taken off, anchor and rig spring back by load over stiffness; half of that is short of it.
    return moved > (-0.5 * lost * peak.kn) / stiffness ? 'moved-on' : 'taken-off';
  }
  if (lost > relaxShare) return 'slow-fall';
  return released < 0 ? 'ends-loaded' : 'taken-off';
}
