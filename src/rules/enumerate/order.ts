import { definition, isOrdered, knownValues } from '../domains.ts';
import { reachable } from '../graph.ts';
import type { RuleSet } from '../ruleset.ts';

/** Pairs of values, the harsher first: from the order of the fact, or from `worseThan` in the rows of its table. */
export function harsherPairs(rules: RuleSet, id: string): readonly (readonly [string, string])[] {
  const fact = definition(rules, id);
  const values = knownValues(rules, fact);
  if (isOrdered(fact))
    return values.flatMap((harsher, place) =>
      values.slice(place + 1).map((milder) => [harsher, milder] as const),
    );
  if (fact.kind !== 'choice' || fact.table === undefined) return [];
  const { table } = fact;
  const milderThan = (row: string) => rules.row(table, row).worseThan ?? [];
  return values.flatMap((harsher) =>
    [...reachable(harsher, milderThan)].map((milder) => [harsher, milder] as const),
  );
}
