/** Words become facts: rocks, metals, places, uses, what the rock and the bolts look like. */
import { acrossLoads } from './across-loads.ts';
import type { Language, Saying } from './compile.ts';
import type { Mention } from './mention.ts';
import { standing } from './negation.ts';
import type { UnderstandContext } from './parsed.ts';
import type { Match, PhraseTree, Word } from './phrases.ts';

const NOUN_REACH = 7;

type Meant = Exclude<Saying, { kind: 'blocked' }>;

/** Names of metals are partly numbers: "304 m" and "304x20" are none. */
function isMeasure(match: Match<Saying>, words: readonly Word[], language: Language): boolean {
  if (match.to - match.from !== 1 || words[match.from]?.kind !== 'number') return false;
  const weak = language.weakUnits.longest(words, match.to, true) !== null;
  if (!weak && language.units.longest(words, match.to, true) !== null) return true;
  // "316 pra falésia" is no size in a language where "8 pra 80" is one.
  const by = language.by.longest(words, match.to, true);
  const before = words[match.from - 1];
  return (
    (by !== null && words[by.to]?.kind === 'number') || (before !== undefined && language.by.covers([before]))
  );
}

function isOutOfPlace(match: Match<Saying>, words: readonly Word[], language: Language): boolean {
  if (language.blockedNext.longest(words, match.to) !== null) return true;
  const said = words.slice(match.from, match.to);
  const near = [
    ...words.slice(Math.max(0, match.from - 2), match.from),
    ...words.slice(match.to, match.to + 2),
  ];
  return language.unless.some(
    (rule) => rule.say.covers(said) && near.some((_, at) => rule.near.longest(near, at)),
  );
}

function matches(words: readonly Word[], masked: readonly boolean[], language: Language, pending?: string) {
  const own: PhraseTree<Saying> | undefined =
    pending === undefined ? undefined : language.pending.get(pending);
  const found: Match<Meant>[] = [];
  for (let at = 0; at < words.length; ) {
    const common = words[at]?.glued || masked[at] ? null : language.values.longest(words, at);
    const answer = words[at]?.glued || masked[at] ? null : (own?.longest(words, at) ?? null);
    const match = answer && answer.to >= (common?.to ?? 0) ? answer : common;
    // "Via Mar de Pedra" is no route above the sea.
    const named = match !== null && words.slice(match.from, match.to).some((_, next) => masked[at + next]);
    if (match && !named && !isMeasure(match, words, language)) {
      const said = match.said.filter((saying) => saying.kind !== 'blocked');
      if (said.length === match.said.length && !isOutOfPlace(match, words, language))
        found.push({ ...match, said });
      at = match.to;
    } else at++;
  }
  return found;
}

interface Noun {
  readonly group: string;
  readonly from: number;
  readonly to: number;
}

function nounsIn(words: readonly Word[], found: readonly Match<Meant>[], language: Language): Noun[] {
  const nouns: Noun[] = language.nouns
    .all(words)
    .flatMap(({ from, to, said }) => said.map((group) => ({ group, from, to })));
  for (const [group, { facts }] of Object.entries(language.vocabulary.nouns))
    for (const { from, to, said } of found)
      if (said.some((saying) => saying.kind !== 'by-noun' && facts?.includes(saying.fact)))
        nouns.push({ group, from, to });
  return nouns;
}

/** The noun close by decides; on equal terms the one on the side where the language puts it. */
function byNoun(
  rule: Extract<Saying, { kind: 'by-noun' }>['rule'],
  at: Noun,
  nouns: readonly Noun[],
  words: readonly Word[],
  language: Language,
  pending?: string,
) {
  const [ahead, behind] = language.vocabulary.nounsFirst === true ? [0.5, 0] : [0, 0.5];
  const answer = rule.options.find((option) => option.fact === pending);
  if (answer) return answer;
  let best: { far: number; option: { fact: string; value: string } | undefined } = {
    far: NOUN_REACH,
    option: rule.otherwise,
  };
  for (const noun of nouns) {
    if (words[noun.from]?.sentence !== words[at.from]?.sentence) continue;
    const option = rule.options.find(({ near }) => near === noun.group);
    const far =
      noun.from >= at.to
        ? noun.from - at.to + ahead
        : at.from >= noun.to
          ? at.from - noun.to + behind
          : NOUN_REACH;
    // "The bolts are loose, sea cliff": a comma parts them.
    const [start, end] = noun.from >= at.to ? [at.to, noun.from] : [noun.to, at.from];
    const apart = far + (words.slice(start, end).some(({ text }) => text === ',') ? 1 : 0);
    if (option && apart < best.far) best = { far: apart, option };
  }
  return best.option;
}

