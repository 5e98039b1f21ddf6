/** Holds one size against every requirement, writes the checks down and takes the decision `size`. */
import type { Stance } from '../contracts/advice.ts';
import type { Phrase } from '../contracts/phrase.ts';
import { checkInstalledLength } from '../engineering/index.ts';
import type { Strength } from './capacity.ts';
import { strengthClass } from './capacity-rock.ts';
import type { Setting } from './capacity-setting.ts';
import { edgeGrade, spacingToKeep } from './edges.ts';
import { type Direction, gradesOf, type Need } from './embedment-need.ts';
import type { CheckDraft, Worksheet } from './worksheet.ts';

function writeModes(sheet: Worksheet, direction: Direction, strength: Strength, need: Need): void {
  for (const [mode, { mean, characteristic, steps }] of Object.entries(strength[direction].modes)) {
    for (const step of steps) sheet.compute(step);
    const name: Phrase = { say: `check-${direction}`, with: { mode: { say: `mode-${mode}` } } };
    for (const result of [mean, characteristic])
      sheet.check({
        id: `${direction}.${mode}`,
        name,
        value: result.value,
        limit: need.kn[direction],
        unit: 'kN',
        kind: result.kind,
      });
  }
}

const distance = (id: string, name: Phrase, value: number, limit: number): CheckDraft => ({
  id,
  name,
  value,
  limit,
  unit: 'mm',
  kind: 'plain',
});

/** EN 1992-4:2018, 6.2.2.3: up to half the diameter a distance from the rock counts as none. */
const standsOff = ({ standOff, diameter }: Setting): boolean => standOff > diameter / 2;

function bendingCheck(sheet: Worksheet, setting: Setting, { leverArm }: Strength, need: Need): void {
  if (leverArm === undefined || !standsOff(setting)) return;
  sheet.check({
    id: 'bending',
    name: { say: 'check-bending' },
    value: sheet.compute(leverArm),
    limit: need.kn.shear,
    unit: 'kN',
    kind: leverArm.kind,
  });
}

export const stances: Readonly<Record<string, Stance>> = { meets: 'go', 'test-first': 'limit' };

export interface Judgement {
  readonly verdict: string;
  readonly reasons: readonly Phrase[];
  readonly minimum: number;
}

export async function judgeSize(
  sheet: Worksheet,
  setting: Setting,
  strength: Strength,
  need: Need,
): Promise<Judgement> {
  const { embedment, diameter, edge, neighbour, ground, bond } = setting;
  const family = setting.glueIn ? 'glued-in' : 'mechanical';
  const { required: minimum } = checkInstalledLength(family, embedment, setting.holeDiameter);
  const longEnough = sheet.check(distance('length', { say: 'check-length' }, embedment, minimum));
  const placed = { depth: embedment, diameter, expansion: !setting.glueIn };
  if (neighbour !== undefined)
    sheet.check(distance('spacing', { say: 'check-spacing' }, neighbour, spacingToKeep(sheet, placed)));
  writeModes(sheet, 'tension', strength, need);
  writeModes(sheet, 'shear', strength, need);
  bendingCheck(sheet, setting, strength, need);
  sheet.cite('en-959-2018');
  const { tension, shear } = gradesOf(strength, need);
  sheet.know('tension_check', tension);
  sheet.know('shear_check', shear);
  sheet.know('length_check', longEnough ? 'passes' : 'fails');
  sheet.know('edge_check', edgeGrade(sheet, edge, placed));
  sheet.know('strength_known', ground.known);
  sheet.know('reckoned_strength', strengthClass(ground.strength));
  if (bond !== undefined) sheet.know('heat_check', bond.heatGrade);
  if (sheet.told('stick_out_mm') !== undefined)
    sheet.know('stand_off_check', standsOff(setting) ? 'stands-off' : 'flush');
  const { values, because } = await sheet.decide('size');
  return {
    verdict: String(values.verdict),
    reasons: (because.verdict ?? []).map((rule): Phrase => ({ say: 'reason', with: { why: { rule } } })),
    minimum,
  };
}

/** For machines, and to tell whether a question may change the answer. */
export const machineNumbers = ({ tension }: Strength): Readonly<Record<string, string | number>> => ({
  governing: tension.governs.mode,
  mean_kn: Number(tension.governs.mean.toPrecision(2)),
  characteristic_kn: Number(tension.governs.characteristic.toPrecision(2)),
});
