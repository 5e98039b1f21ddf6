/** Standing pulls that match, put together with their like: only equal things are counted as one row of results. */
import type { Facts, FactValue } from '../contracts/facts.ts';
import type { ClubRecord } from '../contracts/record.ts';
import { type RuleSet, situation } from '../rules/index.ts';

export interface Pull {
  readonly record: ClubRecord;
  readonly kn: number;
  /** Nothing of the anchor gave way: it held at least this. */
  readonly stopped: boolean;
  readonly mode: string;
}

function groupBy<T, K>(all: readonly T[], keyOf: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of all) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [one]);
    else group.push(one);
  }
  return groups;
}

/** In these nothing of the anchor gave way. */
const unfailed = ['stopped', 'rig-failed'];

/** Null for a record without a load: it says nothing that could be counted. */
export function pullOf(record: ClubRecord): Pull | null {
  const { load_kn: kn, failure_mode: mode = 'unknown' } = record.body.facts;
  if (typeof kn !== 'number') return null;
  return { record, kn, mode: String(mode), stopped: unfailed.includes(String(mode)) };
}

export const pullsOf = (records: readonly ClubRecord[]): readonly Pull[] =>
  records.flatMap((record) => pullOf(record) ?? []);

/** What was asked for; `family` where a word left the kind open ("galvanised"). */
export interface Wanted {
  readonly fact: string;
  readonly value: FactValue;
  readonly family: boolean;
}

const familyOf = (rules: RuleSet, fact: string, value: FactValue): string => {
  const derived = `${fact}_family`;
  if (!rules.facts.has(derived)) return String(value);
  return situation(rules, { [fact]: { value, from: 'said' } })[derived] ?? String(value);
};

/** "Sandstone" asks for every kind of it. */
export function fits(rules: RuleSet, { fact, value, family }: Wanted, own: FactValue | undefined): boolean {
  if (own === undefined || own === 'unknown') return false;
  if (typeof own === 'number') return own === value;
  if (own === value || String(own).startsWith(`${value}-`)) return true;
  return family && familyOf(rules, fact, own) === familyOf(rules, fact, value);
}

export const matching = (
  rules: RuleSet,
  pulls: readonly Pull[],
  wanted: readonly Wanted[],
): readonly Pull[] =>
  pulls.filter(({ record }) => wanted.every((one) => fits(rules, one, record.body.facts[one.fact])));

/** How deep, as far as told: pulls of different depth are no one row. */
export const depthOf = ({ record }: Pull): FactValue | undefined =>
  record.body.facts.embedment_mm ?? record.body.facts.length_mm;

const alike = [
  'rock',
  'anchor',
  'adhesive',
  'diameter_mm',
  'embedment_mm',
  'length_mm',
  'hole_moisture',
  'shank',
  'load_direction',
] as const;

export interface Group {
  /** What all of them have in common. */
  readonly facts: Readonly<Record<string, FactValue>>;
  readonly pulls: readonly Pull[];
}

/** The value of a fact where it is told and the same in all. */
export const common = (pulls: readonly Pull[], fact: string): FactValue | undefined => {
  const values = new Set(pulls.map(({ record }) => record.body.facts[fact] ?? 'unknown'));
  const [only] = values;
  return values.size === 1 && only !== 'unknown' ? only : undefined;
};

export function groupOf(pulls: readonly Pull[]): Group {
  const told = alike.flatMap((fact) => {
    const value = common(pulls, fact);
    return value === undefined ? [] : [[fact, value] as const];
  });
  return { facts: Object.fromEntries(told), pulls };
}

/** The largest first. */
export function grouped(pulls: readonly Pull[]): readonly Group[] {
  const byKind = groupBy(pulls, ({ record }) =>
    JSON.stringify(alike.map((fact) => record.body.facts[fact] ?? 'unknown')),
  );
  return [...byKind.values()].map(groupOf).toSorted((a, b) => b.pulls.length - a.pulls.length);
}

export const failedKn = ({ pulls }: Group): readonly number[] =>
  pulls.filter(({ stopped }) => !stopped).map(({ kn }) => kn);

export const stoppedKn = ({ pulls }: Group): readonly number[] =>
  pulls.filter(({ stopped }) => stopped).map(({ kn }) => kn);

/** How each gave way, the commonest first. */
export const modesOf = ({ pulls }: Group): readonly (readonly [mode: string, count: number])[] =>
  [...groupBy(pulls, ({ mode }) => mode)]
    .map(([mode, of]) => [mode, of.length] as const)
    .toSorted((a, b) => b[1] - a[1]);

/** What gave way in a row of pulls, from what gave way in each. */
const ofRow: Readonly<Record<string, string>> = {
  steel: 'steel',
  'rock-cone': 'rock',
  'adhesive-steel': 'glue',
  'adhesive-rock': 'glue',
  combined: 'glue',
};

function gaveWay(group: Group): string | undefined {
  const ways = new Set(group.pulls.filter(({ stopped }) => !stopped).map(({ mode }) => ofRow[mode]));
  const [only] = ways;
  return ways.size > 1 ? 'mixed' : only;
}

function frameOf({ pulls }: Group): string | undefined {
  const frames = pulls.map(({ record }) => record.body.facts.frame);
  if (frames.every((frame) => frame === 'clear')) return 'clear';
  return frames.includes('close') ? 'close' : undefined;
}

/** The group as the facts of an answer on results: measured, not told. */
export function resultFacts(group: Group): Facts {
  const [failed, stopped] = [failedKn(group), stoppedKn(group)];
  const all: Readonly<Record<string, FactValue | undefined>> = {
    ...group.facts,
    gave_way: gaveWay(group),
    frame: frameOf(group),
    ...(failed.length === 0 ? {} : { pulls_kn: failed }),
    ...(stopped.length === 0 ? {} : { stopped_kn: stopped }),
  };
  return Object.fromEntries(
    Object.entries(all).flatMap(([id, value]) =>
      value === undefined ? [] : [[id, { value, from: 'measured' as const }]],
    ),
  );
}

/** In what else, beside what was asked for, two sets of pulls differ or are mixed. */
export function alsoDiffer(
  one: readonly Pull[],
  other: readonly Pull[],
  asked: readonly string[],
): readonly string[] {
  return alike.filter((fact) => {
    if (asked.includes(fact)) return false;
    const values = [one, other].map(
      (pulls) => new Set(pulls.map(({ record }) => record.body.facts[fact] ?? 'unknown')),
    );
    return new Set(values.flatMap((set) => [...set])).size > 1;
  });
}

/** Of pulls alike in all but depth, those at several depths, the deepest first; the kind with the most pulls. */
export function byDepth(pulls: readonly Pull[]): readonly Group[] | null {
  const kinds = groupBy(
    pulls.filter((pull) => typeof depthOf(pull) === 'number'),
    ({ record }) =>
      JSON.stringify(
        alike
          .filter((fact) => fact !== 'embedment_mm' && fact !== 'length_mm')
          .map((fact) => record.body.facts[fact] ?? 'unknown'),
      ),
  );
  const several = [...kinds.values()]
    .map((of) => [...groupBy(of, (pull) => Number(depthOf(pull)))])
    .filter((depths) => depths.length > 1)
    .toSorted((a, b) => b.flatMap(([, of]) => of).length - a.flatMap(([, of]) => of).length);
  const [most] = several;
  if (most === undefined) return null;
  return most.toSorted((a, b) => b[0] - a[0]).map(([, of]) => groupOf(of));
}
