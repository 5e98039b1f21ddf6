import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aluminiumLoss,
  categories,
  category,
  copperLoss,
  estimateBand,
  exposureParts,
  longTermLoss,
  remainingSection,
  resistanceFactor,
  steelLoss,
  surfaceHumidity,
  yearsToLoss,
  zincLife,
  zincLoss,
} from '../../src/engineering/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const air = fc.record({
  temperature: between(-17.1, 28.7),
  humidity: between(34, 93),
  sulphurDioxide: between(0.7, 150.4),
  chloride: between(0.4, 760.5),
});
const losses = { steelLoss, zincLoss, copperLoss, aluminiumLoss };

describe.each(Object.entries(losses))('%s', (_name, loss) => {
  it('never falls with more salt, more sulphur dioxide or more humidity', () => {
    fc.assert(
      fc.property(air, between(0, 1), (a, share) => {
        // The sum may be a last digit above the range: 5.57 + (150.4 - 5.57) is not 150.4.
        const up = (value: number, max: number) => Math.min(max, value + share * (max - value));
        const now = loss(a).value;
        expect(loss({ ...a, chloride: up(a.chloride, 760.5) }).value).toBeGreaterThanOrEqual(now);
        expect(loss({ ...a, sulphurDioxide: up(a.sulphurDioxide, 150.4) }).value).toBeGreaterThanOrEqual(now);
        expect(loss({ ...a, humidity: up(a.humidity, 93) }).value).toBeGreaterThanOrEqual(now);
      }),
    );
  });

  it('has no step at 10 °C', () => {
    fc.assert(
      fc.property(air, (a) => {
        const below = loss({ ...a, temperature: 10 }).value;
        const above = loss({ ...a, temperature: 10.000001 }).value;
        expect(Math.abs(above / below - 1)).toBeLessThan(1e-5);
      }),
    );
  });
});

describe('traps in copies of the standards', () => {
  it('the chloride term of zinc is not that of the public copy with 0.52 and 0.038', () => {
    const wrong = 0.2075 + 0.0175 * 300 ** 0.52 * Math.exp(0.008 * 80 + 0.038 * 27);
    const right = zincLoss({ temperature: 27, humidity: 80, sulphurDioxide: 2, chloride: 300 }).value;
    expect(wrong).toBeCloseTo(2.005, 2);
    expect(right).toBeGreaterThan(4 * wrong);
  });

  it('beyond 20 years the tangent lies above the power law that the table prints', () => {
    for (const exponent of [0.523, 0.575, 0.813, 0.873])
      for (const years of [25, 50, 100])
        expect(longTermLoss({ firstYear: 1, exponent, years }).value).toBeGreaterThan(years ** exponent);
  });

  it('the multiplier 11.814 of aluminium at 30 years is a slip in print', () => {
    expect(30 ** 0.728).toBeGreaterThan(11.85);
    expect(longTermLoss({ firstYear: 1, exponent: 0.728, years: 30 }).value).toBeGreaterThan(11.85);
  });

  it('a rate above CX is not called CX', () => {
    expect(category('zinc', 26)).toBe('beyond CX');
    expect(category('steel', 701)).toBe('beyond CX');
  });
});

describe('loss over time', () => {
  it('and its inverse agree on both sides of 20 years', () => {
    fc.assert(
      fc.property(between(0.1, 200), between(0.5, 0.9), between(0.01, 150), (firstYear, exponent, years) => {
        const loss = longTermLoss({ firstYear, exponent, years }).value;
        fc.pre(loss <= 10_000);
        expect(yearsToLoss({ loss, firstYear, exponent }).value).toBeCloseTo(years, 6);
      }),
    );
  });

  it('never gives a zinc life longer than the straight line or the upper curve', () => {
    fc.assert(
      fc.property(between(1, 200), between(0.05, 30), (thickness, rate) => {
        const life = zincLife(thickness, rate);
        expect(life.years).toBe(Math.min(life.linear, life.upperCurve));
        expect(zincLife(thickness * 1.1, rate).years).toBeGreaterThan(life.years);
        expect(zincLife(thickness, rate * 1.1).years).toBeLessThan(life.years);
      }),
    );
  });

  it('never leaves more section after more loss, and refuses to leave none', () => {
    fc.assert(
      fc.property(between(6, 20), between(0, 2000), between(0, 900), (diameter, loss, more) => {
        const left = (l: number) => remainingSection({ diameter, loss: l }).value;
        expect(left(loss + more)).toBeLessThanOrEqual(left(loss));
      }),
    );
    expect(() => remainingSection({ diameter: 8, loss: 4001 })).toThrow('diameter that is left');
  });
});

describe('classes', () => {
  it('never improve when a part of the exposure gets worse', () => {
    const order = ['I', 'II', 'III', 'IV', 'V'];
    const cleanings = [0, -7];
    for (const sulphur of exposureParts.sulphur)
      for (const cleaning of cleanings) {
        const classes = exposureParts.chloride.map((chloride) =>
          order.indexOf(resistanceFactor({ chloride, sulphur, cleaning }).advised),
        );
        expect(classes).toEqual([...classes].sort((a, b) => a - b));
      }
    for (const chloride of exposureParts.chloride)
      for (const sulphur of exposureParts.sulphur)
        expect(
          order.indexOf(resistanceFactor({ chloride, sulphur, cleaning: -7 }).advised),
        ).toBeGreaterThanOrEqual(order.indexOf(resistanceFactor({ chloride, sulphur, cleaning: 0 }).advised));
  });

  it('enclose the class of the estimate in the band', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('steel', 'zinc', 'copper', 'aluminium'),
        between(0.01, 400),
        (metal, rate) => {
          const band = estimateBand(metal, rate);
          const at = categories.indexOf(category(metal, rate));
          expect(categories.indexOf(band.from)).toBeLessThanOrEqual(at);
          expect(categories.indexOf(band.to)).toBeGreaterThanOrEqual(at);
        },
      ),
    );
  });

  it('are refused for a rate that is no rate', () => {
    for (const rate of [Number.NaN, -1]) expect(() => category('steel', rate)).toThrow(RangeError);
  });

  it('flag the boundary at -20', () => {
    expect(resistanceFactor({ chloride: -15, sulphur: -5, cleaning: 0 })).toMatchObject({
      class: 'IV',
      advised: 'V',
      onBoundary: true,
    });
  });
});

describe('humidity at a bolt', () => {
  it('falls as the bolt warms and ends at dew', () => {
    fc.assert(
      fc.property(between(-20, 40), between(5, 100), between(-20, 80), between(0, 20), (t, rh, s, warmer) => {
        const at = (surfaceTemperature: number) =>
          surfaceHumidity({ airTemperature: t, relativeHumidity: rh, surfaceTemperature }).value;
        fc.pre(s + warmer <= 90);
        expect(at(s + warmer)).toBeLessThanOrEqual(at(s));
        expect(at(s)).toBeLessThanOrEqual(100);
      }),
    );
  });
});
