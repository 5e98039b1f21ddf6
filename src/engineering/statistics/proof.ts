import { pnorm } from 'lib-r-math.js';
import { defineFormula } from '../formula.ts';
import { fraction, input, resistance, scatter } from '../quantities.ts';

const count = input('n', 'number of tested anchors', '', 1, 100_000);

/**
 * Upper bound on the share of bad anchors after n proof tests without a failure: p = 1 − (1−γ)^(1/n).
 * Five good tests leave up to 45 %: they prove almost nothing about the sixth bolt.
 * Source: exact binomial bound (Clopper-Pearson). Worked: n 5, γ 0.95 → 0.4507.
 */
export const zeroFailureBound = defineFormula({
  id: 'zero-failure-bound',
  title: 'Share of bad anchors that n good tests leave possible',
  symbols: 'p = 1 − (1−γ)^(1/n)',
  source: 'nist-handbook',
  clause: 'exact binomial bound',
  inputs: { count, confidence: input('γ', 'confidence', '', 0.5, 0.999) },
  unit: '',
  kind: 'plain',
  compute: (i) => -Math.expm1(Math.log1p(-i.confidence) / i.count),
});

/**
 * Confidence that the lowest of n results is below the 5 % fractile: γ = 1 − 0.95^n.
 * Source: order statistics (Wilks). Worked: n 59 → 0.9515.
 */
export const lowestResultConfidence = defineFormula({
  id: 'lowest-result-confidence',
  title: 'Confidence that the lowest result is a 5 % fractile',
  symbols: 'γ = 1 − 0.95^n',
  source: 'nist-handbook',
  clause: 'order statistics',
  inputs: { count },
  unit: '',
  kind: 'plain',
  compute: (i) => 1 - 0.95 ** i.count,
});

const lognormalBelow = (load: number, mean: number, v: number) =>
  load === 0
    ? 0
    : pnorm((Math.log(load / mean) + 0.5 * Math.log(1 + v * v)) / Math.sqrt(Math.log(1 + v * v)));

/**
 * Chance that an anchor that held a proof load fails under a larger load:
 * P = (F(S) − F(q))/(1 − F(q)), F lognormal with mean m and scatter V; kN. 0 when S ≤ q. It says nothing of corrosion.
 * Source: truncated distribution (handbook). Worked: 15, 0.45, proof 8, load 10 → 0.1421.
 */
export const chanceAfterProof = defineFormula({
  id: 'chance-after-proof',
  title: 'Chance of failure after a held proof load',
  symbols: 'P = (F(S)−F(q))/(1−F(q))',
  source: 'practice',
  clause: 'truncated lognormal',
  inputs: {
    mean: resistance,
    scatter,
    proof: input('q', 'proof load', 'kN', 0, 500),
    load: input('S', 'load', 'kN', 0, 500),
  },
  derived: [
    {
      ...input('F(q)', 'share that the proof load would break', '', 0, 0.999),
      of: (i) => lognormalBelow(i.proof, i.mean, i.scatter),
    },
  ],
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const broken = lognormalBelow(i.proof, i.mean, i.scatter);
    return Math.max(0, (lognormalBelow(i.load, i.mean, i.scatter) - broken) / (1 - broken));
  },
});

export interface ProofPlan {
  readonly anchors: number;
  /** Proof load over the characteristic action. */
  readonly loadFactor: number;
}

/**
 * How many anchors of an area to proof test: 2.5 %, at least 3, at 1.5 times the action; or 5 % at 1.25 times.
 * After one failure 5 %, at least 6; after more, all. Never more than there are.
 * Source: BS 8539:2012+A1 Annex B (second hand). Errors: RangeError for a count below 1. Worked: 100 → 3.
 */
export function proofPlan(anchors: number, failures: number, share: 0.025 | 0.05 = 0.025): ProofPlan {
  if (!(Number.isInteger(anchors) && anchors >= 1 && Number.isInteger(failures) && failures >= 0))
    throw new RangeError('the number of anchors must be a whole number of 1 or more, failures 0 or more');
  if (failures > 1) return { anchors, loadFactor: 1.5 };
  const wanted =
    failures === 1 ? Math.max(6, Math.ceil(0.05 * anchors)) : Math.max(3, Math.ceil(share * anchors));
  const loadFactor = failures === 0 && share === 0.05 ? 1.25 : 1.5;
  return { anchors: Math.min(anchors, wanted), loadFactor };
}

/**
 * Chance that at least one of several uses meets a failure: P = 1 − (1−p)^n. Strength is the same in every fall, so this
 * is an upper bound for one anchor. Source: independent trials. Worked: p 1e-4, n 100 → 9.951e-3.
 */
export const repeatedUse = defineFormula({
  id: 'repeated-use',
  title: 'Chance of a failure in repeated use (upper bound)',
  symbols: 'P = 1 − (1−p)^n',
  source: 'practice',
  clause: 'independent trials',
  inputs: {
    chance: { ...fraction('p', 'chance in one use'), max: 0.999 },
    uses: { ...count, words: 'number of uses' },
  },
  unit: '',
  kind: 'plain',
  compute: (i) => -Math.expm1(i.uses * Math.log1p(-i.chance)),
});
