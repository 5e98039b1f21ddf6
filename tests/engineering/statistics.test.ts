import fc from 'fast-check';
import { pnorm } from 'lib-r-math.js';
import { describe, expect, it } from 'vitest';
import {
  BadResults,
  bondFromTests,
  chanceAfterProof,
  characteristicStrength,
  checkOutlier,
  compareGroups,
  compareSummaries,
  dixonCritical,
  fitCensored,
  fitThroughOrigin,
  grubbsCritical,
  lognormalMean,
  proofPlan,
  scatterReduction,
  summarise,
  TooFewResults,
  toleranceFactor,
  updateStrength,
  zeroFailureBound,
} from '../../src/engineering/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pulls = (least: number) => fc.array(between(5, 60), { minLength: least, maxLength: 30 });

/** Confidence that m − k·s lies below the 5 % fractile, by integration over the sample's spread: no noncentral t. */
function confidenceOf(k: number, n: number, z: number): number {
  const freedom = n - 1;
  const steps = 4000;
  const top = Math.sqrt(freedom) + 12;
  let area = 0;
  let hits = 0;
  for (let i = 0; i < steps; i++) {
    const chi = ((i + 0.5) * top) / steps;
    const weight = Math.exp((freedom - 1) * Math.log(chi) - (chi * chi) / 2);
    area += weight;
    hits += weight * pnorm(Math.sqrt(n) * ((k * chi) / Math.sqrt(freedom) - z));
  }
  return hits / area;
}

describe('the tolerance factor', () => {
  it('keeps its promise, checked by an independent integral', () => {
    for (const count of [3, 5, 10, 30, 100])
      for (const confidence of [0.75, 0.9, 0.95]) {
        const k = toleranceFactor({ count, content: 0.95, confidence }).value;
        expect(confidenceOf(k, count, 1.6448536269514722)).toBeCloseTo(confidence, 4);
      }
  });

  it('falls with the number of results and rises with the confidence, towards 1.645', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let count = 3; count <= 500; count += count < 30 ? 1 : 47) {
      const k = toleranceFactor({ count, content: 0.95, confidence: 0.9 }).value;
      expect(k).toBeLessThan(before);
      expect(k).toBeGreaterThan(1.6448);
      expect(toleranceFactor({ count, content: 0.95, confidence: 0.75 }).value).toBeLessThan(k);
      expect(toleranceFactor({ count, content: 0.95, confidence: 0.95 }).value).toBeGreaterThan(k);
      before = k;
    }
  });
});

describe('the characteristic strength', () => {
  it('is above 0, below the lowest credible value, and falls with confidence', () => {
    fc.assert(
      fc.property(pulls(3), (values) => {
        fc.pre(Math.max(...values) - Math.min(...values) > 0.01);
        const at = (confidence: number) => characteristicStrength(values, confidence).value;
        expect(at(0.9)).toBeGreaterThanOrEqual(0);
        expect(at(0.75)).toBeGreaterThan(at(0.9));
        expect(at(0.9)).toBeGreaterThanOrEqual(at(0.95));
        expect(at(0.75)).toBeLessThan(summarise(values).mean);
      }),
    );
  });

  it('scales with the unit', () => {
    fc.assert(
      fc.property(pulls(3), between(0.001, 1000), (values, unit) => {
        fc.pre(Math.max(...values) - Math.min(...values) > 0.01);
        const scaled = characteristicStrength(values.map((v) => v * unit)).value;
        expect(scaled / unit / characteristicStrength(values).value).toBeCloseTo(1, 9);
      }),
    );
  });

  it('never rises when the weakest anchor breaks lower still', () => {
    fc.assert(
      fc.property(pulls(3), between(0.2, 1), (values, share) => {
        fc.pre(Math.max(...values) - Math.min(...values) > 0.01);
        const [weakest = 0, ...others] = [...values].sort((x, y) => x - y);
        const now = characteristicStrength(values).value;
        expect(characteristicStrength([weakest * share, ...others]).value).toBeLessThanOrEqual(
          now * (1 + 1e-9),
        );
      }),
    );
  });

  it('says so when the normal model is nonsense', () => {
    const wild = characteristicStrength([12, 19, 31]);
    expect(wild.normal).toBeLessThan(0);
    expect(wild.normalIsNonsense).toBe(true);
    expect(wild.value).toBeGreaterThan(0);
  });

  it('refuses too few, equal and impossible results', () => {
    expect(() => characteristicStrength([20, 21])).toThrow(TooFewResults);
    expect(() => characteristicStrength([20, 20, 20])).toThrow('equal');
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e7])
      expect(() => characteristicStrength([20, 21, bad])).toThrow(BadResults);
    expect(() => characteristicStrength([20, 21, 22], 1)).toThrow('confidence');
    expect(() => scatterReduction(-0.1)).toThrow(BadResults);
    expect(() => summarise([])).toThrow(TooFewResults);
  });
});

