/** A vocabulary made ready: every phrase in its tree, every word in the list that spelling is corrected by. */
import { makeSplitter } from './compounds.ts';
import { Cues } from './cues.ts';
import { type FactsView, valuesOf } from './facts-view.ts';
import { fold, normalise } from './normalise.ts';
import { PhraseTree } from './phrases.ts';
import { type Token, tokenise } from './tokens.ts';
import { type KnownWord, makeCorrector } from './typo.ts';
import type { Vocabulary } from './vocabulary.ts';

export type Saying =
  | { readonly kind: 'value'; readonly fact: string; readonly value: string }
  | {
      readonly kind: 'family';
      readonly fact: string;
      readonly values: readonly string[];
      readonly careful: string;
    }
  | { readonly kind: 'by-noun'; readonly rule: Vocabulary['byNoun'][number] }
  | { readonly kind: 'blocked' };

export interface RoleCue {
  readonly role: string;
  readonly side: 'before' | 'beforeUnit' | 'after' | 'afterUnit';
  /** Added to its distance: it may as well belong to another fact. */
  readonly doubt: number;
}

export interface ActCue {
  readonly act: string;
  readonly where: 'whole' | 'lead' | 'anywhere';
}

export type Language = ReturnType<typeof compile>;

export function compile(vocabulary: Vocabulary, facts: FactsView) {
  const articles = new Set(vocabulary.articles);
  const elisions = new Set(vocabulary.elisions);
  const meanings = new Map<string, Set<string>>();
  const read = (text: string, meaning: string): Token[] => {
    const tokens = tokenise(normalise(text), [], elisions);
    for (const token of tokens) {
      if (token.kind !== 'word') continue;
      const known = meanings.get(token.text) ?? new Set();
      meanings.set(token.text, known.add(meaning));
    }
    return tokens;
  };
  const tree = <T>(
    phrases: readonly string[] | undefined,
    said: T,
    meaning: string,
    into = new PhraseTree<T>(articles),
  ) => {
    for (const text of phrases ?? []) {
      const tokens = read(text, meaning);
      into.add(tokens, said);
      const bare = tokens.filter((token, index) => index === 0 || !articles.has(token.text));
      if (bare.length > 1 && bare.length < tokens.length) into.add(bare, said);
      const joined = tokens.every((token) => token.kind === 'word') ? joinedForm(tokens) : null;
      if (joined !== null && meaning.startsWith('value')) into.add(read(joined, meaning), said);
    }
    return into;
  };
  const set = (phrases: readonly string[] | undefined, meaning: string) => tree<true>(phrases, true, meaning);
  const cues = <T>(phrases: readonly string[], said: T, meaning: string, into = new Cues<T>(articles)) => {
    for (const text of phrases) into.add(read(text, meaning), said);
    return into;
  };

  const values = new PhraseTree<Saying>(articles);
  const pending = new Map<string, PhraseTree<Saying>>();
  const own = (fact: string) => {
    const known = pending.get(fact) ?? new PhraseTree<Saying>(articles);
    pending.set(fact, known);
    return known;
  };
  for (const [fact, byValue] of Object.entries(vocabulary.values))
    for (const [value, phrases] of Object.entries(byValue))
      tree(phrases, { kind: 'value', fact, value }, `value ${fact} ${value}`, values);
  for (const [fact, byValue] of Object.entries(vocabulary.pendingOnly))
    for (const [value, phrases] of Object.entries(byValue))
      tree(phrases, { kind: 'value', fact, value }, `value ${fact} ${value}`, own(fact));
  for (const fact of facts.facts.keys())
    for (const value of valuesOf(facts, fact)) {
      const said = { kind: 'value', fact, value } as const;
      own(fact).add(tokenise(value.replaceAll('-', ' ')), said);
      own(fact).add(tokenise(value), said);
    }
  for (const { fact, values: kinds, careful, say } of vocabulary.families)
    tree(say, { kind: 'family', fact, values: kinds, careful }, `value ${fact} ${careful}`, values);
  for (const rule of vocabulary.byNoun)
    tree(rule.say, { kind: 'by-noun', rule }, `value ${rule.say[0]}`, values);
  tree(vocabulary.blocked, { kind: 'blocked' }, 'blocked', values);

  const nouns = new PhraseTree<string>(articles);
  for (const [group, { say }] of Object.entries(vocabulary.nouns)) tree(say, group, `noun ${group}`, nouns);
  const factNames = new PhraseTree<string>(articles);
  for (const [fact, say] of Object.entries(vocabulary.factNames)) tree(say, fact, `name ${fact}`, factNames);
  const units = new PhraseTree<string>(articles);
  for (const [unit, say] of Object.entries(vocabulary.units)) tree(say, unit, `unit ${unit}`, units);
  const roles = new PhraseTree<RoleCue>(articles);
  const onlyWith = new Map<string, PhraseTree<true>>();
  for (const [role, sides] of Object.entries(vocabulary.roles)) {
    for (const side of ['before', 'beforeUnit', 'after', 'afterUnit'] as const)
      tree(sides[side], { role, side, doubt: sides.doubt ?? 0 }, `role ${role}`, roles);
    if (sides.onlyWith) onlyWith.set(role, set(sides.onlyWith, `with ${role}`));
  }
  const topics = new Cues<{ topic: string; weight: number }>(articles);
  for (const [topic, byWeight] of Object.entries(vocabulary.topics))
    for (const [weight, say] of Object.entries(byWeight))
      cues(say, { topic, weight: Number(weight) }, `topic ${topic}`, topics);
  const together = new PhraseTree<string>(articles);
  for (const [group, say] of Object.entries(vocabulary.together?.groups ?? {}))
    tree(say, group, `group ${group}`, together);
  const requests = new Cues<string>(articles);
  for (const [request, say] of Object.entries(vocabulary.requests))
    cues(say, request, `request ${request}`, requests);
  const acts = new PhraseTree<ActCue>(articles);
  for (const [act, places] of Object.entries(vocabulary.acts))
    for (const where of ['whole', 'lead', 'anywhere'] as const)
      tree(places[where], { act, where }, `act ${act}`, acts);

  const periods = new PhraseTree<{ daysBack: number; until: number }>(articles);
  for (const { say, ...when } of vocabulary.periods) tree(say, when, 'period', periods);
  const temperatures = new PhraseTree<number>(articles);
  for (const { say, celsius } of vocabulary.temperatures) tree(say, celsius, 'temperature', temperatures);

  const { numbers, negation } = vocabulary;
  const numberWords = new PhraseTree<number>(articles);
  for (const [word, value] of Object.entries(numbers.words))
    numberWords.add(read(word, `number ${word}`), value);
  const trees = {
    values,
    pending,
    nouns,
    factNames,
    units,
    weakUnits: set(vocabulary.weakUnits, 'weak'),
    weakNext: set(vocabulary.weakNext, 'weak'),
    grade: set(numbers.grade, 'grade'),
    roles,
    onlyWith,
    topics,
    together,
    requests,
    acts,
    emergency: cues(vocabulary.emergency, true, 'emergency'),
    urgent: set(vocabulary.urgent, 'emergency'),
    notEmergency: set(vocabulary.notEmergency, 'not emergency'),
    judge: set(vocabulary.judge, 'judge'),
    asks: set(vocabulary.asks, 'asks'),
    breaks: set(vocabulary.breaks, 'break'),
    parting: set(vocabulary.parting, 'break'),
    either: set(vocabulary.either, 'either'),
    compare: set(vocabulary.compare, 'compare'),
    smalltalk: set(vocabulary.smalltalk, 'smalltalk'),
    stopped: set(vocabulary.results?.stopped, 'results'),
    failed: set(vocabulary.results?.failed, 'results'),
    priced: set(vocabulary.priced?.near, 'priced'),
    weighed: set(vocabulary.priced?.unless, 'priced'),
    angled: set(vocabulary.angled, 'angle'),
    timed: set(vocabulary.timed, 'timed'),
    having: set(vocabulary.having, 'having'),
    sheet: set(vocabulary.sheet, 'sheet'),
    plural: set(vocabulary.plural, 'plural'),
    fillers: set(vocabulary.fillers, 'filler'),
    blockedNext: set(vocabulary.blockedNext, 'blocked'),
    hedges: set(vocabulary.hedges, 'hedge'),
    dontKnow: set(vocabulary.dontKnow, "don't know"),
    named: set(vocabulary.named, 'named'),
    not: set(negation.before, 'not'),
    notList: set(negation.list, 'not'),
    notStop: set(negation.stop, 'not'),
    notAfter: set(negation.after, 'not'),
    hedgesAfter: set(vocabulary.hedgesAfter, 'hedge'),
    link: set(numbers.link, 'number'),
    one: set(numbers.one, 'number'),
    and: set(numbers.and, 'number'),
    range: set(numbers.range, 'number'),
    between: set(numbers.between, 'number'),
    by: set(numbers.by, 'number'),
    byWeak: set(numbers.byWeak, 'number'),
    from: set(numbers.from, 'number'),
    to: set(numbers.to, 'number'),
    half: set(numbers.half, 'number'),
    minus: set(numbers.minus, 'number'),
    below: set(numbers.below, 'number'),
    thread: set(numbers.thread, 'number'),
    list: set(numbers.list, 'number'),
    atLeast: set(vocabulary.comparators.atLeast, 'at least'),
    atMost: set(vocabulary.comparators.atMost, 'at most'),
    numberWords,
    ordinals: set(numbers.ordinals, 'number'),
    partWords: new Map(Object.entries(numbers.parts)),
    refine: vocabulary.refine.map((rule) => {
      const by = new PhraseTree<string>(articles);
      for (const [value, say] of Object.entries(rule.by)) tree(say, value, `refine ${value}`, by);
      return { ...rule, by, unlessNext: set(rule.unlessNext, 'refine') };
    }),
    combine: vocabulary.combine.map((rule) => ({ ...rule, where: rule.where && set(rule.where, 'combine') })),
    unless: vocabulary.unless.map((rule) => ({ say: set(rule.say, 'unless'), near: set(rule.near, 'near') })),
    setAgo: set(vocabulary.setAgo, 'since'),
    periods,
    temperatures,
  };
  for (const word of trees.partWords.keys()) read(word, `number ${word}`);
  const variants = readVariants(vocabulary.variants, meanings);
  const known: KnownWord[] = [...meanings].map(([word, places]) => ({
    word,
    meaning: [...places].sort().join('|'),
    guarded: [...places].some((place) => place.startsWith('value')),
  }));
  const ordinary = new Set(vocabulary.ordinary.flatMap((line) => fold(line).split(' ')));
  const parts = new Set(vocabulary.compounds?.parts.map(fold));
  return {
    ...trees,
    vocabulary,
    elisions,
    /** The other forms of a word. */
    variantsOf: (word: string): readonly string[] => variants.get(word) ?? [],
    /** Stands in a phrase. */
    means: (word: string) => meanings.has(word),
    isKnown: (word: string) => meanings.has(word) || ordinary.has(word) || parts.has(word),
    split: makeSplitter(vocabulary.compounds, vocabulary.endings),
    abbreviations: new Set(vocabulary.abbreviations.map(fold)),
    correct: makeCorrector(known),
  };
}

/** "seacliff" for "sea cliff"; short ones could be a word of their own. */
function joinedForm(tokens: readonly Token[]): string | null {
  const joined = tokens.map((token) => token.text).join('');
  return tokens.length > 1 && tokens.length < 4 && joined.length >= 7 ? joined : null;
}

/** Every form of a word has the meanings of all of them. */
function readVariants(lines: readonly string[], meanings: Map<string, Set<string>>): Map<string, string[]> {
  const variants = new Map<string, string[]>();
  for (const line of lines) {
    const words = line.split(' ').map(fold);
    const said = words.flatMap((word) => [...(meanings.get(word) ?? [])]);
    for (const word of words) {
      if (said.length > 0) meanings.set(word, new Set([...(meanings.get(word) ?? []), ...said]));
      variants.set(word, [...(variants.get(word) ?? []), ...words.filter((other) => other !== word)]);
    }
  }
  return variants;
}
