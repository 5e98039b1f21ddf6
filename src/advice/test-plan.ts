/** How to pull test: to failure or proof, how many, to which load, how held, and how far everybody stands. */
import type { Phrase } from '../contracts/phrase.ts';
import { frameEnergy, lineEnergy, OutOfRange, thrownSpeed } from '../engineering/index.ts';
import { numberCell, type Row, rangeCell } from '../rules/index.ts';
import { strengthOf } from './capacity.ts';
import { settingOf } from './capacity-setting.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

/** A proof load stays below this share of the 5 % value that is reckoned (common practice). */
const proofShare = 0.5;
/** A pull to failure sets free about what is stored at this load. */
const failureForce = 25;
/** A hydraulic frame on its feet moves about so much under full load (common practice). */
const frameMovement = 5;
/** Ten metres of nylon webbing that stretches 18 % at 10 kN, for the warning only. */
const webbing = { length: 10, modulus: 10 / 0.18 } as const;

/** Half of the 5 % value that rock, kind and size give; undefined while they are not told. */
function proofCap(sheet: Worksheet): number | undefined {
  const diameter = sheet.number('diameter_mm');
  const length = sheet.number('length_mm') ?? sheet.number('embedment_mm');
  const anchor = sheet.told('anchor');
  const known = sheet.told('rock') !== undefined && typeof anchor === 'string';
  if (!known || diameter === undefined || length === undefined) return undefined;
  try {
    return (
      proofShare * strengthOf(settingOf(sheet, { anchor, diameter, length })).tension.governs.characteristic
    );
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

interface Proof {
  readonly load: number;
  readonly lines: readonly Phrase[];
}

function proofOf(sheet: Worksheet, row: Row, which: string): Proof {
  const [least, most] = rangeCell(row, 'load_kn');
  const wanted = sheet.number('load_kn');
  const cap = proofCap(sheet);
  const load = wanted === undefined ? least : Math.min(Math.max(wanted, least), most);
  const [shortest, longest] = rangeCell(row, 'hold_s');
  const count = sheet.number('count');
  const fewest = numberCell(row, 'least_count');
  const tested =
    count === undefined
      ? undefined
      : which === 'all'
        ? Math.floor(count)
        : Math.min(Math.floor(count), Math.max(fewest, Math.ceil(count / 10)));
  if (cap !== undefined)
    sheet.check({
      id: 'proof-load',
      name: { say: 'check-proof' },
      value: cap,
      limit: load,
      unit: 'kN',
      kind: 'characteristic',
    });
  return {
    load,
    lines: [
      ...(tested === undefined
        ? [{ say: `plan-which-${which}`, with: { fewest } }]
        : [{ say: `plan-which-${which}-of`, with: { tested, count: Math.floor(count ?? tested), fewest } }]),
      {
        say: 'plan-proof-load',
        with: {
          load: { value: load, unit: 'kN', exact: true },
          most: { value: most, unit: 'kN', exact: true, metric: true },
          shortest,
          longest,
        },
      },
      ...(wanted !== undefined && wanted > most
        ? [{ say: 'plan-proof-too-high', with: { wanted: { value: wanted, unit: 'kN', exact: true } } }]
        : []),
      ...(cap !== undefined && cap < load
        ? [{ say: 'plan-proof-above-half', with: { cap: { value: cap, unit: 'kN' } } }]
        : []),
      { say: 'plan-accept' },
    ],
  };
}

const failureLines = (row: Row): readonly Phrase[] => {
  const [shortest, longest] = rangeCell(row, 'minutes');
  return [
    {
      say: 'plan-failure-count',
      with: { fewest: numberCell(row, 'least_count'), good: numberCell(row, 'good_count') },
    },
    { say: 'plan-failure-rate', with: { shortest, longest } },
    { say: 'plan-failure-keep' },
  ];
};

function frameLine(sheet: Worksheet): Phrase {
  const depth = sheet.number('embedment_mm') ?? sheet.number('length_mm');
  if (depth === undefined) return { say: 'plan-frame' };
  return {
    say: 'plan-frame-depth',
    with: {
      side: { value: 2 * depth, unit: 'mm', exact: true },
      ring: { value: 4 * depth, unit: 'mm', exact: true },
    },
  };
}

function energyLines(sheet: Worksheet, force: number): readonly Phrase[] {
  const energy = sheet.compute(frameEnergy({ force, movement: frameMovement }));
  const speed = sheet.compute(thrownSpeed({ energy, partMass: 1 }));
  const line = lineEnergy({ force, ...webbing }).value;
  return [
    {
      say: 'plan-energy',
      with: {
        force: { value: force, unit: 'kN', exact: true },
        energy: { value: energy, unit: 'J' },
        speed: { value: speed, unit: 'm/s' },
        times: String(Math.round(line / energy / 100) * 100),
      },
    },
    { say: 'plan-stand' },
  ];
}

export async function pulltestPlan(sheet: Worksheet): Promise<Draft> {
  const { values, because } = await sheet.decide('pull-test');
  const test = String(values.test);
  const which = String(values.which);
  const proofRow = sheet.row('pull-tests', 'proof');
  const failureRow = sheet.row('pull-tests', 'failure');
  const proof = test === 'failure' ? undefined : proofOf(sheet, proofRow, which);
  const toFailure = test !== 'proof';
  const least = numberCell(failureRow, 'least_count');
  return {
    stance: 'limit',
    verdict: {
      say: `plan-${test}`,
      with: { fewest: least, load: { value: proof?.load ?? 0, unit: 'kN', exact: true } },
    },
    points: [
      ...(because.test ?? []).slice(0, 1).map((rule): Phrase => ({ say: 'reason', with: { why: { rule } } })),
      ...(toFailure ? failureLines(failureRow) : []),
      ...(proof?.lines ?? []),
      frameLine(sheet),
      ...energyLines(sheet, toFailure ? failureForce : (proof?.load ?? 0)),
      { say: 'plan-write' },
      { say: 'plan-then' },
    ],
    recommend: {
      test,
      which,
      ...(toFailure ? { to_failure: least } : {}),
      ...(proof === undefined ? {} : { proof_kn: proof.load }),
    },
    reject: [],
  };
}
