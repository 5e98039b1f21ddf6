/** Streams the rows of a file: pieces of a megabyte, one row at a time, nothing kept. */
import { type Encoding, narrow } from './encoding.ts';
import type { Layout } from './layout.ts';
import { RecordingError } from './problem.ts';
import { RowReader } from './row.ts';
import type { Source } from './source.ts';

export interface RowSink {
  /** `at` is where the row begins in the file; true stops the reading. */
  row(time: number, kn: number, mm: number, at: number, line: number): boolean;
  /** The header came again: time may begin anew. */
  section(): void;
}

export interface Script {
  readonly encoding: Encoding;
  readonly layout: Layout;
  /** The header line and that of the units, as they stand in the file, to know them again. */
  readonly headings: readonly Uint8Array[];
  readonly lineEnd: number;
}

export interface Place {
  readonly at: number;
  /** Counted from 0. */
  readonly line: number;
}

const pieceBytes = 1 << 20;
const longestLine = 1 << 16;
/** Lines of text between two tables of one file, or after the last. */
const mostText = 50;

const isBlank = (byte: number): boolean => byte === 32 || byte === 9 || byte === 13;
/** Where a table has no unit for a column it may say "-", which begins a number too. */
const minus = 45;
const textMarks = [...'#*[(<'].map((mark) => mark.charCodeAt(0));
const isLetter = (byte: number): boolean => (byte | 32) >= 97 && (byte | 32) <= 122;
const beginsText = (byte: number): boolean => isLetter(byte) || byte >= 128 || textMarks.includes(byte);

function same(bytes: Uint8Array, from: number, end: number, other: Uint8Array): boolean {
  if (end - from !== other.length) return false;
  for (let index = 0; index < other.length; index += 1)
    if (bytes[from + index] !== other[index]) return false;
  return true;
}

export async function readRows(source: Source, script: Script, from: Place, sink: RowSink): Promise<void> {
  const { encoding, layout, headings, lineEnd } = script;
  const reader = new RowReader(layout);
  const buffer = new Uint8Array(pieceBytes + longestLine);
  const { width } = encoding;
  let line = from.line;
  let held = 0;
  let at = from.at;
  let text = 0;
  let rowBytes = 0;
  let whole = true;
  let textLine = 0;

  const isHeading = (first: number, last: number): boolean =>
    headings.some((heading) => same(buffer, first, last, heading));

  /** One line without its end; true stops. */
  const take = (start: number, end: number, begins: number): boolean => {
    line += 1;
    if (line <= layout.first) return false;
    let first = start;
    while (first < end && isBlank(buffer[first] as number)) first += 1;
    if (first === end) return false;
    let last = end;
    while (isBlank(buffer[last - 1] as number) && buffer[last - 1] !== 9) last -= 1;
    const byte = buffer[buffer[first] === 34 ? first + 1 : first] as number;
    if (!layout.textFirst && (beginsText(byte) || (byte === minus && isHeading(first, last)))) {
      if (isHeading(first, last)) {
        if (same(buffer, first, last, headings[0] as Uint8Array)) sink.section();
        text = 0;
        return false;
      }
      if (text === 0) textLine = line;
      text += 1;
      if (text > mostText) throw new RecordingError('strange-text', textLine);
      return false;
    }
    if (text > 0) throw new RecordingError('strange-text', textLine);
    if (whole) rowBytes = last - start;
    reader.read(buffer, start, last, line);
    return whole && sink.row(reader.time, reader.kn, reader.mm, begins, line);
  };

  while (true) {
    const room = buffer.subarray(held, held + pieceBytes);
    const got = await source.read(room, at);
    if (got % width !== 0) throw new RecordingError('truncated', line + 1);
    const filled = held + narrow(room, got, encoding);
    const base = at - held * width;
    at += got;
    let start = 0;
    while (start < filled) {
      const end = buffer.indexOf(lineEnd, start);
      if (end < 0 || end >= filled) break;
      if (take(start, end, base + start * width)) return;
      start = end + 1;
    }
    held = filled - start;
    if (got === 0 || at >= source.size) {
      // Cut off, 23.4 may have become 2, which would look like a failure: a short last row without an end is left out.
      if (held > 0) {
        whole = held >= rowBytes;
        lastLine(() => take(start, filled, base + start * width));
      }
      return;
    }
    if (held > longestLine) throw new RecordingError('long-line', line + 1);
    buffer.copyWithin(0, start, filled);
  }
}

/** A last line without an end that does not read as a row was cut off. */
function lastLine(take: () => boolean): void {
  try {
    take();
  } catch (error) {
    if (error instanceof RecordingError && error.code !== 'strange-text')
      throw new RecordingError('truncated', error.line);
    throw error;
  }
}
