import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anchorShear,
  bondAreaRatio,
  bondEdgeFactor,
  concreteConeCharacteristic,
  concreteEdgeShear,
  coneAreaRatio,
  coneEdgeFactor,
  edgeShearFactor,
  type GlueIn,
  glueInTension,
  groupFactor,
  lognormalCharacteristic,
  lognormalMean,
  mechanicalTension,
  obliqueResistance,
} from '../../src/engineering/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const runs = { numRuns: 300 };

const glueIn: fc.Arbitrary<GlueIn> = fc.record({
  rodDiameter: between(8, 16),
  holeDiameter: between(18, 20),
  embedment: between(90, 150),
  weatheredSkin: between(0, 20),
  steelStrength: between(350, 1000),
  bondMean: between(3, 20),
  rockStrength: between(2, 250),
  jointFactor: between(0.3, 1),
  rockScatter: between(0.2, 0.6),
});

const lowest = (a: GlueIn) => glueInTension(a).governing.characteristic.value;
/** Not lower, but for rounding. */
const notBelow = (more: number, less: number) => expect(more).toBeGreaterThanOrEqual(less * (1 - 1e-12));

describe('a glued-in anchor', () => {
  it.each([
    ['longer', (a: GlueIn, by: number) => ({ ...a, embedment: a.embedment * by })],
    ['thicker', (a: GlueIn, by: number) => ({ ...a, rodDiameter: a.rodDiameter * by })],
    ['in a wider hole', (a: GlueIn, by: number) => ({ ...a, holeDiameter: a.holeDiameter * by })],
    ['in stronger rock', (a: GlueIn, by: number) => ({ ...a, rockStrength: a.rockStrength * by })],
    ['of stronger metal', (a: GlueIn, by: number) => ({ ...a, steelStrength: a.steelStrength * by })],
    ['in better adhesive', (a: GlueIn, by: number) => ({ ...a, bondMean: a.bondMean * by })],
    ['with less weathered rock', (a: GlueIn, by: number) => ({ ...a, weatheredSkin: a.weatheredSkin / by })],
    [
      'with fewer joints',
      (a: GlueIn, by: number) => ({ ...a, jointFactor: Math.min(1, a.jointFactor * by) }),
    ],
    ['in better known rock', (a: GlueIn, by: number) => ({ ...a, rockScatter: a.rockScatter / by })],
  ])('%s never holds less', (_what, better) => {
    fc.assert(
      fc.property(glueIn, between(1, 1.1), (a, by) => {
        fc.pre(a.embedment / a.rodDiameter < 16 && a.embedment - a.weatheredSkin > 4.5 * a.rodDiameter);
        notBelow(lowest(better(a, by)), lowest(a));
      }),
      runs,
    );
  });

  it('never holds more nearer to an edge, a second edge or a neighbour', () => {
    fc.assert(
      fc.property(glueIn, between(20, 400), between(0.3, 1), (a, far, share) => {
        for (const what of ['edge', 'edgeAcross', 'neighbour'] as const)
          notBelow(lowest({ ...a, [what]: far }), lowest({ ...a, [what]: far * share }));
        notBelow(lowest(a), lowest({ ...a, edge: far }));
      }),
      runs,
    );
  });

  it('with two legs holds at least one leg and never more than two', () => {
    fc.assert(
      fc.property(glueIn, between(10, 500), (a, legSpacing) => {
        const one = glueInTension(a).modes;
        const two = glueInTension({ ...a, legSpacing }).modes;
        for (const mode of ['steel', 'bondSteel', 'bondRock', 'cone'] as const) {
          notBelow(two[mode].mean.value, one[mode].mean.value);
          notBelow(2 * one[mode].mean.value, two[mode].mean.value);
        }
      }),
      runs,
    );
  });

  it('is more likely to fail under a larger load, and the chance is one', () => {
    fc.assert(
      fc.property(glueIn, between(0, 60), between(1, 2), (a, load, by) => {
        const { chanceBelow } = glueInTension(a);
        notBelow(chanceBelow(load * by), chanceBelow(load));
        expect(chanceBelow(load)).toBeGreaterThanOrEqual(0);
        expect(chanceBelow(load)).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });

  it('keeps the 5 % fractile below the mean in every mode', () => {
    fc.assert(
      fc.property(glueIn, (a) => {
        for (const mode of Object.values(glueInTension(a).modes))
          expect(mode.characteristic.value).toBeLessThan(mode.mean.value);
      }),
      runs,
    );
  });
});

describe('a mechanical anchor', () => {
  it('never holds more when its pull-through becomes known', () => {
    fc.assert(
      fc.property(between(60, 120), between(25, 200), between(1, 60), (embedment, rockStrength, pull) => {
        const anchor = {
          embedment,
          rockStrength,
          weatheredSkin: 5,
          metalArea: 84.3,
          steelStrength: 700,
          jointFactor: 1,
          rockScatter: 0.45,
        };
        notBelow(
          mechanicalTension(anchor).governing.characteristic.value,
          mechanicalTension({ ...anchor, pullThroughMean: pull }).governing.characteristic.value,
        );
      }),
      runs,
    );
  });
});

describe('shear', () => {
  const anchor = {
    rodDiameter: 12,
    legs: 1 as const,
    metalArea: 113.1,
    steelStrength: 600,
    yieldStrength: 300,
    embedment: 90,
    weatheredSkin: 10,
    jointFactor: 0.9,
    rockScatter: 0.45,
    pullOutMean: 30,
    standOff: 0,
  };

  it('never falls with stronger rock, nor rises nearer to an edge', () => {
    fc.assert(
      fc.property(between(2, 200), between(1, 3), between(40, 400), (rockStrength, by, edgeInLoad) => {
        const at = (more: object) =>
          anchorShear({ ...anchor, rockStrength, edgeInLoad, ...more }).governing.characteristic.value;
        notBelow(at({ rockStrength: Math.min(400, rockStrength * by) }), at({}));
        notBelow(at({}), at({ edgeInLoad: Math.max(20, edgeInLoad / by) }));
      }),
      runs,
    );
  });

  it('warns when the load stands off the rock, and only then', () => {
    expect(anchorShear({ ...anchor, rockStrength: 100 }).leverArm).toBeUndefined();
    const off = anchorShear({ ...anchor, rockStrength: 100, standOff: 25 });
    expect(off.leverArm?.value).toBeLessThan(0.2 * (off.modes.steel?.characteristic.value ?? 0));
  });

  it('lies between its two directions when the pull is oblique', () => {
    fc.assert(
      fc.property(between(1, 40), between(1, 40), between(0, 90), between(1, 2), (n, v, angle, exponent) => {
        const f = obliqueResistance.characteristic({
          tensionResistance: n,
          shearResistance: v,
          angle,
          exponent,
        }).value;
        notBelow(f, Math.min(n, v) * 2 ** (0.5 - 1));
        const straight = obliqueResistance.characteristic({
          tensionResistance: n,
          shearResistance: v,
          angle: 90,
          exponent,
        }).value;
        expect(straight).toBeCloseTo(v, 9);
      }),
      runs,
    );
  });
});

describe('influence factors', () => {
  it('stay above 0 and at most 1 for a lone anchor; a pair is at most 2', () => {
    fc.assert(
      fc.property(between(40, 500), between(5, 1000), between(5, 1000), between(0, 2000), (h, c, c2, s) => {
        const factors = [
          coneEdgeFactor({ embedment: h, edge: c }).value,
          coneAreaRatio({ embedment: h, edge: c, edgeAcross: c2, spacing: 0 }).value,
          bondEdgeFactor({ edge: c, criticalSpacing: 2 * h }).value,
          bondAreaRatio({ criticalSpacing: 2 * h, edge: c, edgeAcross: c2, spacing: 0 }).value,
        ];
        for (const factor of factors) {
          expect(factor).toBeGreaterThan(0);
          expect(factor).toBeLessThanOrEqual(1);
        }
        const pair = coneAreaRatio({ embedment: h, edge: c, edgeAcross: c2, spacing: s }).value;
        expect(pair).toBeLessThanOrEqual(2);
      }),
      runs,
    );
  });

  it('of direction lies between 1 and 2, and the group factor between 1 and its start', () => {
    fc.assert(
      fc.property(between(0, 90), between(1, 3), between(0, 400), (angle, zeroSpacingFactor, spacing) => {
        const far = { edgeInLoad: 100, edgeAcross: 1000, thickness: 1000 };
        const direction = edgeShearFactor({ ...far, angle }).value;
        expect(direction).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(direction).toBeLessThanOrEqual(2 + 1e-12);
        const group = groupFactor({ zeroSpacingFactor, spacing, criticalSpacing: 300 }).value;
        expect(group).toBeGreaterThanOrEqual(1);
        expect(group).toBeLessThanOrEqual(zeroSpacingFactor + 1e-12);
      }),
      runs,
    );
  });

  it('let cone and edge resistance rise with depth, strength and edge distance', () => {
    fc.assert(
      fc.property(between(60, 120), between(12, 80), between(50, 300), between(1, 1.2), (h, f, c, by) => {
        const cone = (embedment: number, strength: number) =>
          concreteConeCharacteristic({ coneFactor: 7.7, embedment, strength }).value;
        notBelow(cone(h * by, f), cone(h, f));
        notBelow(cone(h, Math.min(90, f * by)), cone(h, f));
        const edge = (edgeInLoad: number) =>
          concreteEdgeShear({ edgeFactor: 1.7, diameter: 12, embedment: h, strength: f, edgeInLoad }).value;
        notBelow(edge(c * by), edge(c));
      }),
      runs,
    );
  });

  it('turn mean and 5 % fractile into each other without loss', () => {
    fc.assert(
      fc.property(between(0.1, 500), between(0.02, 1), (mean, scatter) => {
        const characteristic = lognormalCharacteristic({ mean, scatter }).value;
        expect(lognormalMean({ characteristic, scatter }).value).toBeCloseTo(mean, 6);
      }),
      runs,
    );
  });
});
