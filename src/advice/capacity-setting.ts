/** From facts and table rows to what the capacity formulas take. Materials are data; the formulas know none. */
import { numberCell } from '../rules/index.ts';
import { type Bond, bondLeft, bondOf, rowOrWeakest } from './capacity-bond.ts';
import { type Ground, groundOf, scatterOf } from './capacity-rock.ts';
import type { Worksheet } from './worksheet.ts';

export interface Setting {
  readonly glueIn: boolean;
  readonly legs: 1 | 2;
  readonly diameter: number;
  readonly holeDiameter: number;
  readonly embedment: number;
  readonly ground: Ground;
  readonly jointFactor: number;
  readonly skin: number;
  /** Absent for an anchor without adhesive. */
  readonly bond: Bond | undefined;
  readonly adhesiveFactor: number;
  /** A thread leaves less metal than the outer diameter says. */
  readonly threaded: boolean;
  readonly steelStrength: number;
  readonly yieldStrength: number;
  readonly standOff: number;
  readonly edge: number | undefined;
  readonly neighbour: number | undefined;
}

export interface Chosen {
  readonly anchor: string;
  readonly diameter: number;
  readonly length: number;
  readonly hole?: number | undefined;
}

/** A hole for each shank while nobody told it (common practice): the product's own figure comes first. */
export const usualHole = (diameter: number, glueIn: boolean): number => (glueIn ? diameter + 2 : diameter);

/** Reads everything that a strength depends on. The rock must be known. */
export function settingOf(sheet: Worksheet, chosen: Chosen): Setting {
  const { diameter, length } = chosen;
  const anchor = sheet.row('anchors', chosen.anchor);
  const glueIn = anchor.is.family === 'glue-in';
  const intact = groundOf(sheet);
  const state = sheet.choice('rock_condition');
  const condition = sheet.row('rock-conditions', state);
  // A class is that of the sound rock; a vein or a rotten skin is known by name only.
  const ground = state === 'sound' ? intact : { ...intact, scatter: scatterOf.name };
  const metal = rowOrWeakest(sheet, 'metals', sheet.choice('metal'), 'strength_mpa');
  const bond = glueIn ? bondOf(sheet, ground.scatter) : undefined;
  const standOff = sheet.number('stick_out_mm') ?? 0;
  const outside = numberCell(anchor, 'outside_mm') + standOff;
  return {
    glueIn,
    legs: numberCell(anchor, 'legs') === 2 ? 2 : 1,
    diameter,
    holeDiameter: chosen.hole ?? usualHole(diameter, glueIn),
    embedment: sheet.number('embedment_mm') ?? length - outside,
    ground,
    jointFactor: numberCell(condition, 'joint_factor'),
    skin: numberCell(condition, 'skin_mm'),
    bond,
    adhesiveFactor: bond === undefined ? 1 : bondLeft(bond),
    // A shank that nobody described may be threaded: the smaller area counts.
    threaded: !glueIn || sheet.isAssumed('shank') || sheet.told('shank') === 'threaded',
    steelStrength: numberCell(metal, 'strength_mpa'),
    yieldStrength: numberCell(metal, 'yield_mpa'),
    standOff,
    edge: sheet.number('edge_distance_mm'),
    neighbour: sheet.number('spacing_mm'),
  };
}
