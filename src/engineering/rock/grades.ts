/** Strength grades of rock, ISRM (1978) and EN ISO 14689; limits in MPa. */

export interface StrengthGrade {
  readonly grade: 'R0' | 'R1' | 'R2' | 'R3' | 'R4' | 'R5' | 'R6';
  readonly words: string;
  readonly min: number;
  readonly max: number;
}

export const strengthGrades: readonly StrengthGrade[] = [
  { grade: 'R0', words: 'extremely weak', min: 0.25, max: 1 },
  { grade: 'R1', words: 'very weak', min: 1, max: 5 },
  { grade: 'R2', words: 'weak', min: 5, max: 25 },
  { grade: 'R3', words: 'medium strong', min: 25, max: 50 },
  { grade: 'R4', words: 'strong', min: 50, max: 100 },
  { grade: 'R5', words: 'very strong', min: 100, max: 250 },
  { grade: 'R6', words: 'extremely strong', min: 250, max: 1000 },
];

/**
 * Grade of a uniaxial compressive strength in MPa. The published limits touch; a value on a limit takes the
 * weaker grade, and formulas take the lower end of a grade.
 * Source: ISRM suggested methods, strength grades; EN ISO 14689. Errors: RangeError below 0.25, above 1000, NaN.
 * Worked: 60 → R4.
 */
export function strengthGrade(ucs: number): StrengthGrade {
  const found = strengthGrades.find((g) => ucs >= g.min && ucs <= g.max);
  if (found === undefined)
    throw new RangeError(
      `a compressive strength of ${ucs} MPa is outside the grades of rock, 0.25 to 1000 MPa`,
    );
  return found;
}
