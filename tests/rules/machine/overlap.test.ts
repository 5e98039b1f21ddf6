import { expect, it } from 'vitest';
import { counted, engineRules, plainEngine } from '../../../src/rules/guard.ts';
import { decide, decideNow, loadRules, RulesLost, type Situation } from '../../../src/rules/index.ts';
import { everySituation, seeded } from './same.ts';
import { boots } from './variant.ts';

const rules = await loadRules(boots);
const name = 'boots';
const runs = 20_000;

/** Starts every run after so many microtasks of its own, so that beginnings and ends of runs interleave. */
async function overlapping<T>(run: (situation: Situation) => Promise<T>): Promise<T[]> {
  const random = seeded(7);
  const situations = [...everySituation(rules, name)];
  const start = async (situation: Situation, wait: number) => {
    for (let i = 0; i < wait; i++) await null;
    return run(situation);
  };
  const started: Promise<T>[] = [];
  for (let i = 0; i < runs; i++) {
    const situation = situations[Math.floor(random() * situations.length)];
    if (situation !== undefined) started.push(start(situation, Math.floor(random() * 400)));
  }
  return Promise.all(started);
}

it('loses no rule in 20 000 overlapping runs, and all say what the compiled rules say', async () => {
  const compared = await overlapping(async (situation) => {
    const byEngine = JSON.stringify(await decide(rules, name, situation));
    return byEngine === JSON.stringify(decideNow(rules, name, situation));
  });
  expect(compared).toHaveLength(runs);
  expect(compared.filter((same) => !same)).toEqual([]);
});

it('would lose rules without the guard: the same load on a plain engine, where only the count tells', async () => {
  const decision = rules.decision(name);
  const run = counted(plainEngine(engineRules(rules, decision)), decision);
  const lost = (await overlapping((situation) => run(situation).catch((error: unknown) => error))).filter(
    (result) => !Array.isArray(result),
  );
  console.log(`plain engine: ${lost.length} of ${runs} overlapping runs lost rules`);
  expect(lost.length).toBeGreaterThan(0);
  expect(lost.every((error) => error instanceof RulesLost)).toBe(true);
});
