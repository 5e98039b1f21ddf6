import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  groutBond,
  hoekBrownS,
  jointFactor,
  reboundClass,
  reboundSpread,
  reboundStrength,
  rockMassStrength,
  strengthGrade,
  strengthGrades,
} from '../../src/engineering/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('rock', () => {
  it('grades follow each other without gap, and no strength lowers its grade by rising', () => {
    for (let i = 1; i < strengthGrades.length; i++)
      expect(strengthGrades[i]?.min).toBe(strengthGrades[i - 1]?.max);
    fc.assert(
      fc.property(between(0.25, 900), between(1, 1.1), (ucs, by) => {
        expect(strengthGrade(ucs * by).min).toBeGreaterThanOrEqual(strengthGrade(ucs).min);
        expect(strengthGrade(ucs).min).toBeLessThanOrEqual(ucs);
      }),
    );
    for (const bad of [0, -5, 1001, Number.NaN]) expect(() => strengthGrade(bad)).toThrow(RangeError);
  });

  it('rebound gives a class of which the lower end is below the published spread', () => {
    for (let r = 20; r <= 60; r += 5) {
      const spread = reboundSpread(r);
      expect(spread.min).toBeLessThan(spread.max);
      expect(reboundClass(r).min).toBeLessThanOrEqual(spread.max);
      expect(reboundSpread(Math.min(60, r + 1)).max).toBeGreaterThanOrEqual(spread.max);
    }
    for (const bad of [5, 81, Number.NaN]) expect(() => reboundClass(bad)).toThrow(RangeError);
    expect(() => reboundSpread(10)).toThrow(RangeError);
  });

  it('rises in strength with rebound, and never with worse joints', () => {
    fc.assert(
      fc.property(
        between(20, 59),
        between(18, 30),
        between(10, 99),
        between(0, 1),
        (rebound, unitWeight, gsi, d) => {
          expect(reboundStrength({ rebound: rebound + 1, unitWeight }).value).toBeGreaterThan(
            reboundStrength({ rebound, unitWeight }).value,
          );
          expect(jointFactor({ gsi: gsi + 1 }).value).toBeGreaterThan(jointFactor({ gsi }).value);
          expect(jointFactor({ gsi }).value).toBeLessThanOrEqual(1);
          const mass = (g: number, disturbance: number) =>
            rockMassStrength({ rockStrength: 100, gsi: g, disturbance }).value;
          expect(mass(gsi + 1, d)).toBeGreaterThan(mass(gsi, d));
          expect(mass(gsi, 1)).toBeLessThanOrEqual(mass(gsi, d));
          expect(hoekBrownS({ gsi, disturbance: d }).value).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it('bonds grout at no more than 4.2 MPa', () => {
    fc.assert(
      fc.property(between(0.5, 400), (rockStrength) => {
        expect(groutBond({ rockStrength }).value).toBeLessThanOrEqual(4.2);
      }),
    );
  });
});
