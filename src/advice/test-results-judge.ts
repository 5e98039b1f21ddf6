/** Holds a row of results against the type-test minimum, and asks the rules what to say of it. */
import type { Phrase } from '../contracts/phrase.ts';
import { en959, type Summary, toleranceFactor } from '../engineering/index.ts';
import type { Worksheet } from './worksheet.ts';

export interface Row {
  /** Mean, or the middle of the fitted curve. */
  readonly middle: number;
  readonly middleKind: 'mean' | 'plain';
  /** 5 % fractile with 90 % confidence, cut for scatter. */
  readonly characteristic: number;
  readonly scatter: number;
}

export const rounded = (value: number): number => Number(value.toPrecision(3));

const fivePercent = { content: 0.95, confidence: 0.9 } as const;

export const factorFor = (count: number): number => toleranceFactor({ count, ...fivePercent }).value;

export function recordFactor(sheet: Worksheet, count: number): void {
  sheet.compute(toleranceFactor({ count, ...fivePercent }));
  sheet.cite('en-1990-2002');
}

/** Pull tests go straight out unless somebody says otherwise; along the rock the standard asks for more. */
function needed(sheet: Worksheet): { need: number; name: string } {
  const direction = sheet.told('load_direction');
  if (direction !== undefined) sheet.choice('load_direction');
  return direction === 'shear' || direction === 'combined'
    ? { need: en959.radialStrength.value, name: 'check-pulls-sideways' }
    : { need: en959.axialStrength.value, name: 'check-pulls-out' };
}

/** Beyond this the results are not of one kind (common practice). */
const mostScatter = 0.3;

const scatterClass = (scatter: number): string =>
  scatter > mostScatter ? 'above-30' : scatter > 0.2 ? 'above-20' : 'up-to-20';

export async function judgeRow(sheet: Worksheet, row: Row): Promise<{ verdict: string; need: number }> {
  const { need, name } = needed(sheet);
  const check = (value: number, kind: 'mean' | 'characteristic' | 'plain'): boolean =>
    sheet.check({ id: 'pulls', name: { say: name }, value, limit: need, unit: 'kN', kind });
  const middle = check(row.middle, row.middleKind);
  const low = check(row.characteristic, 'characteristic');
  sheet.know('pulls_check', low && middle ? 'passes' : middle ? 'uncertain' : 'fails');
  sheet.know('pulls_scatter', scatterClass(row.scatter));
  sheet.choice('frame');
  const { values } = await sheet.decide('pull-result');
  return { verdict: String(values.verdict), need };
}

const mostPulls = 60;

/**
 * How many pulls would show it: the smallest n for which mean − k(n)·s reaches the minimum, were mean and scatter
 * to stay as they are. k one-sided tolerance factor, 5 % and 90 %; kN. Nothing where no number up to 60 would.
 * Source: NIST/SEMATECH e-Handbook 7.2.6.3. Worked: mean 20, s 2.5, minimum 15 → k(42) = 1.9998 → 42 pulls.
 */
export function neededFor(row: Row, { mean, deviation, count }: Summary, need: number): Phrase[] {
  if (row.characteristic >= need || mean < need || row.scatter > mostScatter) return [];
  for (let n = count + 1; n <= mostPulls; n++)
    if (mean - factorFor(n) * deviation >= need) return [{ say: 'results-more', with: { count: n } }];
  return [{ say: 'results-more-useless', with: { count: mostPulls } }];
}
