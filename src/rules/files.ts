import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { z } from 'zod';
import { findSlip } from './json.ts';
import { Entry, type Problem } from './problems.ts';
import type { RuleFiles } from './ruleset.ts';
import {
  cautionsFileSchema,
  decisionFileSchema,
  factsFileSchema,
  sourcesFileSchema,
  tableFileSchema,
} from './schema.ts';

const entryNames: Readonly<Record<string, string>> = {
  facts: 'fact',
  relations: 'relation',
  rows: 'row',
  rules: 'rule',
  examples: 'example',
  cautions: 'caution',
  sources: 'source',
};

const inside = (data: unknown, key: PropertyKey | undefined): unknown =>
  typeof data === 'object' && data !== null && key !== undefined ? Reflect.get(data, key) : undefined;

export const shownPath = (path: readonly PropertyKey[]): string =>
  path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '');

/** `rules[3].when` → "rule boots.ice" and `when`, as the author knows it. */
function placed(data: unknown, path: readonly PropertyKey[]): { entry: string; path: string } {
  const [list, place] = path;
  const item = inside(inside(data, list), place);
  const id = inside(item, 'id') ?? inside(item, 'name');
  const what = typeof list === 'string' ? entryNames[list] : undefined;
  if (what === undefined || typeof id !== 'string') return { entry: '', path: shownPath(path) };
  return { entry: `${what} ${id}`, path: shownPath(path.slice(2)) };
}

/** What zod found, in the words of somebody who wrote the file. Matched by its message: a condition keeps no code. */
const plainly: readonly (readonly [RegExp, string, string])[] = [
  [/^Invalid input: expected (\w+), received undefined$/, 'it is missing.', 'Give a $1.'],
  [/^Invalid input: expected (\w+), received (\w+)$/, 'it is a $2.', 'Give a $1.'],
  [/^Unrecognized keys?: (.*)$/, 'no such key here: $1.', 'Take it out, or correct its spelling.'],
  [/^Too small: expected array.*$/, 'the list is empty.', 'Give at least one.'],
  [/^Too small: expected string.*$/, 'nothing is written.', 'Write it out.'],
  [/^Invalid ISO date$/, 'that is no day.', 'Write it as 2026-01-31.'],
  [/^Invalid discriminator value\. Expected (.*)$/, 'no such kind.', 'Choose from $1.'],
  [/^Invalid option: expected one of (.*)$/, 'no such kind.', 'Choose from $1.'],
];

function worded(message: string): { wrong: string; mend: string } {
  for (const [pattern, wrong, mend] of plainly)
    if (pattern.test(message))
      return { wrong: message.replace(pattern, wrong), mend: message.replace(pattern, mend) };
  return { wrong: `${message}.`, mend: '' };
}

interface Reading {
  readonly problems: Problem[];
  readonly contents: Map<string, unknown>;
}

async function read<T>(
  { problems, contents }: Reading,
  dir: string,
  file: string,
  schema: z.ZodType<T>,
): Promise<T[]> {
  const report = new Entry(problems, file, '');
  const text = await readFile(join(dir, file), 'utf8').catch(() => null);
  if (text === null) {
    report.add('', 'the file is missing.', 'Put it back.');
    return [];
  }
  const slip = findSlip(text);
  if (slip !== null) {
    report.add(`line ${slip.line}, column ${slip.column}`, `${slip.wrong}.`);
    return [];
  }
  const data: unknown = JSON.parse(text);
  contents.set(file, data);
  const parsed = schema.safeParse(data);
  if (parsed.success) return [parsed.data];
  for (const issue of parsed.error.issues) {
    const { entry, path } = placed(data, issue.path);
    const { wrong, mend } = worded(issue.message);
    new Entry(problems, file, entry).add(path, wrong, mend);
  }
  return [];
}

async function readFolder<T>(reading: Reading, dir: string, folder: string, schema: z.ZodType<T>) {
  const names = await readdir(join(dir, folder)).catch(() => null);
  if (names === null)
    new Entry(reading.problems, `${folder}/`, '').add('', 'the folder is missing.', 'Make it.');
  const found: { file: string; data: T }[] = [];
  for (const name of (names ?? []).filter((one) => one.endsWith('.json')).sort()) {
    const file = `${folder}/${name}`;
    for (const data of await read(reading, dir, file, schema)) found.push({ file, data });
  }
  return found;
}

/** A file is found by the name of what it holds. */
function named(problems: Problem[], file: string, key: string, name: string): void {
  if (!file.endsWith(`/${name}.json`))
    new Entry(problems, file, '').add(key, `"${name}" is not the name of the file.`, 'Make the two equal.');
}

/** Reads and checks the shape of every file. With problems, what is returned is only a part. */
export async function readRuleFiles(dir: string): Promise<{ files: RuleFiles | null; problems: Problem[] }> {
  const problems: Problem[] = [];
  const reading: Reading = { problems, contents: new Map() };
  const [facts] = await read(reading, dir, 'facts.json', factsFileSchema);
  const tables = await readFolder(reading, dir, 'tables', tableFileSchema);
  const decisions = await readFolder(reading, dir, 'decisions', decisionFileSchema);
  const cautions = await readFolder(reading, dir, 'cautions', cautionsFileSchema);
  const [sources] = await read(reading, dir, 'sources.json', sourcesFileSchema);
  for (const { file, data } of tables) named(problems, file, 'table', data.table);
  for (const { file, data } of decisions) named(problems, file, 'decision', data.decision);
  if (facts === undefined || sources === undefined || problems.length > 0) return { files: null, problems };
  const files: RuleFiles = {
    facts,
    tables: tables.map(({ data }) => data),
    decisions: decisions.map(({ data }) => data),
    cautions: cautions.flatMap(({ data }) => data.cautions),
    sources: sources.sources,
    contents: reading.contents,
  };
  return { files, problems };
}
