/** The real vocabulary and the real facts; messages in JSON beside this file. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';
import type { FactValue } from '../../../src/contracts/facts.ts';
import {
  type FactsView,
  loadVocabulary,
  makeUnderstand,
  type Parsed,
} from '../../../src/dialogue/understand/index.ts';
import { factsFileSchema, tableFileSchema } from '../../../src/rules/schema.ts';

const rules = fileURLToPath(new URL('../../../rules/', import.meta.url));
const json = async (path: string): Promise<unknown> => JSON.parse(await readFile(path, 'utf8'));

export const vocabularyPathOf = (language: string): string => join(rules, 'vocabulary', `${language}.json`);

export const languagesPresent = async (): Promise<string[]> =>
  (await readdir(join(rules, 'vocabulary'))).map((name) => name.replace('.json', '')).sort();

export async function loadFactsView(): Promise<FactsView> {
  const { facts } = factsFileSchema.parse(await json(join(rules, 'facts.json')));
  const names = await readdir(join(rules, 'tables'));
  const tables = await Promise.all(
    names.map(async (name) => tableFileSchema.parse(await json(join(rules, 'tables', name)))),
  );
  return {
    facts: new Map(facts.map((fact) => [fact.id, fact])),
    tables: new Map(tables.map((table) => [table.table, table])),
  };
}

export async function loadUnderstand(language = 'en') {
  const [vocabulary, view] = await Promise.all([loadVocabulary(vocabularyPathOf(language)), loadFactsView()]);
  return { understand: makeUnderstand([vocabulary], view), vocabulary, view };
}

const caseSchema = z.strictObject({
  say: z.string(),
  topic: z.string().nullable(),
  facts: z.record(z.string(), z.union([z.string(), z.number(), z.array(z.number())])),
  context: z.strictObject({ pending: z.string().optional(), topic: z.string().optional() }).optional(),
});
export type Case = z.infer<typeof caseSchema>;

export async function loadCases(name: string): Promise<Case[]> {
  const file = z.strictObject({ about: z.string(), cases: z.array(caseSchema) });
  return file.parse(await json(fileURLToPath(new URL(name, import.meta.url)))).cases;
}

export const contextOf = ({ context }: Case) => ({
  ...(context?.pending === undefined ? {} : { pending: context.pending }),
  ...(context?.topic === undefined ? {} : { topic: context.topic }),
});

export const told = (parsed: Parsed): Record<string, FactValue> =>
  Object.fromEntries(parsed.found.map(({ fact, value }) => [fact, value]));
