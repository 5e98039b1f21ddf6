import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'zod';
import { calls } from './check-calls.ts';

export const marks = [
  'published',
  'published (second hand)',
  'from memory',
  'common practice, no source',
  'own computation',
] as const;

const row = z.strictObject({
  name: z.string().min(3),
  formula: z.string(),
  inputs: z.record(z.string(), z.unknown()),
  expected: z.union([z.number(), z.string(), z.boolean()]),
  /** Relative to the expected value; absolute where that is 0. */
  tolerance: z.number().min(0).max(0.12).optional(),
  unit: z.string(),
  source: z.string().min(5),
  mark: z.enum(marks),
});

export type CheckRow = z.infer<typeof row> & { readonly file: string };

export interface CheckResult extends CheckRow {
  readonly got: number | string | boolean;
  readonly deviation: number | undefined;
  readonly ok: boolean;
}

const folder = new URL('./checks/', import.meta.url);

export function readRows(): CheckRow[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .flatMap((name) =>
      z
        .array(row)
        .parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8')))
        .map((r) => ({ ...r, file: name })),
    );
}

/** Runs one row. A row that expects "refused" wants a typed refusal, not just any failure. */
export function runRow(given: CheckRow): CheckResult {
  const call = calls.get(given.formula);
  if (call === undefined) throw new Error(`${given.file}: no formula has the id ${given.formula}`);
  let got: number | string | boolean;
  try {
    got = call(given.inputs);
  } catch (error) {
    const refusal = error instanceof RangeError || (error instanceof Error && error.name !== 'Error');
    if (!refusal || error instanceof TypeError) throw error;
    got = 'refused';
  }
  if (typeof got !== 'number' || typeof given.expected !== 'number')
    return { ...given, got, deviation: undefined, ok: got === given.expected };
  const deviation = given.expected === 0 ? got : (got - given.expected) / Math.abs(given.expected);
  return { ...given, got, deviation, ok: Math.abs(deviation) <= (given.tolerance ?? 0) };
}
