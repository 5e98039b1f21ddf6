/** How strong to take the rock: by its name, by hammer and knife, by a rebound number, or as measured. */
import type { Phrase } from '../contracts/phrase.ts';
import { reboundClass, reboundSpread } from '../engineering/index.ts';
import { numberCell, rangeCell } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

/** Spread of the strength by how well the rock is known; the rows of the fact `strength_known`. */
export type StrengthKnown = 'name' | 'class' | 'tested';

export interface Ground {
  /** Of the rock as it is, wet where it is not known to be dry, MPa. */
  readonly strength: number;
  readonly known: StrengthKnown;
  /** Coefficient of variation of everything that the rock decides. */
  readonly scatter: number;
  readonly lines: readonly Phrase[];
}

export const scatterOf: Readonly<Record<StrengthKnown, number>> = { name: 0.6, class: 0.45, tested: 0.3 };

/** Range of rebound in which the published laws were all found. */
const lawsFrom = 20;
const lawsTo = 60;

const mpa = (value: number, exact = true) => ({ value, unit: 'MPa', exact }) as const;

function byRebound(sheet: Worksheet): { strength: number; line: Phrase } | undefined {
  const rebound = sheet.number('rebound');
  if (rebound === undefined) return undefined;
  const { min, max } = reboundClass(rebound);
  sheet.cite('rebound-tables');
  const { min: low, max: high } = reboundSpread(Math.min(lawsTo, Math.max(lawsFrom, rebound)));
  return {
    strength: min,
    line: {
      say: 'embedment-rebound',
      with: { rebound, min: mpa(min), max: mpa(max), low: mpa(low, false), high: mpa(high, false) },
    },
  };
}

function byGrade(sheet: Worksheet): { strength: number; line: Phrase } | undefined {
  if (sheet.told('rock_grade') === undefined) return undefined;
  const grade = sheet.choice('rock_grade');
  const [min, max] = rangeCell(sheet.row('isrm-grades', grade), 'ucs_mpa');
  return {
    strength: min,
    line: { say: 'embedment-grade', with: { grade, min: mpa(min), max: mpa(max) } },
  };
}

/** What was told of its strength, the least of it; never above what such a rock is known to reach. */
export function groundOf(sheet: Worksheet): Ground {
  const rock = sheet.row('rocks', sheet.choice('rock'));
  const measured = sheet.number('ucs_mpa');
  const classes = [byRebound(sheet), byGrade(sheet)].filter((one) => one !== undefined);
  const told = [...classes.map(({ strength }) => strength), ...(measured === undefined ? [] : [measured])];
  const lines = classes.map(({ line }) => line);
  if (told.length === 0)
    // The table's strength is that of wet rock already.
    return { strength: numberCell(rock, 'ucs_mpa'), known: 'name', scatter: scatterOf.name, lines };
  const [, most] = rangeCell(rock, 'ucs_range');
  const least = Math.min(...told);
  if (least > most)
    lines.push({ say: 'embedment-strength-capped', with: { told: mpa(least), most: mpa(most) } });
  const wet = sheet.choice('hole_moisture') === 'dry' ? 1 : numberCell(rock, 'wet_factor');
  return { strength: Math.min(least, most) * wet, known: 'class', scatter: scatterOf.class, lines };
}

/** Lower ends of the strength classes, MPa: those of the fact `rock_strength`, by the ISRM grades R2 to R4. */
export function strengthClass(strength: number): 'very-weak' | 'weak' | 'medium' | 'strong' {
  if (strength >= 50) return 'strong';
  if (strength >= 25) return 'medium';
  return strength >= 5 ? 'weak' : 'very-weak';
}
