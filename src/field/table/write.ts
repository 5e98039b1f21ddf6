/** Records as a CSV file that a spreadsheet opens and this program reads again. */
import { stringify } from 'csv-stringify/sync';
import type { FactValue } from '../../contracts/facts.ts';
import type { ClubRecord } from '../../contracts/record.ts';
import type { RuleSet } from '../../rules/index.ts';
import type { Layout } from './layout.ts';
import type { TableWords } from './words.ts';

/** An apostrophe that a member wrote before such a mark stays one when the file is read again. */
const cellOf = (value: FactValue | string | undefined): string =>
  value === undefined ? '' : String(value).replace(/^(?='+[=+\-@])/, "'");

function headingOf(rules: RuleSet, words: TableWords, language: string, id: string): string {
  const names = words.columns[id];
  const [name = id] = names?.[language] ?? names?.en ?? [];
  const fact = rules.facts.get(id);
  const unit = fact?.kind === 'number' && fact.unit !== '1' ? ` [${fact.unit}]` : '';
  return `${name}${unit}`;
}

/** Values stand as their ids, which are the same in every language; a cell that a spreadsheet would run is made harmless. */
export function writeTable(
  rules: RuleSet,
  words: TableWords,
  layout: Layout,
  records: readonly ClubRecord[],
  language: string,
): string {
  const columns = ['id', ...layout.facts, ...layout.texts];
  const heading = columns.map((id) => headingOf(rules, words, language, id));
  const rows = records.map(({ id, body }) =>
    columns.map((column) => (column === 'id' ? id : cellOf(body.facts[column] ?? body.texts[column]))),
  );
  return stringify([heading, ...rows], { bom: true, escape_formulas: true, record_delimiter: 'windows' });
}
