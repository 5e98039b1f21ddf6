/** Reading and measuring load-cell recordings: a process of its own for each, so that its memory can be told. */
import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Ramps to 25 kN and breaks, at 10 kHz, with a little noise. */
function writeRows(file: string, rows: number): void {
  const out = openSync(file, 'w');
  writeSync(out, 'Seagull Bay Climbing Club\nTime [s];Force [kN]\n');
  let lines: string[] = [];
  for (let row = 0; row < rows; row += 1) {
    const share = row / rows;
    const load = share < 0.05 || share > 0.9 ? 0 : (25 * (share - 0.05)) / 0.85;
    lines.push(`${(row / 10_000).toFixed(4)};${(load + 0.01 * Math.sin(row * 12.9898)).toFixed(4)}`);
    if (lines.length === 100_000 || row === rows - 1) {
      writeSync(out, `${lines.join('\n')}\n`);
      lines = [];
    }
  }
  closeSync(out);
}

const measured = `
import { readFile } from './src/recordings/index.ts';
const started = performance.now();
const reading = await readFile(process.argv[2]);
const ms = performance.now() - started;
const { rows, pulls } = reading.recording;
console.log([rows, 'rows', pulls.length, 'pull', pulls[0].peakKn.toFixed(3), 'kN', Math.round(ms), 'ms',
  Math.round(process.resourceUsage().maxRSS / 1024), 'MiB at most'].join(' '));
`;

export async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'chough-recordings-'));
  try {
    const { build } = await import('esbuild');
    const program = join(folder, 'measured.mjs');
    await build({
      stdin: { contents: measured, resolveDir: root, loader: 'ts' },
      bundle: true,
      platform: 'node',
      format: 'esm',
      outfile: program,
    });
    for (const rows of [1_000_000, 10_000_000]) {
      const file = join(folder, `${rows}.csv`);
      writeRows(file, rows);
      const { stdout, stderr } = spawnSync('node', [program, file], { encoding: 'utf8' });
      console.log(`  ${stdout.trim()} (${Math.round(statSync(file).size / 2 ** 20)} MiB)${stderr}`);
      rmSync(file);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}
