/**
 * Exact factors: the international yard and pound (1959) give 25.4 mm, 0.9144 m and 0.453 592 37 kg; standard
 * gravity 9.806 65 m/s² (CGPM 1901) gives the kgf and lbf; the nautical mile is 1852 m (1929). NIST SP 811
 * (2008) appendix B lists them all. Values from memory.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  lengthUnits,
  temperatureUnits,
  toCelsius,
  toHours,
  toKg,
  toKn,
  toMeters,
  toMicrometers,
  toMm,
  toMpa,
} from '../../src/units/convert.ts';

const g = 9.80665;
const pound = 0.45359237;

describe('factors that treaties fix', () => {
  it.each([
    ['1 in', toMm(1, 'in'), 25.4],
    ['1 ft', toMm(1, 'ft'), 304.8],
    ['1 cm', toMm(1, 'cm'), 10],
    ['1 m', toMm(1, 'm'), 1000],
    ['3/8 in', toMm(3 / 8, 'in'), 9.525],
    ['1 mi', toMeters(1, 'mi'), 1609.344],
    ['1 nmi', toMeters(1, 'nmi'), 1852],
    ['1 yd', toMeters(1, 'yd'), 0.9144],
    ['0.1 mm', toMicrometers(0.1, 'mm'), 100],
    ['90 min', toHours(90, 'min'), 1.5],
    ['1 week', toHours(1, 'week'), 168],
    ['1 kgf', toKn(1, 'kgf'), g / 1000],
    ['1 daN', toKn(1, 'daN'), 0.01],
    ['2500 N', toKn(2500, 'N'), 2.5],
    ['1 lb', toKg(1, 'lb'), pound],
    ['1 stone', toKg(1, 'stone'), 14 * pound],
    ['1 t', toKg(1, 't'), 1000],
    ['1 kPa', toMpa(1, 'kPa'), 0.001],
    ['1 GPa', toMpa(1, 'GPa'), 1000],
    ['32 F', toCelsius(32, 'F'), 0],
    ['212 F', toCelsius(212, 'F'), 100],
    ['-40 F', toCelsius(-40, 'F'), -40],
    ['273.15 K', toCelsius(273.15, 'K'), 0],
  ])('%s', (_name, got, want) => expect(got).toBeCloseTo(want, 9));

  it('pounds-force to the seven digits that the package carries', () => {
    expect(toKn(1, 'lbf') / ((pound * g) / 1000)).toBeCloseTo(1, 6);
    expect(toMpa(1, 'psi') / ((pound * g) / 25.4 ** 2)).toBeCloseTo(1, 6);
  });
});

it('keeps order and never gives NaN', () => {
  const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(number, number, fc.constantFrom(...lengthUnits), (a, b, unit) => {
      const [low, high] = a < b ? [a, b] : [b, a];
      return toMm(low, unit) <= toMm(high, unit);
    }),
  );
  fc.assert(
    fc.property(number, fc.constantFrom(...temperatureUnits), (a, unit) =>
      Number.isFinite(toCelsius(a, unit)),
    ),
  );
});
