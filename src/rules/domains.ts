import type { DecisionFile, FactDefinition, TableFile } from './schema.ts';

export const unknown = 'unknown';

/** What the meaning of a value depends on. */
export interface Definitions {
  readonly facts: ReadonlyMap<string, FactDefinition>;
  readonly tables: ReadonlyMap<string, TableFile>;
  readonly decisions: ReadonlyMap<string, DecisionFile>;
}

/** The values that can be told, in the order of the file; empty for a number and for a broken reference. */
export function knownValues(definitions: Definitions, fact: FactDefinition): readonly string[] {
  switch (fact.kind) {
    case 'choice':
      if (fact.table === undefined) return fact.values ?? [];
      return definitions.tables.get(fact.table)?.rows.map((row) => row.id) ?? [];
    case 'derived':
    case 'computed':
      return fact.values;
    case 'band':
      return [...fact.steps.map((step) => step.value), fact.last];
    case 'outcome':
      return definitions.decisions.get(fact.decision)?.outcomes[fact.outcome]?.values ?? [];
    case 'number':
      return [];
  }
}

const canBeUnknown = (fact: FactDefinition): boolean =>
  fact.kind === 'choice' ? fact.default === undefined : fact.kind !== 'outcome' && fact.kind !== 'number';

/** Every value that a rule may see; 'unknown' stands last. */
export function domainOf(definitions: Definitions, fact: FactDefinition): readonly string[] {
  const values = knownValues(definitions, fact);
  return canBeUnknown(fact) ? [...values, unknown] : values;
}

export function definition(definitions: Definitions, id: string): FactDefinition {
  const fact = definitions.facts.get(id);
  if (fact === undefined) throw new Error(`there is no fact "${id}"`);
  return fact;
}

export const domain = (definitions: Definitions, id: string): readonly string[] =>
  domainOf(definitions, definition(definitions, id));

/** Whether the values stand from worst to best. An outcome always does. */
export const isOrdered = (fact: FactDefinition): boolean =>
  fact.kind === 'outcome' || ('ordered' in fact && fact.ordered === true);

/** The value to take, aloud, when nobody told it; null when there is none to take. */
export function assumable(definitions: Definitions, id: string): string | null {
  const fact = definition(definitions, id);
  return fact.kind === 'choice' ? (fact.assume ?? null) : null;
}
