import { inOrder } from '../graph.ts';
import { earlierDecisions, settledBefore } from '../links.ts';
import { Entry, type Problem } from '../problems.ts';
import type { RuleFiles } from '../ruleset.ts';
import { definitionsOf } from './definitions.ts';

/** Orders that run in a circle: of rows, of exceptions, of facts that settle each other, of decisions. */
export function checkCircles(files: RuleFiles): Problem[] {
  const problems: Problem[] = [];
  const { facts, tables, decisions } = definitionsOf(files);
  const look = (
    file: string,
    path: string,
    names: Iterable<string>,
    next: (name: string) => Iterable<string>,
  ) => {
    const found = inOrder(names, next);
    if (!found.ok)
      new Entry(problems, file, '').add(
        path,
        `a circle: ${found.circle.join(' → ')}.`,
        'Cut it at one place.',
      );
  };
  for (const { table, rows } of files.tables) {
    const milder = new Map(rows.map((row) => [row.id, row.worseThan ?? []]));
    look(`tables/${table}.json`, 'worseThan', milder.keys(), (id) => milder.get(id) ?? []);
  }
  for (const { decision, rules } of files.decisions) {
    const out = new Map(rules.map((rule) => [rule.id, rule.overrides ?? []]));
    look(`decisions/${decision}.json`, 'overrides', out.keys(), (id) => out.get(id) ?? []);
  }
  look('facts.json', 'implies', facts.keys(), (id) => settledBefore(facts, tables, id));
  look('decisions/', 'reads', decisions.keys(), (name) => {
    const decision = decisions.get(name);
    return decision === undefined ? [] : earlierDecisions(facts, decision);
  });
  return problems;
}
