/** What a number means by the numbers around it: said anew after "no wait", or turned down ("12, not 10"). */
import type { Language } from './compile.ts';
import { dimensionOf } from './measure.ts';
import type { Mention } from './mention.ts';
import type { Word } from './phrases.ts';
import { endingAt, type Quantity } from './quantities.ts';

/** "The hole is 12 mm, no wait 14": a number that nothing else is said of takes the place of the one before. */
export function restated(
  { from, unit, thread, fraction }: Quantity,
  before: readonly Mention[],
  correctedAt: number | null,
): string | null {
  if (correctedAt === null || from < correctedAt || thread || fraction) return null;
  const numbers = before.filter(({ to, value }) => to <= correctedAt && typeof value === 'number');
  const end = Math.max(...numbers.map(({ to }) => to));
  const last = numbers.filter(({ to }) => to === end);
  const [only] = last;
  // A size has two numbers, and either may be meant.
  if (only === undefined || last.length > 1) return null;
  const alike = unit === null || dimensionOf(unit) === dimensionOf(only.unit ?? null);
  return alike ? only.fact : null;
}

/** "12er, nicht 10er", "M12 not M10": the number right behind the "not" was not told. */
export function withoutDenied(
  mentions: readonly Mention[],
  words: readonly Word[],
  language: Language,
): Mention[] {
  return mentions.filter(({ from, value }) => {
    const before = words[from - 1];
    const start = before !== undefined && language.thread.covers([before]) ? from - 1 : from;
    return typeof value !== 'number' || endingAt(language.not, words, start) === null;
  });
}

/** "A bit over a day, 26 h": the exact one of two answers that agree. */
export function exactOf(answers: readonly Quantity[], amountOf: (quantity: Quantity) => number): Quantity[] {
  const agrees = (rough: Quantity, exact: Quantity): boolean =>
    rough !== exact &&
    exact.bound === null &&
    ((rough.bound === 'least' && amountOf(exact) >= amountOf(rough)) ||
      (rough.bound === 'most' && amountOf(exact) <= amountOf(rough)));
  return answers.filter((rough) => !answers.some((exact) => agrees(rough, exact)));
}
