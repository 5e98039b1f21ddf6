/** What a row of pull tests says of the next anchor, and what it does not say. */
import type { Stance } from '../contracts/advice.ts';
import type { Phrase } from '../contracts/phrase.ts';
import { BadResults, type CharacteristicStrength, characteristicStrength } from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import { bondLines } from './test-results-bond.ts';
import { judgeRow, neededFor, type Row, recordFactor, rounded } from './test-results-judge.ts';
import { directionLine, fewLines, outlierLine } from './test-results-lines.ts';
import { proofResult } from './test-results-proof.ts';
import { stoppedResult } from './test-results-stopped.ts';
import type { Worksheet } from './worksheet.ts';

/** Fewer say nothing of the scatter, and more than this scatter is no bell curve. */
const fewest = 3;
const fewForNormal = 6;
const bellScatter = 0.15;

const stances: Readonly<Record<string, Stance>> = { meets: 'limit', upper: 'limit', unproved: 'limit' };

interface FivePercent {
  readonly value: number;
  readonly line: Phrase;
}

/** The lognormal curve for few or scattered results, since it never falls below 0; else the normal one. */
function fivePercent(found: CharacteristicStrength): FivePercent {
  const { count, scatter } = found.summary;
  const few = count < fewForNormal;
  const normal = !few && scatter <= bellScatter;
  const value = normal ? found.normal : found.value;
  const other = normal ? found.value : found.normal;
  return {
    value,
    line: {
      say: `results-${normal ? 'normal' : few ? 'lognormal-few' : 'lognormal-scatter'}`,
      with: {
        value: { value, unit: 'kN' },
        count,
        other:
          other > 0
            ? { say: 'results-other', with: { value: { value: other, unit: 'kN' } } }
            : { say: 'results-other-nonsense' },
      },
    },
  };
}

function tooFew(sheet: Worksheet, pulls: readonly number[]): Draft {
  sheet.cite('nist-handbook');
  return {
    stance: 'stop',
    verdict: { say: 'results-too-few', with: { count: pulls.length, missing: fewest - pulls.length } },
    points: [
      { say: 'results-lowest', with: { value: { value: Math.min(...pulls), unit: 'kN', exact: true } } },
      { say: 'results-how-many' },
    ],
    recommend: { count: pulls.length, needed: fewest },
    reject: [],
    lacking: pulls.length === 0 ? ['pulls_kn'] : [],
  };
}

function allEqual(pulls: readonly number[]): Draft {
  return {
    stance: 'stop',
    verdict: { say: 'results-equal', with: { count: pulls.length } },
    points: [{ say: 'results-equal-next' }],
    recommend: { count: pulls.length },
    reject: [],
  };
}

async function measured(sheet: Worksheet, pulls: readonly number[]): Promise<Draft> {
  const found = characteristicStrength(pulls);
  const { summary, scatterFactor } = found;
  const five = fivePercent(found);
  recordFactor(sheet, summary.count);
  const row: Row = {
    middle: summary.mean,
    middleKind: 'mean',
    characteristic: five.value * scatterFactor,
    scatter: summary.scatter,
  };
  const { verdict, need } = await judgeRow(sheet, row);
  const args = {
    count: summary.count,
    mean: { value: summary.mean, unit: 'kN' },
    characteristic: { value: row.characteristic, unit: 'kN' },
    need: { value: need, unit: 'kN', exact: true },
    scatter: Math.round(100 * summary.scatter),
  } as const;
  return {
    stance: stances[verdict] ?? 'stop',
    verdict: {
      say: verdict === 'upper' && sheet.isAssumed('frame') ? 'results-upper-open' : `results-${verdict}`,
      with: args,
    },
    points: [
      {
        say: 'results-mean',
        with: {
          deviation: { value: summary.deviation, unit: 'kN' },
          scatter: { value: 100 * summary.scatter, unit: '1' },
          min: { value: summary.min, unit: 'kN', exact: true },
        },
      },
      five.line,
      ...(scatterFactor < 1
        ? [
            {
              say: 'results-cut',
              with: {
                scatter: args.scatter,
                factor: { value: scatterFactor, unit: '1' },
                value: args.characteristic,
              },
            },
          ]
        : []),
      ...outlierLine(sheet, pulls),
      ...neededFor(row, summary, need),
      ...bondLines(sheet, pulls),
      ...directionLine(sheet, need),
      ...fewLines(sheet, summary.count),
    ],
    recommend: {
      verdict,
      count: summary.count,
      mean_kn: rounded(summary.mean),
      characteristic_kn: rounded(row.characteristic),
      scatter_pct: rounded(100 * summary.scatter),
    },
    reject: [],
  };
}

export async function pulltestResult(sheet: Worksheet): Promise<Draft> {
  const pulls = sheet.numbers('pulls_kn');
  const stopped = sheet.numbers('stopped_kn');
  if (pulls.length === 0 && stopped.length === 0 && sheet.told('proof_tests') !== undefined)
    return proofResult(sheet);
  if (stopped.length > 0) return stoppedResult(sheet, pulls, stopped);
  if (pulls.length < fewest) return tooFew(sheet, pulls);
  try {
    return await measured(sheet, pulls);
  } catch (error) {
    if (error instanceof BadResults) return allEqual(pulls);
    throw error;
  }
}
