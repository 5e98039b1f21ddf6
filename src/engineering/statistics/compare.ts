import { pt, qt } from 'lib-r-math.js';
import { BadResults, checkStrengths, type Summary, summarise } from './sample.ts';

export interface Comparison {
  readonly difference: number;
  readonly t: number;
  readonly freedom: number;
  /** Two-sided. Above 0.05 say "no difference shown", never "equal". */
  readonly p: number;
  readonly low95: number;
  readonly high95: number;
}

/**
 * Welch's test on two summaries: t = (m1 − m2)/√(a + b), a = s1²/n1, b = s2²/n2,
 * df = (a + b)²/(a²/(n1−1) + b²/(n2−1)); with the 95 % interval of the difference.
 * Compare equal failure modes only. Source: NIST/SEMATECH e-Handbook 1.3.5.3.
 * Errors: BadResults when neither group scatters. Worked: 20.14458, 6.414700, 249 and 30.48101, 6.107710, 79 → t −12.946, df 136.875.
 */
export function compareSummaries(
  one: Pick<Summary, 'mean' | 'deviation' | 'count'>,
  two: Pick<Summary, 'mean' | 'deviation' | 'count'>,
): Comparison {
  const a = one.deviation ** 2 / one.count;
  const b = two.deviation ** 2 / two.count;
  if (!(a + b > 0)) throw new BadResults('neither group scatters: there is nothing to compare with.');
  const error = Math.sqrt(a + b);
  const freedom = (a + b) ** 2 / (a ** 2 / (one.count - 1) + b ** 2 / (two.count - 1));
  const difference = one.mean - two.mean;
  const t = difference / error;
  const reach = qt(0.975, freedom) * error;
  return {
    difference,
    t,
    freedom,
    p: 2 * pt(-Math.abs(t), freedom),
    low95: difference - reach,
    high95: difference + reach,
  };
}

/** Welch's test on two samples of at least 3. Source: NIST/SEMATECH e-Handbook 1.3.5.3. Worked: see the checks. */
export function compareGroups(one: readonly number[], two: readonly number[]): Comparison {
  checkStrengths(one, 3);
  checkStrengths(two, 3);
  return compareSummaries(summarise(one), summarise(two));
}
