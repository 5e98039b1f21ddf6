/** Is this anchor deep and strong enough? Each failure mode against the type-test minimums of EN 959. */
import type { Stance } from '../contracts/advice.ts';
import type { Phrase } from '../contracts/phrase.ts';
import { checkInstalledLength, en959, OutOfRange } from '../engineering/index.ts';
import { bondFactor, type Setting, type Strength, settingOf, strengthOf } from './capacity.ts';
import type { Draft } from './draft.ts';
import { edgeGrade } from './edges.ts';
import type { Worksheet } from './worksheet.ts';

type Direction = 'tension' | 'shear';

const needed: Readonly<Record<Direction, number>> = {
  tension: en959.axialStrength.value,
  shear: en959.radialStrength.value,
};

/** passes: even the 5 % fractile meets it; uncertain: only the mean does; fails: not even the mean. */
function grade(mean: number, characteristic: number, need: number): 'passes' | 'uncertain' | 'fails' {
  if (characteristic >= need) return 'passes';
  return mean >= need ? 'uncertain' : 'fails';
}

function writeModes(sheet: Worksheet, direction: Direction, strength: Strength): void {
  for (const [mode, { mean, characteristic, steps }] of Object.entries(strength[direction])) {
    for (const step of steps) sheet.compute(step);
    const name: Phrase = { say: `check-${direction}`, with: { mode: { say: `mode-${mode}` } } };
    for (const result of [mean, characteristic])
      sheet.check({
        id: `${direction}.${mode}`,
        name,
        value: result.value,
        limit: needed[direction],
        unit: 'kN',
        kind: result.kind,
      });
  }
}

function grades(strength: Strength): Record<Direction, 'passes' | 'uncertain' | 'fails'> {
  const { tensionGoverns: pull, shearGoverns: side } = strength;
  const tension = grade(pull.mean, pull.characteristic, needed.tension);
  return {
    tension: strength.upperBound && tension === 'passes' ? 'uncertain' : tension,
    shear: grade(side.mean, side.characteristic, needed.shear),
  };
}

const stances: Readonly<Record<string, Stance>> = { meets: 'go', 'test-first': 'limit' };

