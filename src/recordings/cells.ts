/** A line taken apart, for the first lines of a file only: the rows proper are read byte by byte. */

export type Separator = ';' | '\t' | '|' | ',' | ' ';
export const separators: readonly Separator[] = [';', '\t', '|', ',', ' '];

const unquoted = (cell: string): string =>
  cell
    .trim()
    .replace(/^"(.*)"$/s, '$1')
    .trim();

export function cellsOf(line: string, separator: Separator): string[] {
  if (separator === ' ')
    return line
      .trim()
      .split(/[ \t]+/)
      .map(unquoted);
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (const letter of line) {
    if (letter === '"') quoted = !quoted;
    if (letter === separator && !quoted) {
      cells.push(unquoted(cell));
      cell = '';
    } else cell += letter;
  }
  cells.push(unquoted(cell));
  // Some loggers end each row with a separator.
  if (cells.length > 1 && cells.at(-1) === '') cells.pop();
  return cells;
}

const number = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?$/i;
const numberAndUnit = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?)\s*(\p{L}{1,4})$/iu;
const clock =
  /^(?:[\d./-]{6,10}[T ]\s*)?\d{1,2}:\d{2}(?::\d{2}(?:[.,:]\d+)?|[.,]\d+)?\s*(?:[ap]m)?(?:z|[+-]\d{2}:?\d{2})?$/i;
const date = /^(?:\d{4}[-./]\d{1,2}[-./]\d{1,2}|\d{1,2}[-./]\d{1,2}[-./]\d{2,4})$/;

export const isNumber = (cell: string): boolean => number.test(cell);
export const isClock = (cell: string): boolean => clock.test(cell);
export const isDate = (cell: string): boolean => date.test(cell);
/** "12.4 kN" → "kN". */
export const unitAfter = (cell: string): string | null => numberAndUnit.exec(cell)?.[2] ?? null;
export const isFormula = (cell: string): boolean => /^[=@]/.test(cell) || /^[+-][A-Za-z]/.test(cell);
export const isReading = (cell: string): boolean =>
  isNumber(cell) || isClock(cell) || isDate(cell) || unitAfter(cell) !== null;
