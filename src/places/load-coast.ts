import { readFile } from 'node:fs/promises';
import { Coast } from './coast.ts';
import { decodeCoast } from './coast-file.ts';

/** Reads the file that the build made; some thirty megabytes, so only when somebody tells a place. */
export async function loadCoast(file: string): Promise<Coast> {
  const bytes = await readFile(file);
  // A view over the pool's buffer need not begin at a multiple of four.
  const own = bytes.byteOffset % 4 === 0 ? bytes : new Uint8Array(bytes);
  return new Coast(decodeCoast(own));
}
