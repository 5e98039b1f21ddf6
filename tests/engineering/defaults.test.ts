import { pnorm } from 'lib-r-math.js';
import { describe, expect, it } from 'vitest';
import {
  anchorShear,
  bondFromTests,
  characteristicStrength,
  checkGap,
  dowelShearMean,
  fitCensored,
  glueInTension,
  leverArmShear,
  lifeCycleCost,
  mechanicalTension,
  proofPlan,
  rateSensitivity,
  rockEdgeShearMean,
  usualWaste,
} from '../../src/engineering/index.ts';

const shear = {
  rodDiameter: 12,
  legs: 1 as const,
  metalArea: 84.27,
  steelStrength: 700,
  yieldStrength: 400,
  embedment: 90,
  weatheredSkin: 10,
  rockStrength: 49.9,
  jointFactor: 0.9,
  rockScatter: 0.45,
  pullOutMean: 40,
  standOff: 0,
};

const bolt = {
  embedment: 100,
  weatheredSkin: 10,
  steelStrength: 700,
  rockStrength: 100,
  jointFactor: 1,
  rockScatter: 0.45,
};

describe('what is taken when nobody said otherwise', () => {
  it('metal scatters by 5 %', () => {
    // exp(1.645·√ln(1.0025))·√1.0025
    const ratio = 1.0869;
    const glued = glueInTension({ ...bolt, rodDiameter: 12, holeDiameter: 14, bondMean: 15 });
    const driven = mechanicalTension({ ...bolt, metalArea: 84.27 });
    for (const mode of [glued.modes.steel, driven.modes.steel, anchorShear(shear).modes.steel])
      expect((mode?.mean.value ?? 0) / (mode?.characteristic.value ?? 1)).toBeCloseTo(ratio, 3);
    expect(glued.legs).toBe(1);
  });

  it('rock yields beside the rod below 50 MPa, and the weathered skin is a lever', () => {
    expect(anchorShear({ ...shear, rockStrength: 50 }).modes.dowel).toBeUndefined();
    const alone = dowelShearMean({
      diameter: 12,
      rockStrength: 49.9,
      yieldStrength: 400,
      standOff: 25,
      axialShare: 0,
    }).value;
    expect(anchorShear({ ...shear, standOff: 15 }).modes.dowel?.mean.value).toBeCloseTo(alone, 9);
  });

  it('the load pulls straight at a wide and thick edge, on a rod that is free to turn', () => {
    const lone = rockEdgeShearMean({
      diameter: 12,
      embedment: 90,
      rockStrength: 49.9,
      jointFactor: 0.9,
      edgeInLoad: 120,
    }).value;
    expect(anchorShear({ ...shear, edgeInLoad: 120 }).modes.edge?.mean.value).toBeCloseTo(lone, 9);
    expect(anchorShear({ ...shear, edgeInLoad: 25 }).modes.edge?.mean.value).toBeGreaterThan(0);
    const arm = leverArmShear({
      metalArea: 84.27,
      steelStrength: 700,
      diameter: 12,
      standOff: 25,
      tensionShare: 0,
      restraint: 1,
    }).value;
    expect(anchorShear({ ...shear, standOff: 25 }).leverArm?.value).toBe(arm);
  });

  it('the chance of failure is that of all modes together, above that of the weakest', () => {
    const glued = glueInTension({ ...bolt, rodDiameter: 12, holeDiameter: 14, bondMean: 15 });
    const without = Object.values(glued.modes).reduce((survives, m) => {
      const spread = Math.sqrt(Math.log(1 + m.scatter ** 2));
      const z = (Math.log(m.mean.value / 25) - spread ** 2 / 2) / spread;
      return survives * (1 - pnorm(-z));
    }, 1);
    expect(glued.chanceBelow(25)).toBeCloseTo(1 - without, 6);
    expect(glued.chanceBelow(0)).toBe(0);
  });

  it('the gap is half a millimetre to two, the waste a quarter', () => {
    expect(checkGap(12, 13).verdict).toBe('ok');
    expect(checkGap(12, 12.98).verdict).toBe('too-tight');
    expect(checkGap(12, 16)).toMatchObject({ gap: 2, verdict: 'ok' });
    expect(checkGap(12, 16.04).verdict).toBe('too-wide');
    expect(usualWaste).toBe(0.25);
  });

  it('confidence is 90 %, as for fastenings', () => {
    const pulls = [24.1, 27.3, 22.8, 30.2, 26.0];
    expect(characteristicStrength(pulls)).toEqual(characteristicStrength(pulls, 0.9));
    expect(fitCensored(pulls, [31])).toEqual(fitCensored(pulls, [31], 0.9));
    const tests = pulls.map((load, i) => ({ load, diameter: 12, embedment: 70 + 3 * i }));
    expect(bondFromTests(tests)).toEqual(bondFromTests(tests, 0.9));
    expect(proofPlan(400, 0)).toEqual({ anchors: 10, loadFactor: 1.5 });
  });

  it('costs are shown at the rates from 0 to 7 %, and the ends of every range are inside', () => {
    expect(rateSensitivity({ installed: 26, life: 10 }, 50).map((r) => r.rate)).toEqual([
      0, 0.01, 0.03, 0.05, 0.07,
    ]);
    for (const [horizon, rate] of [
      [1, 0],
      [200, 0.3],
    ] as const)
      expect(lifeCycleCost({ installed: 26, life: 0.5 }, horizon, rate).presentValue).toBeGreaterThan(26);
    for (const [horizon, rate] of [
      [0.99, 0],
      [200.1, 0.1],
      [50, 0.301],
    ] as const)
      expect(() => lifeCycleCost({ installed: 26, life: 10 }, horizon, rate)).toThrow('must be');
  });
});
