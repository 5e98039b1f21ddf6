/** `chough pull` draws beside the file, and never writes over what it did not draw. */
import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { isMarked, marked } from '../../src/pictures/mark.ts';
import { root, run } from '../support/program.ts';

function copied(name: string): { folder: string; file: string } {
  const folder = mkdtempSync(join(tmpdir(), 'chough-beside-'));
  const file = join(folder, `${name}.csv`);
  copyFileSync(join(root, 'demo', 'recordings', `${name}.csv`), file);
  return { folder, file };
}

it('draws force over time and over displacement, says where, and draws its own anew', async () => {
  const { file } = copied('broke');
  for (const _ of ['first', 'again']) {
    const { code, stdout } = await run(['pull', file]);
    expect(code).toBe(0);
    expect(stdout).toContain(`Picture: ${file}.png\nPicture: ${file}.displacement.png\n`);
    expect(stdout).toMatch(/^It gave way/);
  }
  // Any PNG decoder refuses a chunk whose checksum is wrong; that of the canvas is one.
  const { loadImage } = await import('canvas');
  const image = await loadImage(readFileSync(`${file}.png`));
  expect([image.width, image.height].every((side) => side > 300)).toBe(true);
});

it('leaves a file that it did not draw, and says so', async () => {
  const { file } = copied('stopped');
  writeFileSync(`${file}.png`, 'a photo of the hole');
  const { code, stdout } = await run(['pull', file]);
  expect(code).toBe(0);
  expect(stdout).toContain(`${file}.png is there already and was not drawn by me`);
  expect(stdout).not.toContain('Picture:');
  expect(readFileSync(`${file}.png`, 'utf8')).toBe('a photo of the hole');
});

it('draws nothing with --json, nor of a file that cannot be read', async () => {
  const { folder, file } = copied('stopped');
  await run(['pull', file, '--json']);
  const bad = join(folder, 'bad.csv');
  writeFileSync(bad, 'rubbish\n');
  expect((await run(['pull', bad])).code).toBe(1);
  expect(readdirSync(folder).toSorted()).toEqual(['bad.csv', 'stopped.csv']);
  expect(existsSync(`${bad}.png`)).toBe(false);
});

it('knows its own mark', () => {
  const plain = Buffer.alloc(100, 7);
  expect(isMarked(plain)).toBe(false);
  expect(isMarked(Buffer.alloc(5))).toBe(false);
  expect(isMarked(marked(plain))).toBe(true);
});
