/** What kind of bytes these are, told by the first of them: no packed or foreign file is ever opened further. */
import { RecordingError } from './problem.ts';

export interface Encoding {
  readonly name: 'utf-8' | 'latin1' | 'utf-16le' | 'utf-16be';
  /** Bytes before the text: the mark of the encoding. */
  readonly skip: number;
  /** Bytes for one character of a number. */
  readonly width: 1 | 2;
}

const starts = (head: Uint8Array, ...bytes: number[]): boolean =>
  bytes.every((byte, index) => head[index] === byte);

/** Magic numbers as the formats' own specifications give them; common knowledge of `file(1)`, from memory. */
const packed: readonly (readonly number[])[] = [
  [0x50, 0x4b, 0x03, 0x04], // zip, and with it spreadsheets
  [0x50, 0x4b, 0x05, 0x06],
  [0x50, 0x4b, 0x07, 0x08],
  [0x1f, 0x8b], // gzip
  [0x42, 0x5a, 0x68], // bzip2
  [0xfd, 0x37, 0x7a, 0x58, 0x5a], // xz
  [0x28, 0xb5, 0x2f, 0xfd], // zstd
  [0x37, 0x7a, 0xbc, 0xaf], // 7z
  [0x52, 0x61, 0x72, 0x21], // rar
  [0x04, 0x22, 0x4d, 0x18], // lz4
];
const foreign: readonly (readonly number[])[] = [
  [0x25, 0x50, 0x44, 0x46], // pdf
  [0xd0, 0xcf, 0x11, 0xe0], // old spreadsheets
  [0x89, 0x50, 0x4e, 0x47], // png
  [0xff, 0xd8, 0xff], // jpeg
  [0x7f, 0x45, 0x4c, 0x46], // programs
];

function zeros(head: Uint8Array, from: number): number {
  let count = 0;
  for (let at = from; at < head.length; at += 2) if (head[at] === 0) count += 1;
  return count;
}

function isUtf8(head: Uint8Array): boolean {
  try {
    // The end may cut a character in two: `stream` lets that pass.
    new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true });
    return true;
  } catch {
    return false;
  }
}

export function encodingOf(head: Uint8Array): Encoding {
  if (head.length === 0) throw new RecordingError('empty');
  if (packed.some((magic) => starts(head, ...magic))) throw new RecordingError('packed');
  if (foreign.some((magic) => starts(head, ...magic))) throw new RecordingError('binary');
  if (starts(head, 0xff, 0xfe)) return { name: 'utf-16le', skip: 2, width: 2 };
  if (starts(head, 0xfe, 0xff)) return { name: 'utf-16be', skip: 2, width: 2 };
  const half = head.length / 2;
  if (zeros(head, 1) > half * 0.9 && zeros(head, 0) === 0) return { name: 'utf-16le', skip: 0, width: 2 };
  if (zeros(head, 0) > half * 0.9 && zeros(head, 1) === 0) return { name: 'utf-16be', skip: 0, width: 2 };
  let odd = 0;
  for (const byte of head) {
    if (byte === 0) throw new RecordingError('binary');
    if (byte < 32 && byte !== 9 && byte !== 10 && byte !== 13) odd += 1;
  }
  if (odd > head.length / 100) throw new RecordingError('binary');
  const skip = starts(head, 0xef, 0xbb, 0xbf) ? 3 : 0;
  return { name: isUtf8(head) ? 'utf-8' : 'latin1', skip, width: 1 };
}

/**
 * Numbers need one byte a character. In UTF-16 a character that does not fit becomes "?", which no number contains.
 * Works in place and gives the new length.
 */
export function narrow(bytes: Uint8Array, length: number, encoding: Encoding): number {
  if (encoding.width === 1) return length;
  const low = encoding.name === 'utf-16le' ? 0 : 1;
  const count = length >> 1;
  for (let index = 0; index < count; index += 1) {
    const high = bytes[2 * index + 1 - low] as number;
    bytes[index] = high === 0 ? (bytes[2 * index + low] as number) : 63;
  }
  return count;
}
