/** What is asked: cues add up, and where a message only says "ok?", the facts tell. */
import type { Language } from './compile.ts';
import type { Mention } from './mention.ts';
import type { Word } from './phrases.ts';
import { findTogether } from './together.ts';
import {
  COMPARED,
  HIDES,
  IMPLIED,
  JUDGED,
  LOADS,
  PLACE,
  PRICES,
  RESULTS,
  TOLD,
  WHOLE,
} from './topic-tables.ts';

/** A sum below this is no topic. */
const ENOUGH = 3;
/** A second topic of its own needs a question as clear as these. */
const CLEAR = 6;
/** Words that tell a topic only together are never a clear question. */
const TOGETHER = 2;
/** What a cue counts that only names a number or a value. */
const NAMING = 1;

export interface TopicInput {
  readonly words: readonly Word[];
  /** Words that serve a correction: the "wait" of "no wait". */
  readonly spent: readonly boolean[];
  /** Words that name a number: "depth" in "depth 80". */
  readonly naming: readonly boolean[];
  readonly mentions: readonly Mention[];
  readonly language: Language;
  /** Facts that the message speaks of, sure or not, in any number. */
  readonly spokenOf: ReadonlySet<string>;
  /** Facts of which it names several values to choose from. */
  readonly compared: readonly string[];
  /** A row of loads was told. */
  readonly pulls: boolean;
  readonly corrected: boolean;
  readonly answering: boolean;
  readonly hasTopic: boolean;
}

export interface TopicResult {
  readonly topics: readonly string[];
  readonly sure: boolean;
  /** Some cue was there, even if it did not settle the topic. */
  readonly heard: boolean;
}

interface Tally {
  sum: number;
  clearest: number;
  first: number;
}

/** The cue would cut a value in two: the "glue" of "glue-ins". */
const cuts = (mentions: readonly Mention[], from: number, to: number): boolean =>
  mentions.some((value) => (value.from < from && from < value.to) || (value.from < to && to < value.to));

