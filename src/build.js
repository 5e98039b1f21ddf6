// Bundles src/main.ts into dist/chough.js. Plain JavaScript, so that it runs before anything is built.
// `--if-stale` rebuilds only when a source is newer than the bundle: that keeps `npm start` fast.
import { execFile } from 'node:child_process';
import { mkdir, readdir, readFile, rename, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const target = join(root, 'dist', 'chough.js');

async function newestSource() {
  const names = await readdir(join(root, 'src'), { recursive: true });
  const times = await Promise.all(
    [...names.map((name) => join('src', name)), 'package.json'].map(
      async (name) => (await stat(join(root, name))).mtimeMs,
    ),
  );
  return Math.max(...times);
}

async function isStale() {
  const built = await stat(target).catch(() => null);
  return built === null || built.mtimeMs < (await newestSource());
}

const coast = join(root, 'dist', 'coast.bin');

/** The coastline as a compact file, from the open data of the registry: once, until the program that makes it changes. */
async function makeCoast(esbuild) {
  const made = await stat(coast).catch(() => null);
  const maker = join(root, 'src', 'places');
  const names = await readdir(maker);
  const times = await Promise.all(names.map(async (name) => (await stat(join(maker, name))).mtimeMs));
  if (made !== null && made.mtimeMs > Math.max(...times)) return;
  const script = join(root, 'dist', 'build-coast.mjs');
  await esbuild.build({
    entryPoints: [join(maker, 'build-coast.ts')],
    outfile: script,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
  });
  await promisify(execFile)(process.execPath, [script, coast]);
}

if (!process.argv.includes('--if-stale') || (await isStale())) {
  const esbuild = await import('esbuild');
  const result = await esbuild.build({
    entryPoints: [join(root, 'src', 'main.ts')],
    outdir: join(root, 'dist'),
    entryNames: 'chough',
    bundle: true,
    splitting: true,
    chunkNames: 'chunk-[hash]',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    // Compiled modules and CommonJS packages that look for files beside themselves stay outside.
    external: JSON.parse(await readFile(join(root, 'src', 'external.json'), 'utf8')),
    banner: {
      js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);",
    },
    write: false,
    logLevel: 'warning',
  });
  await mkdir(dirname(target), { recursive: true });
  await makeCoast(esbuild);
  // Chunks first, the entry last, each by rename: a program starting meanwhile never reads half a file.
  const files = result.outputFiles.toSorted((a, b) => Number(a.path === target) - Number(b.path === target));
  for (const file of files) {
    const half = `${file.path}.${process.pid}`;
    await writeFile(half, file.contents, { mode: file.path === target ? 0o755 : 0o644 });
    await rename(half, file.path);
  }
}
