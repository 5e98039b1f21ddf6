/** What is asked: cues add up, and where a message only says "ok?", the facts tell. */
import type { Language } from './compile.ts';
import type { Word } from './phrases.ts';

/** A sum below this is no topic. */
const ENOUGH = 3;
/** A second topic of its own needs cues as clear as these. */
const CLEAR = 4;

/** "10x80 in granite, ok?": the first fact of this row that was said gives the topic. */
const JUDGED: readonly (readonly [topic: string, facts: readonly string[]])[] = [
  ['spacing', ['spacing_mm', 'edge_distance_mm']],
  ['coating-life', ['coating_um']],
  ['embedment', ['diameter_mm', 'length_mm', 'embedment_mm']],
  ['inspect', ['signs']],
  ['cure', ['hours_since']],
  ['adhesive', ['adhesive']],
  ['load', ['load_kn', 'fall_factor', 'tension_kn']],
  ['material', ['metal', 'metal_other']],
  ['anchor', ['anchor']],
  ['adhesive', ['hole_moisture', 'temperature_c', 'overhead']],
  ['hole', ['hole_diameter_mm']],
  ['material', ['environment', 'sea_distance_m', 'climate', 'rain_washed', 'rock']],
];
const COMPARED: Readonly<Record<string, string>> = {
  metal: 'material',
  adhesive: 'adhesive',
  anchor: 'anchor',
};
/** Where the first is asked, words of the others only belong to it: "remind me to check the belay". */
const HIDES: Readonly<Record<string, readonly string[]>> = {
  'pulltest-record': ['pulltest-plan', 'pulltest-result', 'load', 'register', 'inspect'],
  'pulltest-result': ['pulltest-plan', 'load'],
  'pulltest-plan': ['load'],
  compare: ['pulltest-plan', 'pulltest-result', 'load'],
  'coating-life': ['material', 'inspect'],
  cost: ['material', 'coating-life', 'adhesive', 'anchor'],
  remind: ['inspect', 'cure', 'material', 'register', 'cost'],
  register: ['inspect', 'material'],
  settings: ['adhesive', 'material', 'hole'],
};
const PLACE = ['environment', 'sea_distance_m', 'climate', 'rock'];

export interface TopicInput {
  readonly words: readonly Word[];
  /** Words that serve a correction: the "wait" of "no wait". */
  readonly spent: readonly boolean[];
  readonly language: Language;
  /** Facts that the message speaks of, sure or not, in any number. */
  readonly spokenOf: ReadonlySet<string>;
  /** Facts for which it names several values to choose from. */
  readonly compared: readonly string[];
  readonly corrected: boolean;
  readonly answering: boolean;
  readonly hasTopic: boolean;
}

export interface TopicResult {
  readonly topics: readonly string[];
  readonly sure: boolean;
  /** Some cue was there, even if too weak. */
  readonly heard: boolean;
}

interface Tally {
  sum: number;
  clearest: number;
  first: number;
}

export function findTopics(input: TopicInput): TopicResult {
  const { words, language, spokenOf } = input;
  const tallies = new Map<string, Tally>();
  const add = (topic: string, weight: number, at: number): void => {
    const tally = tallies.get(topic) ?? { sum: 0, clearest: 0, first: at };
    tally.sum += weight;
    if (weight > tally.clearest) {
      tally.clearest = weight;
      tally.first = at;
    }
    tallies.set(topic, tally);
  };
  const seen = new Set<string>();
  for (const { from, said } of language.topics.find(words)) {
    if (input.spent[from]) continue;
    for (const { topic, weight } of said) {
      const key = `${topic} ${from} ${weight}`;
      if (!seen.has(key)) add(topic, weight, from);
      seen.add(key);
    }
  }
  const heard = tallies.size > 0;
  for (const fact of input.compared) {
    const topic = COMPARED[fact];
    if (topic !== undefined) add(topic, 4, words.length);
  }
  const judged = words.some((_, at) => language.judge.longest(words, at) !== null);
  const asked = words.some(({ text }) => text === '?');
  if (judged || asked) {
    const topic = JUDGED.find(([, facts]) => facts.some((fact) => spokenOf.has(fact)))?.[0];
    const bare = PLACE.some((fact) => spokenOf.has(fact)) && topic === 'material';
    if (topic !== undefined && (judged || bare || !input.hasTopic) && !input.answering && !input.corrected)
      add(topic, judged ? 3 : best(tallies) === 0 ? 3 : 0, words.length);
  }
  const place = PLACE.filter((fact) => spokenOf.has(fact)).length;
  const free = !input.answering && !input.corrected && !input.hasTopic;
  if (best(tallies) < ENOUGH && free && place > 1) add('material', 3, words.length);

  for (const [topic, hidden] of Object.entries(HIDES))
    if ((tallies.get(topic)?.sum ?? 0) >= ENOUGH) for (const other of hidden) tallies.delete(other);
  const ranked = [...tallies].filter(([, { sum }]) => sum >= ENOUGH).sort((a, b) => b[1].sum - a[1].sum);
  const [top, second] = ranked;
  if (!top) return { topics: [], sure: false, heard };
  const asClear = ranked.filter(([, tally]) => tally.clearest >= CLEAR && tally.sum >= 0.6 * top[1].sum);
  const list = asClear.length > 1 ? asClear.sort((a, b) => a[1].first - b[1].first) : [top];
  const sure = top[1].sum >= CLEAR && (list.length > 1 || top[1].sum - (second?.[1].sum ?? 0) >= 2);
  return { topics: list.map(([topic]) => topic), sure, heard };
}

const best = (tallies: ReadonlyMap<string, Tally>): number =>
  Math.max(0, ...[...tallies.values()].map(({ sum }) => sum));
