import type { Facts, FactValue } from '../contracts/facts.ts';
import { definition, unknown } from './domains.ts';
import type { RuleSet } from './ruleset.ts';
import { situation } from './situation.ts';

export type Contradiction =
  | {
      readonly kind: 'allows';
      readonly fact: string;
      readonly value: string;
      readonly other: string;
      readonly otherValue: string;
    }
  | { readonly kind: 'relation'; readonly id: string; readonly words: string };

/** True for a number that is a slip of the keyboard, whatever the rock. */
export function impossible(rules: RuleSet, id: string, value: FactValue): boolean {
  const fact = definition(rules, id);
  if (fact.kind !== 'number') return false;
  const [least, most] = fact.possible;
  const slip = (one: unknown): boolean => typeof one !== 'number' || !(one >= least && one <= most);
  if (typeof value === 'number' || typeof value === 'string') return slip(value);
  return !fact.many || value.length === 0 || value.some(slip);
}

/** Pairs of told facts that cannot both be true. What a row implies is no statement, and contradicts nothing. */
export function contradictions(rules: RuleSet, facts: Facts): readonly Contradiction[] {
  const values = situation(rules, facts);
  const isTold = (id: string): boolean => {
    const fact = rules.facts.get(id);
    if (fact?.kind === 'band' || fact?.kind === 'derived') return isTold(fact.from);
    return Object.hasOwn(facts, id) && facts[id]?.value !== unknown;
  };
  const found: Contradiction[] = [];
  for (const fact of rules.facts.values()) {
    const value = values[fact.id];
    if (fact.kind !== 'choice' || fact.table === undefined || value === undefined) continue;
    if (value === unknown || !isTold(fact.id)) continue;
    for (const [other, allowed] of Object.entries(rules.row(fact.table, value).allows ?? {})) {
      const otherValue = values[other];
      if (otherValue === undefined || otherValue === unknown || !isTold(other)) continue;
      if (!allowed.includes(otherValue))
        found.push({ kind: 'allows', fact: fact.id, value, other, otherValue });
    }
  }
  for (const { id, lessOrEqual, words } of rules.relations) {
    const [less, more] = lessOrEqual.map((one) =>
      Object.hasOwn(facts, one) ? facts[one]?.value : undefined,
    );
    if (typeof less === 'number' && typeof more === 'number' && less > more)
      found.push({ kind: 'relation', id, words });
  }
  return found;
}
