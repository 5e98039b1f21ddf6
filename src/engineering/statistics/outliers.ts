import { qt } from 'lib-r-math.js';
import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';
import { checkStrengths, summarise, TooFewResults } from './sample.ts';

/**
 * Critical value of Grubbs' test: G = (n−1)/√n·√(t²/(n−2+t²)), t = t(n−2) at tail p = α/n one-sided, α/(2n) two-sided.
 * Source: NIST/SEMATECH e-Handbook 1.3.5.17.1. Worked: n 8, α 0.05, one side → 2.0317.
 */
export const grubbsCritical = defineFormula({
  id: 'grubbs-critical',
  title: "Critical value of Grubbs' test",
  symbols: 'G = (n−1)/√n·√(t²/(n−2+t²))',
  source: 'nist-handbook',
  clause: '1.3.5.17.1',
  inputs: {
    count: input('n', 'number of results', '', 3, 500),
    level: input('α', 'level of significance', '', 0.001, 0.2),
    sides: input('sides', 'one- or two-sided', '', 1, 2),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const t = qt(1 - i.level / (i.sides * i.count), i.count - 2);
    return ((i.count - 1) / Math.sqrt(i.count)) * Math.sqrt((t * t) / (i.count - 2 + t * t));
  },
});

/** Dixon's r10, two-sided 5 %, for n 3 to 30. Source: Analytical Chemistry 63 (1991) 139. */
const dixon5: readonly number[] = [
  0.97, 0.829, 0.71, 0.625, 0.568, 0.526, 0.493, 0.466, 0.444, 0.426, 0.41, 0.396, 0.384, 0.374, 0.365, 0.356,
  0.349, 0.342, 0.337, 0.331, 0.326, 0.321, 0.317, 0.312, 0.308, 0.305, 0.301, 0.298,
];

/**
 * Critical value of Dixon's r10 at 5 %, two-sided. Errors: TooFewResults below 3, RangeError above 30.
 * Source: Dixon (1951), table of Analytical Chemistry 63 (1991) 139. Worked: n 7 → 0.568.
 */
export function dixonCritical(count: number): number {
  if (count < 3) throw new TooFewResults(count, 3);
  const value = dixon5[count - 3];
  if (value === undefined) throw new RangeError(`Dixon's table ends at 30 results; there are ${count}`);
  return value;
}

export interface OutlierCheck {
  readonly suspect: number;
  readonly side: 'low' | 'high';
  readonly grubbs: number;
  readonly grubbsLimit: number;
  readonly dixon: number;
  readonly dixonLimit: number;
  /** A reason to ask what happened, never a reason to delete. */
  readonly flagged: boolean;
}

/**
 * Looks at the value farthest from the mean with Grubbs (one-sided 5 %) and Dixon (5 %); either may flag it.
 * A low outlier is information (bad mix, void, joint) and stays in every safety evaluation.
 * Errors: TooFewResults below 5 (no power), RangeError above 30.
 * Source: NIST/SEMATECH e-Handbook 1.3.5.17.1; Dixon (1951). Worked: 21.4 22.0 20.8 23.1 21.9 9.5 → 9.5 low, flagged.
 */
export function checkOutlier(values: readonly number[]): OutlierCheck {
  checkStrengths(values, 5);
  const { mean, deviation, min, max, count } = summarise(values);
  const side = mean - min >= max - mean ? 'low' : 'high';
  const suspect = side === 'low' ? min : max;
  const sorted = [...values].sort((a, b) => a - b);
  const neighbour = (side === 'low' ? sorted[1] : sorted.at(-2)) ?? suspect;
  const grubbs = deviation === 0 ? 0 : Math.abs(suspect - mean) / deviation;
  const dixon = max === min ? 0 : Math.abs(neighbour - suspect) / (max - min);
  const grubbsLimit = grubbsCritical({ count, level: 0.05, sides: 1 }).value;
  const dixonLimit = dixonCritical(count);
  const flagged = grubbs > grubbsLimit || dixon > dixonLimit;
  return { suspect, side, grubbs, grubbsLimit, dixon, dixonLimit, flagged };
}
