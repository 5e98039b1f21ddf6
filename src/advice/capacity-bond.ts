/** What hole, shank, sun and a lasting load leave of an adhesive's bond. Materials are rows; nothing here names one. */
import { hasCell, numberCell, type Row, rangeCell } from '../rules/index.ts';
import { type LearnedBond, learnedBond } from './learned-bond.ts';
import type { Worksheet } from './worksheet.ts';

/** From this warmth in use on, bond is only counted as far as a code counts it untested (EAD 330499, range to 40 °C). */
const warmFrom = 40;

/** The row of what was told; where nothing was told, the weakest of the table, because nobody ruled it out. */
export function rowOrWeakest(sheet: Worksheet, table: string, id: string, column: string): Row {
  if (id !== 'unknown') return sheet.row(table, id);
  const rows = sheet.desk.rules.table(table).rows;
  const weakest = rows.reduce((least, row) =>
    numberCell(row, column) < numberCell(least, column) ? row : least,
  );
  return sheet.row(table, weakest.id);
}

/** The share of the bond that the row of a fact leaves. */
export const bondFactor = (sheet: Worksheet, table: string, fact: string): number =>
  numberCell(sheet.row(table, sheet.choice(fact)), 'bond_factor');

/** The warmest that rock or metal get, as far as told. A rock told to be warm while gluing is no cooler later. */
export function warmestTold(sheet: Worksheet): number | undefined {
  const told = [sheet.number('surface_temperature_c'), sheet.number('temperature_c')].filter(
    (one) => one !== undefined,
  );
  const warmest = Math.max(...told);
  return sheet.told('surface_temperature_c') === undefined && warmest <= warmFrom ? undefined : warmest;
}

/** The value of the fact `heat_check`. */
export function heatGrade(sheet: Worksheet, adhesive: Row): 'softens' | 'warm' | 'cool' | 'unknown' {
  const warmest = warmestTold(sheet);
  if (warmest === undefined) return 'unknown';
  if (hasCell(adhesive, 'glass_c') && warmest >= rangeCell(adhesive, 'glass_c')[0]) return 'softens';
  return warmest > warmFrom ? 'warm' : 'cool';
}

export interface Bond {
  /** Of the adhesive in a dry, clean, cool hole, MPa. */
  readonly mean: number;
  readonly hole: number;
  readonly shank: number;
  readonly lasting: number;
  readonly heat: number;
  readonly heatGrade: ReturnType<typeof heatGrade>;
  /** Present where the club has pulled in this rock with this adhesive; `mean` is then what that leaves to count. */
  readonly learned?: LearnedBond;
}

export function bondOf(sheet: Worksheet, scatter: number): Bond {
  const adhesive = rowOrWeakest(sheet, 'adhesives', sheet.choice('adhesive'), 'bond_mean_mpa');
  const grade = heatGrade(sheet, adhesive);
  sheet.choice('use');
  const hole = bondFactor(sheet, 'hole-moistures', 'hole_moisture');
  const shank = bondFactor(sheet, 'shanks', 'shank');
  const learned = learnedBond(sheet, adhesive, hole * shank, scatter);
  return {
    mean: learned?.used ?? numberCell(adhesive, 'bond_mean_mpa'),
    ...(learned === undefined ? {} : { learned }),
    hole,
    shank,
    lasting: numberCell(sheet.row('lasting-loads', sheet.situation.sustained ?? 'unknown'), 'bond_factor'),
    heat: numberCell(sheet.row('sun-heats', grade), 'bond_factor'),
    heatGrade: grade,
  };
}

/** The least factor that the bond formula takes: below it there is as good as no bond. */
const leastFactor = 0.1;

export const bondLeft = ({
  hole,
  shank,
  lasting,
  heat,
}: Omit<Bond, 'mean' | 'heatGrade' | 'learned'>): number =>
  Math.max(leastFactor, hole * shank * lasting * heat);
