/** Which stretches of a recording are pulls. */
import type { Signal } from './signal.ts';

/** First and last block. */
export interface Segment {
  readonly from: number;
  readonly to: number;
}

/** Less than this is handling of the rig: in kN, and of the greatest load of the file. */
const leastPullKn = 0.4;
const leastPullShare = 0.04;
const idleShare = 0.025;
/** Between two pulls the load goes down to less than this share of both. */
const valleyShare = 0.12;

export function segmentsOf({ kn, count, top, blockNoise }: Signal): Segment[] {
  const least = Math.max(leastPullKn, leastPullShare * top, 12 * blockNoise);
  const idle = Math.max(idleShare * Math.min(top, 4), 0.25 * idleShare * top, 5 * blockNoise);
  const found: Segment[] = [];
  let from = -1;
  let peak = 0;
  let low = 0;
  let lowAt = 0;
  let end = -1;
  for (let i = 0; i < count; i += 1) {
    const now = kn[i] as number;
    if (from < 0) {
      if (now <= idle) continue;
      [from, peak, low, lowAt, end] = [i, now, now, i, -1];
      continue;
    }
    if (low < valleyShare * Math.min(peak, now) && now >= least) {
      if (peak >= least) found.push({ from, to: end < 0 ? lowAt : end });
      [from, peak, low, lowAt, end] = [lowAt, now, now, i, -1];
    } else if (now > peak) [peak, low, lowAt, end] = [now, now, i, -1];
    else {
      if (now < low) low = now;
      if (now <= Math.max(low + 3 * blockNoise, 1.25 * low, idle)) lowAt = i;
      if (end < 0 && now <= Math.max(idle, 0.03 * peak)) end = i;
      if (now <= idle && peak < least) from = -1;
    }
  }
  if (from >= 0 && peak >= least) found.push({ from, to: end < 0 ? count - 1 : end });
  return found;
}
