/** Pulls of which some were stopped before anything gave way: they held "at least so much", and count as that. */
import { fitCensored, zeroFailureBound } from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import { judgeRow, recordFactor, rounded } from './test-results-judge.ts';
import { directionLine, fewLines } from './test-results-lines.ts';
import type { Worksheet } from './worksheet.ts';

/** With fewer real failures no curve can be fitted. */
const fewest = 3;

/** All that is known: every pull held at least the smallest of these loads. */
function lowerBound(sheet: Worksheet, pulls: readonly number[], stopped: readonly number[]): Draft {
  const all = [...pulls, ...stopped];
  const least = Math.min(...all);
  const share = sheet.compute(zeroFailureBound({ count: all.length, confidence: 0.95 }));
  return {
    stance: 'limit',
    verdict: {
      say: 'results-all-above',
      with: { count: all.length, failed: pulls.length, least: { value: least, unit: 'kN', exact: true } },
    },
    points: [
      { say: 'results-no-fractile', with: { needed: fewest } },
      {
        say: 'results-share',
        with: {
          count: all.length,
          least: { value: least, unit: 'kN', exact: true },
          share: Math.ceil(100 * share),
        },
      },
      ...fewLines(sheet, all.length),
    ],
    recommend: { count: all.length, failed: pulls.length, at_least_kn: least },
    reject: [],
  };
}

export async function stoppedResult(
  sheet: Worksheet,
  pulls: readonly number[],
  stopped: readonly number[],
): Promise<Draft> {
  sheet.cite('nist-handbook');
  if (new Set(pulls).size < 2 || pulls.length < fewest) return lowerBound(sheet, pulls, stopped);
  const fit = fitCensored(pulls, stopped);
  recordFactor(sheet, fit.failures);
  const scatter = Math.sqrt(Math.expm1(fit.spread ** 2));
  const { verdict, need } = await judgeRow(sheet, {
    middle: fit.median,
    middleKind: 'plain',
    characteristic: fit.characteristic,
    scatter,
  });
  return {
    stance: verdict === 'weak' || verdict === 'scattered' ? 'stop' : 'limit',
    verdict: {
      say: 'results-censored',
      with: {
        count: pulls.length + stopped.length,
        failed: fit.failures,
        stopped: fit.stopped,
        median: { value: fit.median, unit: 'kN' },
        characteristic: { value: fit.characteristic, unit: 'kN' },
        ends: {
          say: `results-censored-${verdict}`,
          with: { need: { value: need, unit: 'kN', exact: true } },
        },
      },
    },
    points: [
      { say: 'results-stopped', with: { failed: fit.failures } },
      {
        say: 'results-censored-point',
        with: { value: { value: fit.fractile5, unit: 'kN' }, scatter: { value: 100 * scatter, unit: '1' } },
      },
      ...directionLine(sheet, need),
      ...fewLines(sheet, pulls.length + stopped.length),
    ],
    recommend: {
      verdict,
      count: pulls.length + stopped.length,
      failed: fit.failures,
      median_kn: rounded(fit.median),
      characteristic_kn: rounded(fit.characteristic),
    },
    reject: [],
  };
}
