/**
 * What a message is about, where no rule says it outright: each piece of a word, each fact told and the rule's own
 * guess lean towards topics with a weight from a table, and the largest sum wins. The table is made by `npm run learn`
 * from messages that people labelled; it is data like the word lists, the same answer every time.
 */
import { z } from 'zod';
import { plain } from '../../units/plain.ts';
import type { Parsed } from './parsed.ts';

export const leaningSchema = z.strictObject({
  about: z.string(),
  /** What a message may be about; "null": it only tells facts, "unknown": nothing of ours. */
  topics: z.array(z.string()).min(2),
  bias: z.array(z.number().int()),
  /** For each feature: topic, weight, topic, weight, … in hundredths. */
  weights: z.record(z.string(), z.array(z.number().int())),
});

export type Leaning = z.infer<typeof leaningSchema>;

/** So much of a message tells what it is about. */
const most = 1000;
const pieceLength = 4;
const scale = 100;

/** Numbers are all alike; a question mark counts. */
const wordsOf = (text: string): string[] =>
  plain(text.slice(0, most))
    .replaceAll(/\d+(?:[.,]\d+)?/g, ' # ')
    .match(/[\p{L}']+|#|\?/gu) ?? [];

/** Endings differ by case, number and mood. */
const stem = (word: string): string =>
  word.length > 6 ? word.slice(0, 6) : word.length > 4 ? word.slice(0, -1) : word;

function pieces(word: string): string[] {
  if (word.length < pieceLength) return [];
  const marked = `^${word}$`;
  return Array.from({ length: marked.length - pieceLength + 1 }, (_, at) =>
    marked.slice(at, at + pieceLength),
  );
}

/** What of a message leans anywhere, but for the rule's guess. */
export function featuresOf(text: string, { found, problems }: Pick<Parsed, 'found' | 'problems'>): string[] {
  const words = wordsOf(text);
  const stems = words.map(stem);
  const pairs = stems.slice(1).map((word, at) => `${stems[at]} ${word}`);
  const facts = [
    ...found.map(({ fact }) => `fact ${fact}`),
    ...problems.map(({ fact }) => `doubt ${fact ?? 'none'}`),
  ];
  return [
    ...new Set([
      ...stems,
      ...pairs,
      ...words.flatMap((word) => pieces(word).map((piece) => `~${piece}`)),
      ...facts,
    ]),
  ];
}

export const guessFeatures = ({ topic, topicSure }: Pick<Parsed, 'topic' | 'topicSure'>): string[] => [
  `rule ${topic ?? 'null'}`,
  ...(topicSure ? [`sure ${topic ?? 'null'}`] : []),
];

export interface Lean {
  readonly topic: string;
  /** From 0 to 1; how far it is ahead of all others together. */
  readonly share: number;
}

/** The topics from the likeliest on. */
export function leans({ topics, bias, weights }: Leaning, features: readonly string[]): readonly Lean[] {
  const known = features.flatMap((feature) =>
    Object.hasOwn(weights, feature) ? [weights[feature] ?? []] : [],
  );
  const each = 1 / Math.sqrt(Math.max(1, known.length));
  const sums = bias.map((one) => one / scale);
  for (const row of known)
    for (let at = 0; at < row.length; at += 2) {
      const topic = row[at] ?? 0;
      sums[topic] = (sums[topic] ?? 0) + ((row[at + 1] ?? 0) / scale) * each;
    }
  const top = Math.max(...sums);
  const odds = sums.map((sum) => Math.exp(sum - top));
  const all = odds.reduce((sum, one) => sum + one, 0);
  return topics
    .map((topic, at) => ({ topic, share: (odds[at] ?? 0) / all }))
    .toSorted((a, b) => b.share - a.share);
}

/** Decided by rules alone: danger, refusals, reasons. */
const ruled = new Set(['emergency', 'refuse', 'why']);
/** A cry for help may come in words that no list has. */
const alarming = 0.6;

/** The message with the topic that it leans to. */
export function leaned(leaning: Leaning, text: string, parsed: Parsed, answering: boolean): Parsed {
  const { topic, topics, act } = parsed;
  if (topic !== null && ruled.has(topic)) return parsed;
  if (answering && topic !== 'unknown') return parsed;
  if (act !== 'ask' && act !== 'thanks' && act !== 'correction') return parsed;
  const order = leans(leaning, [...featuresOf(text, parsed), ...guessFeatures(parsed)]);
  const [first] = order;
  if (first?.topic === 'emergency' && first.share >= alarming)
    return { ...parsed, act: 'ask', topic: 'emergency', topics: ['emergency'], topicSure: false, found: [] };
  // A refusal needs to know what is refused, and that only a rule can tell.
  const best = order.find((one) => one.topic !== 'refuse' && one.topic !== 'emergency')?.topic;
  if (best === undefined || best === (topic ?? 'null')) return parsed;
  const tells = parsed.found.length + parsed.problems.length > 0;
  switch (best) {
    case 'null':
      return tells ? { ...parsed, topic: null, topics: [], topicSure: false } : parsed;
    case 'unknown':
      return tells ? parsed : { ...parsed, topic: 'unknown', topics: [], topicSure: false };
    case 'help':
      return tells ? parsed : { ...parsed, act: 'help', topic: 'help', topics: ['help'], topicSure: false };
    case 'smalltalk':
      return tells ? parsed : { ...parsed, topic: 'smalltalk', topics: ['smalltalk'], topicSure: false };
    default: {
      const others = topics.slice(1).filter((one) => one !== best);
      return { ...parsed, topic: best, topics: [best, ...others], topicSure: false };
    }
  }
}
