/** What a number means by the numbers around it: said anew after "no wait", or turned down ("12, not 10"). */
import type { Language } from './compile.ts';
import { dimensionOf } from './measure.ts';
import type { Mention } from './mention.ts';
import type { Word } from './phrases.ts';
import { endingAt, type Quantity } from './quantities.ts';
import type { Item } from './sizes.ts';

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
export function withoutDenied(items: readonly Item[], words: readonly Word[], language: Language): Item[] {
  const notBefore = (item: Item): number | null => {
    const { from } = item.kind === 'size' ? item.size : item.quantity;
    const before = words[from - 1];
    const start = before !== undefined && language.thread.covers([before]) ? from - 1 : from;
    return endingAt(language.not, words, start);
  };
  return items.flatMap((item, index) => {
    if (notBefore(item) !== null) return [];
    const next = items[index + 1];
    if (item.kind === 'size' || next === undefined || next.kind === 'size') return [item];
    const { quantity } = item;
    const start = notBefore(next);
    // "10, nicht 12 mm": the unit is that of both.
    const beside =
      start !== null &&
      start - quantity.to < 2 &&
      words.slice(quantity.to, start).every(({ text }) => text === ',');
    const shared = beside && quantity.unit === null && !quantity.thread && !quantity.fraction;
    return [shared ? { ...item, quantity: { ...quantity, unit: next.quantity.unit } } : item];
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
