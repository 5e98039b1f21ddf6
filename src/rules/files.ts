import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { z } from 'zod';
import { Entry, type Problem } from './problems.ts';
import type { RuleFiles } from './ruleset.ts';
import {
  cautionsFileSchema,
  decisionFileSchema,
  factsFileSchema,
  sourcesFileSchema,
  tableFileSchema,
} from './schema.ts';
import { shape } from './shape.ts';

interface Text {
  readonly file: string;
  readonly text: string | null;
}

const readText = async (dir: string, file: string): Promise<Text> => ({
  file,
  text: await readFile(join(dir, file), 'utf8').catch(() => null),
});

/** The JSON files of a folder, by name; null when there is no such folder. */
async function readFolder(dir: string, folder: string): Promise<readonly Text[] | null> {
  const names = await readdir(join(dir, folder)).catch(() => null);
  if (names === null) return null;
  const files = names.filter((name) => name.endsWith('.json')).sort();
  return Promise.all(files.map((name) => readText(dir, `${folder}/${name}`)));
}

/** Reads and checks the shape of every file; no files when one of them has a problem. */
export async function readRuleFiles(dir: string): Promise<{ files: RuleFiles | null; problems: Problem[] }> {
  const [factsText, sourcesText, tableTexts, decisionTexts, cautionTexts] = await Promise.all([
    readText(dir, 'facts.json'),
    readText(dir, 'sources.json'),
    readFolder(dir, 'tables'),
    readFolder(dir, 'decisions'),
    readFolder(dir, 'cautions'),
  ]);
  const problems: Problem[] = [];
  const contents = new Map<string, unknown>();
  const take = <T>({ file, text }: Text, schema: z.ZodType<T>): T | undefined => {
    if (text === null) {
      new Entry(problems, file, '').add('', 'the file is missing.', 'Put it back.');
      return undefined;
    }
    const shaped = shape(file, text, schema);
    problems.push(...shaped.problems);
    contents.set(file, shaped.data);
    return shaped.value;
  };
  const takeAll = <T>(folder: string, texts: readonly Text[] | null, schema: z.ZodType<T>) => {
    if (texts === null) new Entry(problems, `${folder}/`, '').add('', 'the folder is missing.', 'Make it.');
    return (texts ?? []).flatMap((one) => {
      const value = take(one, schema);
      return value === undefined ? [] : [{ file: one.file, value }];
    });
  };
  /** A file is found by the name of what it holds. */
  const named = (file: string, key: string, name: string) => {
    if (!file.endsWith(`/${name}.json`))
      new Entry(problems, file, '').add(key, `"${name}" is not the name of the file.`, 'Make the two equal.');
  };

  const facts = take(factsText, factsFileSchema);
  const tables = takeAll('tables', tableTexts, tableFileSchema);
  const decisions = takeAll('decisions', decisionTexts, decisionFileSchema);
  const cautions = takeAll('cautions', cautionTexts, cautionsFileSchema);
  const sources = take(sourcesText, sourcesFileSchema);
  for (const { file, value } of tables) named(file, 'table', value.table);
  for (const { file, value } of decisions) named(file, 'decision', value.decision);
  if (facts === undefined || sources === undefined || problems.length > 0) return { files: null, problems };
  const files: RuleFiles = {
    facts,
    tables: tables.map(({ value }) => value),
    decisions: decisions.map(({ value }) => value),
    cautions: cautions.flatMap(({ value }) => value.cautions),
    sources: sources.sources,
    contents,
  };
  return { files, problems };
}
