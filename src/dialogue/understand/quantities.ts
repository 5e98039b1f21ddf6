/** Numbers with their units, ranges, and "at least" or "below". What they belong to is decided in roles.ts. */
import type { Language } from './compile.ts';
import { dimensionOf, inUnitOf } from './measure.ts';
import { type Numeral, numeralAt } from './numbers.ts';
import type { PhraseTree, Word } from './phrases.ts';

export interface Quantity {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string | null;
  readonly fraction: boolean;
  readonly negative: boolean;
  readonly inWords: boolean;
  /** M10, ⌀12. */
  readonly thread: boolean;
  readonly bound: 'least' | 'most' | null;
  /** One of three or more numbers in a row, which are measurements and not facts. */
  readonly listed: boolean;
}

const MOST_QUANTITIES = 60;
const SIZED = new Set(['size', 'hole_diameter_mm']);

/** The phrase of the tree that ends right before `to`. */
export function endingAt(
  tree: PhraseTree<unknown>,
  words: readonly Word[],
  to: number,
  widest = 4,
): number | null {
  for (let from = Math.max(0, to - widest); from < to; from++)
    if (tree.longest(words, from, true)?.to === to) return from;
  return null;
}

function unitAt(
  words: readonly Word[],
  numeral: Numeral,
  language: Language,
): { unit: string; to: number } | null {
  const match = language.units.longest(words, numeral.to, true);
  const unit = match?.said[0];
  if (!match || unit === undefined) return null;
  const next = words[match.to];
  if (next?.glued && language.by.longest(words, match.to, true) === null && next.kind === 'word') return null;
  // "10x80" is a size, "20x bolts" a count.
  const size = next?.kind === 'number' || (next !== undefined && language.thread.covers([next]));
  if (size && language.by.covers(words.slice(numeral.to, match.to))) return null;
  // "⌀16 M12": the letter belongs to the number behind it.
  if (next?.glued && next.kind === 'number' && !words[numeral.to]?.glued) {
    if (language.thread.covers(words.slice(numeral.to, match.to))) return null;
  }
  const first = words[numeral.to];
  const weak = language.weakUnits.longest(words, numeral.to, true);
  if (
    weak?.to === match.to &&
    !first?.glued &&
    !numeral.fraction &&
    next !== undefined &&
    next.kind !== 'mark'
  ) {
    const expected = language.weakNext.longest(words, match.to) ?? language.by.longest(words, match.to, true);
    if (expected === null) return null;
  }
  if (unit === 'C' && first?.glued && isGrade(words, numeral, match.to, language)) return null;
  return { unit, to: match.to };
}

/** 7c and 6c+ are the difficulty of a route. */
function isGrade(words: readonly Word[], numeral: Numeral, to: number, language: Language): boolean {
  if (!Number.isInteger(numeral.value) || numeral.value < 4 || numeral.value > 9) return false;
  if (words[to]?.text === '+' && words[to].close) return true;
  for (let at = Math.max(0, numeral.from - 2); at < to + 2; at++)
    if (language.grade.longest(words, at)) return true;
  return false;
}

function mayStart(words: readonly Word[], at: number, language: Language): boolean {
  const word = words[at];
  if (word?.kind !== 'number' || !word.glued) return true;
  const before = words[at - 1];
  return before !== undefined && (language.by.covers([before]) || language.thread.covers([before]));
}

/** "Hace hora y media": one, where a half follows the unit. */
function andAHalf(words: readonly Word[], at: number, language: Language): Numeral | null {
  const unit = language.units.longest(words, at);
  if (unit === null || language.half.longest(words, unit.to) === null) return null;
  return { from: at, to: at, value: 1, negative: false, fraction: false, inWords: true };
}

