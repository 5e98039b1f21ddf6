/** From mentions to facts: corrections, either-or, contradictions. Where two things are said, the worse one or none. */
import type { Language } from './compile.ts';
import type { FactsView } from './facts-view.ts';
import type { Mention } from './mention.ts';
import type { Found, Problem } from './parsed.ts';
import type { Word } from './phrases.ts';
import { worstOf } from './worst.ts';

export interface Chosen {
  readonly found: Found[];
  readonly ruledOut: Found[];
  readonly alternatives: Found[][];
  readonly problems: Problem[];
  /** Facts of which only a guess was told. */
  readonly unsure: string[];
  /** Facts of which the message names several values to choose from. */
  readonly compared: string[];
}

/** Somebody decides these; "hammer or diamond?" asks which. What the rock is like nobody decides. */
const DECIDED = new Set(['drill', 'shank', 'anchor', 'metal', 'adhesive', 'use']);

const inOrder = (mentions: readonly Mention[]): Mention[] => [...mentions].sort((a, b) => a.from - b.from);
const distinct = (mentions: readonly Mention[]): Mention[] => [
  ...new Map(mentions.map((mention) => [mention.value, mention])).values(),
];

export function choose(
  mentions: readonly Mention[],
  words: readonly Word[],
  textOf: (from: number, to: number) => string,
  language: Language,
  facts: FactsView,
  /** Where "no wait" stands; what comes after it wins. */
  correctedAt: number | null,
): Chosen {
  const chosen: Chosen = {
    found: [],
    ruledOut: [],
    alternatives: [],
    problems: [],
    unsure: [],
    compared: [],
  };
  const asFound = ({ fact, value, from, to, unit }: Mention): Found => ({
    fact,
    value,
    text: textOf(from, to),
    ...(unit ? { unit } : {}),
  });
  const kinds = (all: readonly Mention[]): Found[] =>
    inOrder(all).flatMap((mention) =>
      (mention.family ?? [mention.value]).map((value) => asFound({ ...mention, value })),
    );

  const byFact = new Map<string, Mention[]>();
  for (const mention of mentions) byFact.set(mention.fact, [...(byFact.get(mention.fact) ?? []), mention]);
  for (const [fact, all] of byFact) {
    const corrected =
      correctedAt === null ? [] : all.filter(({ from, denied }) => from >= correctedAt && !denied);
    decide(fact, corrected.length > 0 ? corrected : all);
  }
  // "Twin leg or threaded rod?" tells nothing of the shank either.
  const open = chosen.alternatives.flat().filter(({ fact }) => chosen.compared.includes(fact));
  const found = chosen.found.filter(({ text }) => !open.some((one) => one.text === text));
  return { ...chosen, found };

  function decide(fact: string, all: readonly Mention[]): void {
    chosen.ruledOut.push(...all.filter(({ denied }) => denied).map(asFound));
    const told = all.filter(({ denied }) => !denied);
    const exact = told.filter(({ family }) => family === undefined);
    const many = manyOf(fact, exact);
    if (many) {
      chosen.found.push(many);
      return;
    }
    // "Stainless, 316": the kind that is told settles the family.
    const families = told.filter(
      ({ family }) => family !== undefined && !exact.some(({ value }) => family.includes(String(value))),
    );
    const either = [...distinct(exact), ...distinct(families)];
    const sure = distinct(exact.filter(({ hedged }) => !hedged));
    const open = families.filter(({ hedged }) => !hedged);
    const [only] = sure;
    const asked = either.length > 1 && eitherOr(either, words, language);
    const worst = either.length > 1 && !(asked && DECIDED.has(fact)) ? worstOf(fact, either, facts) : null;
    if (worst?.family !== undefined) openFamily(fact, [worst]);
    else if (worst) chosen.found.push(asFound(worst));
    else if (asked) {
      chosen.compared.push(fact);
      chosen.alternatives.push(kinds(either));
      if (told.some(({ hedged }) => hedged)) chosen.unsure.push(fact);
    } else if (sure.length === 1 && only && open.length === 0) chosen.found.push(asFound(only));
    else if (sure.length > 0) conflict(fact, [...sure, ...open]);
    else if (open.length > 0) openFamily(fact, open);
    else if (told.length > 0) chosen.unsure.push(fact);
  }

  /** Of a fact that may have many, every number counts, in the order said. */
  function manyOf(fact: string, all: readonly Mention[]): Found | null {
    const definition = facts.facts.get(fact);
    const numbers = inOrder(all).flatMap(({ value }) => (typeof value === 'number' ? [value] : []));
    const [first, last] = [inOrder(all)[0], inOrder(all).at(-1)];
    if (definition?.kind !== 'number' || !definition.many || numbers.length < 2 || !first || !last)
      return null;
    return { fact, value: numbers, text: textOf(first.from, last.to) };
  }

  function openFamily(fact: string, open: readonly Mention[]): void {
    const [first] = open;
    const shared = (first?.family ?? []).filter((value) =>
      open.every(({ family }) => family?.includes(value)),
    );
    if (!first || shared.length === 0) {
      conflict(fact, open);
      return;
    }
    chosen.problems.push({ kind: 'ambiguous', fact, value: first.value, text: textOf(first.from, first.to) });
    chosen.alternatives.push(kinds([first]));
  }

  function conflict(fact: string, all: readonly Mention[]): void {
    const [first, second] = inOrder(all);
    if (!first || !second) return;
    const detail = { first: first.value, second: second.value };
    const text = `${textOf(first.from, first.to)} / ${textOf(second.from, second.to)}`;
    chosen.problems.push({ kind: 'conflict', fact, text, detail });
  }
}

/** "316 or titanium", "epoxy vs polyester", "granite/gneiss", "compare …". */
function eitherOr(mentions: readonly Mention[], words: readonly Word[], language: Language): boolean {
  if (words.some((_, at) => language.compare.longest(words, at) !== null)) return true;
  const sorted = inOrder(mentions);
  const joins = sorted.slice(1).map((mention, index) => {
    const between = words.slice(sorted[index]?.to ?? 0, mention.from);
    if (between.some((word, at) => word.text === '/' || language.either.longest(between, at) !== null))
      return 'or';
    return between.every(({ text }) => text === ',') ? 'list' : 'none';
  });
  return joins.includes('or') && !joins.includes('none');
}
