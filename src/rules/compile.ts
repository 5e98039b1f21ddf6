import { combine, type Outcome } from './combine.ts';
import { firedBy, type Masks, meet } from './masks.ts';
import type { RuleSet } from './ruleset.ts';
import { candidateOf, type Situation, seen, view } from './situation.ts';

function decideBits(masks: Masks, situation: Situation): readonly number[] {
  let bits = masks.start;
  for (const [place, fact] of masks.facts.entries()) {
    const value = masks.values[place]?.indexOf(seen(situation, fact)) ?? -1;
    const of = masks.ofValue[place]?.[value];
    if (of === undefined) throw new Error(`"${seen(situation, fact)}" is not a value of ${fact}`);
    bits = meet(bits, of);
  }
  return firedBy(masks, bits);
}

/** The decision by the compiled rules: for enumeration and for choosing the next question. */
export function decideNow(rules: RuleSet, name: string, whole: Situation, candidate?: string): Outcome {
  const decision = rules.decision(name);
  const situation = view(rules, decision, whole, candidate);
  const fired = decideBits(decision.masks, situation).flatMap((place) => decision.rules[place] ?? []);
  return combine(decision, fired, situation, candidateOf(decision, situation));
}
