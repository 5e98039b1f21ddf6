import { domainOf, isOrdered, knownValues, unknown } from '../domains.ts';
import { impliedBy } from '../links.ts';
import { Entry, type Problem, suggestion } from '../problems.ts';
import type { RuleFiles } from '../ruleset.ts';
import type { TableFile } from '../schema.ts';
import { definitionsOf } from './definitions.ts';

type Column = TableFile['columns'][string];
type Cell = TableFile['rows'][number]['is'][string];

/** What is wrong with a cell, or null. A choice may be left open, but only outright, as "unknown". */
function misfit(column: Column, cell: Cell): string | null {
  switch (column.type) {
    case 'number':
      return typeof cell === 'number' ? null : 'a number';
    case 'range':
      return Array.isArray(cell) && cell[0] <= cell[1] ? null : 'a range, [lowest, highest]';
    case 'text':
      return typeof cell === 'string' ? null : 'a text';
    case 'flag':
      return typeof cell === 'boolean' ? null : 'true or false';
    case 'choice':
      return typeof cell === 'string' && [...column.values, unknown].includes(cell)
        ? null
        : 'one of the values of the column';
  }
}

export function checkTables(files: RuleFiles): Problem[] {
  const problems: Problem[] = [];
  const definitions = definitionsOf(files);
  const { facts } = definitions;

  /** A row may speak of facts that are told or banded; what is derived or decided is not its to settle. */
  const spokenOf = (report: Entry, path: string, id: string, values: readonly string[], kinds: string[]) => {
    if (!report.known(path, id, [...facts.keys()], 'a fact')) return;
    const fact = facts.get(id);
    if (fact === undefined) return;
    if (!kinds.includes(fact.kind)) {
      report.add(
        path,
        `${id} is a fact of kind ${fact.kind}.`,
        `Only ${kinds.join(' and ')} can stand here.`,
      );
      return;
    }
    for (const value of values) report.known(path, value, knownValues(definitions, fact), `a value of ${id}`);
  };

  for (const { table, columns, rows } of files.tables) {
    const file = `tables/${table}.json`;
    const ids = rows.map(({ id }) => id);
    const needed = Object.keys(columns).filter((name) => columns[name]?.type === 'choice');
    for (const row of rows) {
      const report = new Entry(problems, file, `row ${row.id}`);
      for (const [name, cell] of Object.entries(row.is)) {
        const column = columns[name];
        if (!report.known(`is.${name}`, name, Object.keys(columns), 'a column') || column === undefined)
          continue;
        const wanted = misfit(column, cell);
        if (wanted === null) continue;
        const mend = column.type === 'choice' ? suggestion(String(cell), column.values) : '';
        report.add(`is.${name}`, `${JSON.stringify(cell)} is not ${wanted}.`, mend);
      }
      for (const name of needed)
        if (row.is[name] === undefined)
          report.add(
            `is.${name}`,
            'the value is missing.',
            `Give it, or "${unknown}", which counts as worse.`,
          );
      for (const [place, milder] of (row.worseThan ?? []).entries())
        report.known(`worseThan[${place}]`, milder, ids, `a row of ${table}`);
      for (const [id, value] of Object.entries(row.implies ?? {}))
        spokenOf(report, `implies.${id}`, id, [value], ['choice', 'band']);
      for (const [id, values] of Object.entries(row.allows ?? {}))
        spokenOf(report, `allows.${id}`, id, values, ['choice', 'band', 'derived']);
      for (const [id, value] of Object.entries(row.implies ?? {}))
        if (row.allows?.[id]?.includes(value) === false)
          report.add(
            `implies.${id}`,
            `the row implies "${value}" and does not allow it.`,
            'Make the two agree.',
          );
    }
  }
  for (const fact of facts.values()) {
    const settlers = [...facts.keys()].filter((id) => impliedBy(facts, definitions.tables, id).has(fact.id));
    if (settlers.length > 1 && !isOrdered(fact) && domainOf(definitions, fact).length > 1)
      new Entry(problems, 'facts.json', `fact ${fact.id}`).add(
        '',
        `rows of ${settlers.join(' and ')} imply it, and there is no order to tell which is worse.`,
        'Let one of them imply it, or order its values.',
      );
  }
  return problems;
}
