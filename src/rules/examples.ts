import type { Fact } from '../contracts/facts.ts';
import type { Outcome } from './combine.ts';
import { decideNow } from './compile.ts';
import { contradictions } from './contradictions.ts';
import { decideAllNow } from './decide-all.ts';
import { definition } from './domains.ts';
import { earlierDecisions } from './links.ts';
import type { Decision, RuleSet } from './ruleset.ts';
import { type Situation, situation, withValues } from './situation.ts';

export type Example = Decision['examples'][number];

function split(rules: RuleSet, example: Example) {
  const told: Record<string, Fact> = {};
  const known: Record<string, string> = {};
  const direct: Record<string, string> = {};
  for (const [id, value] of Object.entries(example.facts)) {
    const { kind } = definition(rules, id);
    if (kind === 'choice') told[id] = { value, from: 'said' };
    else if (kind === 'computed' || kind === 'outcome') known[id] = value;
    else direct[id] = value;
  }
  return { told, known, direct };
}

/** What the example tells, and the outcomes of earlier decisions that it leaves out. */
export function exampleSituation(rules: RuleSet, decision: Decision, example: Example): Situation {
  const { told, known, direct } = split(rules, example);
  let values = withValues(rules, situation(rules, told, known), direct);
  for (const earlier of earlierDecisions(rules.facts, decision)) {
    const missing = [...rules.facts.values()].some(
      (fact) => fact.kind === 'outcome' && fact.decision === earlier && values[fact.id] === undefined,
    );
    // What the example hands in stands, whatever the earlier decision says.
    if (missing) values = withValues(rules, decideAllNow(rules, [earlier], values).situation, known);
  }
  return values;
}

/** A list must be met exactly; of what is gathered, a single value need only be among the rest. */
function differs(expected: string | readonly string[], got: Outcome['values'][string] | undefined): boolean {
  if (typeof expected === 'string')
    return typeof got === 'string' ? got !== expected : !got?.includes(expected);
  return typeof got === 'string' || [...expected].sort().join() !== [...(got ?? [])].sort().join();
}

function problemsOf(rules: RuleSet, decision: Decision, example: Example): readonly string[] {
  const { told, direct } = split(rules, example);
  const problems = contradictions(rules, told).map((one) =>
    one.kind === 'allows'
      ? `${one.fact}=${one.value} does not allow ${one.other}=${one.otherValue}`
      : one.words,
  );
  for (const id of Object.keys(direct)) {
    const fact = definition(rules, id);
    if (fact.kind === 'derived' && told[fact.from] !== undefined)
      problems.push(`${id} follows from ${fact.from}: leave it out`);
  }
  const candidate = decision.each === undefined ? undefined : example.facts[decision.each];
  const outcome = decideNow(rules, decision.decision, exampleSituation(rules, decision, example), candidate);
  for (const [name, expected] of Object.entries(example.expect)) {
    const got = outcome.values[name];
    if (differs(expected, got))
      problems.push(`${name} is ${got} and not ${expected}, because of ${outcome.because[name]?.join(', ')}`);
  }
  return problems;
}

/** The examples beside the rules that do not come out as they say, one sentence each. */
export function exampleProblems(rules: RuleSet): readonly string[] {
  return [...rules.decisions.values()].flatMap((decision) =>
    decision.examples.flatMap((example) => {
      const where = `${decision.decision}, example "${example.name}"`;
      try {
        return problemsOf(rules, decision, example).map((problem) => `${where}: ${problem}`);
      } catch (error) {
        return [`${where}: ${error instanceof Error ? error.message : error}`];
      }
    }),
  );
}
