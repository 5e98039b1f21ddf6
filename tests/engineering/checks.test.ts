import { describe, expect, it } from 'vitest';
import { readRows, runRow } from './check-rows.ts';

const rows = readRows();
const files = [...new Set(rows.map((r) => r.file))];

describe.each(files)('published values, %s', (file) => {
  const some = rows.filter((r) => r.file === file);
  it.each(some.map((r) => [`${r.name} [${r.formula}]`, r] as const))('%s', (_name, row) => {
    const result = runRow(row);
    const told = `got ${result.got}, expected ${row.expected} ± ${row.tolerance ?? 0} (${row.source})`;
    expect(result.ok, told).toBe(true);
  });
});

describe('the table of checks itself', () => {
  it('rests on others: most rows are published, and few only remembered', () => {
    const outside = rows.filter((r) => r.mark.startsWith('published'));
    expect(outside.length).toBeGreaterThanOrEqual(100);
    expect(rows.filter((r) => r.mark === 'from memory').length).toBeLessThan(outside.length / 2);
  });

  it('names one check once', () => {
    const names = rows.map((r) => `${r.file} ${r.formula} ${r.name}`);
    expect(names.filter((n, i) => names.indexOf(n) !== i)).toEqual([]);
  });

  it('can fail: a row moved by twice its tolerance is caught', () => {
    const numeric = rows.filter((r) => typeof r.expected === 'number' && r.expected !== 0);
    const caught = numeric.filter((r) => {
      const moved = Number(r.expected) * (1 + 2 * (r.tolerance ?? 0) + 1e-6);
      return !runRow({ ...r, expected: moved }).ok;
    });
    expect(caught.length).toBe(numeric.length);
  });
});
