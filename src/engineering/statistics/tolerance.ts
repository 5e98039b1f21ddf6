import { qnorm, qt } from 'lib-r-math.js';
import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

const count = input('n', 'number of results', '', 3, 500);
const content = input('P', 'share of anchors that must be above', '', 0.5, 0.999);
const confidence = input('γ', 'confidence', '', 0.5, 0.999);
const whole = { ...input('n', 'number of results', '', 0, 0), of: (i: { count: number }) => i.count % 1 };

/**
 * One-sided tolerance factor: k = t'_γ(n−1; δ = z_P·√n)/√n (noncentral t). R_k = m − k·s is below the (1−P) fractile with
 * confidence γ. Fastening practice takes P 0.95, γ 0.90; less than 3 results say nothing.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3; NBS Handbook 91 Table A-7. Worked: n 5, P 0.95, γ 0.90 → 3.400.
 */
export const toleranceFactor = defineFormula({
  id: 'tolerance-factor',
  title: 'One-sided tolerance factor',
  symbols: "k = t'(γ; n−1, z_P·√n)/√n",
  source: 'nist-handbook',
  clause: '7.2.6.3',
  inputs: { count, content, confidence },
  derived: [whole],
  unit: '',
  kind: 'plain',
  compute: (i) => qt(i.confidence, i.count - 1, qnorm(i.content) * Math.sqrt(i.count)) / Math.sqrt(i.count),
});

/**
 * Factor of EN 1990 for a 5 % fractile, scatter from the sample: k_n = t_0.95(n−1)·√(1 + 1/n). Less cautious than the
 * 90 % tolerance factor that fastenings use. Source: EN 1990:2002 Table D1. Worked: n 5 → 2.335.
 */
export const eurocodeFactor = defineFormula({
  id: 'eurocode-factor',
  title: 'Factor of EN 1990 for a 5 % fractile, scatter from the sample',
  symbols: 'k_n = t_0.95(n−1)·√(1+1/n)',
  source: 'en-1990-2002',
  clause: 'Table D1, V unknown',
  inputs: { count },
  derived: [whole],
  unit: '',
  kind: 'plain',
  compute: (i) => qt(0.95, i.count - 1) * Math.sqrt(1 + 1 / i.count),
});

/**
 * Factor of EN 1990 for a 5 % fractile, scatter known beforehand: k_n = 1.645·√(1 + 1/n).
 * Source: EN 1990:2002 Table D1. Worked: n 4 → 1.839 (table 1.83, from 1.64).
 */
export const eurocodeFactorKnown = defineFormula({
  id: 'eurocode-factor-known',
  title: 'Factor of EN 1990 for a 5 % fractile, scatter known',
  symbols: 'k_n = 1.645·√(1+1/n)',
  source: 'en-1990-2002',
  clause: 'Table D1, V known',
  inputs: { count: { ...count, min: 1 } },
  derived: [whole],
  unit: '',
  kind: 'plain',
  compute: (i) => qnorm(0.95) * Math.sqrt(1 + 1 / i.count),
});
