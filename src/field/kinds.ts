/** What each kind of record holds, in the order in which it is shown, and what it cannot do without. */
import type { RecordBody, RecordKind } from '../contracts/record.ts';
import type { RuleSet } from '../rules/index.ts';
import { openFacts, testFacts, testTexts } from './test-record.ts';

/** The anchor, and the place that works on it. */
const anchorFacts = [
  'anchor',
  'metal',
  'diameter_mm',
  'length_mm',
  'embedment_mm',
  'adhesive',
  'rock',
  'rock_condition',
  'environment',
  'sea_distance_m',
  'rain_washed',
  'use',
] as const;

const facts: Readonly<Record<RecordKind, readonly string[]>> = {
  test: testFacts,
  anchor: anchorFacts,
  inspection: ['signs'],
};

/** `day` is the day of the pull, of setting or of the look; `anchor` the id of the anchor looked at. */
const texts: Readonly<Record<RecordKind, readonly string[]>> = {
  test: testTexts,
  anchor: ['crag', 'sector', 'route', 'position', 'day', 'batch', 'installer', 'note'],
  inspection: ['anchor', 'day', 'note'],
};

export const factsOfKind = (kind: RecordKind): readonly string[] => facts[kind];
export const textsOfKind = (kind: RecordKind): readonly string[] => texts[kind];

const needed: Readonly<Record<Exclude<RecordKind, 'test'>, readonly string[]>> = {
  anchor: ['anchor'],
  inspection: ['signs'],
};

/** Facts still to be asked for; "don't know" is an answer. */
export const openIn = (rules: RuleSet, kind: RecordKind, body: RecordBody): readonly string[] =>
  kind === 'test' ? openFacts(rules, body) : needed[kind].filter((fact) => body.facts[fact] === undefined);

/** An anchor without a crag is nowhere, and that is no answer. */
export const lacksCrag = (kind: RecordKind, { texts: told }: RecordBody): boolean =>
  kind === 'anchor' && (told.crag ?? '') === '';
