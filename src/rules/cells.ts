import type { Row } from './ruleset.ts';

/** Typed reading of a row. A cell that is empty or of another type is a slip of the program: it throws. */
function wrong(row: Row, column: string, wanted: string): Error {
  return new Error(
    row.is[column] === undefined
      ? `row ${row.id} has no ${column}`
      : `row ${row.id}: ${column} is not a ${wanted}`,
  );
}

export const hasCell = (row: Row, column: string): boolean => row.is[column] !== undefined;

export function numberCell(row: Row, column: string): number {
  const value = row.is[column];
  if (typeof value !== 'number') throw wrong(row, column, 'number');
  return value;
}

export function rangeCell(row: Row, column: string): readonly [number, number] {
  const value = row.is[column];
  if (!Array.isArray(value)) throw wrong(row, column, 'range');
  return value;
}

export function textCell(row: Row, column: string): string {
  const value = row.is[column];
  if (typeof value !== 'string') throw wrong(row, column, 'text');
  return value;
}

export function flagCell(row: Row, column: string): boolean {
  const value = row.is[column];
  if (typeof value !== 'boolean') throw wrong(row, column, 'flag');
  return value;
}