/** Undefined for a size that the method does not cover: it is then not offered. */
function strengthWithin(setting: Setting): Strength | undefined {
  try {
    return strengthOf(setting);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

/** What one size longer and one size fatter would bring, by the same method. */
function alternatives(sheet: Worksheet, setting: Setting, length: number): Phrase[] {
  const sizes = sheet.desk.rules
    .table('sizes')
    .rows.map(({ is }) => ({
      family: is.family,
      diameter: Number(is.diameter_mm),
      length: Number(is.length_mm),
    }))
    .filter(({ family }) => family === (setting.glueIn ? 'glue-in' : 'expansion'));
  const longer = Math.min(...sizes.map((size) => size.length).filter((mm) => mm > length));
  const fatter = Math.min(...sizes.map((size) => size.diameter).filter((mm) => mm > setting.diameter));
  const lines: Phrase[] = [];
  const line = (say: string, size: number, changed: Setting): void => {
    const strength = strengthWithin(changed);
    if (strength === undefined) return;
    const { tensionGoverns } = strength;
    lines.push({
      say,
      with: {
        size: { value: size, unit: 'mm', exact: true },
        mean: { value: tensionGoverns.mean, unit: 'kN' },
        characteristic: { value: tensionGoverns.characteristic, unit: 'kN' },
        mode: { say: `mode-${tensionGoverns.mode}` },
      },
    });
  };
  if (Number.isFinite(longer) && setting.glueIn)
    line('embedment-longer', longer, { ...setting, embedment: setting.embedment + longer - length });
  if (Number.isFinite(fatter))
    line('embedment-fatter', fatter, {
      ...setting,
      diameter: fatter,
      holeDiameter: setting.holeDiameter + fatter - setting.diameter,
    });
  return lines;
}

/**
 * What it would hold if everything that nobody told were good. Beside the worse case it shows a member what is
 * worth finding out; it never carries the verdict.
 */
function bestCase(sheet: Worksheet, setting: Setting, strength: Strength): Phrase[] {
  const best = strengthWithin({
    ...setting,
    ...(sheet.told('rock_condition') === undefined ? { jointFactor: 1, skin: 0 } : {}),
    adhesiveFactor:
      (sheet.told('hole_moisture') === undefined ? 1 : bondFactor(sheet, 'hole-moistures', 'hole_moisture')) *
      (sheet.isAssumed('shank') ? 1 : bondFactor(sheet, 'shanks', 'shank')),
  });
  if (best === undefined || best.tensionGoverns.characteristic <= strength.tensionGoverns.characteristic)
    return [];
  return [
    {
      say: 'embedment-best-case',
      with: {
        mean: { value: best.tensionGoverns.mean, unit: 'kN' },
        characteristic: { value: best.tensionGoverns.characteristic, unit: 'kN' },
      },
    },
  ];
}

export async function embedment(sheet: Worksheet): Promise<Draft> {
  const rock = sheet.choice('rock');
  const anchor = sheet.choice('anchor');
  const diameter = sheet.number('diameter_mm');
  const length = sheet.number('length_mm') ?? sheet.number('embedment_mm');
  if (rock === 'unknown' || anchor === 'unknown' || diameter === undefined || length === undefined) {
    sheet.cite('practice');
    return {
      stance: 'stop',
      verdict: { say: 'embedment-cannot' },
      points: [{ say: 'embedment-cannot-next' }],
      recommend: {},
      reject: [],
      lacking: ['rock', 'anchor', 'diameter_mm', 'length_mm'].filter(
        (fact) => sheet.told(fact) === undefined,
      ),
    };
  }
  const setting = settingOf(sheet, diameter, length);
  const family = setting.glueIn ? 'glued-in' : 'mechanical';
  const { required: minimum } = checkInstalledLength(family, setting.embedment, setting.holeDiameter);
  const longEnough = sheet.check({
    id: 'length',
    name: { say: 'check-length' },
    value: setting.embedment,
    limit: minimum,
    unit: 'mm',
    kind: 'plain',
  });
  const strength = strengthOf(setting);
  writeModes(sheet, 'tension', strength);
  writeModes(sheet, 'shear', strength);
  sheet.cite('en-959-2018');
  const { tension, shear } = grades(strength);
  sheet.know('tension_check', tension);
  sheet.know('shear_check', shear);
  sheet.know('length_check', longEnough ? 'passes' : 'fails');
  const placed = { depth: setting.embedment, diameter, expansion: !setting.glueIn };
  sheet.know('edge_check', edgeGrade(sheet, setting.edge, placed));
  sheet.know('strength_known', setting.strengthKnown);
  const { values, because } = await sheet.decide('size');
  const verdict = String(values.verdict);
  const { tensionGoverns: pull, shearGoverns: side } = strength;
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
      ...(because.verdict ?? []).map((rule): Phrase => ({ say: 'reason', with: { why: { rule } } })),
      {
        say: 'embedment-governs',
        with: {
          mode: { say: `mode-${pull.mode}` },
          mean: { value: pull.mean, unit: 'kN' },
          characteristic: { value: pull.characteristic, unit: 'kN' },
          side: { say: `mode-${side.mode}` },
          sideMean: { value: side.mean, unit: 'kN' },
          sideCharacteristic: { value: side.characteristic, unit: 'kN' },
        },
      },
      ...bestCase(sheet, setting, strength),
      ...alternatives(sheet, setting, length),
      ...(strength.upperBound ? [{ say: 'embedment-upper-bound' }] : []),
      { say: 'embedment-depth', with: { depth: { value: setting.embedment, unit: 'mm', exact: true } } },
    ],
    recommend: {
      verdict,
      governing: pull.mode,
      mean_kn: Number(pull.mean.toPrecision(2)),
      characteristic_kn: Number(pull.characteristic.toPrecision(2)),
    },
    reject: [],
  };
}
