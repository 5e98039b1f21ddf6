import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';
import type { AtmosphereMetal } from './category.ts';

/** Exponents of ISO 9224:2012 Table 3: B1 mean, B2 upper (adds the uncertainty). B2 for safety decisions. */
export const exponents: Readonly<Record<AtmosphereMetal, { readonly B1: number; readonly B2: number }>> = {
  steel: { B1: 0.523, B2: 0.575 },
  zinc: { B1: 0.813, B2: 0.873 },
  copper: { B1: 0.667, B2: 0.726 },
  aluminium: { B1: 0.728, B2: 0.807 },
};

const exponent = input('b', 'time exponent', '', 0.4, 1);
/** Beyond this the power law is replaced by its tangent. */
const tangentYear = 20;
const tangentSlope = (b: number) => b * tangentYear ** (b - 1);

/**
 * Loss after t years: D = r·t^b up to 20 a, then D = r·(20^b + b·20^(b−1)·(t−20)). r first-year loss µm/a (or
 * g/(m²·a)), b exponent of the metal; D in µm (or g/m²).
 * The printed multipliers go on with the power law beyond 20 a; the equation is higher and is used here.
 * Source: ISO 9224:2012 Eq. (1), (3), Table 3. Worked: r 1, b 0.873, 50 a → 31.57.
 */
export const longTermLoss = defineFormula({
  id: 'long-term-loss',
  title: 'Corrosion loss after years',
  symbols: 'D = r·t^b, beyond 20 a D = r·(20^b + b·20^(b−1)·(t−20))',
  source: 'iso-9224-2012',
  clause: 'Eq. (1), (3)',
  inputs: {
    firstYear: input('r', 'first-year loss', 'µm/a', 0, 1000),
    exponent,
    years: input('t', 'years', 'a', 0, 200),
  },
  unit: 'µm',
  kind: 'plain',
  compute: (i) =>
    i.firstYear *
    (i.years <= tangentYear
      ? i.years ** i.exponent
      : tangentYear ** i.exponent + tangentSlope(i.exponent) * (i.years - tangentYear)),
});

/**
 * Years until a loss is reached, the inverse of `longTermLoss`: q = D/r; t = q^(1/b) up to q = 20^b, then
 * 20 + (q − 20^b)/(b·20^(b−1)). D µm, r µm/a; a.
 * Source: ISO 9224:2012 Eq. (1), (3) solved for t. Worked: D 85, r 4.2, b 0.873 → 31.01 a.
 */
export const yearsToLoss = defineFormula({
  id: 'years-to-loss',
  title: 'Years until a corrosion loss is reached',
  symbols: 't = (D/r)^(1/b), beyond 20 a along the tangent',
  source: 'iso-9224-2012',
  clause: 'Eq. (1), (3) solved for t',
  inputs: {
    loss: input('D', 'loss', 'µm', 0, 10_000),
    firstYear: input('r', 'first-year loss', 'µm/a', 0.001, 1000),
    exponent,
  },
  unit: 'a',
  kind: 'plain',
  compute: (i) => {
    const q = i.loss / i.firstYear;
    const atTangent = tangentYear ** i.exponent;
    return q <= atTangent ? q ** (1 / i.exponent) : tangentYear + (q - atTangent) / tangentSlope(i.exponent);
  },
});
