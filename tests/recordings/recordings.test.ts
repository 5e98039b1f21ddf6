/** Two hundred recordings with known truth, and what must hold of them. The generator knows nothing of the reader. */
import { sgg } from 'ml-savitzky-golay-generalized';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Recording } from '../../src/contracts/recording.ts';
import { bytesSource, readRecording } from '../../src/recordings/index.ts';
import { type Made, makeRecordings } from './generator.ts';

interface Pair {
  readonly made: Made;
  readonly found: Recording;
}
const pairs: Pair[] = [];

beforeAll(async () => {
  for (const made of makeRecordings(2026, 200))
    pairs.push({ made, found: await readRecording(bytesSource(made.bytes)) });
}, 240_000);

const pulls = () =>
  pairs.flatMap(({ made, found }) =>
    made.pulls.map((truth, index) => ({ made, truth, pull: found.pulls[index], what: made.what })),
  );

describe('200 recordings with known truth', () => {
  it('has every row and every pull', () => {
    for (const { made, found } of pairs) {
      expect(found.rows, made.what).toBe(made.rows);
      expect(found.unit, made.what).toBe(made.style.unit);
      expect(found.pulls.length, made.what).toBe(made.pulls.length);
    }
  });

  it('finds each peak within 0.5 %', () => {
    const wrong = pulls().filter(
      ({ pull, truth }) => Math.abs((pull?.peakKn ?? 0) / truth.peakKn - 1) > 0.005,
    );
    expect(wrong.map(({ what, pull, truth }) => `${what}: ${pull?.peakKn} for ${truth.peakKn}`)).toEqual([]);
  });

  it('tells a pull that was stopped from one that failed, always', () => {
    const wrong = pulls().filter(({ pull, truth }) => pull?.failed !== truth.failed);
    expect(wrong.map(({ what }) => what)).toEqual([]);
  });

  it('finds the first drop within three samples in 95 of 100', () => {
    const dropped = pulls().filter(
      ({ made, truth }) => truth.dropRow !== null && made.faults.clipAt === null,
    );
    const right = dropped.filter(
      ({ made, pull, truth }) =>
        pull?.firstDrop != null && Math.abs(pull.firstDrop.timeS / made.step - (truth.dropRow ?? 0)) <= 3.01,
    );
    expect(dropped.length).toBeGreaterThan(100);
    expect(right.length / dropped.length).toBeGreaterThanOrEqual(0.95);
  });

  it('proposes the mode that was made, knows a cell at its end and a disturbed one', () => {
    const modes = { brittle: 'brittle', bond: 'bond-loss', slow: 'slow-slip', stopped: 'stopped' };
    for (const { made, pull, truth, what } of pulls()) {
      expect(pull?.mode, what).toBe(modes[truth.ending]);
      expect(pull?.clipped, what).toBe(made.faults.clipAt !== null);
    }
    for (const { made, found } of pairs)
      if (made.faults.spikes === 0 && made.faults.dropOuts === 0)
        expect(
          found.pulls.some(({ disturbed }) => disturbed),
          made.what,
        ).toBe(false);
  });

  it('keeps an outline of at most 2000 points that holds the whole load', () => {
    for (const { pull, what } of pulls()) {
      const { timeS, leastKn, mostKn } = pull?.outline ?? { timeS: [], leastKn: [], mostKn: [] };
      expect(leastKn.length + mostKn.length, what).toBeLessThanOrEqual(2000);
      expect(timeS.length, what).toBe(mostKn.length);
      expect(Math.max(...mostKn), what).toBeGreaterThanOrEqual((pull?.peakKn ?? 0) * 0.999);
    }
  });

  // Savitzky–Golay smoothing and derivative of ml-savitzky-golay-generalized, on the samples as they were written.
  it('agrees with a general signal library on peak and drop', () => {
    let compared = 0;
    for (const { made, found } of pairs) {
      const [truth] = made.pulls;
      const [pull] = found.pulls;
      const { clipAt, spikes, dropOuts } = made.faults;
      if (made.pulls.length > 1 || truth?.ending !== 'brittle' || truth.reSeated || clipAt !== null) continue;
      if (spikes + dropOuts > 0 || made.step > 0.02 || pull === undefined) continue;
      const loads = made.written.map((kn) => kn - found.restKn);
      const slope = sgg(loads, made.step, { windowSize: 5, polynomial: 2, derivative: 1 });
      const steepest = slope.reduce((low, one, row) => (one < (slope[low] ?? 0) ? row : low), 0);
      const dropRow = (pull.firstDrop?.timeS ?? Number.NaN) / made.step;
      // The steepest row lies within the fall, which lasts 15 ms at most.
      expect(steepest - dropRow, made.what).toBeGreaterThan(-4);
      expect((steepest - dropRow) * made.step, made.what).toBeLessThan(0.02 + 4 * made.step);
      const before = sgg(loads.slice(0, Math.round(dropRow) + 1), made.step, {
        windowSize: 9,
        polynomial: 2,
      });
      const top = before.reduce((high, kn) => Math.max(high, kn), 0);
      expect(Math.abs(pull.peakKn / top - 1), made.what).toBeLessThan(0.01);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(5);
  });
});
