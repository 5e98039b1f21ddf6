import type { Facts, FactValue } from '../contracts/facts.ts';
import { definition, domain, domainOf, isOrdered, knownValues, unknown } from './domains.ts';
import type { Decision, RuleSet } from './ruleset.ts';
import type { FactDefinition } from './schema.ts';

/** A value for every fact of a finite domain, 'unknown' said outright. Without a prototype. */
export type Situation = Readonly<Record<string, string>>;

/** The value that the rules see. A fact that is missing altogether is a slip of the program, never "unknown". */
export function seen(situation: Situation, fact: string): string {
  const value = situation[fact];
  if (value === undefined)
    throw new Error(`the situation has no ${fact}: has the earlier decision been taken, and handed on?`);
  return value;
}

const bare = (values: Readonly<Record<string, string>>): Record<string, string> =>
  Object.assign(Object.create(null), values);

function checked(rules: RuleSet, id: string, value: FactValue): string {
  if (typeof value !== 'string' || !domain(rules, id).includes(value))
    throw new Error(`"${value}" is not a value of ${id}`);
  return value;
}

type Band = Extract<FactDefinition, { kind: 'band' }>;

export function bandOf(band: Band, value: number): string {
  if (!Number.isFinite(value)) throw new Error(`${band.from} is not a number`);
  const step = band.steps.find((one) => ('below' in one ? value < one.below : value <= one.upTo));
  return step?.value ?? band.last;
}

type Derived = Extract<FactDefinition, { kind: 'derived' }>;

export function derivedValue(rules: RuleSet, fact: Derived, base: string): string {
  const from = definition(rules, fact.from);
  if (base === unknown || from.kind !== 'choice' || from.table === undefined) return unknown;
  const cell = rules.row(from.table, base).is[fact.column];
  return typeof cell === 'string' ? checked(rules, fact.id, cell) : unknown;
}

/** Where two rows settle one fact differently, the worse counts. */
function worst(rules: RuleSet, fact: FactDefinition, values: readonly string[]): string | undefined {
  const order = isOrdered(fact) ? knownValues(rules, fact) : [];
  return order.find((value) => values.includes(value)) ?? values[0];
}

/**
 * What was said, else what a row implies, else the default, else 'unknown'. Nothing is assumed here.
 * `known` holds computed facts and outcomes of earlier decisions; an outcome that is not handed in stays out.
 */
export function situation(
  rules: RuleSet,
  facts: Facts,
  known: Readonly<Record<string, string>> = {},
): Situation {
  for (const id of Object.keys(facts)) {
    const { kind } = definition(rules, id);
    if (kind !== 'choice' && kind !== 'number') throw new Error(`${id} is worked out, it cannot be told`);
  }
  const values = bare({});
  for (const [id, value] of Object.entries(known)) {
    const { kind } = definition(rules, id);
    if (kind !== 'computed' && kind !== 'outcome') throw new Error(`${id} is neither computed nor decided`);
    values[id] = checked(rules, id, value);
  }
  const implied = new Map<string, string[]>();
  const told = (id: string) => (Object.hasOwn(facts, id) ? facts[id]?.value : undefined);
  const settle = (fact: FactDefinition): string => {
    const fromRows = worst(rules, fact, implied.get(fact.id) ?? []);
    if (fact.kind === 'choice') {
      const said = told(fact.id);
      if (said !== undefined && said !== unknown) return checked(rules, fact.id, said);
      return fromRows ?? fact.default ?? unknown;
    }
    if (fact.kind === 'band') {
      const said = told(fact.from);
      if (said === undefined || said === unknown) return fromRows ?? unknown;
      return bandOf(fact, typeof said === 'number' ? said : Number.NaN);
    }
    if (fact.kind === 'derived') return derivedValue(rules, fact, values[fact.from] ?? unknown);
    return values[fact.id] ?? unknown;
  };
  for (const id of rules.settleOrder) {
    const fact = definition(rules, id);
    if (fact.kind === 'number' || fact.kind === 'outcome') continue;
    const value = settle(fact);
    values[id] = value;
    if (fact.kind !== 'choice' || fact.table === undefined || value === unknown) continue;
    for (const [other, settled] of Object.entries(rules.row(fact.table, value).implies ?? {}))
      implied.set(other, [...(implied.get(other) ?? []), settled]);
  }
  return values;
}

/** The situation with further values: outcomes of earlier decisions, computed facts. */
export function withValues(
  rules: RuleSet,
  before: Situation,
  values: Readonly<Record<string, string>>,
): Situation {
  const after = bare(before);
  for (const [id, value] of Object.entries(values)) after[id] = checked(rules, id, value);
  return after;
}

/** What a decision sees: its inputs and no more, for one candidate if it is taken for each of several. */
export function view(
  rules: RuleSet,
  decision: Decision,
  whole: Situation,
  candidate: string | undefined,
): Situation {
  const { each } = decision;
  if (candidate !== undefined && each === undefined)
    throw new Error(`decision ${decision.decision} is not taken for each of anything`);
  const values = bare({});
  for (const id of decision.inputs) {
    const fact = definition(rules, id);
    if (candidate !== undefined && id === each) values[id] = checked(rules, id, candidate);
    else if (candidate !== undefined && fact.kind === 'derived' && fact.from === each)
      values[id] = derivedValue(rules, fact, candidate);
    else values[id] = seen(whole, id);
    if (!domainOf(rules, fact).includes(values[id] ?? '')) checked(rules, id, values[id] ?? '');
  }
  return values;
}

export const candidateOf = (decision: Decision, situation: Situation): string | undefined =>
  decision.each === undefined ? undefined : seen(situation, decision.each);