function one(words: readonly Word[], at: number, language: Language): Quantity | null {
  const money = words[at]?.kind === 'number' ? null : language.units.longest(words, at, true);
  const currency = money && dimensionOf(money.said[0] ?? null) === 'money' ? money : null;
  const unity = language.one.longest(words, at);
  const start = currency?.to ?? at;
  let numeral = numeralAt(words, start, language);
  if (numeral === null && unity && language.units.longest(words, unity.to))
    numeral = { from: at, to: unity.to, value: 1, negative: false, fraction: false, inWords: true };
  numeral ??= andAHalf(words, at, language);
  if (numeral === null || !mayStart(words, start, language)) return null;
  if (words[numeral.to]?.text === ':' && words[numeral.to]?.close && words[numeral.to + 1]?.close)
    return null;
  // "The 2nd belay" counts nothing.
  if (words[numeral.to]?.glued && language.ordinals.longest(words, numeral.to)) return null;
  const after = unitAt(words, numeral, language);
  const before = words[start - 1];
  return {
    from: at,
    to: after?.to ?? numeral.to,
    low: numeral.value,
    high: numeral.value,
    unit: currency?.said[0] ?? after?.unit ?? null,
    fraction: numeral.fraction && !numeral.inWords,
    negative: numeral.negative,
    inWords: numeral.inWords,
    thread: before !== undefined && language.thread.covers([before]) && words[start]?.close === true,
    bound: null,
    listed: false,
  };
}

const isMinutes = ({ from, to, low, unit }: Quantity, words: readonly Word[]): boolean =>
  unit === null &&
  low < 60 &&
  to === from + 1 &&
  /^\d\d$/.test(words[from]?.text ?? '') &&
  (words[to] === undefined || words[to].kind === 'mark');

/** "1 h 30 min": joined to what follows if that is the smaller unit of the same kind. */
function compound(first: Quantity, words: readonly Word[], language: Language): Quantity {
  if (first.unit === null) return first;
  const half = language.half.longest(words, first.to);
  if (half) return { ...first, to: half.to, low: first.low + 0.5, high: first.high + 0.5 };
  const and = language.and.longest(words, first.to);
  const second = one(words, and?.to ?? first.to, language);
  // "1 h 45" at the end of what is said.
  const minutes = first.unit === 'h' && second !== null && isMinutes(second, words);
  if (minutes)
    return { ...first, to: second.to, low: first.low + second.low / 60, high: first.high + second.low / 60 };
  if (!second?.unit || second.unit === first.unit || second.negative) return first;
  const more = inUnitOf(second.low, second.unit, first.unit);
  if (more === null || more >= 1) return first;
  return { ...first, to: second.to, low: first.low + more, high: first.high + more };
}

function range(first: Quantity, words: readonly Word[], language: Language): Quantity {
  const dash = words[first.to]?.text === '-' ? first.to + 1 : null;
  const and =
    endingAt(language.between, words, first.from) === null ? null : language.and.longest(words, first.to);
  const to = toAfter(first, words, language);
  const joint = dash ?? language.range.longest(words, first.to, true)?.to ?? and?.to ?? to?.to;
  if (joint === undefined || first.thread || (dash !== null && isDashed(words, first, language)))
    return first;
  const second = one(words, joint, language);
  // "12x150 or 16x150": two sizes.
  if (second !== null && language.by.longest(words, second.to, true) !== null) return first;
  if (second === null || second.thread || (first.unit && second.unit && first.unit !== second.unit))
    return first;
  if (dash !== null && words[dash]?.close !== words[dash - 1]?.close) return first;
  // "12 or 30 euros" are two prices.
  if (dimensionOf(second.unit) === 'money' && language.either.longest(words, first.to)) return first;
  // "Broche de 12 à 10 cm du bord": a size, and a distance.
  const loose = dash === null && and === null && first.unit === null && second.unit !== null;
  if (loose && (second.low < first.low || sizeIsNear(words, first.from, language))) return first;
  const [low, high] = [Math.min(first.low, second.low), Math.max(first.low, second.low)];
  return { ...first, to: second.to, low, high, unit: first.unit ?? second.unit, negative: low < 0 };
}

