import { qt } from 'lib-r-math.js';
import { BadResults, checkStrengths } from './sample.ts';

/** What is believed of ln R before a test: as if `weight` pulls had been seen with this median and scatter. */
export interface StrengthPrior {
  readonly median: number;
  readonly scatter: number;
  /** Number of imagined pulls behind the median; 0 when nothing is known of it. */
  readonly weight: number;
  /** Degrees of freedom behind the scatter; 0 when nothing is known of it. */
  readonly freedom: number;
}

export interface StrengthPosterior extends StrengthPrior {
  /** Predictive 5 % fractile for the next anchor: one in twenty is below. */
  readonly predictive5: number;
}

const spreadOf = (scatter: number) => Math.sqrt(Math.log(1 + scatter ** 2));
const scatterOf = (spread: number) => Math.sqrt(Math.expm1(spread ** 2));

/**
 * Conjugate update of a lognormal strength (normal, inverse gamma): κ' = κ + n, ν' = ν + n (one less when κ = 0),
 * m' = (κm + n·x̄)/κ', ν's'² = νs² + Σ(x−x̄)² + κn/κ'·(x̄−m)², all on ln R; predictive fractile
 * exp(m' + t_0.05(ν')·s'·√(1 + 1/κ')). Unit of the data.
 * Source: conjugate analysis of normal data, ISO 12491 and EN 1990:2002 Annex D.7: with weight and freedom 0 it is their
 * fractile for unknown scatter. Errors: BadResults for a negative weight, a median or scatter not above 0, or when prior
 * and data together leave nothing to judge scatter by. No data: the prior's own predictive.
 * Worked: 24.1 27.3 22.8 30.2 26.0, weight 0, freedom 0 → 20.11.
 */
export function updateStrength(prior: StrengthPrior, values: readonly number[]): StrengthPosterior {
  checkStrengths(values, 0);
  const { median, scatter, weight, freedom } = prior;
  if (!(median > 0 && scatter > 0 && weight >= 0 && freedom >= 0))
    throw new BadResults('a prior needs a median and a scatter above 0 and weights of 0 or more.');
  const x = values.map(Math.log);
  const n = x.length;
  const m = Math.log(median);
  const mean = n === 0 ? m : x.reduce((a, b) => a + b, 0) / n;
  const newWeight = weight + n;
  const newFreedom = freedom + (weight === 0 ? n - 1 : n);
  if (!(newWeight > 0 && newFreedom > 0))
    throw new BadResults('prior and results together are too few to judge the scatter by.');
  const location = (weight * m + n * mean) / newWeight;
  const squares =
    freedom * spreadOf(scatter) ** 2 +
    x.reduce((a, v) => a + (v - mean) ** 2, 0) +
    ((weight * n) / newWeight) * (mean - m) ** 2;
  const spread = Math.sqrt(squares / newFreedom);
  return {
    median: Math.exp(location),
    scatter: scatterOf(spread),
    weight: newWeight,
    freedom: newFreedom,
    predictive5: Math.exp(location + qt(0.05, newFreedom) * spread * Math.sqrt(1 + 1 / newWeight)),
  };
}
