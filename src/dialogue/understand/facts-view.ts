import type { FactDefinition, TableFile } from '../../rules/schema.ts';

/** What understanding needs of the fact definitions; a loaded rule set has it. */
export interface FactsView {
  readonly facts: ReadonlyMap<string, FactDefinition>;
  readonly tables: ReadonlyMap<string, Pick<TableFile, 'rows'>>;
}

/** The values of a choice fact, worst first if the fact is ordered. */
export function valuesOf(view: FactsView, fact: string): readonly string[] {
  const definition = view.facts.get(fact);
  if (definition?.kind !== 'choice') return [];
  if (definition.table === undefined) return definition.values ?? [];
  return view.tables.get(definition.table)?.rows.map(({ id }) => id) ?? [];
}
