import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  catenaryHorizontal,
  catenaryTension,
  effectiveFallFactor,
  fallForce,
  legForce,
  lineHorizontal,
  lineOwnWeight,
  lineTension,
  OutOfRange,
  ropeModulus,
  runnerForce,
  triangleForce,
  unequalLegForce,
} from '../../src/engineering/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a fall', () => {
  it('pulls harder with mass, fall factor and stiffness', () => {
    fc.assert(
      fc.property(
        between(30, 150),
        between(8, 100),
        between(0, 1.8),
        between(1, 1.1),
        (mass, modulus, f, by) => {
          const force = (m: number, ea: number, ff: number) =>
            fallForce({ mass: m, modulus: ea, fallFactor: ff }).value;
          const now = force(mass, modulus, f);
          expect(force(mass * by, modulus, f)).toBeGreaterThanOrEqual(now);
          expect(force(mass, modulus * by, f)).toBeGreaterThanOrEqual(now);
          expect(force(mass, modulus, f * by)).toBeGreaterThanOrEqual(now);
          expect(now).toBeGreaterThanOrEqual(2 * mass * 0.00980665 * (1 - 1e-12));
        },
      ),
    );
  });

  it('conserves energy: the rope takes what the weight gave', () => {
    fc.assert(
      fc.property(between(30, 150), between(8, 100), between(0.01, 2), (mass, modulus, fallFactor) => {
        const force = fallForce({ mass, modulus, fallFactor }).value;
        const weight = mass * 0.00980665;
        const stretch = force / modulus;
        expect((force * stretch) / 2).toBeCloseTo(weight * (fallFactor + stretch), 9);
      }),
    );
  });

  it('gives the certified peak force back', () => {
    fc.assert(
      fc.property(between(3, 20), (peakForce) => {
        const modulus = ropeModulus({ peakForce, mass: 80, fallFactor: 1.77 }).value;
        expect(fallForce({ mass: 80, modulus, fallFactor: 1.77 }).value).toBeCloseTo(peakForce, 9);
      }),
    );
    expect(() => ropeModulus({ peakForce: 2, mass: 120, fallFactor: 1.77 })).toThrow(OutOfRange);
  });

  it('never gets softer when friction holds the rope back, and loads the runner more than the climber', () => {
    fc.assert(
      fc.property(between(1, 10), between(1, 30), between(0.35, 1), (climberSide, belayerSide, friction) => {
        const height = climberSide;
        const factor = (r: number) =>
          effectiveFallFactor({ height, climberSide, belayerSide, friction: r }).value;
        expect(factor(friction)).toBeGreaterThanOrEqual(factor(1));
        expect(runnerForce({ force: 5, friction }).value).toBeGreaterThan(5);
      }),
    );
    expect(() => effectiveFallFactor({ height: 20, climberSide: 5, belayerSide: 0, friction: 0.6 })).toThrow(
      'fall factor of 4',
    );
  });
});

describe('an anchor with two legs', () => {
  it('pulls harder the wider it is, and a triangle is always worse', () => {
    fc.assert(
      fc.property(between(0, 170), between(0.01, 5), (angle, more) => {
        const legs = (a: number) => legForce({ load: 1, angle: a }).value;
        expect(legs(angle + more)).toBeGreaterThanOrEqual(legs(angle));
        expect(triangleForce({ load: 1, angle }).value).toBeGreaterThan(legs(angle));
      }),
    );
  });

  it('keeps the balance of forces in both directions', () => {
    fc.assert(
      fc.property(between(1, 80), between(1, 80), between(0.1, 50), (own, other, load) => {
        const first = unequalLegForce({ load, own, other }).value;
        const second = unequalLegForce({ load, own: other, other: own }).value;
        const rad = (a: number) => (a * Math.PI) / 180;
        expect(first * Math.cos(rad(own)) + second * Math.cos(rad(other))).toBeCloseTo(load, 8);
        expect(first * Math.sin(rad(own))).toBeCloseTo(second * Math.sin(rad(other)), 8);
      }),
    );
  });

  it('with equal legs agrees with the symmetric formula', () => {
    for (const a of [5, 20, 45, 70])
      expect(unequalLegForce({ load: 3, own: a, other: a }).value).toBeCloseTo(
        legForce({ load: 3, angle: 2 * a }).value,
        9,
      );
  });
});

describe('a tensioned line', () => {
  it('pulls harder the less it sags', () => {
    fc.assert(
      fc.property(between(5, 300), between(0.005, 0.4), between(0.5, 0.99), (span, ratio, less) => {
        const tension = (sag: number) => lineTension({ load: 1, span, sag }).value;
        expect(tension(span * ratio * less)).toBeGreaterThan(tension(span * ratio));
        const heavy = (sag: number) => catenaryHorizontal({ lineMass: 80, span, sag }).value;
        fc.pre(span * ratio * less > 0.02);
        expect(heavy(span * ratio * less)).toBeGreaterThan(heavy(span * ratio));
      }),
    );
  });

  it('has at the ends the pull and half the load', () => {
    fc.assert(
      fc.property(between(5, 300), between(0.005, 0.45), (span, ratio) => {
        const sag = span * ratio;
        const h = lineHorizontal({ load: 2, span, position: span / 2, sag }).value;
        expect(Math.hypot(h, 1)).toBeCloseTo(lineTension({ load: 2, span, sag }).value, 6);
      }),
    );
  });

  it('as a catenary closes its own equation and tends to the parabola when flat', () => {
    fc.assert(
      fc.property(between(5, 500), between(0.005, 0.45), (span, ratio) => {
        const line = { lineMass: 100, span, sag: Math.max(0.02, span * ratio) };
        fc.pre(line.sag / span < 0.48);
        const a = catenaryHorizontal(line).value / (100 * 9.80665e-6);
        expect(a * (Math.cosh(span / (2 * a)) - 1)).toBeCloseTo(line.sag, 5);
        expect(catenaryTension(line).value).toBeGreaterThan(catenaryHorizontal(line).value);
      }),
    );
    const flat = { lineMass: 100, span: 100, sag: 0.5 };
    expect(catenaryHorizontal(flat).value / lineOwnWeight(flat).value).toBeCloseTo(1, 4);
  });

  it('is refused when it would hang, stand beside the span or have no sag', () => {
    expect(() => lineTension({ load: 1, span: 10, sag: 5 })).toThrow('sag over span');
    expect(() => lineTension({ load: 1, span: 10, sag: 0 })).toThrow(OutOfRange);
    expect(() => lineHorizontal({ load: 1, span: 10, position: 11, sag: 1 })).toThrow('place of the load');
  });
});
