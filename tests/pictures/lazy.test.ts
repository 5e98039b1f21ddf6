/** Nothing of the program loads vega before the first picture; built into one file, pictures are still drawn. */
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type BuildResult, build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { draw as drawType } from '../../src/pictures/index.ts';
import { words } from '../support/desk.ts';
import { root } from '../support/program.ts';
import { bond, bondPicture } from './samples.ts';

// Beside the real bundle, because what is built looks for its packages upwards from where it lies.
const folder = join(root, 'dist', 'pictures-test');
const outside: readonly string[] = JSON.parse(readFileSync(join(root, 'src', 'external.json'), 'utf8'));
let built: BuildResult<{ metafile: true }>;

beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  built = await build({
    entryPoints: [join(root, 'src', 'main.ts'), join(root, 'src', 'pictures', 'index.ts')],
    outdir: folder,
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    // As src/build.js leaves them outside.
    external: [...outside],
    metafile: true,
    logLevel: 'silent',
  });
});
afterAll(() => rmSync(folder, { recursive: true }));

/** All that a file loads by itself, without its dynamic imports. */
function loadedWith(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const { path, kind } of built.metafile.outputs[file]?.imports ?? [])
    if (kind === 'import-statement') loadedWith(path, seen);
  return seen;
}

function inputsOf(entry: string): string[] {
  const [file] =
    Object.entries(built.metafile.outputs).find(([, output]) => output.entryPoint?.endsWith(entry)) ?? [];
  if (file === undefined) throw new Error(`${entry} was not built`);
  return [...loadedWith(file)].flatMap((one) => [
    one,
    ...Object.keys(built.metafile.outputs[one]?.inputs ?? {}),
  ]);
}

const heavy = (inputs: readonly string[]): string[] =>
  inputs.filter((input) => /^(canvas|vega|vega-lite)$|node_modules\/(vega|canvas|d3-|dejavu)/.test(input));

describe('lazy loading', () => {
  it.each(['src/main.ts', 'src/pictures/index.ts'])('%s loads neither vega nor a canvas', (entry) => {
    const inputs = inputsOf(entry);
    expect(inputs.some((input) => input.endsWith(entry))).toBe(true);
    expect(heavy(inputs)).toEqual([]);
  });

  it('all three are loaded, but only when asked', () => {
    const later = Object.values(built.metafile.outputs)
      .flatMap(({ imports }) => imports)
      .filter(({ kind }) => kind === 'dynamic-import');
    expect(new Set(heavy(later.map(({ path }) => path)))).toEqual(new Set(['canvas', 'vega', 'vega-lite']));
  });

  it('the built program draws what the sources draw', async () => {
    const { draw } = (await import(pathToFileURL(join(folder, 'pictures', 'index.js')).href)) as {
      draw: typeof drawType;
    };
    const { spec } = bondPicture(bond('granite'), words);
    const fromSources = await (await import('../../src/pictures/index.ts')).draw(spec);
    expect((await draw(spec)).equals(fromSources)).toBe(true);
  });
});
