import { definition, domain, unknown } from '../domains.ts';
import type { Decision, RuleSet } from '../ruleset.ts';
import { derivedValue } from '../situation.ts';

/** A fact that varies freely, with the derived facts that follow it. */
export interface Axis {
  readonly fact: string;
  readonly values: readonly string[];
  /** Derived fact → its value for each value of the axis. */
  readonly followers: ReadonlyMap<string, readonly string[]>;
}

export interface Space {
  readonly axes: readonly Axis[];
  /** Product of the axes, impossible combinations included. */
  readonly size: number;
  /** [one axis][other axis][value of the one][value of the other], where not every pair is possible. */
  readonly pairs: readonly (readonly (readonly (readonly boolean[])[] | null)[])[];
}

/** Facts of which a row of the fact's table says what goes with it. */
function limited(rules: RuleSet, id: string): ReadonlySet<string> {
  const fact = definition(rules, id);
  if (fact.kind !== 'choice' || fact.table === undefined) return new Set();
  const rows = rules.table(fact.table).rows;
  return new Set(rows.flatMap((row) => Object.keys({ ...row.implies, ...row.allows })));
}

/** The facts asked for, and those of the decision that decide which of their values go together. */
function closed(rules: RuleSet, decision: Decision, facts: readonly string[]): ReadonlySet<string> {
  const all = new Set(facts);
  for (const id of all) {
    const fact = definition(rules, id);
    if (fact.kind === 'derived' && decision.inputs.includes(fact.from)) all.add(fact.from);
    for (const other of decision.inputs) if (limited(rules, other).has(id)) all.add(other);
  }
  return all;
}

/** A told value that the row does not allow is asked about, and what the row implies is not unknown. */
function goTogether(rules: RuleSet, id: string, value: string, other: string, otherValue: string): boolean {
  const fact = definition(rules, id);
  if (fact.kind !== 'choice' || fact.table === undefined || value === unknown) return true;
  const row = rules.row(fact.table, value);
  if (otherValue === unknown) return row.implies?.[other] === undefined;
  return row.allows?.[other]?.includes(otherValue) ?? true;
}

function possiblePairs(rules: RuleSet, one: Axis, other: Axis): readonly (readonly boolean[])[] | null {
  const onto = (from: Axis, a: number, to: Axis, b: number) =>
    [[to.fact, to.values] as const, ...to.followers].every(([fact, values]) =>
      goTogether(rules, from.fact, from.values[a] ?? unknown, fact, values[b] ?? unknown),
    );
  const pairs = one.values.map((_, a) =>
    other.values.map((__, b) => onto(one, a, other, b) && onto(other, b, one, a)),
  );
  return pairs.flat().includes(false) ? pairs : null;
}

export function spaceOf(rules: RuleSet, decision: Decision, facts: readonly string[]): Space {
  const all = closed(rules, decision, facts);
  const axes: Axis[] = [];
  for (const id of all) {
    const fact = definition(rules, id);
    if (fact.kind === 'derived' && all.has(fact.from)) continue;
    const values = domain(rules, id);
    const followers = new Map<string, readonly string[]>();
    for (const other of all) {
      const derived = definition(rules, other);
      if (derived.kind === 'derived' && derived.from === id)
        followers.set(
          other,
          values.map((value) => derivedValue(rules, derived, value)),
        );
    }
    axes.push({ fact: id, values, followers });
  }
  return {
    axes,
    size: axes.reduce((product, axis) => product * axis.values.length, 1),
    pairs: axes.map((one) => axes.map((other) => (one === other ? null : possiblePairs(rules, one, other)))),
  };
}

/** The values of all facts at a place of the space, counted with the last axis fastest. */
export function at({ axes }: Space, place: number): Readonly<Record<string, string>> {
  let values: [string, string][] = [];
  let rest = place;
  for (const axis of axes.toReversed()) {
    const value = rest % axis.values.length;
    rest = Math.floor(rest / axis.values.length);
    const own = [[axis.fact, axis.values] as const, ...axis.followers].map(([fact, of]): [string, string] => [
      fact,
      of[value] ?? unknown,
    ]);
    values = [...own, ...values];
  }
  return Object.fromEntries(values);
}

/** How many combinations are possible. Axes that no pair ties together multiply. */
export function countPossible(space: Space): number {
  const { axes, pairs } = space;
  const left = new Set(axes.keys());
  let product = 1;
  for (const first of left) {
    const group = [first];
    for (const one of group)
      for (const other of left) if (!group.includes(other) && pairs[one]?.[other] != null) group.push(other);
    for (const one of group) left.delete(one);
    product *= countGroup(space, group, []);
  }
  return product;
}

function countGroup(space: Space, group: readonly number[], chosen: readonly number[]): number {
  const axis = group[chosen.length];
  if (axis === undefined) return 1;
  let count = 0;
  for (const value of space.axes[axis]?.values.keys() ?? [])
    if (chosen.every((before, place) => space.pairs[group[place] ?? 0]?.[axis]?.[before]?.[value] !== false))
      count += countGroup(space, group, [...chosen, value]);
  return count;
}
