import { pnorm, qnorm } from 'lib-r-math.js';
import { defineFormula } from './formula.ts';
import { input, resistance, scatter } from './quantities.ts';

const load = { ...resistance, symbol: 'm_S', words: 'mean load' };
const loadScatter = { ...scatter, symbol: 'V_S', words: 'scatter of the load' };

/**
 * Reliability index of lognormal resistance and load:
 * β = ln[(m_R/m_S)·√((1+V_S²)/(1+V_R²))]/√(ln[(1+V_R²)(1+V_S²)]); kN.
 * Source: EN 1990:2002 Annex C (closed form). Worked: 25, 0.15, 5, 0.3 → 4.985.
 */
export const reliabilityIndex = defineFormula({
  id: 'reliability-index',
  title: 'Reliability index',
  symbols: 'β = ln[(m_R/m_S)·√((1+V_S²)/(1+V_R²))]/√ln[(1+V_R²)(1+V_S²)]',
  source: 'en-1990-2002',
  clause: 'Annex C',
  inputs: { mean: { ...resistance, symbol: 'm_R' }, scatter, load, loadScatter },
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const r = 1 + i.scatter ** 2;
    const s = 1 + i.loadScatter ** 2;
    return Math.log((i.mean / i.load) * Math.sqrt(s / r)) / Math.sqrt(Math.log(r * s));
  },
});

/**
 * Mean resistance that a target index needs, the inverse: m_R = m_S·√((1+V_R²)/(1+V_S²))·exp(β·√ln[(1+V_R²)(1+V_S²)]); kN.
 * Source: EN 1990:2002 Annex C (closed form, solved). Worked: β 3.8, V_R 0.3, m_S 5, V_S 0.3 → 24.22 kN.
 */
export const neededMean = defineFormula({
  id: 'needed-mean',
  title: 'Mean resistance for a target reliability',
  symbols: 'm_R = m_S·√((1+V_R²)/(1+V_S²))·exp(β·√ln[…])',
  source: 'en-1990-2002',
  clause: 'Annex C, solved',
  inputs: { index: input('β', 'reliability index', '', 0.5, 6), scatter, load, loadScatter },
  unit: 'kN',
  kind: 'mean',
  compute: (i) => {
    const r = 1 + i.scatter ** 2;
    const s = 1 + i.loadScatter ** 2;
    return i.load * Math.sqrt(r / s) * Math.exp(i.index * Math.sqrt(Math.log(r * s)));
  },
});

/**
 * Reliability index of normal resistance and load: β = (m_R − m_S)/√(s_R² + s_S²); kN.
 * Source: EN 1990:2002 Annex C. Worked: 25, 4, 8, 2 → 3.801.
 */
export const reliabilityIndexNormal = defineFormula({
  id: 'reliability-index-normal',
  title: 'Reliability index, normal model',
  symbols: 'β = (m_R − m_S)/√(s_R² + s_S²)',
  source: 'en-1990-2002',
  clause: 'Annex C',
  inputs: {
    mean: { ...resistance, symbol: 'm_R' },
    deviation: { ...resistance, symbol: 's_R', words: 'standard deviation of the resistance' },
    load,
    loadDeviation: { ...resistance, symbol: 's_S', words: 'standard deviation of the load' },
  },
  unit: '',
  kind: 'plain',
  compute: (i) => (i.mean - i.load) / Math.hypot(i.deviation, i.loadDeviation),
});

/** Chance of failure of an index: p = Φ(−β). Source: EN 1990:2002 Table C1. Worked: 3.8 → 7.235e-5. */
export const failureChance = defineFormula({
  id: 'failure-chance',
  title: 'Chance of failure from the reliability index',
  symbols: 'p = Φ(−β)',
  source: 'en-1990-2002',
  clause: 'Table C1',
  inputs: { index: input('β', 'reliability index', '', -8, 8) },
  unit: '',
  kind: 'plain',
  compute: (i) => pnorm(-i.index),
});

/** Index of a chance of failure: β = −Φ⁻¹(p). Source: EN 1990:2002 Table C1. Worked: 1e-4 → 3.719. */
export const indexOfChance = defineFormula({
  id: 'index-of-chance',
  title: 'Reliability index from the chance of failure',
  symbols: 'β = −Φ⁻¹(p)',
  source: 'en-1990-2002',
  clause: 'Table C1',
  inputs: { chance: input('p', 'chance of failure', '', 1e-14, 0.5) },
  unit: '',
  kind: 'plain',
  compute: (i) => -qnorm(i.chance),
});

/**
 * Index over n years from that of one year: Φ(β_n) = Φ(β_1)^n.
 * Source: EN 1990:2002 Eq. (C.3). Worked: 4.7 over 50 a → 3.826 (table 3.8).
 */
export const indexOverYears = defineFormula({
  id: 'index-over-years',
  title: 'Reliability index over years',
  symbols: 'Φ(β_n) = Φ(β_1)^n',
  source: 'en-1990-2002',
  clause: 'Eq. (C.3)',
  inputs: {
    index: input('β_1', 'reliability index for one year', '', 1, 7),
    years: input('n', 'years', 'a', 1, 200),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => -qnorm(-Math.expm1(i.years * Math.log1p(-pnorm(-i.index)))),
});
