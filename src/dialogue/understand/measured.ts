/** Numbers become facts: by their role, by their unit, or as the answer to the question that was asked. */
import type { Heard } from './acts.ts';
import { isBoltNumber, SIZES_IN_WORDS, SURELY_CELSIUS } from './careful.ts';
import { hoursSincePeriod } from './clock.ts';
import { Collector } from './collect.ts';
import type { Language, RoleCue } from './compile.ts';
import type { FactsView } from './facts-view.ts';
import { legAngles } from './legs.ts';
import { dimensionOf, dimensionOfFact, inFactUnit } from './measure.ts';
import type { Mention } from './mention.ts';
import type { UnderstandContext } from './parsed.ts';
import type { Match, PhraseTree, Word } from './phrases.ts';
import type { Quantity } from './quantities.ts';
import { exactOf, restated, withoutDenied } from './restated.ts';
import { assignRoles } from './roles.ts';
import { readRows } from './rows.ts';
import type { Item } from './sizes.ts';
import { readTimed, untimed } from './timed.ts';
import { readWarmth } from './warmth.ts';

const LENGTHS = new Set([
  'diameter_mm',
  'length_mm',
  'embedment_mm',
  'hole_diameter_mm',
  'edge_distance_mm',
  'spacing_mm',
]);
/** With one of these a weight is what hangs or falls, and no strength. */
const WEIGHED = new Set(['fall_factor', 'fall_m', 'span_m', 'sag_m', 'angle_deg', 'leg_a_deg', 'use']);
/** They are told of a stretched line only. */
const LINES = new Set(['tension_kn', 'sag_m', 'line_g_per_m']);
/** Forces of lines and ropes, which nobody tells in kg. */
const PULLED = new Set(['tension_kn', 'rope_peak_kn', 'characteristic_kn']);
/** Units of lines that span something. */
const SPANS = new Set(['m', 'ft', 'yd']);
const WIDEST_HOLE_CM = 4;
const NEVER_LENGTH = new Set(['force', 'mass', 'temperature', 'time', 'stress']);

export interface Measured extends Pick<Collector, 'mentions' | 'problems'> {
  /** Words that name a number ("depth" in "depth 80"): they tell a fact and ask nothing. */
  readonly naming: readonly boolean[];
}

function fits(role: string, item: Item, unitOf: (fact: string) => string): boolean {
  // Hangers have a thickness of no interest, but not in µm.
  if (role === 'ignore') return item.kind === 'size' || item.quantity.unit !== 'µm';
  if (item.kind === 'size') return role === 'hole_diameter_mm' || role === 'size';
  const { unit, fraction, thread, inWords, negative, low } = item.quantity;
  const dimension = dimensionOf(unit);
  const bare = dimension === 'bare';
  if (role === 'count')
    return (bare || dimension === 'pieces') && !fraction && !thread && low >= (inWords ? 3 : 2);
  if (role === 'size')
    return (
      (dimension === 'length' && unit !== 'µm') ||
      (bare && !negative && (!inWords || SIZES_IN_WORDS.has(low)))
    );
  if (role === 'air') return dimension === 'temperature' || dimension === 'degree';
  const expected = dimensionOfFact(unitOf(role));
  // "M12" is a bolt or its hole and no depth.
  if (thread) return role === 'diameter_mm' || role === 'hole_diameter_mm';
  if (bare && negative) return expected === 'temperature';
  if (dimension === 'degree') return expected === 'temperature' || expected === 'degree';
  if (dimension === 'mass' && expected === 'force') return true;
  if (dimension === 'length' && (role === 'coating_um') !== (unit === 'µm')) return false;
  if (bare && fraction && expected !== 'length') return false;
  return dimension === expected || (bare && !inWords);
}

/** "Bolts of 2005": no number of four digits near our time is anything else, unless a number was asked for. */
const isYear = (item: Item): boolean =>
  item.kind === 'quantity' &&
  item.quantity.unit === null &&
  !item.quantity.listed &&
  item.quantity.low >= 1960 &&
  item.quantity.high <= 2060 &&
  Number.isInteger(item.quantity.low);

const isPercent = (item: Item): boolean =>
  item.kind === 'quantity' && dimensionOf(item.quantity.unit) === 'percent';

const isVolume = (item: Item): boolean =>
  item.kind === 'quantity' && dimensionOf(item.quantity.unit) === 'volume';

/** Nothing but phrases of the tree. */
const coversAll = (tree: PhraseTree<true>, words: readonly Word[]): boolean => {
  let at = 0;
  for (let match = tree.longest(words, at); match; match = tree.longest(words, at)) at = match.to;
  return at === words.length;
};

