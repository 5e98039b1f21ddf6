import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oneLine } from '../../src/units/one-line.ts';

describe('a name on one line', () => {
  it.each([
    ['  Sea \n wall\t7 ', 'Sea wall 7'],
    ['\u202eabc\u2066d\u0000', 'abcd'],
    ['', ''],
    [`Z${'\u0300'.repeat(9)}`, 'Z\u0300\u0300'],
    ['24\u00a0kN', '24\u00a0kN'],
    // U+200E, left-to-right mark, keeps what follows on its side: Unicode Standard Annex 9.
    ['שלום עולם 3', 'שלום עולם\u200e 3'],
  ])('%j becomes %j', (told, shown) => {
    expect(oneLine(told)).toBe(shown);
  });

  it('is never longer than asked, cut between letters as a reader counts them', () => {
    expect(oneLine('abcdef', 4)).toBe('abc…');
    expect(oneLine('👨‍👩‍👧‍👦'.repeat(9), 3)).toMatch(/…$/);
    const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 400 }),
        fc.integer({ min: 2, max: 60 }),
        (text, most) => {
          const line = oneLine(text, most);
          expect([...letters.segment(line.replaceAll('\u200e', ''))].length).toBeLessThanOrEqual(most);
          expect(line).not.toMatch(/[\n\r\t\u202a-\u202e\u2066-\u2069]/);
        },
      ),
    );
  });

  it('takes a name of a megabyte in its stride', () => {
    const started = performance.now();
    expect(oneLine('a b'.repeat(400_000), 20)).toMatch(/…$/);
    expect(performance.now() - started).toBeLessThan(500);
  });
});
