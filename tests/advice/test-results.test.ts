import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advise } from '../../src/advice/index.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { desk, said, words } from '../support/desk.ts';

const results = (facts: Record<string, FactValue>) => advise(desk, 'pulltest-result', said(facts));
const text = async (facts: Record<string, FactValue>) => adviceText(words, await results(facts));

const five = [24.1, 27.3, 22.8, 30.2, 26];
const eight = [18.2, 21.5, 24, 15.9, 19.7, 22.3, 17.4, 20.6];

describe('a row of results', () => {
  // Factor k(5; 0.95, 0.90) = 3.400: NBS Handbook 91 (1963) Table A-7, from memory. 5 % value by SciPy 1.17 (nct.ppf).
  it('five results: mean, and 5 % value by the lognormal curve', async () => {
    const { recommend, computed, checks } = await results({ pulls_kn: five });
    expect(recommend).toMatchObject({ count: 5, mean_kn: 26.1, characteristic_kn: 17.9, scatter_pct: 11 });
    expect(computed.find(({ id }) => id === 'tolerance-factor')?.value).toBeCloseTo(3.4, 3);
    const low = checks.find(({ kind }) => kind === 'characteristic');
    expect(low?.value).toBeCloseTo(17.898481405, 8);
    expect(low).toMatchObject({ limit: 15, ok: true });
    expect(await text({ pulls_kn: five })).toContain('lognormal curve, because 5 pulls are few');
  });

  // k(8; 0.95, 0.90) = 2.755: NBS Handbook 91 Table A-7, from memory. 5 % value by SciPy 1.17 (nct.ppf).
  it('eight results of little scatter: the normal curve, the lower of the two', async () => {
    const advice = await results({ pulls_kn: eight, frame: 'clear' });
    expect(advice.recommend).toMatchObject({ verdict: 'unproved', mean_kn: 19.9, characteristic_kn: 12.5 });
    expect(advice.checks.at(-1)?.value).toBeCloseTo(12.531670597, 8);
    expect(adviceText(words, advice)).toContain('By the normal curve');
  });

  it('mean and 5 % value are never mixed, and are checked against 15 kN as a type-test minimum', async () => {
    const { checks } = await results({ pulls_kn: five });
    expect(checks.map(({ kind, limit }) => [kind, limit])).toEqual([
      ['mean', 15],
      ['characteristic', 15],
    ]);
    expect(await text({ pulls_kn: five, frame: 'clear' })).toContain('still no load to hang on');
  });

  it('along the rock the minimum is 25 kN', async () => {
    const { checks, recommend } = await results({ pulls_kn: five, load_direction: 'shear', frame: 'clear' });
    expect(checks.every(({ limit }) => limit === 25)).toBe(true);
    expect(recommend.verdict).toBe('unproved');
  });

  it('fewer than three say nothing, and the answer says how many are missing', async () => {
    const two = await results({ pulls_kn: [24, 27] });
    expect(two.stance).toBe('stop');
    expect(two.checks).toEqual([]);
    expect(adviceText(words, two)).toContain('pull 1 more');
    expect((await results({})).lacking).toEqual(['pulls_kn']);
  });

  it('equal results are no strength', async () => {
    expect(await text({ pulls_kn: [20, 20, 20] })).toContain('rounded or copied');
  });

  it('a scatter above 30 % is no row of one kind; above 20 % the 5 % value is cut', async () => {
    const wide = await results({ pulls_kn: [12, 19, 31], frame: 'clear' });
    expect(wide).toMatchObject({ stance: 'stop', recommend: { verdict: 'scattered' } });
    // 1/(1 + 0.03·(25.75 − 20)) = 0.8529 of 6.613: assessment practice from memory, own computation.
    const cut = await results({ pulls_kn: [21.4, 22, 20.8, 23.1, 21.9, 9.5], frame: 'clear' });
    expect(cut.recommend.characteristic_kn).toBe(5.64);
  });
});

describe('how many pulls would prove it', () => {
  // Smallest n with k(n; 0.95, 0.90) ≤ (20 − 15)/2.5 = 2: 42 by SciPy 1.17 (nct.ppf: k(41) 2.0049, k(42) 1.9998).
  it('is the smallest number whose 5 % value would reach the minimum', async () => {
    const spread = 2.5 * Math.sqrt(3 / 4);
    const pulls_kn = [20 - spread, 20 - spread, 20 + spread, 20 + spread];
    expect(await text({ pulls_kn })).toContain('42 pulls in all would prove it');
    expect(await text({ pulls_kn: eight })).toContain('not even 60 pulls would prove it');
  });
});

describe('a result far off', () => {
  // The uranium data of NIST/SEMATECH e-Handbook 1.3.5.17.1: 245.57 is an outlier at 5 %.
  const uranium = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

  it('is asked about', async () => {
    expect(await text({ pulls_kn: uranium })).toContain('245.57 kN (55000 lbf) lies far above the rest');
    expect(await text({ pulls_kn: five })).not.toContain('far above');
  });

  it('is never left out: a low one lowers the 5 % value', async () => {
    const rest = [21.4, 22, 20.8, 23.1, 21.9];
    const withLow = await results({ pulls_kn: [...rest, 9.5] });
    const without = await results({ pulls_kn: rest });
    expect(adviceText(words, withLow)).toContain('It stays in');
    expect(withLow.recommend.count).toBe(6);
    expect(Number(withLow.recommend.characteristic_kn)).toBeLessThan(
      Number(without.recommend.characteristic_kn),
    );
  });
});

