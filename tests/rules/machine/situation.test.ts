import { expect, it } from 'vitest';
import type { Facts, FactValue } from '../../../src/contracts/facts.ts';
import { contradictions, impossible, loadRules, situation, withValues } from '../../../src/rules/index.ts';
import { boots, variant } from './variant.ts';

const rules = await loadRules(boots);
const said = (values: Readonly<Record<string, FactValue>>): Facts =>
  Object.fromEntries(Object.entries(values).map(([id, value]) => [id, { value, from: 'said' }]));

it('says unknown outright for what nobody told, and takes a default but no assumption', () => {
  const empty = situation(rules, {});
  expect({ ...empty }).toEqual({
    path: 'unknown',
    season: 'unknown',
    company: 'group',
    boot: 'unknown',
    wetness: 'unknown',
    slope: 'unknown',
    sole: 'unknown',
    rest: 'unknown',
    forecast: 'unknown',
  });
  expect(Object.getPrototypeOf(empty)).toBeNull();
  expect(empty.toString).toBeUndefined();
});

it('lets what was said win over what a row implies, and that over the default', () => {
  expect(situation(rules, said({ path: 'bog' })).season).toBe('autumn');
  expect(situation(rules, said({ path: 'bog', season: 'winter' })).season).toBe('winter');
  expect(situation(rules, said({ path: 'bog', season: 'unknown' })).season).toBe('autumn');
  expect(situation(rules, said({ company: 'unknown' })).company).toBe('group');
});

it('takes the worse of two rows that imply different values', async () => {
  const two = await variant([
    { file: 'tables/boots.json', at: ['rows', 0, 'implies'], put: { season: 'summer' } },
  ]);
  expect(situation(two, said({ boot: 'sandal' })).season).toBe('summer');
  expect(situation(two, said({ path: 'bog', boot: 'sandal' })).season).toBe('autumn');
});

it('reads derived facts from the row; a cell left open is unknown', () => {
  expect(situation(rules, said({ path: 'meadow' }))).toMatchObject({ wetness: 'moist', slope: 'flat' });
  expect(situation(rules, said({ path: 'gully' }))).toMatchObject({ wetness: 'unknown', slope: 'steep' });
});

it.each([
  [4.999, 'tired'],
  [5, 'fair'],
  [7, 'fair'],
  [7.001, 'rested'],
])('cuts %d hours into %s', (sleep_h, rest) => {
  expect(situation(rules, said({ sleep_h })).rest).toBe(rest);
});

it('refuses what is no value, no number and no fact instead of guessing', () => {
  expect(() => situation(rules, said({ path: 'bogg' }))).toThrow('"bogg" is not a value of path');
  expect(() => situation(rules, said({ sleep_h: Number.NaN }))).toThrow('not a number');
  expect(() => situation(rules, said({ sleep_h: '5' }))).toThrow('not a number');
  expect(() => situation(rules, said({ paths: 'bog' }))).toThrow('no fact "paths"');
  expect(() => situation(rules, said({ slope: 'flat' }))).toThrow('cannot be told');
  expect(() => situation(rules, {}, { path: 'bog' })).toThrow('neither computed nor decided');
  expect(() => situation(rules, {}, { forecast: 'hail' })).toThrow('"hail" is not a value of forecast');
  expect(() => withValues(rules, situation(rules, {}), { footing: 'soft' })).toThrow(
    'not a value of footing',
  );
});

it('finds told facts that cannot both be true, and asks nothing about implied ones', () => {
  expect(contradictions(rules, said({ path: 'bog' }))).toEqual([]);
  expect(contradictions(rules, said({ path: 'bog', season: 'unknown' }))).toEqual([]);
  expect(contradictions(rules, said({ path: 'bog', season: 'summer', sleep_h: 2, awake_h: 1 }))).toEqual([
    { kind: 'allows', fact: 'path', value: 'bog', other: 'season', otherValue: 'summer' },
    { kind: 'allows', fact: 'path', value: 'bog', other: 'rest', otherValue: 'tired' },
    { kind: 'relation', id: 'one-day', words: 'Nobody sleeps longer than the day before was.' },
  ]);
});

it('knows impossible numbers', () => {
  expect([0, 24, -0.1, 24.1, Number.NaN, Infinity, '8'].map((v) => impossible(rules, 'sleep_h', v))).toEqual([
    false,
    false,
    true,
    true,
    true,
    true,
    true,
  ]);
  expect(impossible(rules, 'path', 'bog')).toBe(false);
});