export function findTopics(input: TopicInput): TopicResult {
  const { words, language, spokenOf, mentions } = input;
  const tallies = new Map<string, Tally>();
  const best = (): number => Math.max(0, ...[...tallies.values()].map(({ sum }) => sum));
  const add = (topic: string, weight: number, at: number, clear = weight): void => {
    const tally = tallies.get(topic) ?? { sum: 0, clearest: 0, first: at };
    tally.sum += weight;
    if (clear > tally.clearest) {
      tally.clearest = clear;
      tally.first = at;
    }
    tallies.set(topic, tally);
  };
  const cues = new Map<string, { topic: string; from: number; weight: number }>();
  for (const { from, to, said } of language.topics.find(words)) {
    if (input.spent[from] || cuts(mentions, from, to)) continue;
    const naming = words.slice(from, to).every((_, index) => input.naming[from + index]);
    for (const cue of said) {
      const weight = naming ? Math.min(cue.weight, NAMING) : cue.weight;
      const key = `${cue.topic} ${from}`;
      if (weight > (cues.get(key)?.weight ?? 0)) cues.set(key, { topic: cue.topic, from, weight });
    }
  }
  for (const { topic, from, weight } of cues.values()) add(topic, weight, from);
  const named = mentions.filter(({ value }) => typeof value !== 'number');
  const counts = (from: number, to: number): boolean => !input.spent[from] && !cuts(named, from, to);
  const rules = language.vocabulary.together?.rules ?? [];
  for (const { topic, weight, from } of findTogether(words, language.together, rules, counts))
    add(topic, weight, from, Math.min(weight, TOGETHER));
  const heard = [...tallies.values()].some(({ clearest }) => clearest >= ENOUGH);
  const opens = (at: number): boolean =>
    at === 0 || words[at - 1]?.kind === 'mark' || (at === 1 && language.fillers.longest(words, 0)?.to === 1);
  const free = !input.answering && !input.corrected;
  for (const fact of input.compared) {
    const topic = COMPARED[fact];
    if (topic !== undefined && best() < CLEAR) add(topic, 4, words.length);
  }
  const judged = words.some((_, at) => language.judge.longest(words, at) !== null);
  const asked = words.some(
    ({ text }, at) => text === '?' || (opens(at) && language.asks.longest(words, at) !== null),
  );
  if (input.pulls || spokenOf.has('pulls_kn')) add('pulltest-result', 4, words.length);
  for (const [fact, topic] of Object.entries(TOLD))
    if (free && spokenOf.has(fact)) add(topic, CLEAR, words.length);
  // "304 for 6 euros and 316 for 9" weighs prices, whatever else is asked of the metals.
  const metals = new Set(
    mentions.flatMap(({ fact, value, denied }) => (fact === 'metal' && !denied ? value : [])),
  );
  if (free && metals.size > 1 && PRICES.some((fact) => spokenOf.has(fact))) add('cost', CLEAR, words.length);
  if (free && judged && WHOLE.some((facts) => facts.every((fact) => spokenOf.has(fact)))) {
    add('embedment', CLEAR + 1, words.length);
    if (!LOADS.some((fact) => spokenOf.has(fact))) tallies.delete('load');
  }
  if (free && (judged || (asked && best() < ENOUGH))) {
    const topic = JUDGED.find(([, facts]) => facts.every((fact) => spokenOf.has(fact)))?.[0];
    if (topic !== undefined && (judged || !input.hasTopic || topic === 'material'))
      add(topic, 3, words.length);
  }
  const clearest = (): number => Math.max(0, ...[...tallies.values()].map((tally) => tally.clearest));
  for (const [fact, topic] of Object.entries(IMPLIED))
    if (free && spokenOf.has(fact) && clearest() < ENOUGH) add(topic, 3, words.length);
  if (free && spokenOf.has('signs') && clearest() < CLEAR) add('inspect', 3, words.length);
  // Small talk tells nothing of a bolt: "gave way at 20, 23, 19 kN. how's that?"
  if (spokenOf.size > 0) tallies.delete('smalltalk');
  const placed = PLACE.filter((fact) => spokenOf.has(fact)).length;
  if (best() < ENOUGH && free && !input.hasTopic && placed > 1 && onlyPlace(spokenOf))
    add('material', 3, words.length);

  // "… gave way at 9, 11 and 10: throw them out?" is about the tests, unless the bolts show something.
  const tested = input.pulls || RESULTS.some((fact) => spokenOf.has(fact));
  if (tested && !spokenOf.has('signs') && (tallies.get('pulltest-result')?.sum ?? 0) >= ENOUGH)
    tallies.delete('inspect');
  // "… past its date, do I use it up, is there a risk?" is about the cartridge.
  if (spokenOf.has('cartridge') && ![...PRICES, 'signs'].some((fact) => spokenOf.has(fact)))
    for (const other of ['inspect', 'cost', 'cautions']) tallies.delete(other);
  // "Do upward holes need a special resin?": one word of one topic, and a question.
  const [only, ...others] = tallies;
  const question = words.some(({ text }) => text === '?') && spokenOf.size > 0;
  if (free && question && !input.hasTopic && only && others.length === 0 && best() === ENOUGH - 1)
    add(only[0], 1, words.length);
  for (const [topic, hidden] of Object.entries(HIDES))
    if ((tallies.get(topic)?.sum ?? 0) >= ENOUGH) for (const other of hidden) tallies.delete(other);
  const plain = !asked && !judged;
  // "Tension" as the answer to "which way?" asks nothing; only a clear question leaves the one that is open.
  const least = input.answering && plain ? CLEAR : ENOUGH;
  // Words that only touch a topic do not easily outweigh a question that names another.
  const weight = ({ sum, clearest }: Tally): number => sum + (clearest >= CLEAR ? 1.5 : 0);
  const ranked = [...tallies]
    .filter(([, { sum, clearest }]) => sum >= ENOUGH && (clearest >= least || !plain))
    .sort((a, b) => weight(b[1]) - weight(a[1]));
  const [top, second] = ranked;
  if (!top) return { topics: [], sure: false, heard };
  const clear = ranked.filter(([, tally]) => tally.clearest >= CLEAR);
  // What is asked in so many words wins over any number of nouns that only set the scene.
  const meant = clear.includes(top) || top[1].clearest < ENOUGH ? clear : [];
  const list = meant.length > 0 ? meant.toSorted((a, b) => a[1].first - b[1].first) : [top];
  const sure = top[1].sum > ENOUGH && (list.length > 1 || top[1].sum - (second?.[1].sum ?? 0) >= 2);
  return { topics: list.map(([topic]) => topic), sure, heard };
}

/** "Granite, 2 km from the sea" with nothing else can only be about what lasts there. */
const onlyPlace = (spokenOf: ReadonlySet<string>): boolean =>
  [...spokenOf].every((fact) => PLACE.includes(fact) || fact === 'rain_washed' || fact === 'coast');
