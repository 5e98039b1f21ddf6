import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { formulas } from '../../src/engineering/index.ts';

const listing = z.looseObject({ sources: z.array(z.looseObject({ id: z.string() })) });

it('every source that a formula names is listed with the sources of the rules', () => {
  const file = new URL('../../rules/sources.json', import.meta.url);
  const ids = new Set(listing.parse(JSON.parse(readFileSync(file, 'utf8'))).sources.map((s) => s.id));
  const missing = [...formulas.values()].filter((f) => !ids.has(f.source));
  expect(missing.map((f) => `${f.id}: ${f.source}`)).toEqual([]);
});
