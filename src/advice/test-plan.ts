/** How to pull test: to failure or proof, how many, to which load, how held, and how far everybody stands. */
import type { Phrase } from '../contracts/phrase.ts';
import { frameEnergy, lineEnergy, OutOfRange, thrownSpeed, throwRange } from '../engineering/index.ts';
import { numberCell, type Row, rangeCell } from '../rules/index.ts';
import { strengthOf } from './capacity.ts';
import { settingOf } from './capacity-setting.ts';
import type { Draft } from './draft.ts';
import { numberLines } from './test-plan-number.ts';
import type { Worksheet } from './worksheet.ts';

/** A proof load stays below this share of the 5 % value that is reckoned (common practice). */
const proofShare = 0.5;
/** A pull to failure sets free about what is stored at this load, or more where the anchor is reckoned stronger. */
const failureForce = 25;
const strongest = 1.5;
/** A hydraulic frame on its feet moves about so much under full load (common practice). */
const frameMovement = 5;
/** Ten metres of nylon webbing that stretches 18 % at 10 kN, for the warning only. */
const webbing = { length: 10, modulus: 10 / 0.18 } as const;

interface Expected {
  readonly mean: number;
  readonly characteristic: number;
}

/** What rock, kind and size give; undefined while they are not told. */
function expectedOf(sheet: Worksheet): Expected | undefined {
  const diameter = sheet.number('diameter_mm');
  const length = sheet.number('length_mm') ?? sheet.number('embedment_mm');
  const anchor = sheet.told('anchor');
  const known = sheet.told('rock') !== undefined && typeof anchor === 'string';
  if (!known || diameter === undefined || length === undefined) return undefined;
  try {
    return strengthOf(settingOf(sheet, { anchor, diameter, length })).tension.governs;
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

interface Proof {
  readonly load: number;
  readonly lines: readonly Phrase[];
}

function proofOf(sheet: Worksheet, row: Row, which: string, expected: Expected | undefined): Proof {
  const [least, most] = rangeCell(row, 'load_kn');
  const wanted = sheet.number('load_kn');
  // Half of the 5 % value that is reckoned.
  const cap = expected === undefined ? undefined : proofShare * expected.characteristic;
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
      {
        say: 'plan-proof-steps',
        with: { steps: Math.round(100 / numberCell(row, 'step_pct')), seconds: numberCell(row, 'step_s') },
      },
      { say: 'plan-accept' },
    ],
  };
}

/** By steps, for a pump by hand: each so far of what is expected, where that is known. */
function stepLine(row: Row, expected: Expected | undefined): Phrase {
  const share = numberCell(row, 'step_pct');
  const minutes = numberCell(row, 'step_s') / 60;
  if (expected === undefined) return { say: 'plan-steps', with: { share, minutes } };
  return {
    say: 'plan-steps-expected',
    with: {
      share,
      minutes,
      step: { value: (share / 100) * expected.mean, unit: 'kN' },
      mean: { value: expected.mean, unit: 'kN' },
    },
  };
}

const failureLines = (row: Row, expected: Expected | undefined): readonly Phrase[] => {
  const [shortest, longest] = rangeCell(row, 'minutes');
  return [
    {
      say: 'plan-failure-count',
      with: { fewest: numberCell(row, 'least_count'), good: numberCell(row, 'good_count') },
    },
    { say: 'plan-failure-rate', with: { shortest, longest } },
    stepLine(row, expected),
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

function energyLines(sheet: Worksheet, force: number, rigFactor: number): readonly Phrase[] {
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
    {
      say: 'plan-range',
      with: { range: { value: Math.ceil(sheet.compute(throwRange({ speed }))), unit: 'm', exact: true } },
    },
    { say: 'plan-stand' },
    {
      say: 'plan-rig',
      with: { load: { value: Math.ceil(rigFactor * force), unit: 'kN', exact: true }, factor: rigFactor },
    },
    { say: 'plan-protect' },
  ];
}

export async function pulltestPlan(sheet: Worksheet): Promise<Draft> {
  const { values, because } = await sheet.decide('pull-test');
  const test = String(values.test);
  const which = String(values.which);
  const proofRow = sheet.row('pull-tests', 'proof');
  const failureRow = sheet.row('pull-tests', 'failure');
  const expected = expectedOf(sheet);
  const proof = test === 'failure' ? undefined : proofOf(sheet, proofRow, which, expected);
  const toFailure = test !== 'proof';
  // Half of such anchors hold more than the mean: the rig and the people are planned for the strong ones.
  const greatest = Math.max(failureForce, strongest * (expected?.mean ?? 0));
  const least = numberCell(failureRow, 'least_count');
  return {
    stance: 'limit',
    verdict: {
      say: `plan-${test}`,
      with: { fewest: least, load: { value: proof?.load ?? 0, unit: 'kN', exact: true } },
    },
    points: [
      ...(because.test ?? []).slice(0, 1).map((rule): Phrase => ({ say: 'reason', with: { why: { rule } } })),
      ...(toFailure ? [...failureLines(failureRow, expected), ...numberLines(sheet, failureRow)] : []),
      ...(proof?.lines ?? []),
      frameLine(sheet),
      ...energyLines(
        sheet,
        toFailure ? Math.round(greatest) : (proof?.load ?? 0),
        numberCell(toFailure ? failureRow : proofRow, 'rig_factor'),
      ),
      { say: 'plan-write' },
      { say: 'plan-then' },
      { say: 'plan-log' },
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
