/**
 * `npm run learn`: makes rules/leanings/<language>.json from the labelled messages, by multinomial logistic regression
 * with a fixed order and seed. What the rules guess is learned from written messages alone, to which nobody tunes the
 * vocabulary: on the others they are right by design, and would be trusted too much.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { loadVocabulary, makeUnderstand } from '../../src/dialogue/understand/index.ts';
import { featuresOf, guessFeatures, type Leaning } from '../../src/dialogue/understand/leaning.ts';
import { rules, rulesFolder } from '../support/desk.ts';

const codes = ['en', 'es', 'pt', 'fr', 'it', 'de'];
const folder = fileURLToPath(new URL('understand/', import.meta.url));
const rounds = 15;
const pull = 3;
const shrink = 1e-4;
const seldom = 2;
const smallest = 5;

interface Labelled {
  readonly say: string;
  readonly topic?: string | null;
  readonly context?: { readonly pending?: string; readonly topic?: string };
}
interface Example {
  readonly features: readonly string[];
  readonly topic: string;
}

/** Facts and guesses mean the same in every language; words do not. */
const isShared = (feature: string): boolean => /^(fact|doubt|rule|sure) /.test(feature);

async function examplesOf(code: string): Promise<Example[]> {
  const understand = makeUnderstand([await loadVocabulary(`${rulesFolder}/vocabulary/${code}.json`)], rules);
  const place = code === 'en' ? folder : `${folder}${code}/`;
  const files = readdirSync(place)
    .filter((name) => /^(messages|topics).*\.json$/.test(name))
    .toSorted();
  return files.flatMap((file) => {
    const { cases } = JSON.parse(readFileSync(`${place}${file}`, 'utf8')) as { cases: readonly Labelled[] };
    return cases.flatMap(({ say, topic, context = {} }) => {
      if (topic === undefined) return [];
      const parsed = understand(say, { language: code, ...context });
      const own = featuresOf(say, parsed);
      const features = file.startsWith('topics') ? [...own, ...guessFeatures(parsed)] : own;
      return [
        {
          features: features.map((feature) => (isShared(feature) ? feature : `${code}:${feature}`)),
          topic: topic ?? 'null',
        },
      ];
    });
  });
}

const examples = (await Promise.all(codes.map(examplesOf))).flat();
const topics = [...new Set(examples.map(({ topic }) => topic))].toSorted();
const counts = new Map<string, number>();
for (const { features } of examples)
  for (const feature of features) counts.set(feature, (counts.get(feature) ?? 0) + 1);
const places = new Map(
  [...counts].filter(([, count]) => count >= seldom).map(([feature], at) => [feature, at]),
);
const weights = new Float64Array(places.size * topics.length);
const bias = new Float64Array(topics.length);

/** Lehmer's generator (MINSTD): the same order on every machine. */
let seed = 1;
const random = (): number => {
  seed = (seed * 48_271) % 2_147_483_647;
  return seed / 2_147_483_647;
};

function step({ features, topic }: Example, rate: number): void {
  const known = features.flatMap((feature) => places.get(feature) ?? []);
  const each = 1 / Math.sqrt(Math.max(1, known.length));
  const sums = topics.map(
    (_, at) =>
      (bias[at] ?? 0) +
      known.reduce((sum, place) => sum + (weights[place * topics.length + at] ?? 0) * each, 0),
  );
  const top = Math.max(...sums);
  const odds = sums.map((sum) => Math.exp(sum - top));
  const all = odds.reduce((sum, one) => sum + one, 0);
  for (const [at, name] of topics.entries()) {
    const slope = (odds[at] ?? 0) / all - (name === topic ? 1 : 0);
    bias[at] = (bias[at] ?? 0) - 0.05 * rate * slope;
    for (const place of known) {
      const index = place * topics.length + at;
      weights[index] = (weights[index] ?? 0) - rate * (slope * each + shrink * (weights[index] ?? 0));
    }
  }
}

for (let round = 0; round < rounds; round++) {
  const order = examples.map((one) => ({ one, at: random() })).toSorted((a, b) => a.at - b.at);
  for (const { one } of order) step(one, pull / (1 + round / 2));
}

const hundredths = (value: number): number => Math.round(value * 100);
mkdirSync(`${rulesFolder}/leanings`, { recursive: true });
for (const code of codes) {
  const rows: Record<string, number[]> = {};
  for (const [feature, place] of [...places].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    const shared = isShared(feature);
    if (!shared && !feature.startsWith(`${code}:`)) continue;
    const row = topics.flatMap((_, at) => {
      const weight = hundredths(weights[place * topics.length + at] ?? 0);
      return Math.abs(weight) < smallest ? [] : [at, weight];
    });
    if (row.length > 0) rows[shared ? feature : feature.slice(code.length + 1)] = row;
  }
  const leaning: Leaning = {
    about:
      'Made by `npm run learn`: how far each piece of a word (its stem, pairs of stems, four letters after ~), each fact told and the guess of the rules lean towards a topic, in hundredths.',
    topics,
    bias: [...bias].map(hundredths),
    weights: rows,
  };
  const lines = Object.entries(rows).map(
    ([feature, row]) => `    ${JSON.stringify(feature)}: [${row.join(', ')}]`,
  );
  const { weights: _, ...head } = leaning;
  const text = `${JSON.stringify(head, null, 2).slice(0, -2)},\n  "weights": {\n${lines.join(',\n')}\n  }\n}\n`;
  writeFileSync(`${rulesFolder}/leanings/${code}.json`, text);
  console.log(`${code}: ${lines.length} features, ${Math.round(text.length / 1024)} kB`);
}
console.log(`${examples.length} messages, ${topics.length} topics`);
