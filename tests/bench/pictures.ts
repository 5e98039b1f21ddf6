/** Loading what draws, the first picture and later ones, and what memory they take. */
import { draw } from '../../src/pictures/index.ts';
import { samples } from '../pictures/samples.ts';
import { words } from '../support/desk.ts';
import { measure, row } from './measure.ts';

const megabytes = (): string => `${Math.round(process.memoryUsage().rss / 2 ** 20)} MB`;

export async function run(): Promise<void> {
  const before = megabytes();
  const all = Object.entries(samples(words));
  const [first] = all;
  if (first === undefined) return;
  let started = performance.now();
  await Promise.all([import('canvas'), import('vega'), import('vega-lite')]);
  console.log(
    `  ${'import of vega, vega-lite and canvas'.padEnd(58)} ${Math.round(performance.now() - started)} ms`,
  );
  started = performance.now();
  await draw(first[1].spec);
  console.log(`  ${'first picture'.padEnd(58)} ${Math.round(performance.now() - started)} ms`);
  for (const [name, { spec }] of all) console.log(row(name, await measure(10, () => draw(spec))));
  for (let index = 0; index < 100; index += 1) await draw(first[1].spec);
  console.log(
    `  memory of the process: ${before} before, ${megabytes()} after ${100 + all.length * 12} pictures`,
  );
}
