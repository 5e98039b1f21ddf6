import { describe, expect, it } from 'vitest';
import {
  anchorShear,
  concreteConeCharacteristic,
  coneFactor,
  fallForce,
  glueInTension,
  mechanicalTension,
  OutOfRange,
  steelShear,
} from '../../src/engineering/index.ts';

describe('traps', () => {
  it('a drilled anchor never gets the larger factors of cast-in studs (a public calculator swaps them)', () => {
    for (const cracked of [true, false])
      expect(coneFactor('post-installed', cracked)).toBeLessThan(coneFactor('cast-in', cracked));
    expect(coneFactor('post-installed', true)).toBe(7.7);
  });

  it('cracked is never better than uncracked', () => {
    for (const fastener of ['post-installed', 'cast-in'] as const)
      expect(coneFactor(fastener, true)).toBeLessThan(coneFactor(fastener, false));
  });

  it('the step of k6 at 500 MPa lowers the credit, not the metal', () => {
    const at = (steelStrength: number) => steelShear({ metalArea: 100, steelStrength }).value;
    expect(at(500)).toBe(30);
    expect(at(501)).toBeCloseTo(25.05, 9);
  });

  it('depth counts from sound rock: the weathered skin bears nothing', () => {
    const anchor = {
      rodDiameter: 12,
      holeDiameter: 14,
      embedment: 100,
      weatheredSkin: 0,
      steelStrength: 700,
      bondMean: 15,
      rockStrength: 25,
      jointFactor: 1,
      rockScatter: 0.45,
    };
    const whole = glueInTension({ ...anchor, embedment: 80 }).modes.bondRock.mean.value;
    expect(glueInTension({ ...anchor, weatheredSkin: 20 }).modes.bondRock.mean.value).toBe(whole);
    expect(() => glueInTension({ ...anchor, weatheredSkin: 60 })).toThrow(OutOfRange);
    expect(() => glueInTension({ ...anchor, embedment: 1e7 })).toThrow(
      'embedment depth from the face of 10000000 mm',
    );
    for (const name of Object.keys(anchor) as (keyof typeof anchor)[])
      for (const bad of [Number.NaN, -1, Number.POSITIVE_INFINITY])
        expect(() => glueInTension({ ...anchor, [name]: bad })).toThrow(OutOfRange);
    for (const more of [
      { adhesiveFactor: 1.1 },
      { rockBondShare: 0.3 },
      { edge: -5 },
      { neighbour: Number.NaN },
      { legSpacing: -1 },
      { metalArea: 0 },
      { steelScatter: 0 },
    ])
      expect(() => glueInTension({ ...anchor, ...more })).toThrow(OutOfRange);
  });

  it('an anchor near an edge, beside a neighbour and with two legs is the product of its parts', () => {
    const anchor = {
      rodDiameter: 10,
      holeDiameter: 12,
      embedment: 80,
      weatheredSkin: 0,
      steelStrength: 700,
      bondMean: 8,
      rockStrength: 50,
      jointFactor: 1,
      rockScatter: 0.3,
    };
    const lone = glueInTension(anchor).modes.cone.mean.value;
    const near = glueInTension({ ...anchor, edge: 60, neighbour: 120, legSpacing: 48 });
    expect(near.modes.cone.mean.value / lone).toBeCloseTo((180 / 240) * (288 / 240) * 0.85 * 0.75, 9);
    const bond = glueInTension({ ...anchor, edge: 60, neighbour: 120 }).modes.bondSteel.mean.value;
    const spacing = 7.3 * 10 * Math.sqrt(8);
    expect(bond / glueInTension(anchor).modes.bondSteel.mean.value).toBeCloseTo(
      (0.5 + 60 / spacing) * (0.7 + (0.6 * 60) / spacing) * ((1 + 120 / spacing) / 2),
      9,
    );
    expect(near.legs).toBe(2);
    expect(near.modes.steel.characteristic.value).toBeCloseTo((2 * 78.54 * 700) / 1000, 2);
  });

  it('the chain of results behind a mode ends in the mode and can be shown', () => {
    const { modes } = mechanicalTension({
      embedment: 90,
      weatheredSkin: 10,
      metalArea: 84.3,
      steelStrength: 700,
      rockStrength: 100,
      jointFactor: 1,
      rockScatter: 0.45,
      edge: 100,
      pullThroughMean: 20,
    });
    expect(modes.cone?.steps.map((s) => s.formula)).toEqual([
      'effective-depth',
      'rock-cone-mean',
      'cone-area-ratio',
      'cone-edge-factor',
      'influenced-resistance-mean',
      'lognormal-characteristic',
    ]);
    expect(modes.pullThrough?.mean).toMatchObject({ value: 20, kind: 'mean' });
    expect(modes.steel?.characteristic.kind).toBe('characteristic');
  });

  it('soft rock fails beside the rod, hard rock does not; a far edge is no edge', () => {
    const anchor = {
      rodDiameter: 12,
      legs: 2 as const,
      metalArea: 113.1,
      steelStrength: 600,
      yieldStrength: 400,
      embedment: 90,
      weatheredSkin: 0,
      rockStrength: 20,
      jointFactor: 1,
      rockScatter: 0.45,
      pullOutMean: 40,
      standOff: 0,
    };
    const soft = anchorShear(anchor);
    expect(soft.modes.dowel?.mean.value).toBeCloseTo(2 * 16.744, 2);
    expect(soft.governing.mode).toBe('dowel');
    const hard = anchorShear({
      ...anchor,
      rockStrength: 100,
      edgeInLoad: 100,
      edgeAcross: 100,
      edgeAngle: 45,
    });
    expect(hard.modes.dowel).toBeUndefined();
    expect(hard.modes.pryOut?.mean.value).toBe(80);
    expect(hard.modes.edge?.steps.map((s) => s.formula)).toContain('edge-shear-factor');
    expect(hard.governing.mode).toBe('edge');
  });

  it('a refused number is told in the numbers that the member gave', () => {
    expect(() => fallForce({ mass: 80, modulus: 20, fallFactor: 3 })).toThrow(
      'fall factor of 3 is outside the range that the method covers, 0 to 2',
    );
    expect(() => concreteConeCharacteristic({ coneFactor: 7.7, strength: 0.1 + 0.2, embedment: 80 })).toThrow(
      'cylinder strength of 0.3 MPa',
    );
  });
});
