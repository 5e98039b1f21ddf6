/**
 * Distances to the sea against another data set and another library: Natural Earth 1:10 m land (public domain, as
 * packaged by world-atlas 2.0.2) and Turf's great-circle distances. Natural Earth is coarser than our coastline, so the
 * two may differ by some kilometres on broken coasts: 2 km plus 5 % is allowed.
 */
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import booleanPointInPolygon from '@turf/boolean-point-in-polygon';
import { lineString, point } from '@turf/helpers';
import pointToLineDistance from '@turf/point-to-line-distance';
import { feature } from 'topojson-client';
import { beforeAll, describe, expect, it } from 'vitest';
import { Coast } from '../../src/places/coast.ts';
import { decodeCoast, encodeCoast } from '../../src/places/coast-file.ts';
import { loadCoast } from '../../src/places/load-coast.ts';
import { makeCoast } from '../../src/places/make-coast.ts';

type Ring = [number, number][];
interface Land {
  features: { geometry: { type: 'MultiPolygon'; coordinates: Ring[][] } }[];
}

const require = createRequire(import.meta.url);
const topology = require('world-atlas/land-10m.json');
const land = feature(topology, topology.objects.land) as unknown as Land;
const polygons = land.features.flatMap(({ geometry }) => geometry.coordinates);

/** In kilometres; by longitude at a distance only rings that may matter are looked at. */
function seaByNaturalEarth(lat: number, lon: number): number {
  const reach = 6;
  let best = Number.POSITIVE_INFINITY;
  for (const ring of polygons.flat()) {
    const near = ring.map(([x, y]) => Math.abs(x - lon) < reach && Math.abs(y - lat) < reach / 2);
    for (let from = 0; from < ring.length; from++) {
      if (!near[from]) continue;
      let to = from;
      while (to + 1 < ring.length && near[to + 1]) to += 1;
      const piece = ring.slice(Math.max(0, from - 1), to + 2);
      if (piece.length > 1)
        best = Math.min(
          best,
          pointToLineDistance(point([lon, lat]), lineString(piece), { units: 'kilometers' }),
        );
      from = to;
    }
  }
  return best;
}

/** Well-known places; coordinates from memory, to a hundredth of a degree. */
const places: readonly (readonly [name: string, lat: number, lon: number])[] = [
  ['Bern', 46.95, 7.45],
  ['Paris', 48.86, 2.35],
  ['Madrid', 40.42, -3.7],
  ['Poznań', 52.41, 16.93],
  ['Berlin', 52.52, 13.4],
  ['Prague', 50.09, 14.42],
  ['Vienna', 48.21, 16.37],
  ['Rome', 41.9, 12.5],
  ['Florence', 43.77, 11.26],
  ['Athens', 37.97, 23.73],
  ['Granada', 37.18, -3.6],
  ['Toulouse', 43.6, 1.44],
  ['Clermont-Ferrand', 45.78, 3.09],
  ['Kendal', 54.33, -2.75],
  ['Denver', 39.74, -104.99],
  ['Bend, Oregon', 44.06, -121.31],
  ['Mexico City', 19.43, -99.13],
  ['Nairobi', -1.29, 36.82],
  ['Johannesburg', -26.2, 28.05],
  ['Chiang Mai', 18.79, 98.98],
  ['Kathmandu', 27.72, 85.32],
  ['Campinas', -22.91, -47.06],
  ['Bogotá', 4.71, -74.07],
  ['Canberra', -35.28, 149.13],
  ['Nadi, Fiji', -17.8, 177.42],
];

/** Behind lagoons and river mouths, which the two data sets cut off at different places. */
const behindLagoons: readonly (readonly [name: string, lat: number, lon: number])[] = [
  ['Warsaw (Vistula lagoon)', 52.23, 21.01],
  ['Grenoble (Étang de Berre)', 45.19, 5.72],
  ['Birmingham (Severn)', 52.48, -1.9],
  ['Portland, Oregon (Columbia)', 45.52, -122.68],
  ['São Paulo (Santos)', -23.55, -46.63],
];

