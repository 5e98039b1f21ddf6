/** Which size does it take? The smallest standard size of each kind that meets what is needed, and what if none does. */
import type { Phrase, PhraseArg } from '../contracts/phrase.ts';
import { checkInstalledLength, findSize } from '../engineering/index.ts';
import { sortCandidates } from './candidates.ts';
import { type Strength, strengthOf } from './capacity.ts';
import { type Setting, settingOf } from './capacity-setting.ts';
import type { Draft } from './draft.ts';
import { edgeGrade } from './edges.ts';
import { judgeSize, machineNumbers, stances } from './embedment-judge.ts';
import { gradesOf, type Need, needOf } from './embedment-need.ts';
import { bestSetting, chanceLines, governsLine, settingLines } from './embedment-points.ts';
import { alternatives, type StandardSize, standardSizes, withSize } from './embedment-sizes.ts';
import { learnedLines } from './learned-bond.ts';
import type { Worksheet } from './worksheet.ts';

interface Fit {
  readonly anchor: string;
  readonly size: StandardSize;
  readonly setting: Setting;
  readonly strength: Strength;
}

/** `sure`: as large a share as is asked holds it; `average`: only half of them do. */
type Aim = 'sure' | 'average';

function meets(sheet: Worksheet, setting: Setting, need: Need, aim: Aim): boolean {
  const { embedment, diameter, holeDiameter, edge, glueIn } = setting;
  if (!checkInstalledLength(glueIn ? 'glued-in' : 'mechanical', embedment, holeDiameter).ok) return false;
  const near = edgeGrade(sheet, edge, { depth: embedment, diameter, expansion: !glueIn });
  if (near === 'refused' || near === 'close') return false;
  // Whether a clip slips through is no question of size: the decision asks for the test.
  const grades = Object.values(gradesOf({ ...strengthOf(setting), upperBound: false }, need));
  return aim === 'sure' ? grades.every((one) => one === 'passes') : !grades.includes('fails');
}

/** Sizes that fit what was told of the size: a diameter, or a length to keep within. */
function sizesToTry(sheet: Worksheet, anchor: string): readonly StandardSize[] {
  const diameter = sheet.number('diameter_mm');
  const length = sheet.number('length_mm');
  const depth = sheet.number('embedment_mm');
  return standardSizes(sheet, anchor).filter(
    (size) =>
      (diameter === undefined || size.diameter === diameter) &&
      (length === undefined || size.length <= length) &&
      (depth === undefined || size.installed <= depth),
  );
}

/** Sizes of a kind that meet what is needed, thin and short first. */
function fitting(
  sheet: Worksheet,
  anchor: string,
  need: Need,
  aim: Aim,
  change: (setting: Setting) => Setting = (setting) => setting,
): readonly Fit[] {
  const sizes = sizesToTry(sheet, anchor);
  const [first] = sizes;
  if (first === undefined) return [];
  const base = change(settingOf(sheet, { anchor, diameter: first.diameter, length: first.length }));
  return findSize(sizes, (size) => meets(sheet, withSize(base, size), need, aim))
    .tried.filter(({ ok }) => ok)
    .map(({ size }) => {
      const setting = withSize(base, size);
      return { anchor, size, setting, strength: strengthOf(setting) };
    });
}

/** Where none is sure, a small one would be the worst advice: the strongest of those that are enough on average. */
const strongest = (fits: readonly Fit[]): Fit | undefined =>
  fits.reduce<Fit | undefined>(
    (best, one) =>
      best === undefined ||
      one.strength.tension.governs.characteristic > best.strength.tension.governs.characteristic
        ? one
        : best,
    undefined,
  );

const sizeArgs = ({ anchor, size }: Fit): Record<string, PhraseArg> => ({
  diameter: { value: size.diameter, unit: 'mm', exact: true },
  length: { value: size.length, unit: 'mm', exact: true },
  anchor: { fact: 'anchor', value: anchor },
});

