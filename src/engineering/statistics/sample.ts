/** Fewer results than the method needs: nothing can be said. */
export class TooFewResults extends Error {
  override readonly name = 'TooFewResults';
  constructor(
    readonly have: number,
    readonly need: number,
  ) {
    super(`${have} results are too few; at least ${need} are needed.`);
  }
}

/** Results that cannot be what was measured: zero, negative, not a number, or all equal. */
export class BadResults extends Error {
  override readonly name = 'BadResults';
}

export interface Summary {
  readonly count: number;
  readonly mean: number;
  /** Sample standard deviation, n − 1. */
  readonly deviation: number;
  /** Coefficient of variation. */
  readonly scatter: number;
  readonly min: number;
  readonly max: number;
}

/** Refuses a sample that is too small or holds something that is no strength. */
export function checkStrengths(values: readonly number[], need: number): void {
  const bad = values.find((v) => !(v > 0 && v < 1e6));
  if (bad !== undefined) throw new BadResults(`${bad} is not a strength: results must be above 0.`);
  if (values.length < need) throw new TooFewResults(values.length, need);
}

/**
 * Mean, standard deviation (n − 1) and coefficient of variation of strengths in any unit.
 * Source: NIST/SEMATECH e-Handbook 1.3.5. Errors: TooFewResults below 2, BadResults for a value not above 0.
 * Worked: 24.1 27.3 22.8 30.2 26.0 → mean 26.08, s 2.879.
 */
export function summarise(values: readonly number[]): Summary {
  checkStrengths(values, 2);
  const count = values.length;
  const mean = values.reduce((a, b) => a + b, 0) / count;
  const deviation = Math.sqrt(values.reduce((a, v) => a + (v - mean) ** 2, 0) / (count - 1));
  return {
    count,
    mean,
    deviation,
    scatter: deviation / mean,
    min: Math.min(...values),
    max: Math.max(...values),
  };
}
