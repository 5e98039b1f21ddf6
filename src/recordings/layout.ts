/** How the rows of a file are to be read: learnt once from its first lines, then followed strictly. */
import { type ForceUnit, type LengthUnit, toKn, toMm } from '../units/convert.ts';
import { isClock, isDate, isNumber, unitAfter } from './cells.ts';
import {
  forceUnitIn,
  forceUnitStated,
  lengthUnitIn,
  namesExtreme,
  namesForce,
  namesMove,
  namesSample,
  namesTime,
  rateIn,
  secondsIn,
} from './names.ts';
import { RecordingError } from './problem.ts';
import type { Table } from './table.ts';

export interface Layout {
  readonly separator: string;
  readonly decimal: '.' | ',';
  readonly time:
    | { readonly kind: 'number'; readonly column: number; readonly seconds: number }
    | { readonly kind: 'clock'; readonly column: number; readonly dateColumn: number | null }
    | { readonly kind: 'rows'; readonly seconds: number };
  readonly force: {
    readonly column: number;
    readonly unit: ForceUnit;
    readonly kn: number;
    /** The unit that stands behind each number, if it does. */
    readonly beside: string | null;
  };
  readonly move: { readonly column: number; readonly mm: number } | null;
  /** Index of the first row and of the header, which may come again before a further pull. */
  readonly first: number;
  readonly headerLine: number;
  /** Rows begin with a word, such as a status. */
  readonly textFirst: boolean;
}

interface Heading {
  readonly name: string;
  /** Name with the unit from the row below. */
  readonly text: string;
  readonly cells: readonly string[];
}

function headings(table: Table): Heading[] {
  // "2026-05-01 10:00:00.5 1.2" parted by blanks: one name above date and clock.
  const shift = table.columns - table.header.length;
  return Array.from({ length: table.columns }, (_, column) => {
    const from = column === 0 ? 0 : column - shift;
    const name = table.header[from] ?? '';
    const unit = table.units?.[from];
    const text =
      unit === undefined || unit === '' ? name : `${name} [${unit.replace(/^[[({<]|[\])}>]$/g, '')}]`;
    return { name, text, cells: table.rows.map((row) => row[column] ?? '') };
  });
}

const most = (cells: readonly string[], test: (cell: string) => boolean): boolean =>
  cells.filter(test).length * 2 > cells.length;

function unitInCells({ cells }: Heading): string | null {
  const units = new Set(cells.slice(0, 200).map(unitAfter));
  const [only] = units;
  return units.size === 1 && only != null ? only : null;
}

const unitOf = (heading: Heading): ForceUnit | null => {
  const beside = unitInCells(heading);
  return forceUnitIn(heading.text) ?? (beside === null ? null : forceUnitIn(beside));
};

const forceOf = (heading: Heading, column: number, unit: ForceUnit): Layout['force'] => ({
  column,
  unit,
  kn: toKn(1, unit),
  beside: unitInCells(heading),
});

