import { factsIn } from './conditions.ts';
import type { Definitions } from './domains.ts';

import { inOrder } from './graph.ts';
import { type GuardedEngine, guardedEngine } from './guard.ts';
import { hashOf } from './hash.ts';
import { basesOf, inputsOf, settledBefore } from './links.ts';
import { compileRules, type Masks } from './masks.ts';
import type { Caution, DecisionFile, FactsFile, RuleEntry, Source, TableFile } from './schema.ts';

export type Row = TableFile['rows'][number];

/** A decision, with both evaluators of its one text. */
export interface Decision extends DecisionFile {
  readonly inputs: readonly string[];
  /** Facts that can be told and on which it depends. */
  readonly bases: readonly string[];
  /** Rule → the facts that its condition reads. */
  readonly factsOf: ReadonlyMap<string, readonly string[]>;
  readonly masks: Masks;
  readonly engine: GuardedEngine;
}

export interface RuleSet extends Definitions {
  /** First twelve hexadecimal digits of SHA-256 over the canonical text of all rule files. */
  readonly hash: string;
  readonly relations: FactsFile['relations'];
  readonly decisions: ReadonlyMap<string, Decision>;
  /** Facts, each after those that settle it. */
  readonly settleOrder: readonly string[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
  decision(name: string): Decision;
  table(name: string): TableFile;
  row(table: string, id: string): Row;
  rule(id: string): RuleEntry & { readonly decision: string };
  caution(id: string): Caution;
  source(id: string): Source;
}

/** The content of a rules folder, valid by shape. */
export interface RuleFiles {
  readonly facts: FactsFile;
  readonly tables: readonly TableFile[];
  readonly decisions: readonly DecisionFile[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
  /** Path → content as read, for the hash. */
  readonly contents: ReadonlyMap<string, unknown>;
}

const by = <T>(items: readonly T[], key: (item: T) => string): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [key(item), item]));

function look<T>(map: ReadonlyMap<string, T>, id: string, what: string): T {
  const found = map.get(id);
  if (found === undefined) throw new Error(`there is no ${what} "${id}"`);
  return found;
}

/** Expects files that passed every cross-check. */
export function assemble(files: RuleFiles): RuleSet {
  const facts = by(files.facts.facts, (fact) => fact.id);
  const tables = by(files.tables, (table) => table.table);
  const plain = by(files.decisions, (decision) => decision.decision);
  const definitions: Definitions = { facts, tables, decisions: plain };
  const settled = inOrder(facts.keys(), (id) => settledBefore(facts, tables, id));
  if (!settled.ok) throw new Error(`facts settle each other in a circle: ${settled.circle.join(', ')}`);
  const decisions = by(
    files.decisions.map((decision): Decision => {
      const inputs = inputsOf(decision);
      const masks = compileRules(definitions, decision.rules, inputs);
      const factsOf = new Map(decision.rules.map((rule) => [rule.id, factsIn(rule.when)]));
      return {
        ...decision,
        inputs,
        factsOf,
        masks,
        bases: basesOf(definitions, decision.decision),
        engine: guardedEngine(definitions, decision),
      };
    }),
    (decision) => decision.decision,
  );
  const entries = by(
    files.decisions.flatMap((file) => file.rules.map((rule) => ({ ...rule, decision: file.decision }))),
    (rule) => rule.id,
  );
  const cautions = by(files.cautions, (caution) => caution.id);
  const sources = by(files.sources, (source) => source.id);
  const rows = by(
    files.tables.flatMap(({ table, rows }) => rows.map((row) => ({ key: `${table}/${row.id}`, row }))),
    ({ key }) => key,
  );
  return {
    facts,
    tables,
    decisions,
    hash: hashOf(files.contents),
    relations: files.facts.relations,
    settleOrder: settled.order,
    cautions: files.cautions.toSorted((a, b) => a.order - b.order),
    sources: files.sources,
    table: (name) => look(tables, name, 'table'),
    row: (table, id) => look(rows, `${table}/${id}`, 'row').row,
    rule: (id) => look(entries, id, 'rule'),
    caution: (id) => look(cautions, id, 'caution'),
    source: (id) => look(sources, id, 'source'),
    decision: (name) => look(decisions, name, 'decision'),
  };
}
