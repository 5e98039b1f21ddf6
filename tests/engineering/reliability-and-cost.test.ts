import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  breakEvenLife,
  breakEvenPrice,
  CostError,
  failureChance,
  findSize,
  indexOfChance,
  lifeCycleCost,
  neededMean,
  OutOfRange,
  rateSensitivity,
  reliabilityIndex,
  repeatedUse,
  simulateFailure,
  uniformBond,
} from '../../src/engineering/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('reliability', () => {
  it('rises with the mean, falls with either scatter and with the load', () => {
    fc.assert(
      fc.property(
        between(10, 50),
        between(0.05, 0.5),
        between(1, 9),
        between(0.05, 0.5),
        (mean, v, load, vs) => {
          const index = (more: object) =>
            reliabilityIndex({ mean, scatter: v, load, loadScatter: vs, ...more }).value;
          const now = index({});
          expect(index({ mean: mean * 1.1 })).toBeGreaterThan(now);
          expect(index({ load: load * 1.05 })).toBeLessThan(now);
          fc.pre(mean > 2 * load);
          expect(index({ scatter: v * 1.1 })).toBeLessThan(now);
          expect(index({ loadScatter: vs * 1.1 })).toBeLessThan(now);
        },
      ),
    );
  });

  it('and its inverses agree', () => {
    fc.assert(
      fc.property(between(1, 5), between(0.05, 0.5), between(0.05, 0.5), (index, scatter, loadScatter) => {
        const mean = neededMean({ index, scatter, load: 5, loadScatter }).value;
        expect(reliabilityIndex({ mean, scatter, load: 5, loadScatter }).value).toBeCloseTo(index, 9);
        expect(indexOfChance({ chance: failureChance({ index }).value }).value).toBeCloseTo(index, 8);
      }),
    );
  });

  it('repeated use never lowers the chance of a failure', () => {
    fc.assert(
      fc.property(between(0, 0.9), fc.integer({ min: 1, max: 1000 }), (chance, uses) => {
        const now = repeatedUse({ chance, uses }).value;
        expect(repeatedUse({ chance, uses: uses + 1 }).value).toBeGreaterThanOrEqual(now);
        expect(now).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('simulation', () => {
  const anchor = { mean: 15, scatter: 0.45 };
  const load = { mean: 6, scatter: 0.4 };

  it('agrees with the closed form within four standard errors', () => {
    const exact = failureChance({
      index: reliabilityIndex({ mean: 15, scatter: 0.45, load: 6, loadScatter: 0.4 }).value,
    }).value;
    const found = simulateFailure([anchor], load, { seed: 7, samples: 400_000, common: 0 });
    expect(Math.abs(found.chance - exact)).toBeLessThan(4 * Math.sqrt((exact * (1 - exact)) / found.samples));
  });

  it('is the same for the same seed and another for another', () => {
    const run = (seed: number) =>
      simulateFailure([anchor], load, { seed, samples: 20_000, common: 0 }).chance;
    expect(run(1)).toBe(run(1));
    expect(new Set([1, 2, 3, 4].map(run)).size).toBeGreaterThan(1);
  });

  it('shows the price of the common cause: a chain of anchors fails less often when they share it', () => {
    const chain = [anchor, anchor, anchor];
    const run = (common: number) =>
      simulateFailure(chain, load, { seed: 3, samples: 100_000, common }).chance;
    const one = simulateFailure([anchor], load, { seed: 3, samples: 100_000, common: 0 }).chance;
    expect(run(1)).toBeLessThan(run(0));
    expect(run(1)).toBeCloseTo(one, 2);
    expect(run(0)).toBeGreaterThan(1.5 * one);
  });

  it('takes 100 000 samples in less than 50 ms', () => {
    const times = Array.from({ length: 5 }, (_, seed) => {
      const start = performance.now();
      simulateFailure([anchor], load, { seed, samples: 100_000, common: 0.1 });
      return performance.now() - start;
    });
    expect(Math.min(...times)).toBeLessThan(50);
  });

  it('refuses what cannot be simulated', () => {
    const options = { seed: 1, samples: 1000, common: 0 };
    expect(() => simulateFailure([], load, options)).toThrow(RangeError);
    expect(() => simulateFailure([{ mean: 0, scatter: 0.3 }], load, options)).toThrow(RangeError);
    expect(() => simulateFailure([anchor], load, { ...options, samples: 10 })).toThrow(RangeError);
    expect(() => simulateFailure([anchor], load, { ...options, common: 2 })).toThrow(RangeError);
  });
});

describe('life-cycle cost', () => {
  const plan = fc.record({ installed: between(1, 200), life: between(1, 60) });

  it('never rises with a longer life nor with a higher rate, and scales with the price', () => {
    fc.assert(
      fc.property(plan, between(1, 100), between(0, 0.1), between(1, 2), (p, horizon, rate, by) => {
        const now = lifeCycleCost(p, horizon, rate).presentValue;
        const longer = lifeCycleCost({ ...p, life: p.life * by }, horizon, rate).presentValue;
        expect(longer).toBeLessThanOrEqual(now * (1 + 1e-12));
        expect(lifeCycleCost(p, horizon, rate + 0.01).presentValue).toBeLessThanOrEqual(now * (1 + 1e-12));
        const dearer = lifeCycleCost({ ...p, installed: p.installed * by }, horizon, rate).presentValue;
        expect(dearer).toBeCloseTo(now * by, 6);
        expect(now).toBeGreaterThanOrEqual(p.installed);
      }),
    );
  });

  it('drills one hole more with each replacement, none at the horizon itself', () => {
    expect(lifeCycleCost({ installed: 1, life: 25 }, 50, 0.03)).toMatchObject({ replacements: 1, holes: 2 });
    expect(lifeCycleCost({ installed: 1, life: 50 }, 50, 0.03)).toMatchObject({ replacements: 0, holes: 1 });
    expect(lifeCycleCost({ installed: 1, life: 24.9 }, 50, 0.03)).toMatchObject({
      replacements: 2,
      holes: 3,
    });
  });

  it('breaks even where it says', () => {
    fc.assert(
      fc.property(plan, plan, between(0, 0.08), (one, other, rate) => {
        const target = lifeCycleCost(other, 50, rate).presentValue;
        const price = breakEvenPrice({ life: one.life }, other, 50, rate);
        expect(lifeCycleCost({ installed: price, life: one.life }, 50, rate).presentValue).toBeCloseTo(
          target,
          6,
        );
        const life = breakEvenLife({ installed: one.installed }, other, 50, rate);
        if (life === undefined) expect(one.installed).toBeGreaterThan(target * (1 - 1e-9));
        else
          expect(
            lifeCycleCost({ installed: one.installed, life }, 50, rate).presentValue,
          ).toBeLessThanOrEqual(target + 1e-6);
      }),
    );
  });

  it('shows several rates, the dearest at 0', () => {
    const found = rateSensitivity({ installed: 26, life: 10 }, 50).map((r) => r.presentValue);
    expect(found[0]).toBe(130);
    expect(found).toEqual([...found].sort((a, b) => b - a));
  });

  it('refuses what is no cost, no life, no horizon, no rate', () => {
    const fine = { installed: 26, life: 10 };
    for (const [p, horizon, rate] of [
      [{ ...fine, installed: -1 }, 50, 0.03],
      [{ ...fine, installed: Number.NaN }, 50, 0.03],
      [{ ...fine, life: 0 }, 50, 0.03],
      [{ ...fine, inspection: { cost: 5, every: 0 } }, 50, 0.03],
      [fine, 0, 0.03],
      [fine, 500, 0.03],
      [fine, 50, -0.01],
      [fine, 50, 3],
    ] as const)
      expect(() => lifeCycleCost(p, horizon, rate)).toThrow(CostError);
  });
});

describe('the search for a size', () => {
  const sizes = [8, 10, 12, 16].flatMap((diameter) =>
    [60, 80, 100, 150].map((length) => ({ diameter, holeDiameter: diameter + 2, length })),
  );
  const holds = (needed: number, bondStress: number) => (size: (typeof sizes)[number]) =>
    uniformBond.characteristic({ bondStress, diameter: size.diameter, embedment: size.length }).value >=
    needed;

  it('finds the smallest that meets everything, and the next one up', () => {
    const found = findSize(sizes, holds(15, 7));
    expect(found.smallest).toEqual({ diameter: 8, holeDiameter: 10, length: 100 });
    expect(found.next).toEqual({ diameter: 8, holeDiameter: 10, length: 150 });
    expect(found.tried).toHaveLength(sizes.length);
  });

  it('never finds a smaller one for a larger load or a weaker bond', () => {
    const rank = (needed: number, bond: number) => {
      const found = findSize(sizes, holds(needed, bond));
      const at = found.tried.findIndex((t) => t.ok);
      return at === -1 ? sizes.length : at;
    };
    fc.assert(
      fc.property(between(1, 60), between(1, 15), between(1, 2), (needed, bond, by) => {
        expect(rank(needed * by, bond)).toBeGreaterThanOrEqual(rank(needed, bond));
        expect(rank(needed, bond / by)).toBeGreaterThanOrEqual(rank(needed, bond));
      }),
    );
  });

  it('says none when none does, skips what no formula covers, hides no other fault', () => {
    expect(findSize(sizes, holds(500, 5)).smallest).toBeUndefined();
    const tooSlender = [{ diameter: 8, holeDiameter: 10, length: 400 }];
    expect(() => holds(1, 10)({ ...tooSlender[0], diameter: 8, holeDiameter: 10, length: 400 })).toThrow(
      OutOfRange,
    );
    expect(findSize(tooSlender, holds(1, 10)).smallest).toBeUndefined();
    expect(() =>
      findSize(sizes, () => {
        throw new TypeError('a fault in the caller');
      }),
    ).toThrow(TypeError);
  });
});
