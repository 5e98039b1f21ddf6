/** Finds the table of numbers among the first lines of a file: separator, where it begins, the header above it. */
import { cellsOf, isClock, isDate, isFormula, isReading, type Separator, separators } from './cells.ts';
import { isUnitCell } from './names.ts';
import { RecordingError } from './problem.ts';

export interface Table {
  readonly separator: Separator;
  readonly columns: number;
  /** Index of the first line with numbers. */
  readonly first: number;
  readonly rows: readonly (readonly string[])[];
  readonly header: readonly string[];
  /** Index of the header line; the row of units, if any, is one below. */
  readonly headerLine: number;
  readonly units: readonly string[] | null;
}

/** Enough of the table to learn how it is written. */
const mostRows = 1000;
const fewestRows = 3;

interface Run {
  readonly separator: Separator;
  readonly columns: number;
  readonly first: number;
  readonly rows: readonly (readonly string[])[];
  /** Share of cells that are readings. */
  readonly clean: number;
}

const readings = (cells: readonly string[]): number => cells.filter(isReading).length;
const isRow = (cells: readonly string[]): boolean => {
  const filled = cells.filter((cell) => cell !== '');
  return filled.length > 0 && readings(filled) * 2 >= filled.length && readings(filled) > 0;
};

/** Stretches of lines that look like rows of one table. Empty lines do not end one. */
function runsOf(lines: readonly string[], separator: Separator): Run[] {
  const runs: Run[] = [];
  let rows: string[][] = [];
  let first = 0;
  const close = (): void => {
    const cells = rows.flat();
    if (rows.length >= fewestRows)
      runs.push({
        separator,
        columns: rows[0]?.length ?? 0,
        first,
        rows,
        clean: readings(cells) / cells.length,
      });
    rows = [];
  };
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue;
    const cells = cellsOf(line, separator);
    if (rows.length > 0 && (cells.length !== rows[0]?.length || !isRow(cells))) close();
    if (rows.length === 0) {
      if (!isRow(cells)) continue;
      first = index;
    }
    rows.push(cells);
    if (rows.length >= mostRows) break;
  }
  close();
  return runs;
}

interface Found {
  readonly run: Run;
  readonly above: ReturnType<typeof above>;
}

/** The longest run, or the first one under the same header: a table may come in parts, one for each pull. */
function tableBy(lines: readonly string[], separator: Separator): Found | null {
  const runs = runsOf(lines, separator).map((run) => ({ run, above: above(lines, run) }));
  const [longest] = runs.toSorted((a, b) => b.run.rows.length - a.run.rows.length);
  if (longest === undefined) return null;
  const same = runs.find(
    (one) =>
      one.run.columns === longest.run.columns && one.above?.header.join() === longest.above?.header.join(),
  );
  return longest.above === null ? longest : (same ?? longest);
}

/** Names in a line parted by blanks may hold blanks themselves: "Time (s)  Load (kN)". */
function headerCells(line: string, { separator, columns }: Run): string[] {
  if (separator !== ' ') return cellsOf(line, separator);
  const tries = [
    line.trim().split(/\s{2,}|\t/),
    cellsOf(line, ' '),
    line.trim().match(/[^\s[(]+(?:\s*[[(][^\])]*[\])])?/g) ?? [],
    line.trim().match(/[^[(]+[[(][^\])]*[\])]/g) ?? [],
  ];
  const fits = tries.find((cells) => cells.length === columns || cells.length === columns - 1);
  return (fits ?? []).map((cell) => cell.trim());
}

/** Date and clock parted by a blank may stand under one name. */
const isHeader = (cells: readonly string[], { columns, rows }: Run): boolean =>
  (cells.length === columns ||
    (cells.length === columns - 1 && isDate(rows[0]?.[0] ?? '') && isClock(rows[0]?.[1] ?? ''))) &&
  cells.some((cell) => /\p{L}/u.test(cell) || cell === '#');

function above(lines: readonly string[], run: Run): Pick<Table, 'header' | 'headerLine' | 'units'> | null {
  const filled: number[] = [];
  for (let index = run.first - 1; index >= 0 && filled.length < 2; index -= 1)
    if ((lines[index] as string).trim() !== '') filled.push(index);
  const [near, far] = filled;
  if (near === undefined) return null;
  const cells = headerCells(lines[near] as string, run);
  if (!isHeader(cells, run)) return null;
  if (far !== undefined && cells.every(isUnitCell)) {
    const header = headerCells(lines[far] as string, run);
    if (isHeader(header, run) && header.length === cells.length)
      return { header, headerLine: far, units: cells };
  }
  return { header: cells, headerLine: near, units: null };
}

export function findTable(lines: readonly string[]): Table {
  const found = separators.flatMap((separator) => {
    return tableBy(lines, separator) ?? [];
  });
  found.sort(
    (a, b) =>
      Number(b.above !== null) - Number(a.above !== null) ||
      Number(b.run.columns > 1) - Number(a.run.columns > 1) ||
      Math.round((b.run.clean - a.run.clean) * 50) ||
      b.run.rows.length - a.run.rows.length,
  );
  const [best] = found;
  if (best === undefined) throw new RecordingError('no-table');
  if (best.above === null) throw new RecordingError('no-header', best.run.first + 1);
  if (best.above.header.some(isFormula)) throw new RecordingError('formula', best.above.headerLine + 1);
  return { ...best.run, ...best.above };
}
