import { domainOf, knownValues, unknown } from '../domains.ts';
import { Entry, type Problem } from '../problems.ts';
import type { RuleFiles } from '../ruleset.ts';
import type { FactDefinition } from '../schema.ts';
import { definitionsOf } from './definitions.ts';

type Of<K extends FactDefinition['kind']> = Extract<FactDefinition, { kind: K }>;

export function checkFacts(files: RuleFiles): Problem[] {
  const problems: Problem[] = [];
  const definitions = definitionsOf(files);
  const { facts, tables, decisions } = definitions;
  const numbers = [...facts.values()].flatMap(({ id, kind }) => (kind === 'number' ? [id] : []));

  const choice = (fact: Of<'choice'>, report: Entry) => {
    if ((fact.table === undefined) === (fact.values === undefined))
      report.add('', 'a choice has either a table or values.', 'Keep one of the two.');
    if (fact.table !== undefined) {
      report.known('table', fact.table, [...tables.keys()], 'a table');
      if (fact.ordered === true)
        report.add('ordered', 'rows of a table have no order of their own.', 'Use worseThan in the rows.');
    }
    const values = knownValues(definitions, fact);
    if (fact.default !== undefined) report.known('default', fact.default, values, `a value of ${fact.id}`);
    if (fact.assume !== undefined) report.known('assume', fact.assume, values, `a value of ${fact.id}`);
    if (fact.default !== undefined && fact.assume !== undefined)
      report.add('assume', 'a fact with a default is never unknown, so nothing is assumed.', 'Take one out.');
  };

  const derived = (fact: Of<'derived'>, report: Entry) => {
    if (!report.known('from', fact.from, [...facts.keys()], 'a fact')) return;
    const base = facts.get(fact.from);
    const table = base?.kind === 'choice' && base.table !== undefined ? tables.get(base.table) : undefined;
    if (table === undefined) {
      report.add(
        'from',
        `${fact.from} has no table.`,
        'Name a choice fact whose values are rows of a table.',
      );
      return;
    }
    if (!report.known('column', fact.column, Object.keys(table.columns), `a column of ${table.table}`))
      return;
    const column = table.columns[fact.column];
    if (column?.type !== 'choice') {
      report.add('column', `column ${fact.column} is of type ${column?.type}.`, 'It must be a choice.');
      return;
    }
    const missing = column.values.filter((value) => !fact.values.includes(value));
    const more = fact.values.filter((value) => !column.values.includes(value));
    if (missing.length + more.length > 0)
      report.add(
        'values',
        `the values differ from those of the column: ${[...missing, ...more].join(', ')}.`,
        'List the same values, worst first.',
      );
  };

  const band = (fact: Of<'band'>, report: Entry) => {
    report.known('from', fact.from, numbers, 'a number fact');
    let last = Number.NEGATIVE_INFINITY;
    for (const [place, step] of fact.steps.entries()) {
      const limit = 'below' in step ? step.below : step.upTo;
      // "below 5" and then "up to 5" cuts out the value 5 itself.
      if (limit < last || (limit === last && 'below' in step))
        report.add(`steps[${place}]`, `the limit ${limit} does not rise above ${last}.`, 'Sort the steps.');
      last = limit;
    }
  };

  const outcome = (fact: Of<'outcome'>, report: Entry) => {
    if (!report.known('decision', fact.decision, [...decisions.keys()], 'a decision')) return;
    const decision = decisions.get(fact.decision);
    if (!report.known('outcome', fact.outcome, Object.keys(decision?.outcomes ?? {}), 'one of its outcomes'))
      return;
    if (decision?.each !== undefined)
      report.add(
        'decision',
        `${fact.decision} is taken once for each ${decision.each}.`,
        'Its outcome is no fact.',
      );
    if (decision?.outcomes[fact.outcome]?.combine === 'all')
      report.add('outcome', `${fact.outcome} gathers many values.`, 'Only one value can be a fact.');
  };

  for (const fact of facts.values()) {
    const report = new Entry(problems, 'facts.json', `fact ${fact.id}`);
    if (fact.kind === 'choice') choice(fact, report);
    if (fact.kind === 'derived') derived(fact, report);
    if (fact.kind === 'band') band(fact, report);
    if (fact.kind === 'outcome') outcome(fact, report);
    if ('of' in fact && fact.of !== undefined) report.known('of', fact.of, [...facts.keys()], 'a fact');
    if (fact.kind === 'number') {
      if (!(fact.possible[0] < fact.possible[1]))
        report.add('possible', 'the lower limit is not below the upper.', 'Turn the two round.');
      continue;
    }
    const values = knownValues(definitions, fact);
    if (new Set(values).size < values.length) report.add('values', 'a value stands twice.', 'Take one out.');
    if (values.includes(unknown)) report.add('values', `"${unknown}" is added by itself.`, 'Take it out.');
    if (values.length === 0) continue;
    for (const value of Object.keys(fact.labels ?? {}))
      report.known(`labels.${value}`, value, domainOf(definitions, fact), `a value of ${fact.id}`);
  }
  for (const relation of files.facts.relations) {
    const report = new Entry(problems, 'facts.json', `relation ${relation.id}`);
    for (const [place, id] of relation.lessOrEqual.entries())
      report.known(`lessOrEqual[${place}]`, id, numbers, 'a number fact');
  }
  return problems;
}
