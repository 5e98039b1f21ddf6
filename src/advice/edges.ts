/** Distances to keep in rock, from rules/tables/edge-rules.json: times the depth, times the diameter, and a least. */
import { hasCell, numberCell } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

export interface Placed {
  readonly depth: number;
  readonly diameter: number | undefined;
  readonly expansion: boolean;
}

function distance(sheet: Worksheet, rule: string, { depth, diameter }: Placed): number {
  const row = sheet.row('edge-rules', rule);
  const byDiameter =
    hasCell(row, 'diameters') && diameter !== undefined ? numberCell(row, 'diameters') * diameter : 0;
  return Math.max(numberCell(row, 'depths') * depth, numberCell(row, 'least_mm'), byDiameter);
}

/** To the nearest edge, crack or old hole: wider in soft rock and beside anchors that spread the rock. */
export function edgeToKeep(sheet: Worksheet, placed: Placed): number {
  const strength = sheet.situation.rock_strength;
  const rules = ['edge'];
  if (strength !== 'medium' && strength !== 'strong') rules.push('edge-soft');
  if (placed.expansion) rules.push('edge-expansion');
  return Math.max(...rules.map((rule) => distance(sheet, rule, placed)));
}

export const spacingToKeep = (sheet: Worksheet, placed: Placed): number => distance(sheet, 'pair', placed);

/** The value of the fact `edge_check`; `unknown` while nobody measured. */
export function edgeGrade(sheet: Worksheet, edge: number | undefined, placed: Placed): string {
  if (edge === undefined) return 'unknown';
  if (edge < distance(sheet, 'edge-refused', placed)) return 'refused';
  return edge < edgeToKeep(sheet, placed) ? 'close' : 'clear';
}
