import { fitCensored } from './censored.ts';
import { characteristicStrength } from './characteristic.ts';
import { checkStrengths } from './sample.ts';
import { updateStrength } from './update.ts';

/** A published strength, as it is counted with while nobody has tested. */
export interface PublishedStrength {
  readonly mean: number;
  /** The upper end of what is published: no tests of a few amateurs go beyond it. */
  readonly top: number;
  /** Scatter that the reckoning goes on with. */
  readonly scatter: number;
}

export interface LearnedStrength {
  /** Mean to count with. */
  readonly used: number;
  /** What the tests point at, not held back. */
  readonly estimate: number;
  /** Middle of the tests with the published value, or of the tests alone once they are enough. */
  readonly median: number;
  readonly low: number;
  readonly enough: boolean;
}

/** The published value counts as much as two tests of one's own (our judgement). */
const priorWeight = 2;
const z95 = 1.6448536269514722;

const spreadOf = (scatter: number): number => Math.sqrt(Math.log(1 + scatter ** 2));

/** The mean that has this 5 % fractile at this scatter. */
const meanOf = (low: number, scatter: number): number =>
  low * Math.sqrt(1 + scatter ** 2) * Math.exp(z95 * spreadOf(scatter));

/**
 * Mean strength to count with after tests of one's own. `failures` gave way there, `atLeast` gave way elsewhere or were
 * stopped (lower bounds). Until there are `enough` failures the lower of published and learned counts: tests can make it
 * more cautious and never bolder. From then on the tests count alone (5 % value with 90 % confidence, cut for scatter),
 * and never above the upper end of what is published. A scatter above the one reckoned with lowers it further. Lower bounds
 * count only once there are enough failures. Unit of the data.
 * Source: job-site tests need at least 15 results and never count above the approval (EOTA TR 053, ETAG 029 Annex B, from
 * memory); conjugate update ISO 12491 and EN 1990 Annex D.7; 5 % value NIST/SEMATECH 7.2.6.3.
 * Errors: BadResults for a value not above 0.
 * Worked: published 13 (top 17, V 0.45), failures 9, 9.5, 10 → median (2·ln 11.855 + ln 9 + ln 9.5 + ln 10)/5 → 10.37, counted 11.38.
 */
export function learnStrength(
  published: PublishedStrength,
  failures: readonly number[],
  atLeast: readonly number[],
  enough: number,
): LearnedStrength {
  checkStrengths(failures, 1);
  checkStrengths(atLeast, 0);
  const { mean, top, scatter } = published;
  // Equal results were copied or rounded: they show no scatter, and are never enough.
  if (failures.length < enough || new Set(failures).size < 2) {
    const wide = Math.sqrt(1 + scatter ** 2);
    const prior = { median: mean / wide, scatter, weight: priorWeight, freedom: priorWeight };
    const after = updateStrength(prior, failures);
    const { median, predictive5: low } = after;
    const fractile = median * Math.exp(-z95 * spreadOf(after.scatter));
    const estimate = Math.min(median * wide, meanOf(fractile, scatter));
    return { used: Math.min(estimate, mean), estimate, median, low, enough: false };
  }
  const alone = characteristicStrength(failures);
  const fit = atLeast.length === 0 ? null : fitCensored(failures, atLeast);
  const middle = Math.exp(failures.reduce((sum, one) => sum + Math.log(one), 0) / failures.length);
  const median = fit?.median ?? middle;
  const low = (fit?.characteristic ?? alone.value) * alone.scatterFactor;
  const estimate = Math.min(median, meanOf(low, scatter));
  return { used: Math.min(estimate, top), estimate, median, low, enough: true };
}
