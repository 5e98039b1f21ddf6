/** One message read with one language: words, values, numbers, and what they come to. */
import { type Heard, hear, unknownFacts } from './acts.ts';
import { type Chosen, choose } from './choose.ts';
import { combineFound } from './combine.ts';
import type { Language } from './compile.ts';
import type { FactsView } from './facts-view.ts';
import { ignoredSpans } from './ignored.ts';
import { readMeasures } from './measured.ts';
import type { Mention } from './mention.ts';
import { maskNames } from './names.ts';
import { normalise } from './normalise.ts';
import type { Found, Problem, UnderstandContext } from './parsed.ts';
import type { Word } from './phrases.ts';
import { pricedPounds } from './pounds.ts';
import { readQuantities } from './quantities.ts';
import { refineMentions } from './refine.ts';
import { type Item, joinSizes } from './sizes.ts';
import { tokenise } from './tokens.ts';
import { readValues } from './values.ts';
import { toWords } from './words.ts';

export interface Reading {
  readonly clean: string;
  readonly words: readonly Word[];
  readonly heard: Heard;
  readonly items: readonly Item[];
  readonly mentions: readonly Mention[];
  /** Words that name a number. */
  readonly naming: readonly boolean[];
  readonly chosen: Chosen;
  readonly found: readonly Found[];
  readonly requests: readonly Found[];
  readonly problems: readonly Problem[];
  readonly unknownFacts: readonly string[];
  /** Facts that the message speaks of, sure or not. */
  readonly spokenOf: ReadonlySet<string>;
  /** Words that turn over what was said before. */
  readonly corrects: boolean;
}

export function read(
  language: Language,
  facts: FactsView,
  text: string,
  context: UnderstandContext,
): Reading {
  const clean = normalise(text);
  const words = toWords(tokenise(clean, ignoredSpans(clean), language.elisions), language);
  const textOf = (from: number, to: number): string => clean.slice(words[from]?.start, words[to - 1]?.end);
  const heard = hear(words, language);
  const values = readValues(words, maskNames(words, language), heard.spent, language, context);
  const refined = refineMentions(values, words, language, heard.spent);
  const quantities = readQuantities(words, numbersIn(refined, words), language);
  const items = joinSizes(pricedPounds(quantities, words, language), words, language);
  const measured = readMeasures(items, words, textOf, language, refined, facts, context, heard);

  const mentions = [...refined, ...measured.mentions].sort((a, b) => a.from - b.from);
  const correctedAt = heard.correctedAt ?? (heard.acts.has('no') && mentions.length > 0 ? 0 : null);
  const chosen = choose(mentions, words, textOf, language, facts, correctedAt);
  const requests = language.requests
    .find(words)
    .flatMap(({ from, to, said }) =>
      said.map((value) => ({ fact: 'request', value, text: textOf(from, to) })),
    );
  const problems = [...measured.problems, ...chosen.problems];
  const standing = mentions.filter(({ denied }) => !denied);
  return {
    clean,
    words,
    heard,
    items,
    mentions,
    naming: measured.naming,
    chosen,
    found: combineFound([...results(chosen.found), ...requests.slice(0, 1)], words, language),
    requests,
    problems,
    unknownFacts: [...new Set([...unknownFacts(words, language, context.pending), ...chosen.unsure])],
    spokenOf: new Set([...standing, ...problems].flatMap(({ fact }) => fact ?? [])),
    corrects: correctedAt !== null,
  };
}

/** "Three broke at 18, 21, 24 in tension" tells of pulls to failure: of no proof tests, no load, no bolts that broke in use. */
function results(found: readonly Found[]): readonly Found[] {
  const pulls = found.some(({ fact }) => fact === 'pulls_kn');
  return pulls
    ? found.filter(({ fact }) => !['proof_tests', 'load_direction', 'bolt_history'].includes(fact))
    : found;
}

/** Words of values that are partly numbers ("316", "grade 2"): they are no quantities. */
function numbersIn(mentions: readonly Mention[], words: readonly Word[]): boolean[] {
  const taken: boolean[] = [];
  for (const { from, to } of mentions)
    if (words.slice(from, to).some(({ kind }) => kind === 'number'))
      for (let at = from; at < to; at++) taken[at] = true;
  return taken;
}
