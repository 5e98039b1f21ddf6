/** Makes the coastline file from the open data of the registry: `tsx src/places/build-coast.ts TARGET`. */
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { encodeCoast } from './coast-file.ts';
import { makeCoast } from './make-coast.ts';

type Ring = readonly (readonly [number, number])[];
type Outline =
  | { readonly type: 'Polygon'; readonly coordinates: readonly Ring[] }
  | { readonly type: 'MultiPolygon'; readonly coordinates: readonly (readonly Ring[])[] };

const [target] = process.argv.slice(2);
if (target === undefined) throw new Error('build-coast needs a target file');
const source = createRequire(import.meta.url).resolve('@geo-maps/earth-seas-10m/map.geo.json');
const { geometries } = JSON.parse(await readFile(source, 'utf8')) as { geometries: readonly Outline[] };
const rings = geometries.flatMap((outline) =>
  outline.type === 'Polygon' ? outline.coordinates : outline.coordinates.flat(),
);
const bytes = encodeCoast(makeCoast(rings));
await mkdir(dirname(target), { recursive: true });
const half = `${target}.${process.pid}`;
await writeFile(half, bytes);
await rename(half, target);
