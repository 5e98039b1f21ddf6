/** The two limits of the gap between rod and wall, mm each side; the product's own figures come first. */
export interface GapLimits {
  readonly least: number;
  readonly most: number;
}

/** Common practice, no source: below 0.5 mm voids stay, above 2 mm only thick pastes hold. */
export const usualGap: GapLimits = { least: 0.5, most: 2 };

export type GapVerdict = 'ok' | 'too-tight' | 'too-wide';

/**
 * Gap on each side of a rod, (d0 − d)/2, against its limits; mm.
 * Source: the product's instructions; the defaults are common practice. Errors: RangeError for a hole not wider
 * than the rod or a value that is no number. Worked: d 12, d0 14 → 1 mm, ok.
 */
export function checkGap(
  rodDiameter: number,
  holeDiameter: number,
  limits: GapLimits = usualGap,
): { readonly gap: number; readonly verdict: GapVerdict; readonly limits: GapLimits } {
  const gap = (holeDiameter - rodDiameter) / 2;
  if (!(rodDiameter > 0 && gap > 0 && gap < 50))
    throw new RangeError(`a rod of ${rodDiameter} mm does not go into a hole of ${holeDiameter} mm`);
  const verdict = gap < limits.least ? 'too-tight' : gap > limits.most ? 'too-wide' : 'ok';
  return { gap, verdict, limits };
}
