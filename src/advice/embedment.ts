/** Is this anchor deep and strong enough, or which size would be? Held against what the standard's type test asks. */
import { strengthOf } from './capacity.ts';
import { settingOf } from './capacity-setting.ts';
import type { Draft } from './draft.ts';
import { judgeSize, machineNumbers, stances } from './embedment-judge.ts';
import { needOf } from './embedment-need.ts';
import { bestCase, chanceLines, governsLine, obliqueLines, settingLines } from './embedment-points.ts';
import { alternatives } from './embedment-sizes.ts';
import { learnedLines, learnedPictures } from './learned-bond.ts';
import { sizing } from './sizing.ts';
import type { Worksheet } from './worksheet.ts';

function cannot(sheet: Worksheet): Draft {
  sheet.cite('practice');
  return {
    stance: 'stop',
    verdict: { say: 'embedment-cannot' },
    points: [{ say: 'embedment-cannot-next' }],
    recommend: {},
    reject: [],
  };
}

export async function embedment(sheet: Worksheet): Promise<Draft> {
  const rock = sheet.choice('rock');
  const diameter = sheet.number('diameter_mm');
  const length = sheet.number('length_mm') ?? sheet.number('embedment_mm');
  if (rock === 'unknown') return cannot(sheet);
  if (diameter === undefined || length === undefined) return sizing(sheet);
  const anchor = sheet.choice('anchor');
  if (anchor === 'unknown') return cannot(sheet);
  const hole = sheet.number('hole_diameter_mm');
  const setting = settingOf(sheet, { anchor, diameter, length, hole });
  const strength = strengthOf(setting);
  const need = needOf(sheet);
  const { verdict, reasons, minimum } = await judgeSize(sheet, setting, strength, need);
  return {
    stance: stances[verdict] ?? 'stop',
    verdict: {
      say: verdict === 'too-weak' && sheet.hasAssumed ? 'embedment-too-weak-assumed' : `embedment-${verdict}`,
      with: {
        diameter: { value: diameter, unit: 'mm', exact: true },
        length: { value: length, unit: 'mm', exact: true },
        minimum: { value: minimum, unit: 'mm', exact: true },
      },
    },
    points: [
      ...reasons,
      governsLine(strength),
      ...bestCase(sheet, setting, strength),
      ...obliqueLines(sheet, strength),
      ...chanceLines(sheet, strength, need),
      ...alternatives(sheet, setting, anchor, length),
      ...learnedLines(sheet, setting),
      ...settingLines(setting, strength),
      { say: 'embedment-depth', with: { depth: { value: setting.embedment, unit: 'mm', exact: true } } },
    ],
    recommend: { verdict, ...machineNumbers(strength) },
    ...learnedPictures(setting),
    reject: [],
  };
}
