import type { Definitions } from '../domains.ts';
import type { RuleFiles } from '../ruleset.ts';

export const definitionsOf = (files: RuleFiles): Definitions => ({
  facts: new Map(files.facts.facts.map((fact) => [fact.id, fact])),
  tables: new Map(files.tables.map((table) => [table.table, table])),
  decisions: new Map(files.decisions.map((decision) => [decision.decision, decision])),
});
