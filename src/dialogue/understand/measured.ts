/** Numbers become facts: by their role, by their unit, or as the answer to the question that was asked. */
import { hoursSincePeriod } from './clock.ts';
import type { Language } from './compile.ts';
import type { FactsView } from './facts-view.ts';
import { dimensionOf, dimensionOfFact, inFactUnit } from './measure.ts';
import type { Mention } from './mention.ts';
import type { Problem, UnderstandContext } from './parsed.ts';
import type { Word } from './phrases.ts';
import type { Quantity } from './quantities.ts';
import { type Assigned, assignRoles } from './roles.ts';
import { type Item, SHORTEST, type Size } from './sizes.ts';

/** For these the larger end of a range is the careful one. */
const HIGH_IS_CAREFUL = new Set([
  'load_kn',
  'tension_kn',
  'mass_kg',
  'fall_factor',
  'count',
  'humidity_pct',
  'span_m',
  'stick_out_mm',
  'angle_deg',
]);
/** "Within 250 m of the sea" is how the standards say it, and it is the band that counts. */
const LIMIT_IS_VALUE = new Set([
  'sea_distance_m',
  'count',
  'load_kn',
  'tension_kn',
  'mass_kg',
  'fall_factor',
  'horizon_years',
]);
const LENGTHS = new Set([
  'diameter_mm',
  'length_mm',
  'embedment_mm',
  'hole_diameter_mm',
  'edge_distance_mm',
  'spacing_mm',
]);
/** Thicker is no bolt, shorter is no length; between them a lone number is neither. */
const THICKEST = 26;
const SHORTEST_ALONE = 35;
/** A lone "15" for one of these is as well centimetres. */
const BARE_MM_FROM: Readonly<Record<string, number>> = {
  edge_distance_mm: 40,
  spacing_mm: 40,
  embedment_mm: 15,
};
/** Degrees without a letter: above this they may be Fahrenheit. */
const SURELY_CELSIUS = 30;

interface Reading {
  readonly mentions: Mention[];
  readonly problems: Problem[];
}

