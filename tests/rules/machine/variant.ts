import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { loadRules, type RuleSet } from '../../../src/rules/index.ts';

export const boots = fileURLToPath(new URL('./fixtures/boots', import.meta.url));

/** One change to a fixture file: the value at a path, put in or (without `put`) taken out. */
export interface Edit {
  readonly file: string;
  readonly at: readonly (string | number)[];
  readonly put?: unknown;
}

function edited(data: unknown, { at, put }: Edit): unknown {
  const last = at.at(-1);
  if (last === undefined) return put;
  const parent = at.slice(0, -1).reduce((inner: unknown, key) => Object(inner)[key], data);
  if (typeof parent !== 'object' || parent === null) throw new Error(`no such place: ${at.join('.')}`);
  if (put !== undefined) Reflect.set(parent, last, put);
  else if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else Reflect.deleteProperty(parent, last);
  return data;
}

/** A copy of the fixture with changes, for as long as `use` runs. `raw` replaces whole files by text. */
export async function withVariant<T>(
  edits: readonly Edit[],
  raw: Readonly<Record<string, string>>,
  use: (dir: string) => Promise<T>,
): Promise<T> {
  const dir = await mkdtemp(join(tmpdir(), 'rules-'));
  try {
    await cp(boots, dir, { recursive: true });
    for (const edit of edits) {
      const file = join(dir, edit.file);
      await writeFile(file, JSON.stringify(edited(JSON.parse(await readFile(file, 'utf8')), edit)));
    }
    for (const [file, text] of Object.entries(raw)) await writeFile(join(dir, file), text);
    return await use(dir);
  } finally {
    await rm(dir, { recursive: true });
  }
}

export const variant = (edits: readonly Edit[]): Promise<RuleSet> => withVariant(edits, {}, loadRules);
