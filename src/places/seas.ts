/** How a place is read: rules/places/seas.json. */
import { readFile } from 'node:fs/promises';
import { z } from 'zod';
import type { Coast, Point } from './coast.ts';
import { loadCoast } from './load-coast.ts';

const range = z.tuple([z.number(), z.number()]).refine(([from, to]) => from < to, 'from must be below to');

const seasSchema = z.strictObject({
  about: z.string(),
  source: z.string(),
  uncertainty: z.strictObject({ metres: z.number().positive(), share: z.number().positive() }),
  /** So far off the coast a place still counts as the shore, and not as the open sea. */
  shoreMetres: z.number().positive(),
  milder: z.array(z.strictObject({ coast: z.string(), name: z.string(), lat: range, lon: range })),
});

export interface PlaceRead {
  /** To the sea; Infinity where it is farther than anybody searches. */
  readonly metres: number;
  readonly uncertainty: number;
  /** Which coast, where it is one that a code names. */
  readonly coast: string | null;
  readonly openSea: boolean;
}

export interface Places {
  read(point: Point): Promise<PlaceRead>;
}

const within = (value: number, [from, to]: readonly [number, number]): boolean =>
  value >= from && value <= to;

/** The coastline is loaded with the first place that somebody tells. */
export async function openPlaces(seasFile: string, coastFile: string): Promise<Places> {
  const seas = seasSchema.parse(JSON.parse(await readFile(seasFile, 'utf8')));
  let coast: Promise<Coast> | undefined;
  return {
    async read(point) {
      coast ??= loadCoast(coastFile);
      const { metres, nearest, atSea } = (await coast).seaFrom(point);
      const { uncertainty } = seas;
      const milder =
        nearest === null
          ? undefined
          : seas.milder.find(({ lat, lon }) => within(nearest.lat, lat) && within(nearest.lon, lon));
      return {
        metres: atSea ? 0 : metres,
        uncertainty: Math.max(uncertainty.metres, metres * uncertainty.share),
        coast: milder?.coast ?? null,
        openSea: atSea && metres > seas.shoreMetres,
      };
    },
  };
}
