/** From facts and table rows to what the capacity formulas take. Materials are data; the formulas know none. */
import {
  anchorShear,
  glueInTension,
  type Mode,
  mechanicalTension,
  roundBarArea,
  threadStressArea,
} from '../engineering/index.ts';
import { numberCell, type Row } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

/** Spread of the strength by how well the rock is known; the rows of the fact `strength_known`. */
export type StrengthKnown = 'name' | 'class' | 'tested';

export interface Setting {
  readonly glueIn: boolean;
  readonly legs: 1 | 2;
  readonly diameter: number;
  readonly holeDiameter: number;
  readonly embedment: number;
  readonly rockStrength: number;
  readonly strengthKnown: StrengthKnown;
  readonly scatter: number;
  readonly jointFactor: number;
  readonly skin: number;
  readonly bondMean: number;
  readonly adhesiveFactor: number;
  readonly steelStrength: number;
  readonly yieldStrength: number;
  readonly standOff: number;
  readonly edge: number | undefined;
  readonly neighbour: number | undefined;
}

export interface Strength {
  readonly tension: Readonly<Record<string, Mode>>;
  readonly shear: Readonly<Record<string, Mode>>;
  readonly tensionGoverns: { readonly mode: string; readonly mean: number; readonly characteristic: number };
  readonly shearGoverns: { readonly mode: string; readonly mean: number; readonly characteristic: number };
  /** Pull-through of a mechanical anchor cannot be computed: without a test the result is an upper bound. */
  readonly upperBound: boolean;
}

const scatterOf: Readonly<Record<StrengthKnown, number>> = { name: 0.6, class: 0.45, tested: 0.3 };

/** Pitch of the metric coarse thread (ISO 261); a threaded shank has less metal than its outer diameter says. */
const coarsePitch: readonly (readonly [diameter: number, pitch: number])[] = [
  [6, 1],
  [8, 1.25],
  [10, 1.5],
  [12, 1.75],
  [14, 2],
  [16, 2],
  [20, 2.5],
  [24, 3],
];

function metalArea(diameter: number, threaded: boolean): number {
  if (!threaded) return roundBarArea({ diameter }).value;
  const pitch = coarsePitch.find(([upTo]) => diameter <= upTo)?.[1] ?? 3;
  return threadStressArea({ diameter, pitch }).value;
}

/** The row of what was told; where nothing was told, the weakest of the table, because nobody ruled it out. */
function rowOrWeakest(sheet: Worksheet, table: string, id: string, column: string): Row {
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

/** Reads everything that a strength depends on. The rock, a diameter and a depth must be known. */
export function settingOf(sheet: Worksheet, diameter: number, length: number): Setting {
  const anchor = sheet.row('anchors', sheet.choice('anchor'));
  const glueIn = anchor.is.family === 'glue-in';
  const rock = sheet.row('rocks', sheet.choice('rock'));
  const moisture = sheet.choice('hole_moisture');
  const toldStrength = sheet.number('ucs_mpa');
  const wet = moisture === 'dry' ? 1 : numberCell(rock, 'wet_factor');
  const condition = sheet.row('rock-conditions', sheet.choice('rock_condition'));
  const metal = rowOrWeakest(sheet, 'metals', sheet.choice('metal'), 'strength_mpa');
  const strengthKnown: StrengthKnown = toldStrength === undefined ? 'name' : 'class';
  const outside = numberCell(anchor, 'outside_mm');
  return {
    glueIn,
    legs: numberCell(anchor, 'legs') === 2 ? 2 : 1,
    diameter,
    holeDiameter: sheet.number('hole_diameter_mm') ?? (glueIn ? diameter + 2 : diameter),
    embedment: sheet.number('embedment_mm') ?? length - outside,
    // The table's strength is that of wet rock already; a told strength is taken as dry.
    rockStrength: toldStrength === undefined ? numberCell(rock, 'ucs_mpa') : toldStrength * wet,
    strengthKnown,
    scatter: scatterOf[strengthKnown],
    jointFactor: numberCell(condition, 'joint_factor'),
    skin: numberCell(condition, 'skin_mm'),
    bondMean: glueIn
      ? numberCell(
          rowOrWeakest(sheet, 'adhesives', sheet.choice('adhesive'), 'bond_mean_mpa'),
          'bond_mean_mpa',
        )
      : 0,
    adhesiveFactor: glueIn
      ? bondFactor(sheet, 'hole-moistures', 'hole_moisture') * bondFactor(sheet, 'shanks', 'shank')
      : 1,
    steelStrength: numberCell(metal, 'strength_mpa'),
    yieldStrength: numberCell(metal, 'yield_mpa'),
    standOff: sheet.number('stick_out_mm') ?? 0,
    edge: sheet.number('edge_distance_mm'),
    neighbour: sheet.number('spacing_mm'),
  };
}

export function strengthOf(setting: Setting): Strength {
  const area = metalArea(setting.diameter, !setting.glueIn);
  const common = {
    embedment: setting.embedment,
    weatheredSkin: setting.skin,
    steelStrength: setting.steelStrength,
    rockStrength: setting.rockStrength,
    jointFactor: setting.jointFactor,
    rockScatter: setting.scatter,
    metalArea: area,
    edge: setting.edge,
    neighbour: setting.neighbour,
  };
  const tension = setting.glueIn
    ? glueInTension({
        ...common,
        rodDiameter: setting.diameter,
        holeDiameter: setting.holeDiameter,
        bondMean: setting.bondMean,
        adhesiveFactor: setting.adhesiveFactor,
        // The legs of a twin-leg anchor are taken as close together: that shares the most rock.
        legSpacing: setting.legs === 2 ? 2 * setting.diameter : undefined,
      })
    : mechanicalTension(common);
  const rockMeans = Object.entries(tension.modes).flatMap(([mode, { mean }]) =>
    mode === 'steel' ? [] : [mean.value],
  );
  const shear = anchorShear({
    ...common,
    embedment: setting.embedment - setting.skin,
    rodDiameter: setting.diameter,
    legs: setting.legs,
    yieldStrength: setting.yieldStrength,
    pullOutMean: Math.min(...rockMeans),
    standOff: setting.standOff,
    edgeInLoad: setting.edge,
  });
  const governs = ({
    governing,
  }: {
    governing: { mode: string; mean: { value: number }; characteristic: { value: number } };
  }) => ({
    mode: governing.mode,
    mean: governing.mean.value,
    characteristic: governing.characteristic.value,
  });
  return {
    tension: tension.modes as Record<string, Mode>,
    shear: shear.modes as Record<string, Mode>,
    tensionGoverns: governs(tension),
    shearGoverns: governs(shear),
    upperBound: !setting.glueIn,
  };
}
