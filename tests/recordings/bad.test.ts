/** What cannot be read is refused as a whole, with a code, a line and a text in every language. */
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { modeReasons, pullModes, pullNotes } from '../../src/contracts/recording.ts';
import { bytesSource, readFile, readRecording } from '../../src/recordings/index.ts';
import { problemCodes, RecordingError } from '../../src/recordings/problem.ts';
import { root, run } from '../support/program.ts';

const head = 'Time [s];Force [kN]\n';
const rows = (count: number, from = 0): string =>
  Array.from({ length: count }, (_, i) => `${((from + i) / 100).toFixed(2)};${(i / 10).toFixed(3)}\n`).join(
    '',
  );

async function refused(bytes: string | Buffer): Promise<RecordingError> {
  try {
    await readRecording(bytesSource(Buffer.from(bytes as string)));
  } catch (error) {
    if (error instanceof RecordingError) return error;
    throw error;
  }
  throw new Error('it was read');
}

describe('a file that is no recording', () => {
  it.each([
    ['nothing', '', 'empty', null],
    ['blank lines', '\n\n \n', 'empty', null],
    ['gzip', gzipSync(head + rows(50)), 'packed', null],
    ['zip', Buffer.concat([Buffer.from([0x50, 0x4b, 3, 4]), Buffer.alloc(100)]), 'packed', null],
    ['bytes', Buffer.from(Array.from({ length: 4000 }, (_, i) => (i * 7919) % 251)), 'binary', null],
    ['prose', 'We pulled three bolts.\nAll held.\n', 'no-table', null],
    ['no header', rows(50), 'no-header', 1],
    ['no unit', `Time [s];Force\n${rows(50)}`, 'unit', null],
    ['another unit', `Time [s];Force [psi]\n${rows(50)}`, 'unit', null],
    ['no load', `Time [s];Temperature [C]\n${rows(50)}`, 'no-load', null],
    ['two loads', `Force A [kN];Force B [kN]\n${rows(50)}`, 'many-loads', null],
    ['no time', `Force [kN]\n1\n2\n3\n4\n5\n`, 'no-time', null],
    ['no rate', `Sample;Force [kN]\n1;1\n2;2\n3;3\n4;4\n`, 'no-rate', null],
    ['time without unit', `Time;Force [kN]\n0;1\n5;2\n10;3\n15;4\n`, 'time-unit', null],
    ['not a number', `${head}${rows(50)}0.50;NaN\n${rows(50, 51)}`, 'no-number', 52],
    ['a cell left out', `${head}${rows(50)}0.50;\n${rows(50, 51)}`, 'missing-cell', 52],
    ['a column left out', `${head}${rows(50)}0.50\n${rows(50, 51)}`, 'missing-cell', 52],
    ['a formula', `${head}${rows(50)}0.50;=1+1\n${rows(50, 51)}`, 'formula', 52],
    ['a formula far down', `${head}${rows(20_000)}200.5;=1+1\n`, 'formula', 20_002],
    ['time that runs backwards', `${head}${rows(50)}${rows(50)}`, 'time-back', 52],
    ['text amid numbers', `${head}${rows(50)}pause\n${rows(50, 51)}`, 'strange-text', 52],
    ['cut off', `${head}${rows(50)}0.50`, 'truncated', 52],
    ['three rows', `${head}${rows(3)}`, 'too-short', null],
    [
      'thousands',
      `Time [s];Force [N]\n0.1;950\n0.2;999\n0.3;1,034\n0.4;1,100\n0.5;980\n`,
      'decimal-mark',
      null,
    ],
    ['one endless line', 'x'.repeat(100_000), 'long-line', 1],
  ])('%s', async (_, bytes, code, line) => {
    const error = await refused(bytes);
    expect([error.code, error.line]).toEqual([code, line]);
  });

  it('is refused where it is not there, or a folder', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'chough-bad-'));
    mkdirSync(join(folder, 'x.csv'));
    for (const file of [join(folder, 'none.csv'), join(folder, 'x.csv')])
      expect(await readFile(file)).toMatchObject({ problem: { code: 'unreadable' } });
  });

  it('is not read when it is a gigabyte of nothing', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'chough-bad-')), 'big.csv');
    writeFileSync(file, head + rows(50));
    truncateSync(file, 2 ** 30);
    expect(await readFile(file)).toMatchObject({ problem: { code: 'binary' } });
    truncateSync(file, 3 * 2 ** 30);
    expect(await readFile(file)).toMatchObject({ problem: { code: 'too-large' } });
  });

  it('has a text for each code, mode, reason and note', () => {
    const texts = readFileSync(join(root, 'rules', 'words', 'en.ftl'), 'utf8');
    const ids = [
      ...problemCodes.map((code) => `problem-${code}`),
      ...pullModes.map((mode) => `mode-${mode}`),
      ...modeReasons.map((reason) => `reason-${reason}`),
      ...pullNotes.map((note) => `note-${note}`),
    ];
    for (const id of ids) expect(texts).toContain(`\nrecording-${id} = `);
  });
});

describe('chough pull', () => {
  const demo = (name: string): string => join(root, 'demo', 'recordings', `${name}.csv`);

  it('prints one object a file, the good ones also where another is bad', async () => {
    const { code, stdout } = await run([
      'pull',
      demo('broke'),
      join(root, 'LICENSE'),
      demo('stopped'),
      '--json',
    ]);
    const [broke, bad, stopped] = stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(code).toBe(1);
    expect(Object.keys(broke)).toEqual(['file', 'unit', 'pulls']);
    expect(Object.keys(broke.pulls[0])).toEqual([
      'peak_kn',
      'time_of_peak_s',
      'first_drop',
      'stiffness_kn_per_mm',
      'energy_j',
      'rate_kn_per_s',
      'failed',
      'clipped',
      'mode',
    ]);
    expect(broke.pulls[0]).toMatchObject({ failed: true, mode: 'brittle' });
    expect(stopped).toMatchObject({
      unit: 'lbf',
      pulls: [{ failed: false, first_drop: null, mode: 'stopped' }],
    });
    expect(bad).toMatchObject({ unit: 'unknown', pulls: [], error: { code: 'no-table' } });
  });

  it('says the verdict first, both systems of units, cautions and the deferral for each pull', async () => {
    // Pictures are drawn beside the file.
    const file = join(mkdtempSync(join(tmpdir(), 'chough-pull-')), 'three-pulls.csv');
    copyFileSync(demo('three-pulls'), file);
    const { code, stdout } = await run(['pull', file]);
    expect(code).toBe(0);
    const parts = stdout.trim().split('\n\n');
    expect(parts).toHaveLength(3);
    expect(parts[0]).toMatch(/^Stopped before anything gave way/);
    expect(parts[1]).toMatch(/^It gave way/);
    for (const part of parts) {
      expect(part).toContain('lbf');
      expect(part).toContain('out of line with the pull');
      expect(part).toContain('not a certificate');
      expect(part).toMatch(/\?/);
    }
  });

  it('wants a file', async () => {
    expect((await run(['pull'])).code).toBe(2);
  });
});
