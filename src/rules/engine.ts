import { combine, type Outcome } from './combine.ts';
import type { RuleSet } from './ruleset.ts';
import { candidateOf, type Situation, view } from './situation.ts';

/** The decision as it is answered, by json-rules-engine. */
export async function decide(
  rules: RuleSet,
  name: string,
  whole: Situation,
  candidate?: string,
): Promise<Outcome> {
  const decision = rules.decision(name);
  const situation = view(rules, decision, whole, candidate);
  const fired = (await decision.engine(situation)).flatMap((place) => decision.rules[place] ?? []);
  return combine(decision, fired, situation, candidateOf(decision, situation));
}