export function readValues(
  words: readonly Word[],
  masked: readonly boolean[],
  spent: readonly boolean[],
  language: Language,
  context: UnderstandContext,
): Mention[] {
  const found = matches(words, masked, language, context.pending);
  const nouns = nounsIn(words, found, language);
  const denied: boolean[] = [];
  const mentions: Mention[] = [];
  for (const { from, to, said } of found) {
    const how = standing(words, from, language, spent, denied, to);
    if (how === 'denied') for (let at = from; at < to; at++) denied[at] = true;
    const mark =
      how === 'denied' ? { denied: true as const } : how === 'hedged' ? { hedged: true as const } : {};
    for (const saying of said) {
      if (saying.kind === 'family')
        mentions.push({ fact: saying.fact, value: saying.careful, from, to, family: saying.values, ...mark });
      else if (saying.kind === 'value')
        mentions.push({ fact: saying.fact, value: saying.value, from, to, ...mark });
      else {
        const option = byNoun(saying.rule, { group: '', from, to }, nouns, words, language, context.pending);
        if (option) mentions.push({ fact: option.fact, value: option.value, from, to, ...mark });
      }
    }
  }
  return otherMetals(withResults(mentions), nouns, words, language);

  /** "Drei haben sich bei 6 kN bewegt" tells of tests, and of no bolt that moves by itself. */
  function withResults(others: readonly Mention[]): Mention[] {
    const across = acrossLoads(words, language).filter(
      ({ from, to }) => standing(words, from, language, spent, denied, to) === 'said',
    );
    const apart = others.filter(
      (one) => !across.some(({ behind, to }) => one.from >= behind && one.to <= to),
    );
    const results = across.flatMap(({ behind, to, said }) =>
      said.flatMap((saying) =>
        saying.kind === 'value' ? [{ fact: saying.fact, value: saying.value, from: behind, to }] : [],
      ),
    );
    return [...apart, ...results];
  }
}

/** "A plated hanger on a 316 bolt": of two metals, the one of the fitting is the other metal. */
function otherMetals(
  mentions: readonly Mention[],
  nouns: readonly Noun[],
  words: readonly Word[],
  language: Language,
): Mention[] {
  // "Bolt A4, chain plated": a comma parts them.
  const beside = (from: number, to: number): boolean =>
    to - from < 2 && !words.slice(from, to).some(({ kind }) => kind === 'mark');
  const metals = mentions.filter(({ fact, denied }) => fact === 'metal' && !denied);
  const belongsTo = (wanted: string, mention: Mention): boolean =>
    nouns.some(
      ({ group, from, to }) =>
        group === wanted &&
        (language.vocabulary.nounsFirst === true
          ? to <= mention.to && beside(to, mention.from)
          : from >= mention.from && beside(mention.to, from)),
    );
  const isFitting = (mention: Mention): boolean => belongsTo('fitting', mention);
  const isHanger = (mention: Mention): boolean => belongsTo('hanger', mention);
  const isIn = (group: string, start: number, end: number): boolean =>
    nouns.some((noun) => noun.group === group && noun.from >= start && noun.to <= end);
  const fittingIn = (start: number, end: number): boolean => isIn('fitting', start, end);
  const boltIn = (start: number, end: number): boolean =>
    nouns.some(
      ({ group, from, to }) => group === 'bolt' && from >= start && to <= end && !isIn('fitting', from, to),
    );
  // "My bolt is 316, the hanger that touches it is plated": between two metals a fitting takes up the second.
  const [first, second] = metals;
  const takenUp =
    first !== undefined && second !== undefined && metals.length === 2 && fittingIn(first.to, second.from);
  // "The hangers are 304 but the bolts are plated".
  const toldFirst =
    first !== undefined &&
    second !== undefined &&
    metals.length === 2 &&
    fittingIn(0, first.from) &&
    !boltIn(0, first.from) &&
    boltIn(first.to, second.from);
  const named = metals.filter(isFitting);
  // "Plated links on 316 hangers": the hanger is the nearer to the bolt.
  const onHanger = named.length === 2 && metals.length === 2 ? named.filter((one) => !isHanger(one)) : named;
  const single = takenUp ? second : toldFirst ? first : undefined;
  const fittings = named.length === 0 && single !== undefined ? [single] : onHanger;
  // "Plated hangers, how long does the zinc last?" has one metal.
  const others = metals.filter(
    (metal) =>
      !fittings.includes(metal) &&
      !fittings.some(({ value }) => value === metal.value || metal.family?.includes(String(value)) === true),
  );
  if (fittings.length === 0 || others.length === 0) return [...mentions];
  return mentions.map((mention) =>
    fittings.includes(mention) ? { ...mention, fact: 'metal_other' } : mention,
  );
}
