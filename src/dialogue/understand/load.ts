import { readFile } from 'node:fs/promises';
import type { z } from 'zod';
import type { FactsView } from './facts-view.ts';
import { valuesOf } from './facts-view.ts';
import { type Leaning, leaningSchema } from './leaning.ts';
import { type Vocabulary, vocabularySchema } from './vocabulary.ts';

/** A vocabulary file that cannot be used, with every fault named. */
export class VocabularyError extends Error {
  override readonly name = 'VocabularyError';
  constructor(
    readonly path: string,
    readonly faults: readonly string[],
  ) {
    super(`${path}: ${faults.join('; ')}`);
  }
}

async function load<T>(path: string, schema: z.ZodType<T>): Promise<T> {
  const text = await readFile(path, 'utf8');
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch (error) {
    throw new VocabularyError(path, [error instanceof Error ? error.message : String(error)]);
  }
  const parsed = schema.safeParse(content);
  if (parsed.success) return parsed.data;
  throw new VocabularyError(
    path,
    parsed.error.issues.map((issue) => `${issue.path.join('.') || 'file'}: ${issue.message}`),
  );
}

export const loadVocabulary = (path: string): Promise<Vocabulary> => load(path, vocabularySchema);
export const loadLeaning = (path: string): Promise<Leaning> => load(path, leaningSchema);

/** Facts and values that the vocabulary names and the rules do not have. */
export function strayWords(vocabulary: Vocabulary, facts: FactsView): string[] {
  const stray: string[] = [];
  const check = (fact: string, value: string): void => {
    if (!valuesOf(facts, fact).includes(value)) stray.push(`${fact} ${value}`);
  };
  for (const group of [vocabulary.values, vocabulary.pendingOnly])
    for (const [fact, byValue] of Object.entries(group))
      for (const value of Object.keys(byValue)) check(fact, value);
  for (const { fact, values, careful } of vocabulary.families)
    for (const value of [...values, careful]) check(fact, value);
  for (const { options, otherwise } of vocabulary.byNoun)
    for (const { fact, value } of otherwise ? [...options, otherwise] : options) check(fact, value);
  for (const { fact, of, by } of vocabulary.refine)
    for (const value of [of, ...Object.keys(by)]) check(fact, value);
  for (const { when, gives } of vocabulary.combine)
    for (const [fact, value] of [...Object.entries(when), ...Object.entries(gives)]) check(fact, value);
  for (const request of Object.keys(vocabulary.requests)) check('request', request);
  for (const topic of Object.keys(vocabulary.topics)) check('topic', topic);
  const groups = vocabulary.together?.groups ?? {};
  for (const { topic, all, none } of vocabulary.together?.rules ?? []) {
    check('topic', topic);
    for (const group of [...all, ...(none ?? [])]) if (!(group in groups)) stray.push(`group ${group}`);
  }
  const numbers = new Set(['size', 'air', 'ignore']);
  for (const role of Object.keys(vocabulary.roles))
    if (!numbers.has(role) && facts.facts.get(role)?.kind !== 'number') stray.push(role);
  for (const fact of Object.keys(vocabulary.factNames)) if (!facts.facts.has(fact)) stray.push(fact);
  return stray;
}