const covers = (cue: Match<RoleCue>, { from, to }: Quantity): boolean =>
  cue.from <= from && cue.to >= to && cue.to - cue.from > to - from;

export function readMeasures(
  all: readonly Item[],
  words: readonly Word[],
  textOf: (from: number, to: number) => string,
  language: Language,
  values: readonly Mention[],
  facts: FactsView,
  context: UnderstandContext,
  { correctedAt, spent }: Pick<Heard, 'correctedAt' | 'spent'>,
): Measured {
  const collector = new Collector(facts, textOf);
  const present = (tree: { longest(words: readonly Word[], at: number): unknown }): boolean =>
    words.some((_, at) => tree.longest(words, at) !== null);
  // They may overlap: in "in a hole diameter 16" one cue ends where the next begins.
  const cues = language.roles.either(words).filter((cue) => !isInFiller(cue) && !isSpent(cue));
  const timed = readTimed(all, words, language);
  // "Between the two bolts" counts nothing.
  const plain = withoutDenied(untimed(all, timed), words, language).filter(
    (item) =>
      (context.pending !== undefined || !isYear(item)) &&
      (item.kind === 'size' || !item.quantity.inWords || !cues.some((cue) => covers(cue, item.quantity))),
  );
  const legs = legAngles(plain, cues);
  const { rows, claimed } = readRows(plain, words, language, context.pending);
  const free = plain.filter(
    (item) => item.kind === 'size' || !(legs.includes(item.quantity) || claimed.has(item.quantity)),
  );
  const items = readWarmth(free, words, language, cues);
  const holeNamed = cues.some((cue) => cue.said.some(({ role }) => role === 'hole_diameter_mm'));
  const doubtOf = (role: string, item: Item): number | null => {
    const condition = language.onlyWith.get(role);
    if (!fits(role, item, (fact) => collector.unitOf(fact))) return null;
    if (condition !== undefined && !present(condition)) return null;
    if (item.kind === 'size' || role === 'ignore') return 0;
    const { quantity } = item;
    const bareSize = role === 'size' && quantity.unit === null && !quantity.fraction && !quantity.thread;
    if (bareSize && (pluralAhead(quantity.to) || isBoltNumber(quantity.low))) return null;
    // "95 kg, tension?" asks for it.
    // "A hole of 10 cm" is its depth.
    if (role === 'hole_diameter_mm' && quantity.unit === 'cm' && quantity.low > WIDEST_HOLE_CM) return null;
    const weight = PULLED.has(role) && dimensionOf(quantity.unit) === 'mass';
    return (bareSize ? 1 : 0) + (weight ? 2.5 : 0) + (collector.isPossible(role, quantity) ? 0 : 2.5);
  };
  const assigned = assignRoles(items, words, language, cues, values, doubtOf);
  const angled = present(language.angled);
  const isAngle = ({ unit, high }: Quantity): boolean => unit === '°' && high > SURELY_CELSIUS && angled;

  for (const { hours, celsius, from, to, ofSheet } of timed) {
    collector.put(ofSheet ? 'sheet_hours' : 'step_hours', hours, from, to, 'h');
    collector.put(ofSheet ? 'sheet_temperature_c' : 'step_temperature_c', celsius, from, to, 'C');
  }
  const moist = assigned.some((told) => told?.role === 'humidity_pct') || items.some(isPercent);
  legs.forEach((leg, index) => {
    collector.put(index === 0 ? 'leg_a_deg' : 'leg_b_deg', leg.high, leg.from, leg.to, leg.unit);
  });
  for (const { fact, quantities, unit, times } of rows)
    for (const quantity of quantities)
      for (let time = 0; time < times; time++)
        collector.quantity(fact, { ...quantity, unit: quantity.unit ?? unit });
  const sums = items.flatMap((item) =>
    item.kind === 'quantity' && dimensionOf(item.quantity.unit) === 'money' ? [item.quantity] : [],
  );
  const naming: boolean[] = [];
  const open: Quantity[] = [];
  const airs: Quantity[] = [];
  for (const [index, item] of items.entries()) {
    const told = assigned[index] ?? null;
    // "Load" beside a weight asks for the load.
    const mass =
      told?.role === 'load_kn' && item.kind === 'quantity' && dimensionOf(item.quantity.unit) === 'mass';
    if (told && !mass && !isVolume(item))
      for (let at = told.cue.from; at < told.cue.to; at++) naming[at] = true;
    if (item.kind === 'size') {
      const { from, to } = item.size;
      const linked = told === null ? null : language.link.longest(words, told.cue.to);
      const beside = told?.cue.to === from || linked?.to === from || told?.cue.from === to;
      const ofHole = told?.role === 'hole_diameter_mm' && beside;
      collector.size(item.size, ofHole, holeNamed);
      continue;
    }
    const { quantity } = item;
    const volume = isVolume(item);
    if ((told?.role === 'ignore' && !volume) || quantity.listed) continue;
    const priced = told?.role === 'size' && quantity.unit === null && beforePrice(quantity.to);
    if (volume || mass || priced || told === null || (told.role === 'temperature_c' && isAngle(quantity)))
      open.push(quantity);
    else if (told.role === 'size') collector.lone(quantity);
    else if (told.role === 'air' && moist) collector.quantity('air_temperature_c', quantity);
    else if (told.role === 'air') airs.push(quantity);
    else if (told.role === 'diameter_mm' && ofNamedHole(quantity.from, told.cue))
      collector.quantity('hole_diameter_mm', quantity);
    else collector.quantity(told.role, quantity);
  }

  const asked =
    context.pending !== undefined && facts.facts.get(context.pending)?.kind === 'number'
      ? context.pending
      : null;
  const askedUnit = asked === null ? '' : collector.unitOf(asked);
  const answers = exactOf(
    open.filter(({ unit }) => unit === null || inFactUnit(1, unit, askedUnit) !== null),
    ({ low, unit }) => inFactUnit(low, unit, askedUnit) ?? low,
  );
  const airNamed = cues.some((cue) => cue.said.some(({ role }) => role === 'air'));
  const weighed =
    [...collector.mentions, ...values].some(({ fact }) => WEIGHED.has(fact)) || open.some(isAngle);
  const manyAsked = asked !== null && collector.isMany(asked) && answers.length > 1;
  const money = open.filter(({ unit }) => dimensionOf(unit) === 'money');
  const metals = new Set(
    values.flatMap(({ fact, value, denied }) => (fact === 'metal' && !denied ? value : [])),
  );
  const priced = money.length > 0 || collector.mentions.some(({ fact }) => fact === 'unit_cost');
  for (const quantity of open) {
    const beside = besideOf(quantity);
    const anew = restated(quantity, collector.mentions, correctedAt);
    if (anew !== null && collector.isPossible(anew, quantity)) collector.quantity(anew, quantity);
    else if (asked !== null && (answers.length === 1 || manyAsked) && answers.includes(quantity))
      collector.quantity(asked, quantity);
    else if (isPrice(quantity)) collector.quantity('unit_cost', quantity);
    else if (beside !== undefined) collector.quantity(beside, quantity);
    else if (dimensionOf(quantity.unit) === 'years' && ofMetal(quantity))
      collector.quantity('life_years', quantity);
    else if (!byUnit(quantity) && asked !== null && open.length === 1 && quantity.unit)
      collector.mismatch(asked, quantity);
  }
  // The air's warmth is no answer, unless the rock's was told as well.
  if (!collector.mentions.some(({ fact }) => fact === 'temperature_c'))
    for (const air of airs) collector.unclear('temperature_c', air);
  readPeriods();
  readSpan();
  for (const { from, to, said } of language.temperatures.all(words))
    for (const celsius of said) collector.put('temperature_c', celsius, from, to, null);
  return { mentions: collector.mentions, problems: collector.problems, naming };

  /** "40 bolts, no wait, 35": this "no" is no bolt's number. */
  function isSpent({ from, to }: Match<RoleCue>): boolean {
    return words.slice(from, to).some((_, at) => spent[from + at] === true);
  }

  /** "A bit over 12 mm": this bit drills no hole. */
  function isInFiller({ from, to }: Match<RoleCue>): boolean {
    return [from - 1, from].some((at) => {
      const filler = language.fillers.longest(words, at);
      return filler !== null && filler.to >= to && filler.to - filler.from > to - from;
    });
  }

  /** "Hole 18 mm diameter", "loch ø16": the diameter is that of the hole, if nothing stands between. */
  function ofNamedHole(from: number, cue: Match<RoleCue>): boolean {
    const start = Math.min(from, cue.from);
    return cues.some(
      ({ to, said }) =>
        said.some(({ role, side }) => role === 'hole_diameter_mm' && side === 'before') &&
        (to === start ||
          language.having.covers(words.slice(to, start)) ||
          (to === start - 1 && [':', '='].includes(words[to]?.text ?? ''))),
    );
  }

  /** "35 twin-leg bolts". */
  function pluralAhead(from: number): boolean {
    const parts = (at: number): boolean =>
      words[at]?.text === ',' || language.parting.longest(words, at) !== null;
    for (let at = from; at <= from + 3 && !parts(at); at++)
      if (language.plural.longest(words, at) !== null) return true;
    return false;
  }

  /** What a unit alone tells. Whether anything was said about the quantity. */
  function byUnit(quantity: Quantity): boolean {
    const { unit, negative, thread, fraction } = quantity;
    const dimension = dimensionOf(unit);
    const nearLength = NEVER_LENGTH.has(dimension) ? lengthNamedBefore(quantity) : null;
    if (nearLength !== null) collector.mismatch(nearLength, quantity);
    else if (unit === 'µm') collector.quantity('coating_um', quantity);
    else if (dimension === 'length' && ['mm', 'cm', 'in'].includes(unit ?? '')) collector.lone(quantity);
    else if (dimension === 'bare' && (thread || (fraction && asked === null))) collector.lone(quantity);
    else if (isAngle(quantity)) collector.quantity('angle_deg', quantity);
    else if (dimension === 'temperature' || dimension === 'degree' || (dimension === 'bare' && negative))
      collector.quantity('temperature_c', quantity);
    else if (dimension === 'force') collector.quantity('load_kn', quantity);
    else if (dimension === 'stress') collector.quantity('ucs_mpa', quantity);
    else if (dimension === 'pieces') collector.quantity('count', quantity);
    else if (dimension === 'volume') collector.possible('cartridge_ml', quantity);
    else if (dimension === 'percent' && airNamed) collector.quantity('humidity_pct', quantity);
    else if (dimension === 'mass' && weighed) collector.quantity('mass_kg', quantity);
    else if (dimension === 'mass' && asked !== 'mass_kg') collector.mismatch('load_kn', quantity);
    else return false;
    return true;
  }

  function lengthNamedBefore({ from }: Quantity): string | null {
    for (let at = Math.max(0, from - 3); at < from; at++) {
      // "18 mm holes, 15 °C": the holes have their number.
      if (naming[at]) continue;
      const cue = language.roles.longest(words, at);
      const near = cue?.said.find(({ role, side }) => LENGTHS.has(role) && side === 'before');
      if (cue && near && from - cue.to <= 1) return near.role;
    }
    return null;
  }

  /** Right after a metal, "titanium 63", or right before it, "63 for titanium". */
  function ofMetal({ from, to }: Quantity): boolean {
    const filled = (start: number, end: number): boolean =>
      end >= start &&
      (end === start || (end - start < 3 && coversAll(language.fillers, words.slice(start, end))));
    return values.some(
      (value) => value.fact === 'metal' && (filled(value.to, from) || filled(to, value.from)),
    );
  }

  /** "They last 10 and 25 years": one more number of a fact that may have many. */
  function besideOf({ from, unit }: Quantity): string | undefined {
    return collector.mentions.find(
      ({ fact, to }) =>
        collector.isMany(fact) &&
        to < from &&
        language.list.covers(words.slice(to, from)) &&
        (unit === null || dimensionOf(unit) === dimensionOfFact(collector.unitOf(fact))),
    )?.fact;
  }

  /** The price of a second choice stands beside its metal, after the first price, or joined to it: "5 or 20 euro". */
  function isPrice(quantity: Quantity): boolean {
    const { unit, thread, fraction, to } = quantity;
    const named = collector.mentions.some(({ fact }) => fact === 'unit_cost');
    if (dimensionOf(unit) === 'money')
      return named || money.length > 1 || ofMetal(quantity) || present(language.either) || metals.size > 1;
    if (unit !== null || thread || fraction) return false;
    return beforePrice(to) || (priced && ofMetal(quantity));
  }

  /** "Slackline at 4 kN, 25 m": the one length that nothing else was said of. */
  function readSpan(): void {
    const spans = open.filter(({ unit }) => SPANS.has(unit ?? ''));
    const [span] = spans;
    const named = collector.mentions.some(({ fact }) => fact === 'span_m');
    const line =
      values.some(({ fact, value }) => fact === 'use' && value === 'highline') ||
      collector.mentions.some(({ fact }) => LINES.has(fact));
    if (span && spans.length === 1 && line && !named && asked === null) collector.possible('span_m', span);
  }

  function beforePrice(to: number): boolean {
    const joins = (from: number): boolean =>
      [language.list, language.either].some((tree) => tree.covers(words.slice(to, from)));
    return sums.some(({ from }) => from > to && joins(from));
  }

  function readPeriods(): void {
    if (asked !== 'hours_since' && !present(language.setAgo)) return;
    for (const { from, to, said } of language.periods.all(words)) {
      const [period] = said;
      const { now } = context;
      const hours = period && now !== undefined ? hoursSincePeriod(now, period.daysBack, period.until) : null;
      if (hours === null) collector.unclear('hours_since', { from, to }, 0);
      else collector.put('hours_since', hours, from, to, null);
    }
  }
}
