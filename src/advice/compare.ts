/** Two groups of pull tests: is one stronger, and what would it take to see it? */
import type { Measure, Phrase } from '../contracts/phrase.ts';
import { type Comparison, compareSummaries, type Summary, summarise } from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

const fewest = 3;
/** Above this scatter the bell curve no longer fits strengths, and their logarithms are compared. */
const bellScatter = 0.2;
const worthSeeing = 0.2;
const mostCounted = 200;

/**
 * Anchors a group to see a difference: n = 2·((z_0.975 + z_0.80)·V/δ)², rounded up, plus one for the t distribution.
 * V coefficient of variation, δ the difference as a share of the mean; 5 % two-sided, power 80 %.
 * Source: NIST/SEMATECH e-Handbook 7.2.2.2 (sample sizes), form from memory. Worked: V 0.15, δ 0.2 → 8.83 → 10.
 */
export function pullsPerGroup(scatter: number, difference: number): number {
  return Math.ceil(2 * (((1.959964 + 0.841621) * scatter) / difference) ** 2) + 1;
}

/**
 * The smallest difference, as a share of the mean, that so many pulls a group would show: the former turned round,
 * δ = (z_0.975 + z_0.80)·V·√(2/(n − 1)). Worked: n 10, V 0.15 → 0.198.
 */
export const smallestSeen = (scatter: number, perGroup: number): number =>
  (1.959964 + 0.841621) * scatter * Math.sqrt(2 / (perGroup - 1));

/** Of logarithms, which may be negative, so that `summarise` cannot take them. */
function ofLogs(values: readonly number[]): Pick<Summary, 'mean' | 'deviation' | 'count'> {
  const logs = values.map(Math.log);
  const count = logs.length;
  const mean = logs.reduce((sum, one) => sum + one, 0) / count;
  return {
    count,
    mean,
    deviation: Math.sqrt(logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (count - 1)),
  };
}

interface Difference {
  readonly logs: boolean;
  readonly test: Comparison;
}

function difference(one: readonly number[], two: readonly number[]): Difference {
  const [a, b] = [summarise(one), summarise(two)];
  const logs = Math.max(a.scatter, b.scatter) > bellScatter;
  return { logs, test: logs ? compareSummaries(ofLogs(one), ofLogs(two)) : compareSummaries(a, b) };
}

/** The interval of "first less second", in kN or as a share of the second. */
function intervalLine({ logs, test }: Difference): Phrase {
  if (!logs)
    return {
      say: 'compare-interval',
      with: {
        difference: { value: test.difference, unit: 'kN', metric: true },
        low: { value: test.low95, unit: 'kN', metric: true },
        high: { value: test.high95, unit: 'kN', metric: true },
      },
    };
  return {
    say: 'compare-interval-ratio',
    with: {
      ratio: { value: Math.exp(test.difference), unit: '1' },
      low: { value: Math.exp(test.low95), unit: '1' },
      high: { value: Math.exp(test.high95), unit: '1' },
    },
  };
}

const groupLine = (say: string, { mean, scatter, count, min }: Summary): Phrase => ({
  say,
  with: {
    count,
    mean: { value: mean, unit: 'kN' },
    scatter: { value: 100 * scatter, unit: '1' },
    min: { value: min, unit: 'kN', exact: true },
  },
});

export async function compare(sheet: Worksheet): Promise<Draft> {
  const groups = [sheet.numbers('pulls_kn'), sheet.numbers('pulls_other_kn')] as const;
  const [one, two] = groups;
  sheet.cite('nist-handbook');
  const lacking = ['pulls_kn', 'pulls_other_kn'].filter((_, index) => groups[index]?.length === 0);
  if (one.length < fewest || two.length < fewest)
    return {
      stance: 'stop',
      verdict: { say: lacking.length > 0 ? 'compare-groups' : 'compare-too-few' },
      points: [{ say: 'compare-example' }],
      recommend: { first_count: one.length, second_count: two.length },
      reject: [],
      lacking,
    };
  const [a, b] = [summarise(one), summarise(two)];
  if (a.deviation === 0 && b.deviation === 0)
    return {
      stance: 'stop',
      verdict: { say: 'compare-no-scatter' },
      points: [{ say: 'results-equal-next' }],
      recommend: { first_count: one.length, second_count: two.length },
      reject: [],
    };
  const found = difference(one, two);
  const { test, logs } = found;
  const shown = test.p < 0.05;
  const stronger = test.difference > 0 ? 'first' : 'second';
  const needed = pullsPerGroup(Math.max(a.scatter, b.scatter), worthSeeing);
  return {
    stance: 'limit',
    verdict: shown
      ? { say: `compare-${stronger}`, with: { chance: shownChance(test.p) } }
      : { say: 'compare-none', with: { chance: shownChance(test.p) } },
    points: [
      groupLine('compare-group-first', a),
      groupLine('compare-group-second', b),
      intervalLine(found),
      { say: logs ? 'compare-logs' : 'compare-plain' },
      ...(Math.min(one.length, two.length) >= needed
        ? []
        : needed > mostCounted
          ? [{ say: 'compare-hopeless', with: { most: mostCounted } }]
          : [{ say: 'compare-needed', with: { needed } }]),
      { say: 'compare-same-failure' },
      { say: 'compare-lowest' },
    ],
    recommend: {
      stronger: shown ? stronger : 'not-shown',
      p: Number(test.p.toPrecision(3)),
      pulls_per_group: needed,
    },
    reject: [],
  };
}

/** In per cent; smaller than a tenth says no more. */
const shownChance = (p: number): Measure => ({ value: Math.max(0.1, 100 * p), unit: '1' });