describe('outliers', () => {
  it('are flagged low and kept: the characteristic value sees them', () => {
    const values = [21.4, 22.0, 20.8, 23.1, 21.9, 9.5];
    expect(checkOutlier(values)).toMatchObject({ suspect: 9.5, side: 'low', flagged: true });
    expect(characteristicStrength(values).value).toBeLessThan(7);
  });

  it('are not found in a quiet sample, nor looked for in fewer than five', () => {
    expect(checkOutlier([24.1, 27.3, 22.8, 30.2, 26.0]).flagged).toBe(false);
    expect(checkOutlier([24, 24, 24, 24, 24]).flagged).toBe(false);
    expect(() => checkOutlier([1, 2, 3, 4])).toThrow(TooFewResults);
    expect(() => dixonCritical(2)).toThrow(TooFewResults);
    expect(() => dixonCritical(31)).toThrow(RangeError);
  });

  it('have limits that rise with the number, and a public misprint at n 7 is not ours', () => {
    const g = (count: number) => grubbsCritical({ count, level: 0.05, sides: 2 }).value;
    for (let n = 4; n < 60; n++) expect(g(n)).toBeGreaterThan(g(n - 1));
    expect(g(7)).toBeCloseTo(2.02, 3);
    for (let n = 4; n <= 30; n++) expect(dixonCritical(n)).toBeLessThan(dixonCritical(n - 1));
  });
});

describe('comparison of two groups', () => {
  it('is antisymmetric and blind to the unit', () => {
    fc.assert(
      fc.property(pulls(3), pulls(3), between(0.01, 100), (one, two, unit) => {
        fc.pre([one, two].every((v) => Math.max(...v) - Math.min(...v) > 0.01));
        const there = compareGroups(one, two);
        const back = compareGroups(two, one);
        expect(back.t).toBeCloseTo(-there.t, 9);
        expect(back.p).toBeCloseTo(there.p, 9);
        const scaled = compareGroups(
          one.map((v) => v * unit),
          two.map((v) => v * unit),
        );
        expect(scaled.t).toBeCloseTo(there.t, 6);
        expect(there.low95 <= there.difference && there.difference <= there.high95).toBe(true);
      }),
    );
  });

  it('has nothing to say where nothing scatters', () => {
    const still = { mean: 20, deviation: 0, count: 5 };
    expect(() => compareSummaries(still, still)).toThrow(BadResults);
    expect(() => compareGroups([1, 2], [1, 2, 3])).toThrow(TooFewResults);
  });
});

describe('regression through the origin', () => {
  it('finds an exact line and refuses what is none', () => {
    const fit = fitThroughOrigin([1, 2, 3], [2, 4, 6]);
    expect(fit).toEqual({ slope: 2, slopeError: 0, deviation: 0, rSquared: 1 });
    expect(() => fitThroughOrigin([1, 2], [1, 2])).toThrow(TooFewResults);
    expect(() => fitThroughOrigin([1, 2, 3], [1, 2])).toThrow('equally long');
    expect(() => fitThroughOrigin([0, 0, 0], [1, 2, 3])).toThrow('zero');
    expect(() => fitThroughOrigin([1, 2, Number.NaN], [1, 2, 3])).toThrow(BadResults);
  });

  it('never calls the mean bond characteristic', () => {
    const tests = [50, 80, 100, 60, 90].map((embedment, i) => ({
      diameter: 12,
      embedment,
      load: 0.4 * embedment * (1 + 0.1 * (i % 3)),
    }));
    const bond = bondFromTests(tests);
    expect(bond.characteristic.value).toBeLessThan(0.9 * bond.mean);
  });
});

