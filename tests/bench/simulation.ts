/** Chance of failure by simulation: 100 000 samples of four ways of failing against a load. */
import { simulateFailure } from '../../src/engineering/index.ts';
import { measure, row } from './measure.ts';

const resistances = [
  { mean: 46, scatter: 0.05 },
  { mean: 49, scatter: 0.45 },
  { mean: 57, scatter: 0.45 },
  { mean: 70, scatter: 0.45 },
];

export async function run(): Promise<void> {
  const figures = await measure(20, async (seed) =>
    simulateFailure(resistances, { mean: 8, scatter: 0.3 }, { seed: seed + 1, samples: 100_000, common: 0 }),
  );
  console.log(row('100 000 samples, four ways of failing', figures));
}
