/** Pairs of lengths: 10x80, M10 x 90 mm, 1/2" × 4. The smaller is the diameter. */
import type { Language } from './compile.ts';
import { dimensionOf, inFactUnit } from './measure.ts';
import type { Word } from './phrases.ts';
import type { Quantity } from './quantities.ts';

export interface Size {
  readonly from: number;
  readonly to: number;
  /** In mm, in the order said; two or three of them. */
  readonly parts: readonly number[];
  readonly unit: string;
  /** "4 x 12x100": so many of them. */
  readonly count: number | null;
}

export type Item =
  | { readonly kind: 'quantity'; readonly quantity: Quantity }
  | { readonly kind: 'size'; readonly size: Size };

/** Shorter than this, the second number is not the length of a bolt. */
export const SHORTEST = 20;

const OF_BOLTS: ReadonlySet<string> = new Set(['anchor', 'shank', 'metal']);

const isLength = (quantity: Quantity): boolean =>
  ['length', 'bare'].includes(dimensionOf(quantity.unit)) &&
  !quantity.negative &&
  quantity.low === quantity.high;
const isCount = (quantity: Quantity): boolean =>
  quantity.unit === null && !quantity.fraction && !quantity.thread && Number.isInteger(quantity.low);

function joined(a: Quantity, b: Quantity, words: readonly Word[], language: Language): boolean {
  const between = words.slice(a.to, b.from).filter((word) => word.text !== '⌀');
  const threads = language.thread.covers(between.slice(-1)) ? between.slice(0, -1) : between;
  if (threads.length === 1 && threads[0]?.text === '/') return a.thread;
  // "Un M10 de 90".
  if (a.thread && language.link.covers(threads)) return true;
  if (language.byWeak.covers(threads)) return language.plural.longest(words, b.to) === null;
  return threads.length > 0 && language.by.covers(threads);
}

/** One unit said is the unit of all; fractions are inches; otherwise millimetres. */
function measure(run: readonly Quantity[]): { parts: number[]; unit: string } | null {
  const said = run.find((quantity) => quantity.unit !== null)?.unit;
  const unit = said ?? (run.some((quantity) => quantity.fraction) ? 'in' : 'mm');
  // "M8, 6 cm long": a thread is always in millimetres.
  const unitOf = (quantity: Quantity): string => quantity.unit ?? (quantity.thread ? 'mm' : unit);
  const parts = run.map((quantity) => inFactUnit(quantity.low, unitOf(quantity), 'mm'));
  return parts.every((part) => part !== null) ? { parts, unit } : null;
}

function sizeOf(run: readonly Quantity[], words: readonly Word[], language: Language): Item[] {
  const apart = (): Item[] => run.map((quantity) => ({ kind: 'quantity', quantity }));
  const [first, second, third] = run;
  if (!first || !second) return apart();
  const countOf = (rest: readonly Quantity[]): Item[] | null => {
    const inner = rest.length === 1 ? apart().slice(1) : sizeOf(rest, words, language);
    return isCount(first) ? [{ kind: 'quantity', quantity: first }, ...inner] : null;
  };
  if (third) {
    // "4 x 10x80": the pair is written closer than what counts it.
    const space = words[first.to]?.close !== true || words[second.from]?.close !== true;
    const tight = words[second.to]?.close === true && words[third.from]?.close === true;
    const pair = space && tight ? countOf(run.slice(1)) : null;
    if (pair) return asCount(pair);
  }
  const measured = measure(run);
  if (measured === null) return apart();
  const [a = 0, b = 0] = measured.parts;
  if (!third && second.thread && !first.thread) {
    const pair = countOf([second]);
    if (pair) return asCount(pair);
  }
  const listOfThem =
    isCount(first) && second.unit !== null && (Math.max(a, b) < SHORTEST || first.low > second.low);
  const plural = words[second.to] !== undefined && language.plural.longest(words, second.to) !== null;
  if (!third && listOfThem && (Math.max(a, b) < SHORTEST || plural)) {
    const pair = countOf([second]);
    if (pair) return asCount(pair);
  }
  const size = { from: first.from, to: run.at(-1)?.to ?? second.to, ...measured, count: null };
  return [{ kind: 'size', size }];
}

/** The number before the size counts the bolts. */
function asCount(items: readonly Item[]): Item[] {
  const [head, next] = items;
  if (head?.kind === 'quantity' && next?.kind === 'size')
    return [{ kind: 'size', size: { ...next.size, from: head.quantity.from, count: head.quantity.low } }];
  if (head?.kind === 'quantity' && next?.kind === 'quantity')
    return [{ kind: 'quantity', quantity: { ...head.quantity, unit: 'pcs' } }, ...items.slice(1)];
  return [...items];
}

export function joinSizes(
  quantities: readonly Quantity[],
  words: readonly Word[],
  language: Language,
): Item[] {
  const items: Item[] = [];
  for (let at = 0; at < quantities.length; ) {
    const run: Quantity[] = [];
    for (let next = quantities[at + run.length]; next !== undefined; next = quantities[at + run.length]) {
      const last = run.at(-1);
      if (last && !joined(last, next, words, language)) break;
      if (!isLength(next) || next.listed || run.length === 3) break;
      run.push(next);
    }
    if (run.length > 1) items.push(...sizeOf(run, words, language));
    else {
      const quantity = quantities[at];
      if (quantity) items.push({ kind: 'quantity', quantity });
    }
    at += Math.max(1, run.length);
  }
  return items.map((item, index) => counted(item, items[index + 1], words, language));
}

/** "20 10x80", "20 12 mm bolts": what stands straight before a size counts the bolts. */
function counted(item: Item, next: Item | undefined, words: readonly Word[], language: Language): Item {
  if (item.kind !== 'quantity' || next === undefined || !isCount(item.quantity) || item.quantity.low < 2)
    return item;
  const { quantity } = item;
  const start = next.kind === 'size' ? next.size.from : next.quantity.from;
  const threads = words.slice(quantity.to, start);
  const described = next.kind === 'size' && describes(threads, language);
  if (threads.length > 0 && !described && !language.thread.covers(threads)) return item;
  const plural = next.kind === 'quantity' && language.plural.longest(words, next.quantity.to) !== null;
  const lone = next.kind === 'quantity' && (next.quantity.unit !== null || next.quantity.thread) && plural;
  return next.kind === 'size' || lone ? { kind: 'quantity', quantity: { ...quantity, unit: 'pcs' } } : item;
}

/** "40 twin-leg 10x100": nothing but words about the bolts, which do not part them from their number. */
function describes(words: readonly Word[], language: Language): boolean {
  const ofBolts = (at: number): number | null => {
    const match = language.values.longest(words, at);
    const told = match?.said.every((saying) => 'fact' in saying && OF_BOLTS.has(saying.fact));
    return told === true ? (match?.to ?? null) : null;
  };
  let at = 0;
  for (let to = ofBolts(at); to !== null; to = ofBolts(at)) at = to;
  return at > 0 && at === words.length;
}
