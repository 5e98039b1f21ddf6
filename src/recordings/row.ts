import { ClockReader } from './clock.ts';
import type { Layout } from './layout.ts';
import { NumberReader } from './number.ts';
import { RecordingError } from './problem.ts';

const quote = 34;

/** Reads one row after another by a layout. What does not fit it is an error with its line, never skipped. */
export class RowReader {
  time = 0;
  kn = 0;
  mm = 0;
  private readonly numbers: NumberReader;
  private readonly clock = new ClockReader();
  private readonly separator: number;
  private readonly last: number;
  private readonly wanted: readonly boolean[];
  private readonly timeColumn: number;
  private readonly dateColumn: number;
  private readonly isClock: boolean;
  private readonly timeUnit: number;
  private readonly forceColumn: number;
  private readonly forceUnit: number;
  private readonly moveColumn: number;
  private readonly moveUnit: number;
  /** The unit that each load carries, "12.4 kN". */
  private readonly beside: readonly number[];

  constructor({ separator, decimal, time, force, move }: Layout) {
    this.numbers = new NumberReader(decimal.charCodeAt(0));
    this.separator = separator.charCodeAt(0);
    this.timeColumn = time.kind === 'rows' ? -1 : time.column;
    this.dateColumn = time.kind === 'clock' ? (time.dateColumn ?? -1) : -1;
    this.isClock = time.kind === 'clock';
    this.timeUnit = time.kind === 'number' ? time.seconds : 1;
    this.forceColumn = force.column;
    this.forceUnit = force.kn;
    this.beside = [...(force.beside ?? '')].map((letter) => letter.charCodeAt(0));
    this.moveColumn = move?.column ?? -1;
    this.moveUnit = move?.mm ?? 1;
    const wanted = [this.timeColumn, this.dateColumn, this.forceColumn, this.moveColumn];
    this.last = Math.max(...wanted);
    this.wanted = Array.from({ length: this.last + 1 }, (_, column) => wanted.includes(column));
  }

  read(bytes: Uint8Array, start: number, end: number, line: number): void {
    const { separator } = this;
    const blanks = separator === 32;
    let days = 0;
    let place = start;
    for (let column = 0; column <= this.last; column += 1) {
      let byte = place < end ? (bytes[place] as number) : 0;
      while (byte === 32 || (byte === 9 && separator !== 9))
        byte = ++place < end ? (bytes[place] as number) : 0;
      const quoted = byte === quote;
      if (quoted) place += 1;
      if (place >= end || (bytes[place] === separator && !quoted)) {
        if (place >= end || this.wanted[column] === true) throw new RecordingError('missing-cell', line);
        place += 1;
        continue;
      }
      if (column === this.forceColumn) {
        place = this.numbers.read(bytes, place, end, line);
        this.kn = this.numbers.value * this.forceUnit;
        if (this.beside.length > 0) place = this.skipUnit(bytes, place, end, line);
      } else if (column === this.moveColumn) {
        place = this.numbers.read(bytes, place, end, line);
        this.mm = this.numbers.value * this.moveUnit;
      } else if (column === this.timeColumn && !this.isClock) {
        place = this.numbers.read(bytes, place, end, line);
        this.time = this.numbers.value * this.timeUnit;
      } else {
        const from = place;
        place = this.endOfText(bytes, place, end, quoted);
        if (column === this.timeColumn) this.time = this.clock.seconds(bytes, from, place, line);
        else if (column === this.dateColumn) days = this.clock.days(bytes, from, place, line);
        else if (bytes[from] === 61 || bytes[from] === 64) throw new RecordingError('formula', line);
      }
      if (quoted && bytes[place] === quote) place += 1;
      byte = place < end ? (bytes[place] as number) : 0;
      const from = place;
      while (byte === 32 || (byte === 9 && separator !== 9))
        byte = ++place < end ? (bytes[place] as number) : 0;
      if (place >= end || (blanks && place > from)) continue;
      if (byte !== separator) throw new RecordingError('no-number', line);
      place += 1;
    }
    if (this.dateColumn >= 0) this.time += days * 86_400;
    // Nothing is ever worked out from a formula, yet a file that holds one is no recording.
    for (; place < end; place += 1)
      if ((bytes[place] === 61 || bytes[place] === 64) && bytes[place - 1] === separator)
        throw new RecordingError('formula', line);
  }

  private endOfText(bytes: Uint8Array, at: number, end: number, quoted: boolean): number {
    const stop = quoted ? quote : this.separator;
    let place = at;
    while (place < end && bytes[place] !== stop && !(stop === 32 && bytes[place] === 9)) place += 1;
    return place;
  }

  private skipUnit(bytes: Uint8Array, at: number, end: number, line: number): number {
    let place = at;
    while (place < end && bytes[place] === 32) place += 1;
    for (const letter of this.beside) {
      if (bytes[place] !== letter) throw new RecordingError('no-number', line);
      place += 1;
    }
    return place;
  }
}
