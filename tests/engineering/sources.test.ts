import { existsSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { formulas } from '../../src/engineering/index.ts';

const places = ['../../rules/sources.json', '../../src/engineering/SOURCES.draft.json'].map(
  (name) => new URL(name, import.meta.url),
);

it('every source that a formula names is listed', () => {
  const listed = places
    .filter((place) => existsSync(place))
    .flatMap((place) =>
      z.array(z.looseObject({ id: z.string() })).parse(JSON.parse(readFileSync(place, 'utf8'))),
    );
  const ids = new Set(listed.map((s) => s.id));
  expect([...formulas.values()].filter((f) => !ids.has(f.source)).map((f) => `${f.id}: ${f.source}`)).toEqual(
    [],
  );
});
