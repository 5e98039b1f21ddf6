import type { RuleSet } from './ruleset.ts';

/** Typed reading of a table. A cell that is empty or of another type is a slip of the program: it throws. */
function cell(rules: RuleSet, table: string, row: string, column: string) {
  const value = rules.row(table, row).is[column];
  if (value === undefined) throw new Error(`table ${table}, row ${row} has no ${column}`);
  return value;
}

const wrongType = (table: string, column: string, wanted: string) =>
  new Error(`column ${column} of table ${table} is not a ${wanted}`);

export const hasCell = (rules: RuleSet, table: string, row: string, column: string): boolean =>
  rules.row(table, row).is[column] !== undefined;

export function numberCell(rules: RuleSet, table: string, row: string, column: string): number {
  const value = cell(rules, table, row, column);
  if (typeof value !== 'number') throw wrongType(table, column, 'number');
  return value;
}

export function rangeCell(
  rules: RuleSet,
  table: string,
  row: string,
  column: string,
): readonly [number, number] {
  const value = cell(rules, table, row, column);
  if (!Array.isArray(value)) throw wrongType(table, column, 'range');
  return value;
}

export function textCell(rules: RuleSet, table: string, row: string, column: string): string {
  const value = cell(rules, table, row, column);
  if (typeof value !== 'string') throw wrongType(table, column, 'text');
  return value;
}

export function flagCell(rules: RuleSet, table: string, row: string, column: string): boolean {
  const value = cell(rules, table, row, column);
  if (typeof value !== 'boolean') throw wrongType(table, column, 'flag');
  return value;
}
