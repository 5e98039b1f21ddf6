/**
 * The coastline as one compact file: segments in millionths of a degree, sorted into cells of half a degree, with
 * where each cell begins. Written at build from open data, read only when somebody tells a place.
 */

export const cellDegrees = 0.5;
export const rows = 180 / cellDegrees;
export const columns = 360 / cellDegrees;
export const perDegree = 1e6;

const magic = 0x43_4f_53_31;
const headWords = 4;

export interface CoastFile {
  /** From lon, lat to lon, lat of each segment. */
  readonly segments: Int32Array;
  /** For each cell the first of its segments; one more than there are cells. */
  readonly starts: Uint32Array;
  /** Edges of the map that are no coast (date line, pole): only for telling sea from land. */
  readonly edges: Int32Array;
}

/** The file was made by another version or is broken. */
export class CoastFileError extends Error {
  override readonly name = 'CoastFileError';
}

export function encodeCoast({ segments, starts, edges }: CoastFile): Uint8Array {
  const words = new Int32Array(headWords + starts.length + segments.length + edges.length);
  words.set([magic, starts.length, segments.length, edges.length]);
  words.set(new Int32Array(starts.buffer, starts.byteOffset, starts.length), headWords);
  words.set(segments, headWords + starts.length);
  words.set(edges, headWords + starts.length + segments.length);
  return new Uint8Array(words.buffer);
}

export function decodeCoast(bytes: Uint8Array): CoastFile {
  if (bytes.byteLength % 4 !== 0 || bytes.byteLength < headWords * 4)
    throw new CoastFileError('The coastline file is broken: build the program anew.');
  const at = bytes.byteOffset;
  const [mark, startCount = 0, segmentCount = 0, edgeCount = 0] = new Int32Array(bytes.buffer, at, headWords);
  const words = headWords + startCount + segmentCount + edgeCount;
  if (mark !== magic || startCount !== rows * columns + 1 || words * 4 !== bytes.byteLength)
    throw new CoastFileError('The coastline file is broken or of another version: build the program anew.');
  const startsAt = at + headWords * 4;
  const segmentsAt = startsAt + startCount * 4;
  return {
    starts: new Uint32Array(bytes.buffer, startsAt, startCount),
    segments: new Int32Array(bytes.buffer, segmentsAt, segmentCount),
    edges: new Int32Array(bytes.buffer, segmentsAt + segmentCount * 4, edgeCount),
  };
}
