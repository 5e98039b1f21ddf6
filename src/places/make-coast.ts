/** From the outlines of all seas (GeoJSON polygons in degrees) to the compact file. Runs at build. */
import { type CoastFile, cellDegrees, columns, perDegree, rows } from './coast-file.ts';

type Ring = readonly (readonly [lon: number, lat: number])[];

/** The frame of the map is drawn along the date line and near the poles. */
const isFrame = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  (Math.abs(a[0]) > 179.999 && Math.abs(b[0]) > 179.999) || (Math.abs(a[1]) > 89 && Math.abs(b[1]) > 89);

const fine = (degrees: number): number => Math.round(degrees * perDegree) / perDegree;
const clamp = (value: number, most: number): number => Math.min(Math.max(value, 0), most);
const columnOf = (lon: number): number => clamp(Math.floor((lon + 180) / cellDegrees), columns - 1);
const rowOf = (lat: number): number => clamp(Math.floor((lat + 90) / cellDegrees), rows - 1);

function* cellsOf([x1, y1, x2, y2]: readonly [number, number, number, number]): Generator<number> {
  for (let row = rowOf(Math.min(y1, y2)); row <= rowOf(Math.max(y1, y2)); row++)
    for (let column = columnOf(Math.min(x1, x2)); column <= columnOf(Math.max(x1, x2)); column++)
      yield row * columns + column;
}

export function makeCoast(rings: Iterable<Ring>): CoastFile {
  const coast: [number, number, number, number][] = [];
  const edges: number[] = [];
  for (const ring of rings) {
    // Rounded first, so that a segment stands in the cells where it will be looked for.
    const points = ring.map(([lon, lat]) => [fine(lon), fine(lat)] as const);
    for (let at = 1; at < points.length; at++) {
      const [from, to] = [points[at - 1], points[at]];
      if (from === undefined || to === undefined) continue;
      if (isFrame(from, to)) edges.push(...[...from, ...to].map((one) => Math.round(one * perDegree)));
      else coast.push([...from, ...to]);
    }
  }
  const starts = new Uint32Array(rows * columns + 1);
  for (const segment of coast)
    for (const cell of cellsOf(segment)) starts[cell + 1] = (starts[cell + 1] ?? 0) + 1;
  for (let cell = 0; cell < rows * columns; cell++)
    starts[cell + 1] = (starts[cell + 1] ?? 0) + (starts[cell] ?? 0);
  const next = starts.slice();
  const segments = new Int32Array((starts.at(-1) ?? 0) * 4);
  for (const segment of coast)
    for (const cell of cellsOf(segment)) {
      const place = next[cell] ?? 0;
      next[cell] = place + 1;
      segments.set(
        segment.map((one) => Math.round(one * perDegree)),
        place * 4,
      );
    }
  return { segments, starts, edges: Int32Array.from(edges) };
}
