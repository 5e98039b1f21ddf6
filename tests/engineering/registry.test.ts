import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formulas } from '../../src/engineering/index.ts';
import { readRows } from './check-rows.ts';

const root = new URL('../../src/engineering/', import.meta.url);
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(new URL(name, root), 'utf8'));

/** The docstring above the declaration of a formula, found by the id it declares. */
function docstringOf(id: string): string {
  const bases = [id, id.replace(/-(mean|characteristic)$/, '')];
  for (const text of files)
    for (const base of bases) {
      const at = text.indexOf(`id: '${base}',`);
      const start = text.lastIndexOf('/**', at);
      const end = text.indexOf('*/', start);
      if (at >= 0 && start >= 0 && /^\*\/\nexport const \w+ = define\w+[^/]*$/.test(text.slice(end, at)))
        return text.slice(start, end);
    }
  return '';
}

const checked = new Set(readRows().map((r) => r.formula));

describe.each([...formulas])('formula %s', (id, formula) => {
  it('is told in words: source and a worked number in the docstring', () => {
    const told = docstringOf(id);
    expect(told).toContain('Source');
    expect(told).toContain('Worked');
  });

  it('has a finite range for every input, in words that a member can read', () => {
    for (const spec of Object.values(formula.inputs)) {
      expect(spec.min).toBeLessThan(spec.max);
      expect(Number.isFinite(spec.min) && Number.isFinite(spec.max)).toBe(true);
      expect(spec.words.length).toBeGreaterThan(2);
    }
  });

  it('has a check', () => {
    expect(checked).toContain(id);
  });

  it('refuses what is no number', () => {
    for (const name of Object.keys(formula.inputs)) {
      const middle = Object.fromEntries(
        Object.entries(formula.inputs).map(([key, spec]) => [key, (spec.min + spec.max) / 2]),
      );
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1e12, 1e12])
        expect(() => formula({ ...middle, [name]: bad })).toThrow(
          expect.objectContaining({ name: 'OutOfRange', formula: id, input: name }),
        );
    }
  });
});