export function readMeasures(
  all: readonly Item[],
  words: readonly Word[],
  textOf: (from: number, to: number) => string,
  language: Language,
  facts: FactsView,
  context: UnderstandContext,
): Reading {
  const mentions: Mention[] = [];
  const problems: Problem[] = [];
  const limits = new Map(
    [...facts.facts.values()].flatMap((fact) => (fact.kind === 'number' ? [[fact.id, fact] as const] : [])),
  );
  const present = (tree: { longest(words: readonly Word[], at: number): unknown }): boolean =>
    words.some((_, at) => tree.longest(words, at) !== null);
  const cues = language.roles.all(words);
  // "between the two bolts" counts nothing.
  const items = all.filter(
    (item) =>
      item.kind === 'size' || !item.quantity.inWords || !cues.some((cue) => covers(cue, item.quantity)),
  );
  const hasHole = cues.some((cue) => cue.said.some(({ role }) => role === 'hole_diameter_mm'));

  const put = (
    fact: string,
    value: number,
    from: number,
    to: number,
    unit: string | null,
    weak = false,
  ): void => {
    const limit = limits.get(fact);
    if (!limit) return;
    const rounded = Math.round(value * 1000) / 1000;
    const [least, most] = limit.possible;
    if (!(rounded >= least && rounded <= most)) {
      const detail = { least, most, unit: limit.unit };
      problems.push({ kind: 'impossible', fact, value: rounded, text: textOf(from, to), detail });
    } else {
      mentions.push({ fact, value: rounded, from, to, ...(unit ? { unit } : {}), ...(weak ? { weak } : {}) });
    }
  };
  const unclear = (fact: string, quantity: Quantity, value: number): void => {
    problems.push({ kind: 'ambiguous', fact, value, text: textOf(quantity.from, quantity.to) });
  };
  const mismatch = (fact: string, { from, to, low, unit }: Quantity): void => {
    const detail = unit ? { unit, expected: limits.get(fact)?.unit ?? '' } : {};
    problems.push({ kind: 'unit-mismatch', fact, value: low, text: textOf(from, to), detail });
  };

  const putQuantity = (fact: string, quantity: Quantity): void => {
    const limit = limits.get(fact);
    if (!limit) return;
    const said = HIGH_IS_CAREFUL.has(fact) ? quantity.high : quantity.low;
    const unit = quantity.unit ?? (quantity.fraction && limit.unit === 'mm' ? 'in' : null);
    const value = inFactUnit(said, unit, limit.unit);
    if (value === null) mismatch(fact, quantity);
    else if (quantity.bound === 'most' && !LIMIT_IS_VALUE.has(fact)) unclear(fact, quantity, value);
    else if (unit === null && value < (BARE_MM_FROM[fact] ?? Number.NEGATIVE_INFINITY))
      unclear(fact, quantity, value);
    else if (unit === '°' && fact === 'temperature_c' && value > SURELY_CELSIUS)
      unclear(fact, quantity, value);
    else if (unit === null && fact === 'temperature_c' && value > SURELY_CELSIUS + 5)
      unclear(fact, quantity, value);
    else put(fact, value, quantity.from, quantity.to, unit);
  };

  const putLone = (quantity: Quantity): void => {
    const unit = quantity.unit ?? (quantity.fraction ? 'in' : 'mm');
    const value = inFactUnit(quantity.low, unit, 'mm') ?? Number.NaN;
    if (value <= THICKEST) putQuantity('diameter_mm', quantity);
    else if (value >= SHORTEST_ALONE) putQuantity('length_mm', quantity);
    else unclear('diameter_mm', quantity, value);
  };

  const putSize = ({ from, to, parts, unit, count }: Size, assigned: Assigned): void => {
    const [small = 0, middle = 0, large = middle] = [...parts].sort((a, b) => a - b);
    const adjacent = assigned && (assigned.cue.to === from || assigned.cue.from === to);
    if (count !== null) put('count', count, from, to, null);
    if (parts.length === 3 && hasHole) put('hole_diameter_mm', middle, from, to, unit);
    else if (parts.length === 3)
      return void problems.push({ kind: 'ambiguous', fact: 'diameter_mm', text: textOf(from, to) });
    if (assigned?.role === 'hole_diameter_mm' && adjacent) {
      put('hole_diameter_mm', small, from, to, unit);
      put('embedment_mm', large, from, to, unit);
    } else if (large < SHORTEST && hasHole && small < large) {
      put('diameter_mm', small, from, to, unit);
      put('hole_diameter_mm', large, from, to, unit);
    } else if (large < SHORTEST || small === large) {
      problems.push({ kind: 'impossible', fact: 'length_mm', value: large, text: textOf(from, to) });
    } else {
      put('diameter_mm', small, from, to, unit);
      put('length_mm', large, from, to, unit);
    }
  };

  const fits = (role: string, item: Item): boolean => {
    if (role === 'ignore') return true;
    if (item.kind === 'size') return role === 'hole_diameter_mm' || role === 'size';
    const { quantity } = item;
    const dimension = dimensionOf(quantity.unit);
    if (role === 'size' || role === 'count') {
      if (role === 'count')
        return (
          ['bare', 'pieces'].includes(dimension) &&
          !quantity.fraction &&
          !quantity.thread &&
          quantity.low >= 2
        );
      return (
        (dimension === 'length' && quantity.unit !== 'µm') || (dimension === 'bare' && !quantity.inWords)
      );
    }
    if (role === 'air') return dimension === 'temperature' || dimension === 'degree';
    const expected = dimensionOfFact(limits.get(role)?.unit ?? '1');
    if (dimension === 'degree') return expected === 'temperature' || expected === 'degree';
    if (dimension === 'mass' && expected === 'force') return true;
    if (dimension === 'length' && (role === 'coating_um') !== (quantity.unit === 'µm')) return false;
    if (dimension === 'bare' && quantity.fraction && expected !== 'length') return false;
    return (
      dimension === expected ||
      (dimension === 'bare' && !quantity.inWords) ||
      (dimension === 'bare' && expected === 'bare')
    );
  };

  const assigned = assignRoles(items, words, language, cues, (role, item) => {
    const condition = language.onlyWith.get(role);
    return fits(role, item) && (condition === undefined || present(condition));
  });

  const open: Quantity[] = [];
  for (const [index, item] of items.entries()) {
    const role = assigned[index] ?? null;
    if (item.kind === 'size') {
      putSize(item.size, role);
      continue;
    }
    const { quantity } = item;
    if (role?.role === 'ignore' || (quantity.listed && role?.role !== 'count')) continue;
    if (role === null) open.push(quantity);
    else if (role.role === 'size') putLone(quantity);
    else if (role.role === 'air') unclear('temperature_c', quantity, quantity.low);
    else putQuantity(role.role, quantity);
  }

  const { pending } = context;
  const asked = pending === undefined ? undefined : limits.get(pending);
  const answers = open.filter(({ unit }) => unit === null || inFactUnit(1, unit, asked?.unit ?? '') !== null);
  const answer = asked && answers.length === 1 ? answers[0] : undefined;
  const fall = mentions.some(({ fact }) => fact === 'fall_factor');
  for (const quantity of open) {
    if (asked && quantity === answer) putQuantity(asked.id, quantity);
    else if (!putByUnit(quantity) && asked && open.length === 1 && quantity.unit)
      mismatch(asked.id, quantity);
  }

  /** What a unit alone tells. Whether anything was said about the quantity. */
  function putByUnit(quantity: Quantity): boolean {
    const dimension = dimensionOf(quantity.unit);
    const nearLength = nearestLength(quantity);
    if (nearLength && ['force', 'mass', 'temperature', 'time', 'stress'].includes(dimension))
      mismatch(nearLength, quantity);
    else if (quantity.unit === 'µm') putQuantity('coating_um', quantity);
    else if (dimension === 'length' && ['mm', 'cm', 'in'].includes(quantity.unit ?? '')) putLone(quantity);
    else if (dimension === 'bare' && (quantity.thread || (quantity.fraction && !asked))) putLone(quantity);
    else if (dimension === 'temperature' || dimension === 'degree') putQuantity('temperature_c', quantity);
    else if (dimension === 'bare' && quantity.negative) putQuantity('temperature_c', quantity);
    else if (dimension === 'force') putQuantity('load_kn', quantity);
    else if (dimension === 'stress') putQuantity('ucs_mpa', quantity);
    else if (dimension === 'pieces') putQuantity('count', quantity);
    else if (dimension === 'mass' && fall) putQuantity('mass_kg', quantity);
    else if (dimension === 'mass' && asked?.id !== 'mass_kg') mismatch('load_kn', quantity);
    else return false;
    return true;
  }

  function nearestLength({ from }: Quantity): string | null {
    for (let at = Math.max(0, from - 3); at < from; at++) {
      const cue = language.roles.longest(words, at);
      const near = cue?.said.find(({ role, side }) => LENGTHS.has(role) && side === 'before');
      if (cue && near && from - cue.to <= 1) return near.role;
    }
    return null;
  }

  if (asked?.id === 'hours_since' || present(language.setAgo)) {
    for (const { from, to, said } of language.periods.all(words)) {
      const [period] = said;
      const hours =
        period && context.now !== undefined
          ? hoursSincePeriod(context.now, period.daysBack, period.until)
          : null;
      if (hours === null) problems.push({ kind: 'ambiguous', fact: 'hours_since', text: textOf(from, to) });
      else put('hours_since', hours, from, to, null);
    }
  }
  for (const { from, to, said } of language.temperatures.all(words))
    for (const celsius of said) put('temperature_c', celsius, from, to, null);
  return { mentions, problems };
}

const covers = (cue: { from: number; to: number }, { from, to }: Quantity): boolean =>
  cue.from <= from && cue.to >= to && cue.to - cue.from > to - from;
