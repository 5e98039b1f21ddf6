import { existsSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { formulas } from '../../src/engineering/index.ts';

const list = z.array(z.looseObject({ id: z.string() }));
const listing = z.union([list, z.looseObject({ sources: list }).transform((file) => file.sources)]);
const places = ['../../rules/sources.json', '../../src/engineering/SOURCES.draft.json'].map(
  (name) => new URL(name, import.meta.url),
);

it('every source that a formula names is listed', () => {
  const ids = new Set(
    places
      .filter((place) => existsSync(place))
      .flatMap((place) => listing.parse(JSON.parse(readFileSync(place, 'utf8'))))
      .map((source) => source.id),
  );
  const missing = [...formulas.values()].filter((f) => !ids.has(f.source));
  expect(missing.map((f) => `${f.id}: ${f.source}`)).toEqual([]);
});