describe('pulls that were stopped', () => {
  it('raise the median over counting them as failures, and never lower it', () => {
    fc.assert(
      fc.property(pulls(3), fc.array(between(5, 60), { minLength: 1, maxLength: 8 }), (failures, stopped) => {
        fc.pre(Math.max(...failures) - Math.min(...failures) > 0.5);
        const censored = fitCensored(failures, stopped);
        const logs = [...failures, ...stopped].map(Math.log);
        const asFailures = Math.exp(logs.reduce((a, b) => a + b, 0) / logs.length);
        expect(censored.median).toBeGreaterThan(asFailures * 0.999999);
        expect(censored.characteristic).toBeLessThan(censored.fractile5);
      }),
      { numRuns: 40 },
    );
  });

  it('solve the likelihood equations', () => {
    const failures = [14.0, 16.5, 17.2, 19.8, 21.0];
    const stopped = [20, 20, 20];
    const { location, spread } = fitCensored(failures, stopped);
    const likelihood = (m: number, s: number) =>
      failures.reduce((a, v) => a - Math.log(s) - (Math.log(v) - m) ** 2 / (2 * s * s), 0) +
      stopped.reduce((a, v) => a + pnorm((Math.log(v) - m) / s, 0, 1, false, true), 0);
    const best = likelihood(location, spread);
    for (const [dm, ds] of [
      [1e-3, 0],
      [-1e-3, 0],
      [0, 1e-3],
      [0, -1e-3],
    ] as const)
      expect(likelihood(location + dm, spread + ds)).toBeLessThan(best);
  });

  it('give no fractile with fewer than three real failures', () => {
    expect(() => fitCensored([20, 21], [25, 25, 25])).toThrow(TooFewResults);
    expect(() => fitCensored([20, 21, -1], [])).toThrow(BadResults);
  });
});

describe('what is believed before a test', () => {
  const prior = { median: 20, scatter: 0.45, weight: 2, freedom: 4 };

  it('moves towards the results and gets surer with more of them', () => {
    const few = updateStrength(prior, [30, 31]);
    const many = updateStrength(prior, [30, 31, 30, 31, 30, 31, 30, 31]);
    expect(few.median).toBeGreaterThan(prior.median);
    expect(many.median).toBeGreaterThan(few.median);
    expect(many.predictive5).toBeGreaterThan(few.predictive5);
    expect(updateStrength(prior, []).median).toBeCloseTo(20, 12);
  });

  it('comes out the same in one step or in two', () => {
    fc.assert(
      fc.property(pulls(1), pulls(1), (first, second) => {
        const once = updateStrength(prior, [...first, ...second]);
        const twice = updateStrength(updateStrength(prior, first), second);
        expect(twice.median).toBeCloseTo(once.median, 8);
        expect(twice.scatter).toBeCloseTo(once.scatter, 8);
        expect(twice.predictive5).toBeCloseTo(once.predictive5, 8);
      }),
    );
  });

  it('refuses a prior that is none', () => {
    expect(() => updateStrength({ ...prior, median: 0 }, [20])).toThrow(BadResults);
    expect(() => updateStrength({ ...prior, weight: 0, freedom: 0 }, [20])).toThrow('too few');
  });
});

describe('proof tests', () => {
  it('leave less doubt the more of them were held, and never none', () => {
    for (let count = 1; count < 400; count += 7) {
      const now = zeroFailureBound({ count, confidence: 0.95 }).value;
      expect(zeroFailureBound({ count: count + 1, confidence: 0.95 }).value).toBeLessThan(now);
      expect(now).toBeGreaterThan(0);
    }
  });

  it('never make an anchor likelier to fail, and make it safe up to the proof load only', () => {
    fc.assert(
      fc.property(
        between(5, 40),
        between(0.1, 0.6),
        between(0.1, 0.9),
        between(1, 3),
        (mean, scatter, q, by) => {
          const proof = q * mean;
          const load = proof * by;
          const chance = (tested: number) => chanceAfterProof({ mean, scatter, proof: tested, load }).value;
          expect(chance(proof)).toBeLessThanOrEqual(chance(0));
          expect(chanceAfterProof({ mean, scatter, proof, load: proof }).value).toBe(0);
        },
      ),
    );
  });

  it('refuse a proof load that breaks nearly everything', () => {
    expect(() => chanceAfterProof({ mean: 5, scatter: 0.2, proof: 20, load: 25 })).toThrow('proof load');
  });

  it('are planned for whole anchors, never more than there are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 0, max: 5 }), (anchors, failures) => {
        const plan = proofPlan(anchors, failures);
        expect(plan.anchors).toBeLessThanOrEqual(anchors);
        expect(plan.anchors).toBeGreaterThanOrEqual(Math.min(anchors, 3));
        expect(proofPlan(anchors, failures + 1).anchors).toBeGreaterThanOrEqual(plan.anchors);
      }),
    );
    for (const bad of [0, -3, 2.5, Number.NaN]) expect(() => proofPlan(bad, 0)).toThrow(RangeError);
  });
});

describe('mean and fractile', () => {
  it('refuse a scatter that is none', () => {
    expect(() => lognormalMean({ characteristic: 5, scatter: 0 })).toThrow('coefficient of variation');
  });
});
