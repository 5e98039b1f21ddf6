/** Learns from the first bytes how the whole file is written. */
import { isFormula } from './cells.ts';
import { type Encoding, encodingOf, narrow } from './encoding.ts';
import { layoutOf } from './layout.ts';
import { RecordingError } from './problem.ts';
import type { Script } from './rows.ts';
import type { Source } from './source.ts';
import { findTable } from './table.ts';

const headBytes = 1 << 16;

function textOf(head: Uint8Array, { name, skip }: Encoding): string {
  const label = name === 'latin1' ? 'windows-1252' : name;
  return new TextDecoder(label, { ignoreBOM: true }).decode(head.subarray(skip));
}

/** A line as its bytes are narrowed while reading, without blanks around it. */
function bytesOf(head: Uint8Array, encoding: Encoding, lineEnd: number, index: number): Uint8Array {
  const bytes = head.slice(encoding.skip);
  const length = narrow(bytes, bytes.length - (bytes.length % encoding.width), encoding);
  let from = 0;
  for (let line = 0; line < index; line += 1) from = bytes.indexOf(lineEnd, from) + 1;
  const end = bytes.indexOf(lineEnd, from);
  let last = end < 0 || end > length ? length : end;
  while (last > from && [32, 13].includes(bytes[last - 1] as number)) last -= 1;
  while (from < last && [32, 9, 13].includes(bytes[from] as number)) from += 1;
  return bytes.slice(from, last);
}

export async function scriptOf(source: Source): Promise<Script> {
  const buffer = new Uint8Array(headBytes);
  const head = buffer.subarray(0, await source.read(buffer, 0));
  const encoding = encodingOf(head);
  const text = textOf(head, encoding);
  if (text.trim() === '') throw new RecordingError('empty');
  const lineEnd = text.includes('\n') ? 10 : 13;
  const lines = text.split(lineEnd === 10 ? '\n' : '\r').map((line) => line.replace(/\r$/, ''));
  if (lines.length < 2 && head.length === headBytes) throw new RecordingError('long-line', 1);
  // The last line may be cut off by the end of the head.
  if (source.size > headBytes) lines.pop();
  const table = findTable(lines);
  for (const [index, row] of table.rows.entries())
    if (row.some(isFormula)) throw new RecordingError('formula', lineOf(lines, table.first, index));
  const layout = layoutOf(table, lines);
  const headings = Array.from({ length: table.first - table.headerLine }, (_, offset) =>
    bytesOf(head, encoding, lineEnd, table.headerLine + offset),
  ).filter((heading) => heading.length > 0);
  return { encoding, layout, headings, lineEnd };
}

/** Line number of a row, empty lines between counted. */
function lineOf(lines: readonly string[], first: number, row: number): number {
  let left = row;
  for (let index = first; index < lines.length; index += 1) {
    if ((lines[index] as string).trim() === '') continue;
    if (left === 0) return index + 1;
    left -= 1;
  }
  return first + 1;
}
