/** From mentions to facts: corrections, either-or, contradictions. Where a message says two things, the worse one or none. */
import type { Language } from './compile.ts';
import { type FactsView, valuesOf } from './facts-view.ts';
import type { Mention } from './mention.ts';
import type { Found, Problem } from './parsed.ts';
import type { Word } from './phrases.ts';

export interface Chosen {
  readonly found: Found[];
  readonly ruledOut: Found[];
  readonly alternatives: Found[][];
  readonly problems: Problem[];
  /** Facts of which only a guess was told. */
  readonly unsure: string[];
}

/** Numbers of which the lower one is taken when a message names two: the cold end. */
const LOWEST = new Set(['temperature_c']);

export function choose(
  mentions: readonly Mention[],
  words: readonly Word[],
  textOf: (from: number, to: number) => string,
  language: Language,
  facts: FactsView,
  /** Where "no wait" stands; what comes after it wins. */
  correctedAt: number | null,
): Chosen {
  const asFound = ({ fact, value, from, to, unit }: Mention): Found => ({
    fact,
    value,
    text: textOf(from, to),
    ...(unit ? { unit } : {}),
  });
  const chosen: Chosen = { found: [], ruledOut: [], alternatives: [], problems: [], unsure: [] };
  const byFact = new Map<string, Mention[]>();
  for (const mention of mentions) byFact.set(mention.fact, [...(byFact.get(mention.fact) ?? []), mention]);

  for (const [fact, all] of byFact) {
    const corrected =
      correctedAt === null ? [] : all.filter(({ from, denied }) => from >= correctedAt && !denied);
    const standing = corrected.length > 0 ? corrected : all;
    for (const mention of standing) if (mention.denied) chosen.ruledOut.push(asFound(mention));
    const said = standing.filter(({ denied, hedged }) => !denied && !hedged);
    const hedged = standing.filter((mention) => mention.hedged && !mention.denied);
    const kinds = said.filter(({ family }) => family === undefined);
    const families = said.filter(({ family }) => !kinds.some(({ value }) => family?.includes(String(value))));
    const open = families.filter(({ family }) => family !== undefined);
    const values = [...new Map(kinds.map((mention) => [mention.value, mention])).values()];
    const [only] = values;

    if (values.length + open.length > 1 && eitherOr([...values, ...open], words, language)) {
      const list = [...values, ...open].sort((a, b) => a.from - b.from);
      chosen.alternatives.push(
        list.flatMap((mention) =>
          (mention.family ?? [mention.value]).map((value) => asFound({ ...mention, value })),
        ),
      );
    } else if (values.length === 1 && only && open.length === 0) {
      chosen.found.push(asFound(only));
    } else if (values.length === 0 && open.length > 0) {
      openFamilies(open);
    } else if (values.length > 0) {
      const worst = worstOf(fact, values, facts);
      if (worst) chosen.found.push(asFound(worst));
      else conflict(fact, [...values, ...open]);
    }
    if (values.length + open.length === 0 && hedged.length > 0) chosen.unsure.push(fact);
  }
  return chosen;

  function openFamilies(open: readonly Mention[]): void {
    const [first] = open;
    if (!first) return;
    const shared = (first.family ?? []).filter((value) =>
      open.every(({ family }) => family?.includes(value)),
    );
    if (open.length > 1 && shared.length === 0) {
      conflict(first.fact, open);
      return;
    }
    const text = textOf(first.from, first.to);
    chosen.problems.push({ kind: 'ambiguous', fact: first.fact, value: first.value, text });
    chosen.alternatives.push((first.family ?? []).map((value) => asFound({ ...first, value })));
  }

  function conflict(fact: string, all: readonly Mention[]): void {
    const [first, second] = [...all].sort((a, b) => a.from - b.from);
    if (!first || !second) return;
    const detail = { first: first.value, second: second.value };
    const text = `${textOf(first.from, first.to)} / ${textOf(second.from, second.to)}`;
    chosen.problems.push({ kind: 'conflict', fact, text, detail });
  }
}

/** "316 or titanium", "epoxy vs polyester", "granite/gneiss", "compare …". */
function eitherOr(mentions: readonly Mention[], words: readonly Word[], language: Language): boolean {
  if (words.some((_, at) => language.compare.longest(words, at) !== null)) return true;
  const sorted = [...mentions].sort((a, b) => a.from - b.from);
  return sorted.slice(1).every((mention, index) => {
    const before = sorted[index];
    if (!before) return false;
    for (let at = before.to; at < mention.from; at++)
      if (words[at]?.text === '/' || language.either.longest(words, at) !== null) return true;
    return index > 0 && words.slice(before.to, mention.from).every(({ text }) => text === ',');
  });
}

/** Of an ordered fact the worst value stands for all; for others there is no worst. */
function worstOf(fact: string, values: readonly Mention[], facts: FactsView): Mention | null {
  const strong = values.filter(({ weak }) => weak !== true);
  if (strong.length === 1) return strong[0] ?? null;
  if (LOWEST.has(fact)) return values.reduce((a, b) => (b.value < a.value ? b : a));
  const definition = facts.facts.get(fact);
  const ranked = definition?.kind === 'choice' && (definition.ordered === true || fact === 'signs');
  if (!ranked) return null;
  const order = valuesOf(facts, fact);
  const rank = ({ value }: Mention): number => order.indexOf(String(value));
  return values.reduce((a, b) => (rank(b) < rank(a) ? b : a));
}
