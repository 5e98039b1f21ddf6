import type { Outcome } from './combine.ts';
import { decideNow } from './compile.ts';
import { definition, knownValues } from './domains.ts';
import { decide } from './engine.ts';
import { earlierDecisions } from './links.ts';
import type { RuleSet } from './ruleset.ts';
import { type Situation, withValues } from './situation.ts';

export interface Decided {
  /** With the outcomes of the decisions taken, where they are facts. */
  readonly situation: Situation;
  /** One outcome a decision, or one for each value of its `each` fact, in the order of the table. */
  readonly outcomes: ReadonlyMap<string, readonly Outcome[]>;
}

/** The decisions named and those they build on, unless the situation holds what those give already. */
function inTurn(rules: RuleSet, names: readonly string[], situation: Situation): readonly string[] {
  const turn: string[] = [];
  const add = (name: string) => {
    if (turn.includes(name)) return;
    for (const earlier of earlierDecisions(rules.facts, rules.decision(name))) {
      const missing = outcomeFacts(rules, earlier).some(({ id }) => situation[id] === undefined);
      if (missing || names.includes(earlier)) add(earlier);
    }
    turn.push(name);
  };
  for (const name of names) add(name);
  return turn;
}

const outcomeFacts = (rules: RuleSet, decision: string) =>
  [...rules.facts.values()].flatMap((fact) =>
    fact.kind === 'outcome' && fact.decision === decision ? [fact] : [],
  );

const candidates = (rules: RuleSet, name: string): readonly (string | undefined)[] => {
  const { each } = rules.decision(name);
  return each === undefined ? [undefined] : knownValues(rules, definition(rules, each));
};

function handOn(rules: RuleSet, name: string, situation: Situation, outcome: Outcome | undefined) {
  const values: Record<string, string> = {};
  for (const fact of outcomeFacts(rules, name)) {
    const value = outcome?.values[fact.outcome];
    if (typeof value === 'string') values[fact.id] = value;
  }
  return withValues(rules, situation, values);
}

export async function decideAll(
  rules: RuleSet,
  names: readonly string[],
  start: Situation,
): Promise<Decided> {
  let situation = start;
  const outcomes = new Map<string, readonly Outcome[]>();
  for (const name of inTurn(rules, names, start)) {
    const taken: Outcome[] = [];
    for (const candidate of candidates(rules, name))
      taken.push(await decide(rules, name, situation, candidate));
    outcomes.set(name, taken);
    situation = handOn(rules, name, situation, taken[0]);
  }
  return { situation, outcomes };
}

export function decideAllNow(rules: RuleSet, names: readonly string[], start: Situation): Decided {
  let situation = start;
  const outcomes = new Map<string, readonly Outcome[]>();
  for (const name of inTurn(rules, names, start)) {
    const taken = candidates(rules, name).map((one) => decideNow(rules, name, situation, one));
    outcomes.set(name, taken);
    situation = handOn(rules, name, situation, taken[0]);
  }
  return { situation, outcomes };
}
