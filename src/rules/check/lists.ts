import { Entry, type Problem } from '../problems.ts';
import type { RuleFiles } from '../ruleset.ts';

function repeated(ids: readonly string[]): readonly string[] {
  return [...new Set(ids.filter((id, place) => ids.indexOf(id) !== place))];
}

const rename = 'Rename one of the two.';

/** Ids that must be unique, each over its whole kind. */
export function checkLists(files: RuleFiles): Problem[] {
  const problems: Problem[] = [];
  const unique = (file: string, what: string, ids: readonly string[]) => {
    for (const id of repeated(ids))
      new Entry(problems, file, `${what} ${id}`).add('id', 'the id is used twice.', rename);
  };
  unique(
    'facts.json',
    'fact',
    files.facts.facts.map(({ id }) => id),
  );
  unique(
    'facts.json',
    'relation',
    files.facts.relations.map(({ id }) => id),
  );
  unique(
    'sources.json',
    'source',
    files.sources.map(({ id }) => id),
  );
  unique(
    'cautions/',
    'caution',
    files.cautions.map(({ id }) => id),
  );
  const ruleIds = files.decisions.flatMap(({ rules }) => rules.map(({ id }) => id));
  for (const id of repeated(ruleIds)) {
    const homes = files.decisions.filter(({ rules }) => rules.some((rule) => rule.id === id));
    const names = homes.map(({ decision }) => `decisions/${decision}.json`);
    new Entry(problems, names.join(' and '), `rule ${id}`).add('id', 'the id is used twice.', rename);
  }
  for (const { table, rows } of files.tables)
    unique(
      `tables/${table}.json`,
      'row',
      rows.map(({ id }) => id),
    );

  const sources = files.sources.map(({ id }) => id);
  const cited = (file: string, entry: string, ids: readonly string[]) => {
    const report = new Entry(problems, file, entry);
    for (const [place, id] of ids.entries()) report.known(`sources[${place}]`, id, sources, 'a source');
  };
  for (const { table, rows } of files.tables)
    for (const row of rows) cited(`tables/${table}.json`, `row ${row.id}`, row.sources);
  for (const { decision, rules } of files.decisions)
    for (const rule of rules) cited(`decisions/${decision}.json`, `rule ${rule.id}`, rule.sources);
  for (const caution of files.cautions) cited('cautions/', `caution ${caution.id}`, caution.sources);
  return problems;
}
