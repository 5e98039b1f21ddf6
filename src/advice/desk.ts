import type { Outcome, RuleSet, Situation } from '../rules/index.ts';

/** Takes one decision. Answers use the guarded rules engine; the search for the next question uses its compiled twin. */
export type Judge = (decision: string, situation: Situation, candidate?: string) => Promise<Outcome>;

/** What an advice builder works with. */
export interface Desk {
  readonly rules: RuleSet;
  readonly judge: Judge;
}
