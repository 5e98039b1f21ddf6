/** A file or a paste as rows of cells, its heading understood. What is no such table is left to others. */
import { dsvFormat } from 'd3-dsv';
import type { Phrase } from '../../contracts/phrase.ts';
import type { RuleSet } from '../../rules/index.ts';
import type { Layout } from './layout.ts';
import { inUnit } from './numbers.ts';
import { columnNamed, type TableWords, unitSpelt } from './words.ts';

export const mostBytes = 5_000_000;
export const mostRows = 10_000;
const separators = [',', ';', '\t', '|'] as const;
const longestHeading = 4000;

export interface Column {
  readonly id: string;
  /** Of a number; null for words. */
  readonly unit: string | null;
}

export interface OpenTable {
  readonly columns: readonly (Column | null)[];
  readonly rows: readonly { readonly number: number; readonly cells: readonly string[] }[];
  /** Headings that are not known. */
  readonly left: readonly string[];
}

export type Opened =
  | { readonly kind: 'table'; readonly table: OpenTable }
  | { readonly kind: 'refused'; readonly why: Phrase }
  | { readonly kind: 'other' };

/** UTF-8, or what older spreadsheets write; null for what is no text. */
export function textOf(bytes: Uint8Array): string | null {
  if (bytes.includes(0)) return null;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

interface Heading {
  readonly name: string;
  readonly unit: string | null;
}

/** "Peak load (lbf)", "length [in]". */
function headingOf(cell: string): Heading {
  const [, name = '', unit = ''] = /^(.*?)\s*[([]\s*([^()[\]]+?)\s*[)\]]\s*$/s.exec(cell) ?? [];
  return name === '' ? { name: cell.trim(), unit: null } : { name, unit };
}

const numberUnit = (rules: RuleSet, column: string): string | null => {
  const fact = rules.facts.get(column);
  return fact?.kind === 'number' ? fact.unit : null;
};

function columnsOf(
  rules: RuleSet,
  words: TableWords,
  layout: Layout,
  cells: readonly string[],
): { columns: (Column | null)[]; left: string[]; why: Phrase | null } {
  const known = ['id', ...layout.facts, ...layout.texts];
  const columns: (Column | null)[] = [];
  const left: string[] = [];
  let why: Phrase | null = null;
  for (const cell of cells) {
    const whole = columnNamed(words, cell);
    const { name, unit } = whole === undefined ? headingOf(cell) : { name: cell, unit: null };
    const id = columnNamed(words, name);
    if (id === undefined || !known.includes(id)) {
      columns.push(null);
      if (cell.trim() !== '') left.push(cell.trim().slice(0, 40));
      continue;
    }
    const own = numberUnit(rules, id);
    const spelt = unit === null ? undefined : unitSpelt(words, unit);
    const column = { column: cell.trim().slice(0, 60) };
    if (columns.some((one) => one?.id === id)) why ??= { say: 'table-column-twice', with: column };
    else if (own !== null && own !== '1' && unit === null)
      why ??= { say: 'table-unit-missing', with: column };
    else if (own !== null && unit !== null && (spelt === undefined || inUnit(1, spelt, own) === null))
      why ??= { say: 'table-unit-unknown', with: column };
    columns.push({ id, unit: spelt ?? own });
  }
  return { columns, left, why };
}

const told = (columns: readonly (Column | null)[]): number => columns.filter((one) => one !== null).length;

function isOurs(layout: Layout, columns: readonly (Column | null)[]): boolean {
  const ids = columns.flatMap((one) => one?.id ?? []);
  const beside = ids.filter((id) => !layout.needed.includes(id) && id !== 'id');
  return layout.needed.every((id) => ids.includes(id)) && beside.length >= layout.atLeast;
}

/** The heading line decides by which separator it is known best. */
export function openTable(rules: RuleSet, words: TableWords, layout: Layout, text: string): Opened {
  const clean = text.replace(/^\uFEFF/, '').replace(/^\s*\n/, '');
  const end = clean.search(/[\r\n]/);
  const heading = clean.slice(0, end < 0 ? clean.length : end);
  if (end < 0 || heading.length > longestHeading) return { kind: 'other' };
  const readings = separators.map((separator) => {
    const [cells = []] = dsvFormat(separator).parseRows(heading);
    return { separator, ...columnsOf(rules, words, layout, cells) };
  });
  const best = readings.reduce((one, other) => (told(other.columns) > told(one.columns) ? other : one));
  const { columns, left, why, separator } = best;
  if (!isOurs(layout, columns)) return { kind: 'other' };
  if (why !== null) return { kind: 'refused', why };
  // What a member cannot see in a spreadsheet is no row.
  const rows = dsvFormat(separator)
    .parseRows(clean)
    .map((cells, index) => ({ number: index + 1, cells }))
    .slice(1)
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  if (rows.length > mostRows)
    return { kind: 'refused', why: { say: 'table-too-many', with: { most: mostRows } } };
  if (rows.length === 0) return { kind: 'refused', why: { say: 'table-empty' } };
  return { kind: 'table', table: { columns, rows, left } };
}
