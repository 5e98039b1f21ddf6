import { expect, it } from 'vitest';
import { freshApp } from '../support/app.ts';
import { fuzz } from './fuzz.ts';

// `npm run fuzz` does the same with 100 000.
it('bears 500 random, mutated and hostile messages in six languages', async () => {
  const { faults, slowest, longest } = await fuzz(await freshApp(), 500, 1);
  expect(faults).toEqual([]);
  expect(slowest).toBeLessThan(5000);
  expect(longest).toBeLessThan(40_000);
}, 120_000);
