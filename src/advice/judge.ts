import { decide, type Outcome, type RuleSet, type Situation } from '../rules/index.ts';
import type { Judge } from './desk.ts';

/** Situations of a club's day are few; what is remembered is bounded all the same. */
const remembered = 20_000;

/**
 * Decisions by the guarded rules engine, remembered on exactly the facts that the rules read: the key is derived
 * from the rules, so it cannot go stale, and a new rule set means a new judge.
 */
export function guardedJudge(rules: RuleSet): Judge {
  const memory = new Map<string, Promise<Outcome>>();
  const keyOf = (decision: string, situation: Situation, candidate: string | undefined): string => {
    const inputs = rules.decisions.get(decision)?.inputs ?? [];
    return [decision, candidate ?? '', ...inputs.map((fact) => situation[fact] ?? '')].join('|');
  };
  return (decision, situation, candidate) => {
    const key = keyOf(decision, situation, candidate);
    const known = memory.get(key);
    if (known !== undefined) return known;
    const outcome = decide(rules, decision, situation, candidate);
    if (memory.size >= remembered) memory.delete(memory.keys().next().value ?? '');
    memory.set(key, outcome);
    outcome.catch(() => memory.delete(key));
    return outcome;
  };
}
