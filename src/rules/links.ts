import type { Definitions } from './domains.ts';
import { reachable } from './graph.ts';
import type { DecisionFile, FactDefinition, TableFile } from './schema.ts';

/** What points at what between facts, tables and decisions. */
type Facts = ReadonlyMap<string, FactDefinition>;
type Tables = ReadonlyMap<string, TableFile>;

/** Facts that a row of the fact's table settles. */
export function impliedBy(facts: Facts, tables: Tables, id: string): ReadonlySet<string> {
  const fact = facts.get(id);
  const table = fact?.kind === 'choice' && fact.table !== undefined ? tables.get(fact.table) : undefined;
  return new Set(table?.rows.flatMap((row) => Object.keys(row.implies ?? {})) ?? []);
}

const implying = new WeakMap<Tables, ReadonlyMap<string, readonly string[]>>();

/** Fact → the facts of which a row settles it. Worked out once for a set of tables: every advice asks for it. */
function impliers(facts: Facts, tables: Tables): ReadonlyMap<string, readonly string[]> {
  const known = implying.get(tables);
  if (known !== undefined) return known;
  const found = new Map<string, string[]>();
  for (const fact of facts.keys())
    for (const settled of impliedBy(facts, tables, fact))
      found.set(settled, [...(found.get(settled) ?? []), fact]);
  implying.set(tables, found);
  return found;
}

/** Facts on which the fact depends, so that they are settled before it. */
export function settledBefore(facts: Facts, tables: Tables, id: string): readonly string[] {
  const fact = facts.get(id);
  const base = fact?.kind === 'derived' ? [fact.from] : [];
  return [...base, ...(impliers(facts, tables).get(id) ?? [])];
}

/** Decisions whose outcomes the decision reads. */
export function earlierDecisions(facts: Facts, decision: DecisionFile): readonly string[] {
  const names = decision.reads.flatMap((id) => {
    const fact = facts.get(id);
    return fact?.kind === 'outcome' ? [fact.decision] : [];
  });
  return [...new Set(names)];
}

/** Facts that the decision depends on: what it reads, and what it is taken for. */
export const inputsOf = (decision: DecisionFile): readonly string[] => [
  ...new Set([...decision.reads, ...(decision.each === undefined ? [] : [decision.each])]),
];

/** Facts that can be told and on which the decision depends: through tables, bands, rows that imply, earlier decisions. */
export function basesOf({ facts, tables, decisions }: Definitions, name: string): readonly string[] {
  const under = (id: string): readonly string[] => {
    const fact = facts.get(id);
    const band = fact?.kind === 'band' ? [fact.from] : [];
    const decision = fact?.kind === 'outcome' ? decisions.get(fact.decision) : undefined;
    const read = decision === undefined ? [] : inputsOf(decision);
    return [...band, ...read, ...settledBefore(facts, tables, id)];
  };
  const decision = decisions.get(name);
  if (decision === undefined) throw new Error(`there is no decision "${name}"`);
  const all = new Set(inputsOf(decision).flatMap((id) => [id, ...reachable(id, under)]));
  return [...all].filter((id) => ['choice', 'number'].includes(facts.get(id)?.kind ?? ''));
}
