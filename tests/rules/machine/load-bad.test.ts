import { readdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { loadRules } from '../../../src/rules/index.ts';
import { type Edit, withVariant } from './variant.ts';

const folder = fileURLToPath(new URL('./bad', import.meta.url));
const cases = await readdir(folder);

/** `decisions.plan.json.txt` stands for decisions/plan.json; as .txt no formatter mends it. */
const target = (name: string) => name.replace(/^(decisions|tables|cautions)\./, '$1/').replace(/\.txt$/, '');

async function readCase(name: string) {
  const raw: Record<string, string> = {};
  let edits: Edit[] = [];
  for (const file of await readdir(`${folder}/${name}`)) {
    const text = await readFile(`${folder}/${name}/${file}`, 'utf8');
    if (file === 'edits.json') edits = JSON.parse(text);
    else if (file !== 'expected.txt') raw[target(file)] = text;
  }
  return { edits, raw, expected: await readFile(`${folder}/${name}/expected.txt`, 'utf8') };
}

describe('a rule file with a slip is refused, with the place and the cure', () => {
  it('has enough cases', () => expect(cases.length).toBeGreaterThanOrEqual(15));

  it.each(cases)('%s', async (name) => {
    const { edits, raw, expected } = await readCase(name);
    const error = await withVariant(edits, raw, loadRules).then(
      () => null,
      (reason: unknown) => reason,
    );
    expect(error).toBeInstanceOf(Error);
    const message = error instanceof Error ? `${error.name}: ${error.message}\n` : '';
    if (process.env.WRITE_EXPECTED === '1') await writeFile(`${folder}/${name}/expected.txt`, message);
    else expect(message).toBe(expected);
  });
});
