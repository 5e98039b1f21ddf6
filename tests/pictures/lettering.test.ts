/** What is reckoned without a canvas agrees with the canvas; thinning loses no peak. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createCanvas } from 'canvas';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { draw } from '../../src/pictures/index.ts';
import { widthOf, wrap } from '../../src/pictures/lettering.ts';
import { font } from '../../src/pictures/look.ts';
import { thinned } from '../../src/pictures/outline.ts';
import { rulesFolder, words } from '../support/desk.ts';
import { bond, bondPicture } from './samples.ts';

const languages = ['en', 'es', 'pt', 'fr', 'it', 'de'];
const context = createCanvas(1, 1).getContext('2d');

// Registers the fonts.
beforeAll(async () => {
  await draw(bondPicture(bond('granite'), words).spec);
});

describe.each(languages)('widths of texts in %s', (code) => {
  const lines = readFileSync(join(rulesFolder, 'words', `${code}.ftl`), 'utf8')
    .split('\n')
    .filter((line) => line.length > 10);

  it.each([false, true])('bold: %s', (bold) => {
    context.font = `${bold ? 'bold' : 'normal'} 12px "${font}"`;
    const shares = lines.map((line) => widthOf(line, 12, bold) / context.measureText(line).width);
    // Never too narrow, so nothing is cut; not so wide that half a line stays empty.
    expect(Math.min(...shares)).toBeGreaterThanOrEqual(1);
    expect(Math.max(...shares)).toBeLessThan(1.35);
  });
});

describe('wrapping', () => {
  const letters = (text: string): string => text.replaceAll(/\s/g, '');

  it('keeps every letter where there is room, and every line within its width', () => {
    const text = fc.string({ unit: fc.constantFrom(...'abcdef ghiMW. 0'), maxLength: 120 });
    fc.assert(
      fc.property(text, fc.integer({ min: 30, max: 400 }), (one, width) => {
        const lines = wrap(one, { width, size: 12, most: 999 });
        expect(letters(lines.join(''))).toBe(letters(one));
        for (const line of lines) expect(widthOf(line, 12)).toBeLessThanOrEqual(width);
      }),
    );
  });

  it('says where something is left out', () => {
    const lines = wrap('one two three four five six seven', { width: 60, size: 12, most: 2 });
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/…$/);
  });

  it('keeps a figure with its unit', () => {
    for (let width = 40; width < 200; width += 1)
      expect(wrap('it held 24 kN at last', { width, size: 12 }).join('|')).not.toMatch(/24\|kN|24 kN/);
  });
});

describe('thinning', () => {
  it('keeps the highest and the lowest, the first and the last, in order', () => {
    const heights = fc.array(fc.double({ min: -5, max: 60, noNaN: true }), {
      minLength: 1,
      maxLength: 3000,
    });
    fc.assert(
      fc.property(heights, fc.integer({ min: 1, max: 50 }), (all, stretches) => {
        const dots = all.map((y, x) => ({ x, y }));
        const kept = thinned(dots, stretches);
        const most = (some: readonly { readonly y: number }[]): number => Math.max(...some.map(({ y }) => y));
        const least = (some: readonly { readonly y: number }[]): number =>
          Math.min(...some.map(({ y }) => y));
        expect(most(kept)).toBe(most(dots));
        expect(least(kept)).toBe(least(dots));
        expect([kept[0], kept.at(-1)]).toEqual([dots[0], dots.at(-1)]);
        expect(kept.map(({ x }) => x)).toEqual(kept.map(({ x }) => x).toSorted((a, b) => a - b));
        expect(kept.length).toBeLessThanOrEqual(4 * stretches);
      }),
    );
  });
});
