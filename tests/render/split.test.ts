import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitText } from '../../src/render/split.ts';

const paragraph = (text: string, first = false) => ({ text, first });
const group = [
  paragraph('Verdict.', true),
  paragraph('a'.repeat(60)),
  paragraph('b'.repeat(60)),
  paragraph('Cautions.', true),
  paragraph('Deferral.', true),
  paragraph('sources'),
];

describe('splitting an answer', () => {
  it('leaves alone what fits', () => {
    expect(splitText([group], 400)).toEqual([group.map(({ text }) => text).join('\n\n')]);
  });

  it('puts verdict, cautions and deferral into the first part, and drops nothing', () => {
    const parts = splitText([group], 100);
    expect(parts[0]).toMatch(/^Verdict\./);
    expect(parts[0]).toContain('Cautions.');
    expect(parts[0]).toContain('Deferral.');
    expect(parts.join('\n\n')).toContain('b'.repeat(60));
    expect(parts.join('\n\n')).toContain('sources');
    expect(parts.every(({ length }) => length <= 100)).toBe(true);
  });

  it('keeps each advice with its own cautions', () => {
    const second = [paragraph('Second.', true), paragraph('c'.repeat(80)), paragraph('Its cautions.', true)];
    const parts = splitText([group, second], 100);
    const place = parts.findIndex((part) => part.includes('Second.'));
    expect(parts[place]).toContain('Its cautions.');
  });

  it('never breaks a limit, never loses a word and never cuts a letter, whatever the texts', () => {
    const text = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 300 });
    const groups = fc.array(fc.array(fc.record({ text, first: fc.boolean() }), { minLength: 1 }), {
      minLength: 1,
      maxLength: 3,
    });
    fc.assert(
      fc.property(groups, fc.integer({ min: 20, max: 200 }), (all, limit) => {
        const parts = splitText(all, limit);
        expect(parts.every(({ length }) => length > 0 && length <= limit)).toBe(true);
        const letters = (one: string): string => [...one.replaceAll(/\s/g, '')].toSorted().join('');
        expect(letters(parts.join(''))).toBe(
          letters(
            all
              .flat()
              .map((one) => one.text)
              .join(''),
          ),
        );
      }),
      { numRuns: 300 },
    );
  });
});
