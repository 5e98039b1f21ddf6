import type { Outcome } from './combine.ts';
import { accepted, leaves } from './conditions.ts';
import type { RuleSet } from './ruleset.ts';
import type { Leaf } from './schema.ts';
import { type Situation, seen, view } from './situation.ts';

export interface Tested {
  readonly fact: string;
  readonly operator: Leaf['operator'];
  readonly value: string | readonly string[];
  readonly seen: string;
  /** False for the other branches of an `any`. */
  readonly held: boolean;
}

export interface Explained {
  readonly rule: string;
  readonly words: string;
  readonly sources: readonly string[];
  readonly tested: readonly Tested[];
  /** A declared exception put the rule out of force. */
  readonly overridden: boolean;
}

/** What each rule that fired has tested, and the value it saw. */
export function explain(rules: RuleSet, outcome: Outcome, whole: Situation): readonly Explained[] {
  const situation = view(rules, rules.decision(outcome.decision), whole, outcome.candidate);
  return outcome.fired.map((id) => {
    const rule = rules.rule(id);
    const tested = leaves(rule.when).map(({ leaf }) => {
      const value = seen(situation, leaf.fact);
      return {
        fact: leaf.fact,
        operator: leaf.operator,
        value: leaf.value,
        seen: value,
        held: accepted(rules, leaf).includes(value),
      };
    });
    const overridden = outcome.overridden.includes(id);
    return { rule: id, words: rule.words, sources: rule.sources, tested, overridden };
  });
}