/** "17.5 - 20.1 - 18.3 kN" is a list and no range. */
function isDashed(words: readonly Word[], { from, to }: Quantity, language: Language): boolean {
  if (words[to + 1]?.close === true) return false;
  const second = one(words, to + 1, language);
  const behind = second !== null && words[second.to]?.text === '-' && words[second.to + 1]?.kind === 'number';
  return behind || (words[from - 1]?.text === '-' && words[from - 2]?.kind === 'number');
}

/** "De 4 a 6 °C", "4 a 6 °C"; "10x80 a 15 cm" and "12 mm a 15 cm" are none. */
function toAfter(first: Quantity, words: readonly Word[], language: Language) {
  const start = endingAt(language.from, words, first.from);
  const pair = endingAt(language.by, words, first.from) !== null;
  const open = start === null && (first.unit !== null || pair);
  return open || sizeIsNear(words, start ?? first.from, language)
    ? null
    : language.to.longest(words, first.to);
}

/** "Fix inox da 10": the number is the size of what was named. */
function sizeIsNear(words: readonly Word[], to: number, language: Language): boolean {
  return [1, 2, 3, 4].some((back) => {
    const cue = language.roles.longest(words, to - back);
    const sizes = cue?.said.some(({ role, side }) => SIZED.has(role) && side === 'before');
    return sizes === true && (cue?.to ?? 0) <= to && words[to - back]?.sentence === words[to]?.sentence;
  });
}

function bounded(quantity: Quantity, words: readonly Word[], language: Language): Quantity {
  if (endingAt(language.atLeast, words, quantity.from) !== null) return { ...quantity, bound: 'least' };
  if (endingAt(language.atMost, words, quantity.from) !== null) return { ...quantity, bound: 'most' };
  if (language.atLeast.longest(words, quantity.to) && words[quantity.to]?.text === '+')
    return { ...quantity, bound: 'least' };
  return quantity;
}

export function readQuantities(
  words: readonly Word[],
  taken: readonly boolean[],
  language: Language,
): Quantity[] {
  const found: Quantity[] = [];
  for (let at = 0; at < words.length && found.length < MOST_QUANTITIES; ) {
    const first = taken[at] ? null : one(words, at, language);
    if (first === null || !Number.isFinite(first.low)) {
      at = first?.to ?? at + 1;
      continue;
    }
    let quantity = bounded(range(compound(first, words, language), words, language), words, language);
    const below =
      dimensionOf(quantity.unit) === 'bare' ||
      dimensionOf(quantity.unit) === 'degree' ||
      quantity.unit === 'C';
    const zero = below ? language.below.longest(words, quantity.to) : null;
    if (zero && quantity.low > 0)
      quantity = { ...quantity, to: zero.to, low: -quantity.high, high: -quantity.low, negative: true };
    found.push(quantity);
    at = quantity.to;
  }
  return markLists(found, words, language);
}

function markLists(found: readonly Quantity[], words: readonly Word[], language: Language): Quantity[] {
  const pulled = new Set(['bare', 'force', 'mass']);
  const adjoins = (a: Quantity | undefined, b: Quantity | undefined): boolean => {
    if (!a || !b || (a.unit !== null && b.unit === null)) return false;
    if (!pulled.has(dimensionOf(a.unit)) || !pulled.has(dimensionOf(b.unit))) return false;
    const between = words.slice(a.to, b.from);
    return between.length === 0 || (between.length <= 2 && language.list.covers(between));
  };
  const inRow = found.map((quantity, index) => {
    const near = [found[index - 2], found[index - 1], quantity, found[index + 1], found[index + 2]] as const;
    const [a, b, c, d, e] = near;
    const joins = [adjoins(a, b), adjoins(b, c), adjoins(c, d), adjoins(d, e)];
    return (joins[0] && joins[1]) || (joins[1] && joins[2]) || (joins[2] && joins[3]) || false;
  });
  return found.map((quantity, index) => ({ ...quantity, listed: inRow[index] === true && !quantity.thread }));
}
