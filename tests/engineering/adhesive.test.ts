import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  annulusVolume,
  type CureData,
  cartridgesNeeded,
  checkGap,
  cureTime,
  OutOfRange,
  TooColdToCure,
  TooHotToCure,
} from '../../src/engineering/index.ts';

const usual = [
  { temperature: 5, hours: 60 },
  { temperature: 10, hours: 36 },
  { temperature: 20, hours: 12 },
  { temperature: 30, hours: 6 },
];
const slow: CureData = { lowestTemperature: 5, usual, wetFactor: 2 };
const sheet = [
  { temperature: 20, hours: 10 },
  { temperature: 5, hours: 72 },
  { temperature: 10, hours: 30 },
];

describe('cure time', () => {
  it('reads a sheet as sheets are read: the next colder line', () => {
    expect(cureTime(15, { ...slow, sheet }, false)).toEqual({ hours: 30, from: 'sheet', wetFactor: 1 });
    expect(cureTime(20, { ...slow, sheet }, false).hours).toBe(10);
    expect(cureTime(29, { ...slow, sheet }, false).hours).toBe(10);
  });

  it('puts the sheet before the usual table, the scaled time before a shorter usual one', () => {
    expect(cureTime(20, { ...slow, sheet, at20: 24 }, false).from).toBe('sheet');
    expect(cureTime(10, { ...slow, at20: 24 }, false)).toEqual({ hours: 48, from: 'scaled', wetFactor: 1 });
    expect(cureTime(10, { ...slow, at20: 1 }, false)).toEqual({ hours: 36, from: 'usual', wetFactor: 1 });
  });

  it('doubles in wet rock', () => {
    expect(cureTime(20, slow, true).hours).toBe(24);
  });

  it('hits the lines of the usual table and lies between them', () => {
    expect(cureTime(5, slow, false).hours).toBe(60);
    expect(cureTime(30, slow, false).hours).toBe(6);
    expect(cureTime(15, slow, false).hours).toBeCloseTo(Math.sqrt(36 * 12), 9);
  });

  it('never gets shorter in colder or wetter rock', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (t, share) => {
          const colder = t - share * (t - 5);
          for (const data of [slow, { ...slow, sheet }, { ...slow, at20: 9 }])
            for (const wet of [false, true])
              expect(cureTime(colder, data, wet).hours).toBeGreaterThanOrEqual(
                cureTime(t, data, wet).hours * (1 - 1e-12),
              );
        },
      ),
    );
  });

  it('has no time below the lowest temperature of the sheet, of the table, or for no number', () => {
    expect(() => cureTime(4.9, slow, false)).toThrow(TooColdToCure);
    expect(() => cureTime(7, { ...slow, lowestTemperature: 8 }, false)).toThrow('below 8 °C');
    expect(() => cureTime(0, { ...slow, lowestTemperature: -20, sheet }, false)).toThrow(TooColdToCure);
    expect(() => cureTime(31, slow, false)).toThrow(TooHotToCure);
    expect(() => cureTime(Number.NaN, slow, false)).toThrow(RangeError);
    expect(() => cureTime(10, { ...slow, usual: [] }, false)).toThrow('no cure times');
  });
});

describe('amount and gap', () => {
  it('never needs fewer cartridges for more holes, deeper or wider ones', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (holes, volume) => {
          const need = (n: number, v: number) =>
            cartridgesNeeded({ holes: n, volume: v, waste: 0.25, cartridge: 300, nozzleLoss: 20 }).value;
          expect(need(holes + 1, volume)).toBeGreaterThanOrEqual(need(holes, volume));
          expect(need(holes, volume * 1.1)).toBeGreaterThanOrEqual(need(holes, volume));
        },
      ),
    );
  });

  it('refuses a rod that does not go in, and a cartridge that is pumped away', () => {
    expect(() => annulusVolume({ holeDiameter: 12, diameter: 12, embedment: 80 })).toThrow(OutOfRange);
    expect(() =>
      cartridgesNeeded({ holes: 1, volume: 4, waste: 0.25, cartridge: 30, nozzleLoss: 30 }),
    ).toThrow('usable content');
    for (const [rod, hole] of [
      [12, 12],
      [Number.NaN, 14],
      [-12, 14],
    ] as const)
      expect(() => checkGap(rod, hole)).toThrow(RangeError);
  });

  it('takes the limits of the product before the usual ones', () => {
    expect(checkGap(12, 18).verdict).toBe('too-wide');
    expect(checkGap(12, 18, { least: 1, most: 3 }).verdict).toBe('ok');
  });
});

describe('messages', () => {
  it('say in plain words what is wrong and what would be right', () => {
    expect(() => annulusVolume({ holeDiameter: 14, diameter: 12, embedment: 1e7 })).toThrow(
      'embedment depth of 10000000 mm is outside the range that the method covers, 20 to 1000 mm',
    );
    expect(() => annulusVolume({ holeDiameter: 14, diameter: Number.NaN, embedment: 80 })).toThrow(
      'diameter of the rod is not a number.',
    );
  });
});
