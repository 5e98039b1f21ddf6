/** What cells and loggers add to the load: noise, an offset, an end of their range, spikes, drop-outs. */
import type { PullTruth } from './pulls.ts';
import type { Random } from './random.ts';

export interface Faults {
  readonly noise: number;
  readonly offset: number;
  readonly clipAt: number | null;
  readonly spikes: number;
  readonly dropOuts: number;
}

export function disturb(
  clean: readonly number[],
  pulls: readonly PullTruth[],
  step: number,
  faults: Faults,
  random: Random,
): number[] {
  const limit = faults.clipAt ?? Number.POSITIVE_INFINITY;
  const rows = clean.map((kn) => Math.min(limit, kn + faults.offset + faults.noise * random.normal()));
  const top = Math.max(...pulls.map(({ peakKn }) => peakKn));
  const clear = (row: number, rowsAway: number): boolean =>
    row > 12 &&
    row < rows.length - 12 &&
    pulls.every(({ keep }) => keep.every((kept) => Math.abs(kept - row) > rowsAway));
  for (let left = faults.spikes, tries = 0; left > 0 && tries < 200; tries += 1) {
    const pull = random.pick(pulls);
    const row = random.whole(pull.firstRow, pull.lastRow);
    if (!clear(row, 12)) continue;
    const width = step > 0.05 ? 1 : random.whole(1, 2);
    const size = top * random.between(0.1, 1.2) * (random.chance(0.6) ? 1 : -1);
    for (let i = 0; i < width; i += 1) rows[row + i] = (rows[row + i] as number) + size;
    left -= 1;
  }
  for (let left = faults.dropOuts, tries = 0; left > 0 && tries < 200; tries += 1) {
    const pull = random.pick(pulls);
    const length = Math.max(2, Math.round(random.between(0.2, 0.8) / step));
    const row = random.whole(pull.firstRow, pull.lastRow);
    const rising = Array.from({ length: length + 4 }, (_, i) => clean[row + i] ?? 0);
    const away = length + Math.ceil(1.5 / step);
    // While the load is well up and moves little, as in the middle of a rise.
    if (!clear(row, away) || Math.min(...rising) < 0.3 * pull.peakKn) continue;
    if (Math.max(...rising) - Math.min(...rising) > 0.08 * pull.peakKn) continue;
    for (let i = 0; i < length; i += 1) rows[row + i] = faults.offset;
    left -= 1;
  }
  return rows;
}
