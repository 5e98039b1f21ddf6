import type { z } from 'zod';
import { findSlip } from './json.ts';
import { Entry, type Problem } from './problems.ts';

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

const shownPath = (path: readonly PropertyKey[]): string =>
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

/** The content of one file: as it was read, and by its shape when it has no problem. */
export interface Shaped<T> {
  readonly data?: unknown;
  readonly value?: T;
  readonly problems: readonly Problem[];
}

export function shape<T>(file: string, text: string, schema: z.ZodType<T>): Shaped<T> {
  const problems: Problem[] = [];
  const slip = findSlip(text);
  if (slip !== null) {
    new Entry(problems, file, '').add(`line ${slip.line}, column ${slip.column}`, `${slip.wrong}.`);
    return { problems };
  }
  const data: unknown = JSON.parse(text);
  const parsed = schema.safeParse(data);
  if (parsed.success) return { data, value: parsed.data, problems };
  for (const issue of parsed.error.issues) {
    const { entry, path } = placed(data, issue.path);
    const { wrong, mend } = worded(issue.message);
    new Entry(problems, file, entry).add(path, wrong, mend);
  }
  return { data, problems };
}
