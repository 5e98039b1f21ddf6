import { pnorm, qnorm } from 'lib-r-math.js';
import { defineFormula } from '../formula.ts';
import { force, resistance, scatter } from '../quantities.ts';

/** Standard deviation of ln R for a coefficient of variation V of R. */
const logDeviation = (v: number) => Math.sqrt(Math.log(1 + v * v));

/**
 * 5 % fractile of a lognormal resistance of which mean and scatter are taken as known:
 * R_5 = m/√(1+V²)·exp(−1.6449·√ln(1+V²)). m mean kN, V coefficient of variation; kN.
 * V is a judgement here (0.30 tested on the spot, 0.45 named rock with hammer class, 0.60 name only).
 * Source: EN 1990:2002 Annex D, lognormal form; the values of V are common practice.
 * Worked: m 1, V 0.30 → 0.5910.
 */
export const lognormalCharacteristic = defineFormula({
  id: 'lognormal-characteristic',
  title: '5 % fractile from mean and scatter',
  symbols: 'R_k = m/√(1+V²)·exp(−1.645·√ln(1+V²))',
  source: 'en-1990-2002',
  clause: 'Annex D, lognormal',
  inputs: { mean: resistance, scatter },
  unit: 'kN',
  kind: 'characteristic',
  compute: (i) => (i.mean / Math.sqrt(1 + i.scatter ** 2)) * Math.exp(qnorm(0.05) * logDeviation(i.scatter)),
});

/**
 * Mean of a lognormal resistance whose 5 % fractile is known, the inverse of the former.
 * Source: EN 1990:2002 Annex D, lognormal form. Worked: R_k 0.5910, V 0.30 → 1.000.
 */
export const lognormalMean = defineFormula({
  id: 'lognormal-mean',
  title: 'Mean from 5 % fractile and scatter',
  symbols: 'm = R_k·√(1+V²)·exp(1.645·√ln(1+V²))',
  source: 'en-1990-2002',
  clause: 'Annex D, lognormal',
  inputs: { characteristic: resistance, scatter },
  unit: 'kN',
  kind: 'mean',
  compute: (i) =>
    i.characteristic * Math.sqrt(1 + i.scatter ** 2) * Math.exp(-qnorm(0.05) * logDeviation(i.scatter)),
});

/**
 * Chance that a lognormal resistance is below a given load: p = Φ(−β),
 * β = ln(m/(S·√(1+V²)))/√ln(1+V²). m mean resistance kN, V, S load kN; 0..1. At S = 0 it is 0.
 * Source: EN 1990:2002 Annex C (first-order reliability, closed form). Worked: 20, 0.3, 6 → 3.835e-5.
 */
export const chanceBelow = defineFormula({
  id: 'chance-below',
  title: 'Chance that the resistance is below a load',
  symbols: 'p = Φ(−ln(m/(S·√(1+V²)))/√ln(1+V²))',
  source: 'en-1990-2002',
  clause: 'Annex C',
  inputs: { mean: resistance, scatter, load: force },
  unit: '',
  kind: 'plain',
  compute: (i) =>
    i.load === 0
      ? 0
      : pnorm(-Math.log(i.mean / (i.load * Math.sqrt(1 + i.scatter ** 2))) / logDeviation(i.scatter)),
});
