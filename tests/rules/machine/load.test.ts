import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import {
  assumable,
  basesOf,
  domain,
  flagCell,
  hasCell,
  loadRules,
  numberCell,
  rangeCell,
  textCell,
} from '../../../src/rules/index.ts';
import { boots, variant, withVariant } from './variant.ts';

const rules = await loadRules(boots);

it('hands out facts, rows, rules, cautions and sources by id, and throws on an unknown one', () => {
  expect(rules.row('paths', 'bog').name).toBe('bog');
  expect(rules.rule('boots.alone')).toMatchObject({ decision: 'boots', overrides: ['boots.brisk'] });
  expect(rules.caution('rest-first').words).toBe('Sleep first.');
  expect(rules.cautions.map(({ id }) => id)[0]).toBe('turn-back');
  expect(rules.source('practice').kind).toBe('practice');
  expect(() => rules.row('paths', 'toString')).toThrow('no row');
  expect(() => rules.decision('__proto__')).toThrow('no decision');
});

it('reads cells by their type', () => {
  expect(numberCell(rules.row('paths', 'bog'), 'length_km')).toBe(3.5);
  expect(rangeCell(rules.row('paths', 'bog'), 'hours')).toEqual([2, 4]);
  expect(textCell(rules.row('paths', 'bog'), 'view')).toBe('reeds');
  expect(flagCell(rules.row('paths', 'bog'), 'fenced')).toBe(false);
  expect(hasCell(rules.row('paths', 'scree'), 'hours')).toBe(false);
  expect(() => numberCell(rules.row('paths', 'bog'), 'view')).toThrow('not a number');
  expect(() => numberCell(rules.row('paths', 'gully'), 'length_km')).toThrow('has no length_km');
});

it('takes domains from tables, with unknown last, and without it where there is a default', () => {
  expect(domain(rules, 'path')).toEqual(['bog', 'scree', 'gully', 'meadow', 'unknown']);
  expect(domain(rules, 'rest')).toEqual(['tired', 'fair', 'rested', 'unknown']);
  expect(domain(rules, 'company')).toEqual(['alone', 'group']);
  expect(domain(rules, 'footing')).toEqual(['treacherous', 'slippery', 'firm']);
  expect(domain(rules, 'sleep_h')).toEqual([]);
  expect(() => domain(rules, 'constructor')).toThrow('no fact');
  expect([assumable(rules, 'season'), assumable(rules, 'path')]).toEqual(['winter', null]);
});

it('knows what must be told for a decision, through all that is worked out', () => {
  expect(basesOf(rules, 'boots').toSorted()).toEqual(['boot', 'company', 'path', 'season']);
  expect(basesOf(rules, 'warnings').toSorted()).toEqual(['company', 'path', 'season', 'sleep_h']);
});

it('has a hash of the content, not of the layout', async () => {
  const changed = await variant([
    { file: 'decisions/ground.json', at: ['rules', 0, 'words'], put: 'In winter most things are icy.' },
  ]);
  expect(rules.hash).toMatch(/^[0-9a-f]{12}$/);
  expect(changed.hash).not.toBe(rules.hash);

  const dir = await mkdtemp(join(tmpdir(), 'rules-'));
  await cp(boots, dir, { recursive: true });
  const sources = JSON.parse(await readFile(join(dir, 'sources.json'), 'utf8'));
  const turned = Object.fromEntries(Object.entries(sources).reverse());
  await writeFile(join(dir, 'sources.json'), JSON.stringify(turned, null, 7));
  expect((await loadRules(dir)).hash).toBe(rules.hash);
  await rm(dir, { recursive: true });
});

it('says what is missing when the folder is not one of rules', async () => {
  await expect(loadRules(join(boots, 'decisions'))).rejects.toThrow(
    /facts\.json: the file is missing[\s\S]*tables\/: the folder is missing/,
  );
});

it('makes a new row legal everywhere without any other change', async () => {
  const put = { id: 'sand', name: 'sand', sources: ['walks'], is: { wetness: 'dry', slope: 'flat' } };
  const more = await withVariant([{ file: 'tables/paths.json', at: ['rows', 4], put }], {}, loadRules);
  expect(domain(more, 'path')).toContain('sand');
});
