/** A note in the PNG that it was drawn here, so that only our own picture is ever written over. */
import { crc32 } from 'node:zlib';

/** Signature (8 bytes) and header chunk (25): PNG specification, W3C, 5.2 and 11.2.1. */
const afterHeader = 33;

/** A text chunk: length, type, keyword, zero, text, checksum of type and data (5.3 and 11.3.3.2). */
function chunk(): Buffer {
  const data = Buffer.from('tEXtSoftware\0Chough', 'latin1');
  const framed = Buffer.alloc(data.length + 8);
  framed.writeUInt32BE(data.length - 4, 0);
  data.copy(framed, 4);
  framed.writeUInt32BE(crc32(data), data.length + 4);
  return framed;
}

export const marked = (png: Buffer): Buffer =>
  Buffer.concat([png.subarray(0, afterHeader), chunk(), png.subarray(afterHeader)]);

export function isMarked(bytes: Buffer): boolean {
  const own = chunk();
  return bytes.subarray(afterHeader, afterHeader + own.length).equals(own);
}
