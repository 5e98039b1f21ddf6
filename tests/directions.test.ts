import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const biome = join(root, 'node_modules', '@biomejs', 'biome', 'bin', 'biome');

const forbidden: readonly [folder: string, imported: string][] = [
  ['engineering', '../rules/index.ts'],
  ['engineering', '../contracts/advice.ts'],
  ['rules', '../engineering/index.ts'],
  ['dialogue', '../adapters/respond.ts'],
  ['dialogue', '../engineering/index.ts'],
  ['render', '../advice/index.ts'],
  ['advice', '../dialogue/turn.ts'],
  ['adapters', '../advice/index.ts'],
  ['units', '../contracts/facts.ts'],
  ['contracts', '../units/show.ts'],
  ['store', '../dialogue/turn.ts'],
  ['render', '../app.ts'],
  ['pictures', '../render/words.ts'],
  ['pictures', '../engineering/index.ts'],
  ['render', '../pictures/index.ts'],
  ['advice', '../pictures/index.ts'],
  ['field', '../advice/index.ts'],
  ['field', '../dialogue/turn.ts'],
  ['advice', '../field/index.ts'],
  ['places', '../dialogue/turn.ts'],
  ['engineering', '../places/coast.ts'],
  ['recordings', '../rules/index.ts'],
  ['recordings', '../render/words.ts'],
  ['advice', '../recordings/index.ts'],
  ['adapters', '../recordings/index.ts'],
];
const allowed: readonly [folder: string, imported: string][] = [
  ['engineering', '../units/show.ts'],
  ['advice', '../engineering/index.ts'],
  ['adapters', '../contracts/message.ts'],
  ['pictures', '../units/one-line.ts'],
  ['field', '../engineering/index.ts'],
  ['dialogue', '../field/index.ts'],
  ['recordings', '../units/convert.ts'],
  ['recordings', '../engineering/index.ts'],
  ['recordings', '../contracts/recording.ts'],
];

/** A tree with the project's own lint rules and one planted import a file. */
let folder: string;
let report: string;

const fileOf = (kind: string, index: number): string => `${kind}${index}.ts`;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'directions-'));
  const { vcs: _, ...rules } = JSON.parse(readFileSync(join(root, '.biome.json'), 'utf8'));
  writeFileSync(join(folder, '.biome.json'), JSON.stringify(rules));
  const plant =
    (kind: string) =>
    ([place, imported]: readonly [string, string], index: number) => {
      mkdirSync(join(folder, 'src', place), { recursive: true });
      writeFileSync(join(folder, 'src', place, fileOf(kind, index)), `export * from '${imported}';\n`);
    };
  forbidden.forEach(plant('forbidden'));
  allowed.forEach(plant('allowed'));
  const run = spawnSync('node', [biome, 'lint', '--max-diagnostics=100', '--reporter=github', '.'], {
    cwd: folder,
    encoding: 'utf8',
  });
  report = run.stdout + run.stderr;
});

afterAll(() => rmSync(folder, { recursive: true }));

describe('import directions', () => {
  it.each(forbidden.map(([place, imported], index) => [place, imported, index] as const))(
    'a file in src/%s may not import %s',
    (place, _, index) => {
      const lines = report
        .split('\n')
        .filter((line) => line.includes(`${place}/${fileOf('forbidden', index)}`));
      expect(lines.join('\n')).toContain('noRestrictedImports');
    },
  );

  it.each(allowed.map(([place, imported], index) => [place, imported, index] as const))(
    'a file in src/%s may import %s',
    (place, _, index) => {
      const lines = report
        .split('\n')
        .filter((line) => line.includes(`${place}/${fileOf('allowed', index)}`));
      expect(lines.join('\n')).not.toContain('noRestrictedImports');
    },
  );
});
