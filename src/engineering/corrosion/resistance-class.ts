/** Corrosion resistance of stainless steel by EN 1993-1-4:2006+A1:2015 Annex A. Not for tropical coasts. */

export type ResistanceClass = 'I' | 'II' | 'III' | 'IV' | 'V';

/** Values that Table A.1 knows, worst last. */
export const exposureParts = {
  chloride: [1, 0, -3, -7, -10, -15],
  sulphur: [0, -5, -10],
  cleaning: [0, -2, -7],
} as const;

export interface Exposure {
  readonly chloride: number;
  readonly sulphur: number;
  readonly cleaning: number;
}

export interface ResistanceFactor {
  readonly factor: number;
  readonly class: ResistanceClass;
  /** The class to advise: V at −20, where published readings differ. */
  readonly advised: ResistanceClass;
  /** True at −20: some put it in IV (the text), some in V. */
  readonly onBoundary: boolean;
}

function classOf(factor: number): ResistanceClass {
  if (factor >= 1) return 'I';
  if (factor > -7) return 'II';
  if (factor > -15) return 'III';
  return factor >= -20 ? 'IV' : 'V';
}

/**
 * CRF = F1 + F2 + F3 and its class: 1 → I; 0 to above −7 → II; −7 to above −15 → III; −15 to −20 → IV; below → V.
 * F1 chlorides, F2 sulphur dioxide, F3 washing; F3 counts 0 when F1 + F2 ≥ 0.
 * Nobody cleans behind a hanger: for climbing anchors only F3 0 or −7 is credible, −2 is refused.
 * Errors: RangeError for a value that Table A.1 does not have, or F3 −2.
 * Source: EN 1993-1-4:2006+A1:2015 Annex A, Tables A.1, A.2 (second hand; F3 rule from memory).
 * Worked: −3, −5, −7 → −15, IV.
 */
export function resistanceFactor(exposure: Exposure): ResistanceFactor {
  for (const part of ['chloride', 'sulphur', 'cleaning'] as const)
    if (!(exposureParts[part] as readonly number[]).includes(exposure[part]))
      throw new RangeError(`${part} value ${exposure[part]} is not one of ${exposureParts[part].join(', ')}`);
  if (exposure.cleaning === -2)
    throw new RangeError('a cleaning regime is not credible behind a hanger: use 0 (rain-washed) or -7');
  const air = exposure.chloride + exposure.sulphur;
  const factor = air >= 0 ? air : air + exposure.cleaning;
  const onBoundary = factor === -20;
  return { factor, class: classOf(factor), advised: onBoundary ? 'V' : classOf(factor), onBoundary };
}
