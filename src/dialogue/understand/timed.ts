/** Hours that belong to a temperature: "6 h at 10 °C, then 4 h at 2 °C", "the sheet says 12 h at 10 °C". */
import { SURELY_CELSIUS } from './careful.ts';
import type { Language } from './compile.ts';
import { dimensionOf, inFactUnit } from './measure.ts';
import type { Word } from './phrases.ts';
import type { Quantity } from './quantities.ts';
import type { Item } from './sizes.ts';

export interface Timed {
  readonly hours: number;
  readonly celsius: number;
  readonly from: number;
  readonly to: number;
  /** The words about a data sheet stand before it. */
  readonly ofSheet: boolean;
}

/** Words between the two: "at", "at about", ":". */
const farthest = 3;

function celsiusOf({ low, unit }: Quantity): number | null {
  const dimension = dimensionOf(unit);
  if (dimension !== 'temperature' && dimension !== 'degree') return null;
  return inFactUnit(low, unit === '°' ? (low > SURELY_CELSIUS ? 'F' : 'C') : unit, '°C');
}

function hoursOf({ low, high, unit }: Quantity, ofSheet: boolean): number | null {
  // Of a range the sheet's longer time and the shorter time that has passed count.
  return unit !== null && dimensionOf(unit) === 'time' ? inFactUnit(ofSheet ? high : low, unit, 'h') : null;
}

/** One spell without a sheet is left to the usual roles: "cured 6 h at 10 °C". */
export function readTimed(items: readonly Item[], words: readonly Word[], language: Language): Timed[] {
  const quantities = items.flatMap((item) => (item.kind === 'quantity' ? [item.quantity] : []));
  const sheets = words.flatMap((_, at) => (language.sheet.longest(words, at) === null ? [] : [at]));
  const found: Timed[] = [];
  for (let index = 0; index + 1 < quantities.length; index++) {
    const [one, two] = [quantities[index], quantities[index + 1]];
    if (!one || !two || words[one.from]?.sentence !== words[two.from]?.sentence) continue;
    const between = words.slice(one.to, two.from);
    // "6 hours 15 °C, then (9 hours) 5 °C".
    const beside = between.every(({ kind }) => kind === 'mark');
    const joined = beside || between.some((_, at) => language.timed.longest(between, at));
    if (between.length > farthest || !joined) continue;
    const ofSheet = sheets.some((at) => at < one.from && words[at]?.sentence === words[one.from]?.sentence);
    const hours = hoursOf(one, ofSheet) ?? hoursOf(two, ofSheet);
    // "24 h at 5 degrees and 12 h at 15": the unit was said.
    const bare = found.length > 0 && two.unit === null && !two.inWords && !two.fraction;
    const celsius = celsiusOf(two) ?? celsiusOf(one) ?? (bare ? two.low : null);
    if (hours === null || celsius === null) continue;
    found.push({ hours, celsius, from: one.from, to: two.to, ofSheet });
    index++;
  }
  const spells = found.filter(({ ofSheet }) => !ofSheet);
  return spells.length === 1 ? found.filter(({ ofSheet }) => ofSheet) : found;
}

/** The items that no such pair has taken. */
export const untimed = (items: readonly Item[], timed: readonly Timed[]): Item[] =>
  items.filter((item) => {
    const { from } = item.kind === 'size' ? item.size : item.quantity;
    return !timed.some((pair) => from >= pair.from && from < pair.to);
  });