function kindLine(anchor: string, fit: Fit | undefined): Phrase {
  if (fit === undefined)
    return { say: 'sizing-kind-none', with: { anchor: { fact: 'anchor', value: anchor } } };
  const { governs } = fit.strength.tension;
  return {
    say: 'sizing-kind',
    with: { ...sizeArgs(fit), characteristic: { value: governs.characteristic, unit: 'kN' } },
  };
}

const needLine = ({ kn, share }: Need): Phrase => ({
  say: 'sizing-need',
  with: {
    tension: { value: kn.tension, unit: 'kN', exact: true },
    shear: { value: kn.shear, unit: 'kN', exact: true },
    share: String(Math.round(share * 1000) / 10),
  },
});

/** Kinds to size: the one told, or those that may be placed in this rock; with an adhesive told, glue-ins alone. */
async function kindsToSize(sheet: Worksheet): Promise<ReturnType<typeof sortCandidates>> {
  const told = sheet.choice('anchor');
  if (told !== 'unknown') return { suitable: [{ fact: 'anchor', value: told }], limited: [], reject: [] };
  const all = sortCandidates('anchor', await sheet.decideEach('anchor-kind'));
  const glued = sheet.told('adhesive') !== undefined;
  const fits = ({ value }: { value: string }): boolean =>
    standardSizes(sheet, value).length > 0 && (!glued || sheet.row('anchors', value).is.family === 'glue-in');
  return {
    suitable: all.suitable.filter(fits),
    limited: all.limited.filter(({ what }) => fits(what)),
    reject: glued ? [] : all.reject,
  };
}

function verdictOf(verdict: string, sure: boolean): string {
  if (verdict === 'meets') return 'sizing-meets';
  if (verdict !== 'test-first') return 'sizing-not-so';
  return sure ? 'sizing-test-first' : 'sizing-average';
}

export async function sizing(sheet: Worksheet): Promise<Draft> {
  const need = needOf(sheet);
  const { suitable, limited, reject } = await kindsToSize(sheet);
  const kinds = [...suitable, ...limited.map(({ what }) => what)].map(({ value }) => value);
  const found = kinds.map((anchor) => ({ anchor, fit: fitting(sheet, anchor, need, 'sure')[0] }));
  const sure = found.find(({ fit }) => fit !== undefined)?.fit;
  const fit = sure ?? strongest(kinds.flatMap((kind) => fitting(sheet, kind, need, 'average')));
  const [bestFit] = kinds.flatMap((kind) =>
    fitting(sheet, kind, need, 'sure', (one) => bestSetting(sheet, one)).slice(0, 1),
  );
  const bestLine = (than?: StandardSize): Phrase[] =>
    bestFit === undefined || (bestFit.size.diameter === than?.diameter && bestFit.size.length === than.length)
      ? []
      : [{ say: 'sizing-best', with: sizeArgs(bestFit) }];
  sheet.cite('en-959-2018');
  if (fit === undefined)
    return {
      stance: 'stop',
      verdict: { say: 'sizing-none' },
      points: [...bestLine(), needLine(need), { say: 'sizing-none-next' }],
      recommend: { verdict: 'too-weak' },
      reject,
    };
  const { verdict, reasons } = await judgeSize(sheet, fit.setting, fit.strength, need);
  const others = found.filter(({ anchor }) => anchor !== fit.anchor);
  return {
    stance: stances[verdict] ?? 'stop',
    verdict: { say: verdictOf(verdict, sure !== undefined), with: sizeArgs(fit) },
    points: [
      ...bestLine(fit.size),
      ...reasons,
      needLine(need),
      governsLine(fit.strength),
      ...chanceLines(sheet, fit.strength, need),
      ...alternatives(sheet, fit.setting, fit.anchor, fit.size.length),
      ...others.map(({ anchor, fit: other }) => kindLine(anchor, other)),
      ...learnedLines(sheet, fit.setting),
      ...settingLines(fit.setting, fit.strength),
      { say: 'sizing-check-next' },
    ],
    recommend: {
      verdict,
      anchor: fit.anchor,
      diameter_mm: fit.size.diameter,
      length_mm: fit.size.length,
      ...machineNumbers(fit.strength),
    },
    reject,
  };
}
