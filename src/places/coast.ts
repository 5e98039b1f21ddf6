/** How far the sea is, by open coastline data on a spherical earth. */
import { type CoastFile, cellDegrees, columns, perDegree, rows } from './coast-file.ts';

export interface Point {
  readonly lat: number;
  readonly lon: number;
}

export interface SeaDistance {
  /** To the nearest piece of coastline; Infinity where there is none within the reach of the search. */
  readonly metres: number;
  readonly nearest: Point | null;
  /** The place itself lies in the sea. */
  readonly atSea: boolean;
}

/** Mean radius of the earth, IUGG 1980. */
const earthRadius = 6_371_008.8;
const degree = Math.PI / 180;
/** Beyond it salt does not matter: the search ends. */
const reach = 300_000;

type Vector = readonly [number, number, number];

const vector = (lat: number, lon: number): Vector => {
  const flat = Math.cos(lat * degree);
  return [flat * Math.cos(lon * degree), flat * Math.sin(lon * degree), Math.sin(lat * degree)];
};
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const along = (a: Vector, b: Vector, share: number): Vector => [
  a[0] + b[0] * share,
  a[1] + b[1] * share,
  a[2] + b[2] * share,
];

/** From the length of the chord, which stays exact where an angle's cosine does not. */
const arc = (chord: number): number => 2 * earthRadius * Math.asin(Math.min(1, chord / 2));

/** The nearest point of a segment; segments are short, so the chord stands for the arc. */
function nearestOf(point: Vector, from: Vector, to: Vector): Vector {
  const way = minus(to, from);
  const length = dot(way, way);
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, dot(minus(point, from), way) / length));
  const on = along(from, way, share);
  const size = Math.sqrt(dot(on, on));
  return [on[0] / size, on[1] / size, on[2] / size];
}

export class Coast {
  readonly #file: CoastFile;

  constructor(file: CoastFile) {
    this.#file = file;
  }

  seaFrom({ lat, lon }: Point): SeaDistance {
    const here = vector(lat, lon);
    let best = Number.POSITIVE_INFINITY;
    let nearest: Vector | null = null;
    for (let ring = 0; ; ring++) {
      const known = ring === 0 ? 0 : unreached(lat, lon, ring);
      if (best <= known || known > reach) break;
      for (const cell of cellsAround(lat, lon, ring)) {
        for (const [x1, y1, x2, y2] of this.#segmentsIn(cell)) {
          const point = nearestOf(here, vector(y1, x1), vector(y2, x2));
          const gap = minus(here, point);
          const metres = arc(Math.sqrt(dot(gap, gap)));
          if (metres < best) [best, nearest] = [metres, point];
        }
      }
    }
    const atSea = this.#inSea(lat, lon);
    if (nearest === null || best > reach) return { metres: Number.POSITIVE_INFINITY, nearest: null, atSea };
    return {
      metres: best,
      nearest: {
        lat: Math.asin(nearest[2]) / degree,
        lon: Math.atan2(nearest[1], nearest[0]) / degree,
      },
      atSea,
    };
  }

  *#segmentsIn(cell: number): Generator<readonly [number, number, number, number]> {
    const { starts, segments } = this.#file;
    for (let at = starts[cell] ?? 0; at < (starts[cell + 1] ?? 0); at++) yield read(segments, at);
  }

  /** A ray to the west crosses the outlines of the seas an odd number of times. */
  #inSea(lat: number, lon: number): boolean {
    const row = rowOf(lat);
    let crossings = 0;
    for (let column = 0; column <= columnOf(lon); column++) {
      for (const segment of this.#segmentsIn(row * columns + column)) {
        // A segment may stand in several cells of the row: it counts in the first.
        if (columnOf(Math.min(segment[0], segment[2])) !== column) continue;
        const at = crossing(segment, lat);
        if (at !== undefined && at < lon) crossings += 1;
      }
    }
    for (let edge = 0; edge < this.#file.edges.length / 4; edge++) {
      const at = crossing(read(this.#file.edges, edge), lat);
      if (at !== undefined && at < lon) crossings += 1;
    }
    return crossings % 2 === 1;
  }
}

function read(of: Int32Array, index: number): readonly [number, number, number, number] {
  const at = index * 4;
  return [
    (of[at] ?? 0) / perDegree,
    (of[at + 1] ?? 0) / perDegree,
    (of[at + 2] ?? 0) / perDegree,
    (of[at + 3] ?? 0) / perDegree,
  ];
}

function crossing(
  [x1, y1, x2, y2]: readonly [number, number, number, number],
  lat: number,
): number | undefined {
  if (y1 > lat === y2 > lat) return undefined;
  return x1 + ((lat - y1) / (y2 - y1)) * (x2 - x1);
}

const rowOf = (lat: number): number => Math.min(rows - 1, Math.floor((lat + 90) / cellDegrees));
const columnOf = (lon: number): number => {
  const column = Math.floor((lon + 180) / cellDegrees);
  return Math.min(columns - 1, Math.max(0, column));
};

/** The cells on the edge of a square of cells around the place; columns go on across the date line. */
function* cellsAround(lat: number, lon: number, ring: number): Generator<number> {
  const [row, column] = [rowOf(lat), columnOf(lon)];
  for (let down = -ring; down <= ring; down++) {
    if (row + down < 0 || row + down >= rows) continue;
    const step = Math.abs(down) === ring ? 1 : Math.max(1, 2 * ring);
    for (let across = -ring; across <= ring; across += step)
      yield (row + down) * columns + ((((column + across) % columns) + columns) % columns);
  }
}

/** Nothing outside the square of `ring - 1` cells around is nearer than this. */
function unreached(lat: number, lon: number, ring: number): number {
  const inRow = (lat + 90) / cellDegrees - rowOf(lat);
  const inColumn = (lon + 180) / cellDegrees - columnOf(lon);
  const done = ring - 1;
  const upOrDown = (done + Math.min(inRow, 1 - inRow)) * cellDegrees;
  const across = (done + Math.min(inColumn, 1 - inColumn)) * cellDegrees;
  const farthest = Math.min(89.9, Math.abs(lat) + (done + 1) * cellDegrees);
  // Meridians draw together towards the poles.
  return earthRadius * degree * Math.min(upOrDown, across * Math.cos(farthest * degree));
}
