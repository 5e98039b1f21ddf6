/** The club's pulls and the published bond: more cautious at once, bolder only when there are enough, and never far. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advise, OutOfRange } from '../../src/advice/index.ts';
import type { Advice } from '../../src/contracts/advice.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import type { ClubRecord } from '../../src/contracts/record.ts';
import { learnStrength } from '../../src/engineering/index.ts';
import { bondFacts } from '../../src/field/bond.ts';
import { freshApp } from '../support/app.ts';
import { desk, rules, said } from '../support/desk.ts';
import { chatWith, choice } from './support.ts';

const published = { mean: 13, top: 17, scatter: 0.45 };
const enough = 15;
const strength = fc.double({ min: 0.5, max: 60, noNaN: true });
/** In the order of boldness. */
const stances = ['stop', 'limit', 'tell', 'go'];

describe('the strength that counts', () => {
  // By hand: ln of the median is the mean of 2 × ln(13/√(1 + 0.45²)) and the three logarithms (conjugate update, ISO 12491).
  it('is the weighted middle while the tests are few', () => {
    const { used, median } = learnStrength(published, [9, 9.5, 10], [], enough);
    const middle = Math.exp(
      (2 * Math.log(13 / Math.sqrt(1.2025)) + Math.log(9) + Math.log(9.5) + Math.log(10)) / 5,
    );
    expect(median).toBeCloseTo(middle, 10);
    expect(used).toBeCloseTo(middle * Math.sqrt(1.2025), 10);
  });

  // k(15; 0.95, 0.90) = 2.329: NBS Handbook 91 (1963) Table A-7, from memory.
  it('is that of the tests alone once they are enough', () => {
    const logs = [2.3, 2.35, 2.4, 2.45, 2.5, 2.55, 2.6, 2.3, 2.35, 2.4, 2.45, 2.5, 2.55, 2.6, 2.45];
    const mean = logs.reduce((a, b) => a + b) / 15;
    const deviation = Math.sqrt(logs.reduce((a, b) => a + (b - mean) ** 2, 0) / 14);
    const { enough: is, median, low } = learnStrength(published, logs.map(Math.exp), [], enough);
    expect(is).toBe(true);
    expect(median).toBeCloseTo(Math.exp(mean), 10);
    expect(low).toBeCloseTo(Math.exp(mean - 2.329 * deviation), 2);
  });

  it('never lies above the published one while there are fewer than fifteen failures', () => {
    fc.assert(
      fc.property(
        fc.array(strength, { minLength: 1, maxLength: 14 }),
        fc.array(strength, { maxLength: 20 }),
        (failures, least) => {
          expect(learnStrength(published, failures, least, enough).used).toBeLessThanOrEqual(published.mean);
        },
      ),
    );
  });

  it('never lies above the upper end of what is published, nor above the middle of the tests', () => {
    fc.assert(
      fc.property(
        fc.array(strength, { minLength: 15, maxLength: 40 }),
        fc.array(strength, { maxLength: 5 }),
        (failures, least) => {
          const { used, median } = learnStrength(published, failures, least, enough);
          expect(used).toBeLessThanOrEqual(published.top);
          if (new Set(failures).size > 1) expect(used).toBeLessThanOrEqual(median);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('is not raised by pulls that ended otherwise before there are enough failures', () => {
    fc.assert(
      fc.property(
        fc.array(strength, { minLength: 1, maxLength: 14 }),
        fc.array(strength, { minLength: 1, maxLength: 20 }),
        (failures, least) => {
          expect(learnStrength(published, failures, least, enough)).toEqual(
            learnStrength(published, failures, [], enough),
          );
        },
      ),
    );
  });

  it('is not raised by fifteen equal results', () => {
    expect(
      learnStrength(
        published,
        Array.from({ length: 20 }, () => 30),
        [],
        enough,
      ),
    ).toMatchObject({ used: 13, enough: false });
  });
});

const size = {
  anchor: 'glue-in-twin-leg',
  diameter_mm: 12,
  length_mm: 100,
  rock: 'granite',
  adhesive: 'epoxy',
};
const place = {
  rock_condition: 'sound',
  hole_moisture: 'dry',
  shank: 'notched',
  use: 'lead',
  edge_distance_mm: 1000,
  metal: 'stainless-316',
};
const record = (facts: Record<string, FactValue>): ClubRecord => ({
  id: 't1',
  chat: 'c',
  kind: 'test',
  author: null,
  at: '2026-05-02T09:00:00Z',
  version: 1,
  withdrawn: false,
  body: { facts: { ...size, failure_mode: 'adhesive-rock', ...facts }, texts: {} },
});
const factsWith = (pulls: readonly Record<string, FactValue>[], asked: Record<string, FactValue> = {}) => ({
  ...said({ ...size, ...place, ...asked }),
  ...bondFacts(rules, pulls.map(record), String(asked.rock ?? size.rock), size.adhesive),
});
const asGoodAsNone = { load_kn: 1, failure_mode: 'adhesive-steel', hole_moisture: 'dry' };
const refusal = (error: unknown): OutOfRange => {
  if (error instanceof OutOfRange) return error;
  throw error;
};
const low = ({ recommend }: Advice): number => Number(recommend.characteristic_kn);

describe('the advice', () => {
  const rocks = fc.constantFrom('granite', 'sandstone-soft', 'limestone', 'sandstone-hard');
  const moisture = fc.constantFrom('dry', 'damp', 'wet', 'unknown');
  const mode = fc.constantFrom(
    'adhesive-steel',
    'adhesive-rock',
    'combined',
    'rock-cone',
    'steel',
    'stopped',
    'rig-failed',
    'unknown',
  );
  const pull = fc.record({
    load_kn: fc.double({ min: 1, max: 200, noNaN: true }),
    failure_mode: mode,
    hole_moisture: moisture,
  });

  it('never gets bolder by pulls that do not suffice', async () => {
    await fc.assert(
      fc.asyncProperty(
        rocks,
        moisture,
        fc.array(pull, { minLength: 1, maxLength: 14 }),
        async (rock, wet, pulls) => {
          const asked = wet === 'unknown' ? { rock } : { rock, hole_moisture: wet };
          const own = pulls.map((one) => ({ ...one, rock }));
          const without = await advise(desk, 'embedment', factsWith([], asked));
          const with_ = await advise(desk, 'embedment', factsWith(own, asked)).catch(refusal);
          if (with_ instanceof OutOfRange) {
            // So weak that no method covers it: no advice is none that is bolder.
            expect(with_.value).toBeLessThan(with_.spec.min);
            return;
          }
          expect(low(with_)).toBeLessThanOrEqual(low(without));
          expect(Number(with_.recommend.mean_kn)).toBeLessThanOrEqual(Number(without.recommend.mean_kn));
          expect(stances.indexOf(with_.stance)).toBeLessThanOrEqual(stances.indexOf(without.stance));
        },
      ),
      { numRuns: 40, examples: [['granite', 'wet', [asGoodAsNone, asGoodAsNone]]] },
    );
  }, 60_000);

  // 20 kN on two legs of 12 × 100 mm: τ = 20 000/(π·12·200) = 2.65 MPa.
  it('is lowered at once by weak pulls', async () => {
    const weak = Array.from({ length: 4 }, (_, index) => ({ load_kn: 19 + index, hole_moisture: 'dry' }));
    const facts = factsWith(weak);
    expect(facts.club_bond_mpa?.value).toEqual([2.52, 2.65, 2.79, 2.92]);
    expect(facts.club_bond_mpa?.from).toBe('measured');
    expect(low(await advise(desk, 'embedment', facts))).toBeLessThan(
      low(await advise(desk, 'embedment', factsWith([]))),
    );
  });

  it('is raised by strong ones only from the fifteenth on', async () => {
    const strong = (count: number) =>
      Array.from({ length: count }, (_, index) => ({
        load_kn: 120 + index,
        hole_moisture: 'dry',
        shank: 'notched',
      }));
    const none = low(await advise(desk, 'embedment', factsWith([])));
    expect(low(await advise(desk, 'embedment', factsWith(strong(14))))).toBe(none);
    expect(low(await advise(desk, 'embedment', factsWith(strong(15))))).toBeGreaterThan(none);
  });
});

describe('what counts as a pull of the bond', () => {
  const facts = (one: Record<string, FactValue>) =>
    bondFacts(rules, [record({ load_kn: 20 }), record(one)], 'granite', 'epoxy');
  it.each([
    ['another failure', { load_kn: 60, failure_mode: 'steel' }],
    ['a cone', { load_kn: 60, failure_mode: 'rock-cone' }],
    ['a rig that failed', { load_kn: 60, failure_mode: 'rig-failed' }],
    ['a stopped one', { load_kn: 60, failure_mode: 'stopped' }],
    ['one of which nobody knows', { load_kn: 60, failure_mode: 'unknown' }],
  ])('%s is a lower bound only', (_, one) => {
    const { club_bond_mpa, club_bond_least_mpa } = facts(one);
    expect(club_bond_mpa?.value).toEqual([2.65]);
    expect(club_bond_least_mpa?.value).toEqual([7.96]);
  });
  it.each([
    ['another rock', { load_kn: 60, rock: 'limestone' }],
    ['another glue', { load_kn: 60, adhesive: 'vinyl-ester' }],
    ['along the rock', { load_kn: 60, load_direction: 'shear' }],
    ['at an angle', { load_kn: 60, load_direction: 'combined' }],
    ['no load', { load_kn: 'unknown' }],
    ['no size', { load_kn: 60, diameter_mm: 'unknown' }],
    ['a wedge', { load_kn: 60, anchor: 'wedge' }],
  ])('%s counts for nothing', (_, one) => {
    expect(facts(one).club_bond_mpa?.value).toEqual([2.65]);
    expect(facts(one).club_bond_least_mpa).toBeUndefined();
  });
  it('nothing failed in it: nothing is learned', () => {
    expect(bondFacts(rules, [record({ load_kn: 60, failure_mode: 'steel' })], 'granite', 'epoxy')).toEqual(
      {},
    );
  });
});

describe('in the talk', () => {
  const question =
    'is a 12x100 twin leg in granite with epoxy deep enough? sound rock, dry hole, 316, rough shank, for lead, 1 m from any edge';
  it('says published, own, which counts and what it changes, and "why" says measured', async () => {
    const app = await freshApp();
    const say = chatWith(app, 'learn');
    const before = await say(question);
    expect(before.text).not.toContain('your pulls');
    expect(before.text).not.toContain('Yours is');
    const rows = [19, 20, 21, 22].map((kn) => `granite,twin leg,epoxy,12,100,${kn},resin came out clean,dry`);
    const read = await say(
      ['rock,anchor,glue,diameter [mm],length [mm],peak [kN],failure,moisture', ...rows].join('\n'),
    );
    await say({ press: choice(read, 'r:keep') });
    const after = await say(question);
    expect(after.text).toContain('published 10 MPa to 17 MPa');
    expect(after.text).toContain('your 4 pulls that failed in it');
    expect(after.text).toContain('Yours is the lower, so I count');
    expect(after.text).toContain('With the published bond alone it would be');
    // 22 kN over π · 12 mm · 100 mm · 2 legs = 2.9 MPa, 19 kN = 2.5 MPa.
    const [picture] = after.files;
    expect(after.files.map(({ name, mime }) => [name, mime])).toEqual([['bond.png', 'image/png']]);
    expect(picture?.alt).toContain('Published: 10 MPa to 17 MPa');
    expect(picture?.alt).toContain('2.5 MPa');
    expect(picture?.alt).toContain('2.9 MPa');
    expect(before.files).toEqual([]);
    expect((await say('why')).text).toMatch(/bond in the club's tests: .*\(from the club's own tests\)/);
    expect((await chatWith(app, 'learn-other')(question)).text).toBe(before.text);
  });
});