const boxes = polygons.map((rings) => {
  const [outer = []] = rings;
  const [lons, lats] = [outer.map(([lon]) => lon), outer.map(([, lat]) => lat)];
  const range = (of: number[]): readonly [number, number] => [
    of.reduce((a, b) => Math.min(a, b), 999),
    of.reduce((a, b) => Math.max(a, b), -999),
  ];
  return { rings, lon: range(lons), lat: range(lats) };
});

const isLand = (lat: number, lon: number): boolean =>
  boxes.some(
    (box) =>
      lon >= box.lon[0] &&
      lon <= box.lon[1] &&
      lat >= box.lat[0] &&
      lat <= box.lat[1] &&
      booleanPointInPolygon(point([lon, lat]), { type: 'Polygon', coordinates: box.rings }),
  );

describe('the distance to the sea', () => {
  let coast: Coast;
  beforeAll(async () => {
    coast = await loadCoast(fileURLToPath(new URL('../../dist/coast.bin', import.meta.url)));
  });

  it.each(places)('%s', (_, lat, lon) => {
    const { metres } = coast.seaFrom({ lat, lon });
    const other = seaByNaturalEarth(lat, lon);
    if (metres === Number.POSITIVE_INFINITY) expect(other).toBeGreaterThan(290);
    else expect(Math.abs(metres / 1000 - other)).toBeLessThan(2 + 0.05 * other);
  });

  it.each(behindLagoons)('%s: differs by where the lagoon or river mouth is cut off', (_, lat, lon) => {
    const { metres } = coast.seaFrom({ lat, lon });
    expect(Math.abs(metres / 1000 - seaByNaturalEarth(lat, lon))).toBeLessThan(20);
  });

  it('tells sea from land as Natural Earth does, away from the shore', () => {
    const wrong = [];
    let told = 0;
    // Up to 62°: farther north that data set stitches Chukotka across the date line, which a planar test cannot take.
    for (let lat = -57.93; lat <= 62; lat += 6.5)
      for (let lon = -178; lon <= 178; lon += 22.6) {
        const { metres, atSea } = coast.seaFrom({ lat, lon });
        if (metres < 20_000) continue;
        told += 1;
        // The Caspian and the great lakes are water without being sea.
        if (isLand(lat, lon) === atSea) wrong.push([lat, lon]);
      }
    expect(told).toBeGreaterThan(200);
    expect(wrong.length).toBeLessThanOrEqual(told * 0.01);
  });

  it('goes on across the date line', () => {
    const east = coast.seaFrom({ lat: -16.9, lon: 179.99 });
    const west = coast.seaFrom({ lat: -16.9, lon: -179.99 });
    expect(Math.abs(east.metres - west.metres)).toBeLessThan(2300);
  });

  it('takes at most 50 ms once it is loaded, wherever the place is', () => {
    const times = places.map(([, lat, lon]) => {
      const begin = performance.now();
      coast.seaFrom({ lat, lon });
      return performance.now() - begin;
    });
    expect(times.toSorted((a, b) => a - b)[Math.floor(times.length * 0.9)]).toBeLessThan(50);
  });
});

describe('the coastline file', () => {
  const square = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
    [0, 0],
  ] as const;

  it('keeps what was put in, and is exact on a square sea', () => {
    const coast = new Coast(decodeCoast(encodeCoast(makeCoast([square]))));
    expect(coast.seaFrom({ lat: 0.5, lon: 0.5 }).atSea).toBe(true);
    const beside = coast.seaFrom({ lat: 0.5, lon: 1.1 });
    expect(beside.atSea).toBe(false);
    // 0.1° of longitude at latitude 0.5°, on a sphere of 6371.0088 km.
    expect(beside.metres).toBeCloseTo(
      0.1 * (Math.PI / 180) * 6_371_008.8 * Math.cos((0.5 * Math.PI) / 180),
      -1,
    );
  });

  it('refuses a broken file', () => {
    const bytes = encodeCoast(makeCoast([square]));
    expect(() => decodeCoast(bytes.slice(0, 400))).toThrow('build the program anew');
    expect(() => decodeCoast(new Uint8Array(3))).toThrow('build the program anew');
  });
});
