/** What so many pulls can show, before anybody drills: the price of few results, and the smallest difference that is seen. */
import type { Phrase } from '../contracts/phrase.ts';
import { numberCell, type Row } from '../rules/index.ts';
import { smallestSeen } from './compare.ts';
import { factorFor } from './test-results-judge.ts';
import type { Worksheet } from './worksheet.ts';

/** Scatter to plan with: what careful work in one rock gives (common practice); above it results are cut further. */
const planned = 0.2;
/** With fewer nothing can be said, and the factor is not tabled beyond the other. */
const [fewest, most] = [3, 300] as const;

const percent = (share: number): number => Math.round(100 * share);

/** 5 % value as a share of the mean: 1 − k(n)·V. */
const left = (count: number): number => percent(Math.max(0, 1 - factorFor(count) * planned));

export function numberLines(sheet: Worksheet, row: Row): readonly Phrase[] {
  const told = sheet.number('count');
  const comparing = sheet.told('test_purpose') === 'compare';
  const each = told === undefined ? numberCell(row, 'least_count') : Math.floor(comparing ? told / 2 : told);
  const good = numberCell(row, 'good_count');
  sheet.cite('nist-handbook');
  if (each < fewest) return [{ say: 'plan-number-too-few', with: { fewest } }];
  const count = Math.min(each, most);
  const scatter = percent(planned);
  return [
    {
      say: 'plan-number',
      with: { count, left: left(count), good, goodLeft: left(good), scatter, endless: left(most) },
    },
    ...(comparing
      ? [
          {
            say: 'plan-number-compare',
            with: { count, seen: percent(smallestSeen(planned, count)), scatter },
          },
        ]
      : []),
  ];
}
