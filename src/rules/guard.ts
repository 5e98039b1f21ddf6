import { Engine, type RuleProperties, type TopLevelCondition } from 'json-rules-engine';
import { accepted } from './conditions.ts';
import type { Definitions } from './domains.ts';
import type { Condition, DecisionFile } from './schema.ts';
import type { Situation } from './situation.ts';

/** Places of the rules that fire, in the order of the file. */
export type GuardedEngine = (situation: Situation) => Promise<readonly number[]>;

/** Some rules were not evaluated: an answer would lack what they say, a caution perhaps. */
export class RulesLost extends Error {
  override readonly name = 'RulesLost';
}

type NestedCondition = Extract<TopLevelCondition, { all: unknown }>['all'][number];

/** Every operator becomes one: its values are written out, so that the engine needs no order and no default. */
const operator = 'oneOf';

function nested(definitions: Definitions, condition: Condition): NestedCondition {
  if ('all' in condition) return { all: condition.all.map((part) => nested(definitions, part)) };
  if ('any' in condition) return { any: condition.any.map((part) => nested(definitions, part)) };
  return { fact: condition.fact, operator, value: accepted(definitions, condition) };
}

export const engineRules = (definitions: Definitions, decision: DecisionFile): RuleProperties[] =>
  decision.rules.map((rule) => ({
    name: rule.id,
    conditions: { all: [nested(definitions, rule.when)] },
    event: { type: 'fired', params: { id: rule.id } },
  }));

export function plainEngine(rules: RuleProperties[]): Engine {
  const engine = new Engine([], {
    pathResolver: () => {
      throw new Error('a rule may not hold a path: paths can run code');
    },
  });
  engine.addOperator<string, readonly string[]>(operator, (value, values) => values.includes(value));
  for (const rule of rules) engine.addRule(rule);
  return engine;
}

/** Runs the engine and counts: rules that were skipped are an error, whatever made the engine skip them. */
export function counted(engine: Engine, decision: DecisionFile): GuardedEngine {
  const places = new Map(decision.rules.map((rule, place) => [rule.id, place]));
  return async (situation) => {
    const { results, failureResults } = await engine.run(situation);
    const evaluated = results.length + failureResults.length;
    if (evaluated !== places.size)
      throw new RulesLost(
        `decision ${decision.decision}: ${evaluated} of ${places.size} rules were evaluated`,
      );
    return results.flatMap((result) => places.get(result.name) ?? []).sort((a, b) => a - b);
  };
}

/**
 * One engine a decision, shared by all runs. The end of any run marks the whole engine as finished, and
 * another run that has just begun then skips its rules without an error; so the mark is pinned.
 */
export function guardedEngine(definitions: Definitions, decision: DecisionFile): GuardedEngine {
  const engine = plainEngine(engineRules(definitions, decision));
  Object.defineProperty(engine, 'status', { get: () => 'RUNNING', set: () => undefined });
  return counted(engine, decision);
}
