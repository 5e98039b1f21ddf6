/** What a member reads below the verdict on a size: what governs, what it is worth finding out, and how likely it is weak. */
import type { Measure, Phrase } from '../contracts/phrase.ts';
import { obliqueResistance } from '../engineering/index.ts';
import { numberCell } from '../rules/index.ts';
import { type Strength, strengthWithin } from './capacity.ts';
import { bondLeft } from './capacity-bond.ts';
import { scatterOf } from './capacity-rock.ts';
import type { Setting } from './capacity-setting.ts';
import type { Need } from './embedment-need.ts';
import type { Worksheet } from './worksheet.ts';

const kn = (value: number, exact = false): Measure => ({ value, unit: 'kN', exact });

export function governsLine({ tension, shear }: Strength): Phrase {
  const [pull, side] = [tension.governs, shear.governs];
  return {
    say: 'embedment-governs',
    with: {
      mode: { say: `mode-${pull.mode}` },
      mean: kn(pull.mean),
      characteristic: kn(pull.characteristic),
      side: { say: `mode-${side.mode}` },
      sideMean: kn(side.mean),
      sideCharacteristic: kn(side.characteristic),
    },
  };
}

/** The setting if everything that nobody told were good. */
export function bestSetting(sheet: Worksheet, setting: Setting): Setting {
  const open = (fact: string): boolean => sheet.told(fact) === undefined || sheet.isAssumed(fact);
  const { bond, ground } = setting;
  return {
    ...setting,
    ...(open('rock_condition')
      ? { jointFactor: 1, skin: 0, ground: { ...ground, scatter: scatterOf[ground.known] } }
      : {}),
    ...(open('shank') && setting.glueIn ? { threaded: false } : {}),
    ...(bond === undefined
      ? {}
      : {
          adhesiveFactor: bondLeft({
            hole: open('hole_moisture') ? 1 : bond.hole,
            shank: open('shank') ? 1 : bond.shank,
            lasting: open('use') ? 1 : bond.lasting,
            heat: bond.heat,
          }),
        }),
  };
}

/** Beside the worse case it shows a member what is worth finding out; it never carries the verdict. */
export function bestCase(sheet: Worksheet, setting: Setting, strength: Strength): Phrase[] {
  const best = strengthWithin(bestSetting(sheet, setting))?.tension.governs;
  if (best === undefined || best.characteristic <= strength.tension.governs.characteristic * 1.01) return [];
  return [
    {
      say: 'embedment-best-case',
      with: { mean: kn(best.mean), characteristic: kn(best.characteristic) },
    },
  ];
}

/** Such a chance is worked out from a spread that is a judgement: finer than this it says nothing. */
const finest = 1;

function ofThousand(chance: number): string | Phrase {
  const count = 1000 * chance;
  return count < finest
    ? { say: 'fewer-than', with: { number: finest } }
    : String(Math.round(Number(count.toPrecision(2))));
}

/** Climbing seldom puts more on a bolt (common practice, no source). */
const seldomAbove = 4;

/** Some editions of UIAA 123 ask more straight out than EN 959 (from memory): a figure to aim at. */
const elsewhere = 20;

/** Closed form: each way of failing is lognormal, the load fixed. Not where pull-through is left out. */
export function chanceLines(sheet: Worksheet, { tension, upperBound }: Strength, need: Need): Phrase[] {
  if (upperBound) return [];
  const below = (load: number): string | Phrase => ofThousand(tension.chanceBelow(load));
  const least = { least: kn(need.kn.tension, true), underLeast: below(need.kn.tension) };
  const seldom = { seldom: kn(seldomAbove, true), underSeldom: below(seldomAbove) };
  const aim: Phrase[] =
    need.kn.tension < elsewhere
      ? [{ say: 'embedment-uiaa', with: { aim: kn(elsewhere, true), underAim: below(elsewhere) } }]
      : [];
  if (aim.length > 0) sheet.cite('uiaa-123');
  if (sheet.told('use') === undefined)
    return [{ say: 'embedment-chance', with: { ...least, ...seldom } }, ...aim];
  const action = numberCell(sheet.row('uses', sheet.choice('use')), 'action_kn');
  return [
    {
      say: 'embedment-chance-use',
      with: { ...least, ...seldom, action: kn(action, true), underAction: below(action) },
    },
    ...aim,
  ];
}

/** EN 1992-4:2018 Table 7.3 for different ways of failing. */
const exponent = 1.5;

/** An oblique pull, by the angle told or by the worst one. */
export function obliqueLines(sheet: Worksheet, { tension, shear }: Strength): Phrase[] {
  const told = sheet.number('pull_angle_deg');
  if (told === undefined && sheet.told('load_direction') !== 'combined') return [];
  const angles = told === undefined ? Array.from({ length: 19 }, (_, step) => step * 5) : [told];
  const pulls = angles.map((angle) =>
    obliqueResistance.characteristic({
      tensionResistance: tension.governs.characteristic,
      shearResistance: shear.governs.characteristic,
      angle,
      exponent,
    }),
  );
  const weakest = pulls.reduce((least, one) => (one.value < least.value ? one : least));
  const angle: Measure = { value: weakest.inputs.angle ?? 0, unit: '°', exact: true };
  return [
    {
      say: told === undefined ? 'embedment-oblique-worst' : 'embedment-oblique',
      with: { angle, characteristic: kn(sheet.compute(weakest)) },
    },
  ];
}

const heatLines = ({ bond }: Setting): Phrase[] =>
  bond?.heatGrade === 'warm' || bond?.heatGrade === 'softens'
    ? [{ say: `embedment-heat-${bond.heatGrade}` }]
    : [];

/** How the figures were come by, as far as a member should hear of it. */
export const settingLines = (setting: Setting, { upperBound }: Strength): Phrase[] => [
  ...setting.ground.lines,
  ...heatLines(setting),
  ...(setting.bond !== undefined && setting.bond.lasting < 1 ? [{ say: 'embedment-lasting' }] : []),
  ...(upperBound ? [{ say: 'embedment-upper-bound' }] : []),
  ...(setting.ground.known === 'name' ? [{ say: 'embedment-find-class' }] : []),
];
