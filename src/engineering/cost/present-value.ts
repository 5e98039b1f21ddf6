import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

const rate = input('r', 'real interest rate', '', 0, 0.3);
const years = input('n', 'years', 'a', 0, 200);

/** Present value of 1 paid after n years: (1+r)^−n. Source: ISO 15686-5:2017. Worked: 3 %, 25 a → 0.4776. */
export const discountFactor = defineFormula({
  id: 'discount-factor',
  title: 'Present value of one unit paid later',
  symbols: 'v = (1+r)^−n',
  source: 'iso-15686-5',
  clause: 'net present cost',
  inputs: { rate, years },
  unit: '',
  kind: 'plain',
  compute: (i) => (1 + i.rate) ** -i.years,
});

/** The sum of the discount factors of n yearly payments; n when the rate is 0. */
export const seriesWorth = (r: number, n: number): number =>
  r === 0 ? n : -Math.expm1(-n * Math.log1p(r)) / r;

/**
 * Present value of 1 paid at each year's end for n years: a = (1 − (1+r)^−n)/r, n at r = 0.
 * Source: ISO 15686-5:2017; handbook present-worth tables. Worked: 3 %, 10 a → 8.530.
 */
export const annuityFactor = defineFormula({
  id: 'annuity-factor',
  title: 'Present value of a yearly payment',
  symbols: 'a = (1 − (1+r)^−n)/r',
  source: 'iso-15686-5',
  clause: 'equivalent annual cost',
  inputs: { rate, years: { ...years, min: 0.1 } },
  unit: '',
  kind: 'plain',
  compute: (i) => seriesWorth(i.rate, i.years),
});

/** Real rate from nominal rate and inflation: (1+i)/(1+f) − 1. Source: ISO 15686-5:2017. Worked: 5 %, 2 % → 0.02941. */
export const realRate = defineFormula({
  id: 'real-rate',
  title: 'Real interest rate',
  symbols: 'r = (1+i)/(1+f) − 1',
  source: 'iso-15686-5',
  clause: 'real discount rate',
  inputs: {
    nominal: input('i', 'nominal interest rate', '', 0, 0.5),
    inflation: input('f', 'inflation', '', 0, 0.5),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => (1 + i.nominal) / (1 + i.inflation) - 1,
});

/**
 * How much more a long-lived anchor may cost than one that is replaced every L years: a(r, L2)/a(r, L1).
 * Source: ISO 15686-5:2017 (equal annual cost). Worked: 3 %, 10 and 50 a → 3.016.
 */
export const breakEvenPriceRatio = defineFormula({
  id: 'break-even-price-ratio',
  title: 'Price ratio at which two lives cost the same a year',
  symbols: 'C2/C1 = a(r, L2)/a(r, L1)',
  source: 'iso-15686-5',
  clause: 'equal annual cost',
  inputs: {
    rate,
    life: input('L1', 'life of the first anchor', 'a', 0.5, 200),
    otherLife: input('L2', 'life of the second anchor', 'a', 0.5, 200),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => seriesWorth(i.rate, i.otherLife) / seriesWorth(i.rate, i.life),
});
