/** Lines that any row of results may need: a result far off, the direction, what so few cannot say. */
import type { Phrase } from '../contracts/phrase.ts';
import { checkOutlier, en959, grubbsCritical } from '../engineering/index.ts';
import type { Worksheet } from './worksheet.ts';

/** Below 5 the tests for outliers have no power, and their table ends at 30. */
const fewest = 5;
const most = 30;
const fewResults = 10;

/** A result far off is a reason to ask what happened, never a reason to leave it out. */
export function outlierLine(sheet: Worksheet, pulls: readonly number[]): Phrase[] {
  if (pulls.length < fewest || pulls.length > most) return [];
  const found = checkOutlier(pulls);
  if (!found.flagged) return [];
  sheet.compute(grubbsCritical({ count: pulls.length, level: 0.05, sides: 1 }));
  sheet.cite('dixon-1991');
  return [
    {
      say: `results-outlier-${found.side}`,
      with: { value: { value: found.suspect, unit: 'kN', exact: true } },
    },
  ];
}

export function directionLine(sheet: Worksheet, need: number): Phrase[] {
  if (sheet.told('load_direction') !== undefined || need === en959.radialStrength.value) return [];
  const { value, unit } = en959.radialStrength;
  return [{ say: 'results-direction', with: { need: { value, unit, exact: true } } }];
}

export function fewLines(sheet: Worksheet, count: number): Phrase[] {
  const told = sheet.number('count');
  const frame = sheet.choice('frame');
  const failure = sheet.choice('gave_way');
  return [
    ...(told !== undefined && told > count ? [{ say: 'results-missing', with: { told, count } }] : []),
    ...(frame === 'clear' ? [] : [{ say: 'results-frame' }]),
    ...(failure === 'mixed' ? [{ say: 'results-mixed' }] : []),
    ...(failure === 'steel' ? [{ say: 'results-steel' }] : []),
    ...(count < fewResults ? [{ say: 'results-few', with: { count } }] : []),
    { say: 'results-not-said' },
  ];
}
