/** Which size: the smallest standard one that meets what is needed, and never a smaller one for knowing less. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advise } from '../../src/advice/index.ts';
import type { Advice } from '../../src/contracts/advice.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { numberCell } from '../../src/rules/index.ts';
import { desk, rules, said } from '../support/desk.ts';

type Told = Readonly<Record<string, FactValue | undefined>>;

const good = {
  rock: 'granite',
  rock_condition: 'sound',
  hole_moisture: 'dry',
  anchor: 'glue-in-single-leg',
  adhesive: 'epoxy',
  shank: 'notched',
  metal: 'stainless-316',
  use: 'lead',
};
const find = (facts: Told = {}): Promise<Advice> => advise(desk, 'embedment', said({ ...good, ...facts }));
const sizeOf = async (facts: Told = {}): Promise<readonly unknown[]> => {
  const { diameter_mm, length_mm } = (await find(facts)).recommend;
  return [diameter_mm, length_mm];
};

describe('the smallest size', () => {
  it('in granite with epoxy: 12 × 100, by hand', async () => {
    // 5 % at V 0.60 is 0.3444 of the mean, so 15 kN need a mean of 43.6 kN: 13·π·12·h, h ≥ 89 mm.
    // 10 mm: 316 has 0.6·500·78.5 = 23.6 kN along the rock, less than 25 (EN 1992-4 Eq. 7.34).
    expect(await sizeOf()).toEqual([12, 100]);
    expect((await find()).recommend.anchor).toBe('glue-in-single-leg');
  });

  it('is the size that passes when it is asked about, and no smaller one does', async () => {
    const passes = async (diameter: number, length: number): Promise<boolean> => {
      const told = await find({ diameter_mm: diameter, length_mm: length });
      const fifth = told.checks.filter(({ kind }) => kind === 'characteristic');
      return fifth.length > 0 && told.checks.every(({ kind, ok }) => kind === 'mean' || ok);
    };
    const sizes = rules
      .table('sizes')
      .rows.filter(({ is }) => is.anchor === good.anchor)
      .map((row) => [numberCell(row, 'diameter_mm'), numberCell(row, 'length_mm')] as const);
    const smaller = sizes.filter(([d, l]) => d < 12 || (d === 12 && l < 100));
    expect(smaller.length).toBeGreaterThan(4);
    for (const [d, l] of smaller) expect(await passes(d, l), `${d} × ${l}`).toBe(false);
    expect(await passes(12, 100)).toBe(true);
  });

  it('keeps a diameter or a length that is told', async () => {
    expect(await sizeOf({ diameter_mm: 16 })).toEqual([16, 100]);
    const [diameter, length] = await sizeOf({ length_mm: 90, metal: 'duplex-2205' });
    expect(Number(length)).toBeLessThanOrEqual(90);
    expect(diameter).toBeDefined();
  });

  it('names every kind that may be placed while none is told, and none but glue-ins with an adhesive', async () => {
    const open = await find({
      anchor: undefined,
      adhesive: undefined,
      environment: 'temperate-inland',
    });
    const shown = JSON.stringify(open.points);
    expect(shown).toContain('wedge');
    const glued = await find({ anchor: undefined });
    expect(JSON.stringify(glued.points)).not.toContain('wedge');
  });

  it('says so if none is enough, and what would help', async () => {
    const none = await find({ rock: 'volcanic-tuff', use: 'highline' });
    expect(none.recommend).toMatchObject({ verdict: 'too-weak' });
    expect(none.recommend).not.toHaveProperty('diameter_mm');
    expect(none.stance).toBe('stop');
  });

  it('is never bold by name alone, and meets in granite whose class is known', async () => {
    expect((await find({ edge_distance_mm: 3000 })).recommend.verdict).toBe('test-first');
    expect((await find({ edge_distance_mm: 3000, ucs_mpa: 120 })).recommend.verdict).toBe('meets');
  });

  it('what is told of the edge counts: a size that is too near is not offered', async () => {
    expect((await find({ edge_distance_mm: 60 })).recommend).not.toHaveProperty('diameter_mm');
  });
});

describe('the safe direction of sizes', () => {
  const order = async (facts: Told): Promise<number> => {
    const { diameter_mm: d, length_mm: l } = (await find(facts)).recommend;
    return typeof d === 'number' && typeof l === 'number' ? 1000 * d + l : Number.POSITIVE_INFINITY;
  };
  const rocks = fc.constantFrom('granite', 'limestone-hard', 'gneiss', 'basalt-dense', 'dolomite', 'slate');

  it('a larger load or a larger share never gives a smaller bolt', async () => {
    await fc.assert(
      fc.asyncProperty(
        rocks,
        fc.integer({ min: 5, max: 60 }),
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom(95, 99, 99.9),
        async (rock, load, more, share) => {
          const small = await order({ rock, load_kn: load });
          expect(await order({ rock, load_kn: load + more, reliability_pct: share })).toBeGreaterThanOrEqual(
            small,
          );
        },
      ),
      { numRuns: 40, seed: 3 },
    );
  });

  it.each(['rock_condition', 'hole_moisture', 'shank', 'metal', 'use'] as const)(
    'without %s never a smaller bolt than with a good value of it, if any is sure',
    async (fact) => {
      await fc.assert(
        fc.asyncProperty(rocks, async (rock) => {
          const told = await find({ rock });
          const open = await find({ rock, [fact]: undefined });
          const sure = (advice: Advice): boolean =>
            advice.verdict.say === 'sizing-test-first' || advice.verdict.say === 'sizing-meets';
          if (!sure(open)) return;
          expect(sure(told)).toBe(true);
          expect(await order({ rock, [fact]: undefined })).toBeGreaterThanOrEqual(await order({ rock }));
        }),
        { numRuns: 12, seed: 5 },
      );
    },
  );
});
