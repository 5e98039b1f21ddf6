/** What the record of one pull holds, and what is asked for while it is written down. */
import type { Facts, FactValue } from '../contracts/facts.ts';
import type { RecordBody } from '../contracts/record.ts';
import { contradictions, knownValues, type RuleSet, situation } from '../rules/index.ts';

/** In the order in which they are shown. */
export const testFacts = [
  'load_kn',
  'failure_mode',
  'anchor',
  'metal',
  'diameter_mm',
  'length_mm',
  'embedment_mm',
  'hole_diameter_mm',
  'shank',
  'adhesive',
  'rock',
  'rock_condition',
  'hole_moisture',
  'load_direction',
  'frame',
  'edge_distance_mm',
  'spacing_mm',
  'temperature_c',
  'hours_since',
] as const;

/** What is only words; `day` is the day of the pull, "2027-05-02". */
export const testTexts = ['day', 'crag', 'sector', 'route', 'batch', 'note'] as const;
export const emptyBody: RecordBody = { facts: {}, texts: {} };

export const isTestFact = (fact: string): boolean => (testFacts as readonly string[]).includes(fact);

/** The facts of a record as told ones, "not known" left out. */
export const factsOfBody = ({ facts }: RecordBody): Facts =>
  Object.fromEntries(
    Object.entries(facts)
      .filter(([, value]) => value !== 'unknown')
      .map(([id, value]) => [id, { value, from: 'said' }]),
  );

export const familyOf = (rules: RuleSet, body: RecordBody): string =>
  situation(rules, factsOfBody(body)).anchor_family ?? 'unknown';

const glued = ['adhesive-steel', 'adhesive-rock', 'combined'];

/** Values to tap for a fact of this record: what cannot fail is not offered. */
export function valuesToTap(rules: RuleSet, body: RecordBody, fact: string): readonly string[] {
  const definition = rules.facts.get(fact);
  const values = definition === undefined ? [] : knownValues(rules, definition);
  if (fact !== 'failure_mode') return values;
  const family = familyOf(rules, body);
  const without = family !== 'unknown' && family !== 'glue-in';
  return without ? values.filter((value) => !glued.includes(value)) : values;
}

const isTold = ({ facts }: RecordBody, fact: string): boolean => facts[fact] !== undefined;

/** What is still to be asked, in order; "don't know" is an answer. */
export function openFacts(rules: RuleSet, body: RecordBody): readonly string[] {
  const family = familyOf(rules, body);
  const asked = [
    'anchor',
    'diameter_mm',
    ...(isTold(body, 'embedment_mm') ? [] : ['length_mm']),
    'rock',
    ...(family === 'glue-in' || family === 'unknown' ? ['adhesive'] : []),
    'load_kn',
    'failure_mode',
  ];
  return asked.filter((fact) => !isTold(body, fact));
}

/** Adds what was told; the rest stays. */
export const withTold = (
  body: RecordBody,
  told: readonly { readonly fact: string; readonly value: FactValue }[],
  texts: Readonly<Record<string, string>> = {},
): RecordBody => ({
  facts: { ...body.facts, ...Object.fromEntries(told.map(({ fact, value }) => [fact, value])) },
  texts: { ...body.texts, ...texts },
});

export interface Change {
  readonly fact: string;
  readonly before: FactValue | undefined;
  readonly after: FactValue | undefined;
}

const differs = (one: unknown, other: unknown): boolean => JSON.stringify(one) !== JSON.stringify(other);

export function changedFacts(before: RecordBody, after: RecordBody): readonly Change[] {
  const facts = [...new Set([...Object.keys(before.facts), ...Object.keys(after.facts)])];
  return facts
    .map((fact) => ({ fact, before: before.facts[fact], after: after.facts[fact] }))
    .filter((change) => differs(change.before, change.after));
}

export function changedTexts(
  before: RecordBody,
  after: RecordBody,
): readonly { readonly text: string; readonly before: string; readonly after: string }[] {
  const texts = [...new Set([...Object.keys(before.texts), ...Object.keys(after.texts)])];
  return texts
    .map((text) => ({ text, before: before.texts[text] ?? '', after: after.texts[text] ?? '' }))
    .filter((change) => change.before !== change.after);
}

/** Glue that gave way in an anchor that has none, or values that cannot go together. */
export function clashIn(rules: RuleSet, body: RecordBody): 'glue' | 'facts' | null {
  const family = familyOf(rules, body);
  const mode = body.facts.failure_mode;
  const without = family !== 'unknown' && family !== 'glue-in';
  if (
    without &&
    (glued.includes(String(mode)) || (isTold(body, 'adhesive') && body.facts.adhesive !== 'unknown'))
  )
    return 'glue';
  return contradictions(rules, factsOfBody(body)).length > 0 ? 'facts' : null;
}

/** `gave_way` says it of a whole row; of one pull it leaves open only from what the glue let go. */
export const modeOfRow: Readonly<Record<string, string>> = { rock: 'rock-cone', steel: 'steel' };