describe('stopped pulls and proof tests', () => {
  // Maximum likelihood for right-censored data by SciPy 1.17 (norm.logpdf, norm.logsf, minimize): median 23.7701,
  // 5 % point 17.6169, with the tolerance factor for three failures 9.0347.
  it('stopped pulls count as at least so much', async () => {
    const { recommend, checks } = await results({ pulls_kn: [18.2, 21.5, 24], stopped_kn: [25, 25] });
    expect(recommend).toMatchObject({ count: 5, failed: 3, median_kn: 23.8, characteristic_kn: 9.03 });
    expect(checks[0]?.value).toBeCloseTo(23.770116, 5);
    expect(checks[1]?.value).toBeCloseTo(9.034719, 5);
    expect(await text({ pulls_kn: [18.2, 21.5, 24], stopped_kn: [25, 25] })).toContain(
      '5 % point at 18 kN (4000 lbf)',
    );
  });

  it('fewer than three real failures: no 5 % value, only what all held', async () => {
    const { recommend, checks } = await results({ pulls_kn: [18], stopped_kn: [25, 25] });
    expect(recommend).toEqual({ count: 3, failed: 1, at_least_kn: 18 });
    expect(checks).toEqual([]);
  });

  // The rule of three (3/n) is the textbook limit of 1 − 0.05^(1/n); exact for 5: 45.07 %.
  it.each([
    [5, 45],
    [20, 14],
    [60, 5],
  ])('%i proof tests that held leave up to %i %% of the others bad', async (count, share) => {
    const { recommend } = await results({ proof_tests: 'all-held', count, load_kn: 8 });
    expect(recommend.bad_share_pct).toBe(share);
    expect(share / 100).toBeLessThanOrEqual(Math.max(3 / count, 0.05));
  });

  // BS 8539:2012 Annex B, second hand: after one failure 5 %, at least 6; after more, all.
  it('one failure stops, and doubles the sample', async () => {
    const one = await results({ proof_tests: 'one-gave-way', count: 10, load_kn: 8 });
    expect(one.stance).toBe('stop');
    expect(adviceText(words, one)).toContain('at least 6');
    expect(await text({ proof_tests: 'several-gave-way' })).toContain('Test all anchors');
  });
});

describe('bond from the pulls', () => {
  const glued = {
    pulls_kn: five,
    diameter_mm: 12,
    embedment_mm: 80,
    anchor: 'glue-in-single-leg',
    adhesive: 'epoxy',
  };

  // 26 080 N/(π·12·80 mm²) = 8.647 MPa, own computation.
  it('is load over glued surface', async () => {
    const { computed } = await results({ ...glued, gave_way: 'glue' });
    expect(computed.find(({ id }) => id.startsWith('bond-stress'))?.value).toBeCloseTo(8.647, 2);
    expect(await text({ ...glued, gave_way: 'glue' })).toContain('mean 8.6 MPa');
  });

  it('is only a least value when something else gave way or nobody says what', async () => {
    for (const facts of [glued, { ...glued, gave_way: 'steel' }, { ...glued, gave_way: 'rock' }]) {
      expect(await text(facts)).toContain('at least 8.6 MPa');
      expect(await text(facts)).not.toContain('with your pulls counted in');
    }
  });

  it('moves the bond of the table towards the club’s own', async () => {
    const answer = await text({ ...glued, gave_way: 'glue' });
    const [, table = '', median = ''] = /says ([\d.]+) MPa .* the middle is ([\d.]+) MPa/.exec(answer) ?? [];
    expect(Number(table)).toBe(13);
    expect(Number(median)).toBeGreaterThan(8.6);
    expect(Number(median)).toBeLessThan(13);
  });
});

describe('the safe direction', () => {
  const order = ['scattered', 'weak', 'unproved', 'upper', 'meets'];
  const bold = async (facts: Record<string, FactValue>): Promise<number> =>
    order.indexOf(String((await results(facts)).recommend.verdict));
  const row = fc
    .array(fc.double({ min: 8, max: 45, noNaN: true }), { minLength: 3, maxLength: 20 })
    .filter((values) => new Set(values.map((one) => one.toFixed(2))).size > 1);

  it('a frame that nobody told of is never bolder than one that stood close', async () => {
    await fc.assert(
      fc.asyncProperty(row, async (pulls_kn) => {
        const [open, close, clear] = [
          await bold({ pulls_kn }),
          await bold({ pulls_kn, frame: 'close' }),
          await bold({ pulls_kn, frame: 'clear' }),
        ];
        expect(open).toBe(close);
        expect(close).toBeLessThanOrEqual(clear);
      }),
      { numRuns: 60, seed: 1 },
    );
  });

  it('weaker anchors are never judged better, and no number is none', async () => {
    await fc.assert(
      fc.asyncProperty(row, fc.double({ min: 0.5, max: 1, noNaN: true }), async (pulls_kn, share) => {
        const weaker = pulls_kn.map((one) => one * share);
        expect(await bold({ pulls_kn: weaker, frame: 'clear' })).toBeLessThanOrEqual(
          await bold({ pulls_kn, frame: 'clear' }),
        );
        const machine = JSON.stringify(await results({ pulls_kn, stopped_kn: weaker }));
        expect(machine).not.toMatch(/NaN|Infinity|null/);
      }),
      { numRuns: 60, seed: 2 },
    );
  });
});
