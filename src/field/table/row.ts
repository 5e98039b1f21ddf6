/** One row of a table as a record, or why it cannot be one. Every cell is checked as told facts are. */
import type { FactValue } from '../../contracts/facts.ts';
import type { Phrase } from '../../contracts/phrase.ts';
import type { RecordBody } from '../../contracts/record.ts';
import { domain, impossible, type RuleSet } from '../../rules/index.ts';
import { isSpan } from '../anchor.ts';
import { dayIn, isFuture } from '../days.ts';
import { clashIn } from '../test-record.ts';
import type { Layout } from './layout.ts';
import { inUnit, numberIn } from './numbers.ts';
import type { Column } from './open.ts';

/** A value as somebody wrote it → the known value, 'unknown', or null where it means nothing for this fact. */
export type Know = (fact: string, text: string) => Promise<string | null>;

export type RowRead =
  | { readonly kind: 'record'; readonly body: RecordBody; readonly id: string | null }
  | { readonly kind: 'bad'; readonly why: Phrase };

const longestCell = 1000;
const longestText = 200;
const notTold = ['?', '-', 'unknown', 'n/a'];

const shown = (text: string): string => text.trim().slice(0, 40);

/** What was made harmless for a spreadsheet is read as it was. */
const asWritten = (cell: string): string => cell.replace(/^'(?='*[=+\-@\t\r])/, '').trim();

const bad = (say: string, fact: string, text = ''): RowRead => ({
  kind: 'bad',
  why: { say, with: { fact: { of: 'fact', id: fact }, text: shown(text) } },
});

function numberOf(rules: RuleSet, layout: Layout, { id, unit }: Column, text: string): FactValue | RowRead {
  const fact = rules.facts.get(id);
  const written = numberIn(text);
  if (fact?.kind !== 'number' || written === null) return bad('table-row-number', id, text);
  const value = inUnit(written, unit ?? fact.unit, fact.unit);
  const rounded = value === null ? Number.NaN : Math.round(value * 1000) / 1000;
  const also = layout.alsoAs[id];
  if (impossible(rules, id, rounded) || (also !== undefined && impossible(rules, also, rounded)))
    return bad('table-row-impossible', id, text);
  return rounded;
}

function textOfCell(layout: Layout, id: string, text: string, now: string): string | RowRead {
  const clean = text
    .replaceAll(/[\p{Cc}\p{Cf}]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  if (id !== 'day') return clean.slice(0, longestText);
  if (layout.kind === 'anchor' && isSpan(clean, now)) return clean;
  const day = dayIn(clean);
  if (day?.kind !== 'day' || day.text !== clean)
    return { kind: 'bad', why: { say: 'table-row-day', with: { text: shown(text) } } };
  if (isFuture(day.day, now))
    return { kind: 'bad', why: { say: 'table-row-future', with: { text: shown(text) } } };
  return day.day;
}

async function factOf(
  rules: RuleSet,
  layout: Layout,
  column: Column,
  text: string,
  know: Know,
): Promise<FactValue | RowRead> {
  const { id } = column;
  if (notTold.includes(text.toLowerCase())) return 'unknown';
  if (rules.facts.get(id)?.kind === 'number') return numberOf(rules, layout, column, text);
  if (domain(rules, id).includes(text)) return text;
  return (await know(id, text)) ?? bad('table-row-value', id, text);
}

/** A number that is not known says nothing; of a kind it is a fact that nobody knows it. */
const isLacking = (rules: RuleSet, value: FactValue | undefined, id: string): boolean =>
  value === undefined || value === '' || (value === 'unknown' && rules.facts.get(id)?.kind === 'number');

const isBad = (read: FactValue | RowRead): read is RowRead => typeof read === 'object' && 'kind' in read;

export async function readRow(
  rules: RuleSet,
  layout: Layout,
  columns: readonly (Column | null)[],
  cells: readonly string[],
  options: { readonly now: string; readonly know: Know },
): Promise<RowRead> {
  const facts: Record<string, FactValue> = {};
  const texts: Record<string, string> = {};
  let named: string | null = null;
  if (cells.length > columns.length && cells.slice(columns.length).some((cell) => cell.trim() !== ''))
    return { kind: 'bad', why: { say: 'table-row-too-wide' } };
  for (const [index, column] of columns.entries()) {
    const cell = cells[index] ?? '';
    if (cell.length > longestCell) return { kind: 'bad', why: { say: 'table-row-too-long' } };
    const text = asWritten(cell);
    if (column === null || text === '') continue;
    const { id } = column;
    if (id === 'id') named = text.toLowerCase();
    else if (layout.texts.includes(id)) {
      const read = textOfCell(layout, id, text, options.now);
      if (typeof read !== 'string') return read;
      texts[id] = read;
    } else {
      const read = await factOf(rules, layout, column, text, options.know);
      if (isBad(read)) return read;
      facts[id] = read;
    }
  }
  const lacking = layout.needed.find((id) => isLacking(rules, facts[id] ?? texts[id], id));
  if (lacking !== undefined)
    return layout.texts.includes(lacking)
      ? {
          kind: 'bad',
          why: { say: 'register-row-lacking', with: { what: { say: `record-name-${lacking}` } } },
        }
      : bad('table-row-lacking', lacking);
  const body: RecordBody = { facts, texts };
  const clash = clashIn(rules, body);
  if (clash !== null) return { kind: 'bad', why: { say: `table-row-clash-${clash}` } };
  return { kind: 'record', body, id: named };
}