function findForce(columns: readonly Heading[], preamble: readonly string[]): Layout['force'] {
  const numeric = columns
    .map((heading, column) => ({ heading, column, unit: unitOf(heading) }))
    .filter(({ heading }) => most(heading.cells, (cell) => isNumber(cell) || unitAfter(cell) !== null));
  // "N" alone may number the rows.
  const withUnit = numeric.filter(
    ({ unit, heading }) =>
      unit !== null &&
      !namesExtreme(heading.name) &&
      !(heading.text.trim().length === 1 && !namesForce(heading.text)),
  );
  const named = numeric.filter(
    ({ heading }) =>
      namesForce(heading.name) &&
      !namesExtreme(heading.name) &&
      !namesMove(heading.name) &&
      lengthUnitIn(heading.text) === null &&
      secondsIn(heading.text) === null,
  );
  const both = withUnit.filter(({ heading }) => namesForce(heading.name));
  const chosen = both.length > 0 ? both : withUnit.length > 0 ? withUnit : named;
  const [one, another] = chosen;
  if (one === undefined) {
    const lone = numeric.find(({ unit }) => unit !== null);
    if (lone === undefined || lone.unit === null) throw new RecordingError('no-load');
    return forceOf(lone.heading, lone.column, lone.unit);
  }
  if (another !== undefined) throw new RecordingError('many-loads');
  const stated = new Set(preamble.flatMap((line) => forceUnitStated(line) ?? []));
  const unit = one.unit ?? (stated.size === 1 ? ([...stated][0] as ForceUnit) : null);
  // A unit of another kind ("t", "psi") or none: never guessed.
  if (unit === null || (one.unit === null && /[[({<]\s*\p{L}/u.test(one.heading.text)))
    throw new RecordingError('unit');
  return forceOf(one.heading, one.column, unit);
}

function findMove(columns: readonly Heading[], force: number): Layout['move'] {
  const found = columns
    .map((heading, column) => ({ heading, column, unit: lengthUnitIn(heading.text) }))
    .filter(
      ({ heading, column, unit }) => column !== force && unit !== null && most(heading.cells, isNumber),
    );
  const one = found.find(({ heading }) => namesMove(heading.name)) ?? found[0];
  return one === undefined ? null : { column: one.column, mm: toMm(1, one.unit as LengthUnit) };
}

const numbersIn = (cells: readonly string[]): number[] => cells.map((cell) => Number(cell.replace(',', '.')));

/** Seconds where the step fits no other unit: nobody samples a pull faster than 10 kHz or slower than 10 Hz. */
function inferredSeconds(cells: readonly string[]): number {
  const times = numbersIn(cells);
  const steps = times
    .slice(1)
    .map((time, index) => time - (times[index] as number))
    .filter((step) => step > 0)
    .toSorted((a, b) => a - b);
  const middle = steps[steps.length >> 1];
  if (middle === undefined || middle > 0.1 * 1.001) throw new RecordingError('time-unit');
  return 1;
}

function findTime(
  columns: readonly Heading[],
  used: readonly number[],
  preamble: readonly string[],
): Layout['time'] {
  const clockColumn = columns.findIndex(({ cells }) => most(cells, isClock));
  if (clockColumn >= 0) {
    const dateColumn = columns.findIndex(({ cells }) => most(cells, isDate) && !most(cells, isClock));
    return { kind: 'clock', column: clockColumn, dateColumn: dateColumn < 0 ? null : dateColumn };
  }
  const free = columns
    .map((heading, column) => ({ heading, column }))
    .filter(({ heading, column }) => !used.includes(column) && most(heading.cells, isNumber));
  const stated = free.find(({ heading }) => secondsIn(heading.text) !== null);
  if (stated !== undefined)
    return { kind: 'number', column: stated.column, seconds: secondsIn(stated.heading.text) as number };
  const rate = preamble.map(rateIn).find((one) => one !== null && one > 0) ?? null;
  const sample = free.find(({ heading }) => namesSample(heading.name) && !namesTime(heading.name));
  if (sample !== undefined && rate !== null)
    return { kind: 'number', column: sample.column, seconds: 1 / rate };
  const time = free.find(({ heading }) => namesTime(heading.name));
  if (time !== undefined) {
    if (rate !== null) {
      const [a = 0, b = 0] = numbersIn(time.heading.cells);
      if (Math.abs((b - a) * rate - 1) > 0.5 && Math.abs((b - a) * rate - 1000) < 500)
        return { kind: 'number', column: time.column, seconds: 1e-3 };
    }
    return { kind: 'number', column: time.column, seconds: inferredSeconds(time.heading.cells) };
  }
  if (rate !== null) return { kind: 'rows', seconds: 1 / rate };
  throw new RecordingError(sample === undefined ? 'no-time' : 'no-rate');
}

/** "950" beside "1,034" may be thousands: who reads that wrongly is wrong a thousandfold. */
function decimalOf(columns: readonly Heading[], wanted: readonly number[]): '.' | ',' {
  const cells = wanted.flatMap((column) => columns[column]?.cells ?? []);
  const commas = cells.filter((cell) => cell.includes(','));
  const points = cells.filter((cell) => cell.includes('.'));
  if (commas.length > 0 && points.length > 0) throw new RecordingError('decimal-mark');
  for (const column of wanted) {
    const own = columns[column]?.cells ?? [];
    const marked = own.filter((cell) => /[.,]/.test(cell));
    const grouped = marked.every((cell) => /^[+-]?\d{1,3}[.,]\d{3}$/.test(cell));
    if (marked.length > 0 && grouped && own.some((cell) => /^[+-]?\d{3}$/.test(cell)))
      throw new RecordingError('decimal-mark');
  }
  return commas.length > 0 ? ',' : '.';
}

export function layoutOf(table: Table, lines: readonly string[]): Layout {
  const columns = headings(table);
  const preamble = lines.slice(0, table.first);
  const force = findForce(columns, preamble);
  const move = findMove(columns, force.column);
  const used = [force.column, ...(move === null ? [] : [move.column])];
  const time = findTime(columns, used, preamble);
  const decimal = decimalOf(columns, [...used, ...(time.kind === 'number' ? [time.column] : [])]);
  return {
    separator: table.separator,
    decimal,
    time,
    force,
    move,
    first: table.first,
    headerLine: table.headerLine,
    textFirst: most(columns[0]?.cells ?? [], (cell) => /^[\p{L}#*]/u.test(cell)),
  };
}
