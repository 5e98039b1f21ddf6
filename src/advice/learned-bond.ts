/** The bond of an adhesive with the club's own pulls counted in: lower at once, higher only when there are enough. */
import type { Phrase } from '../contracts/phrase.ts';
import type { PictureWish, PulledValue } from '../contracts/picture.ts';
import { type LearnedStrength, learnStrength } from '../engineering/index.ts';
import { numberCell, type Row, rangeCell } from '../rules/index.ts';
import { strengthWithin } from './capacity.ts';
import type { Setting } from './capacity-setting.ts';
import type { Worksheet } from './worksheet.ts';

export interface LearnedBond extends LearnedStrength {
  /** All as in a dry, clean hole with a keyed shank, MPa. */
  readonly published: number;
  readonly range: readonly [number, number];
  readonly failures: number;
  readonly others: number;
  readonly needed: number;
  /** Those that failed in the bond, then those that only say "at least". */
  readonly tests: readonly PulledValue[];
}

/** What a test in a worse hole showed is not made better for a better one; the other way round it is made worse. */
const here = (bonds: readonly number[], shares: readonly number[], share: number): readonly number[] =>
  bonds.map((bond, index) => bond * Math.min(1, share / (shares[index] ?? 1)));

/** Learned once a set of pulls and a hole: a size is sought among many. */
const known = new WeakMap<readonly number[], Map<string, LearnedBond>>();

/** Undefined where the club has no pull that failed in this bond. `share` is what hole and shank leave here. */
export function learnedBond(
  sheet: Worksheet,
  adhesive: Row,
  share: number,
  scatter: number,
): LearnedBond | undefined {
  const bonds = sheet.told('club_bond_mpa');
  if (typeof bonds !== 'object' || sheet.told('adhesive') !== adhesive.id) return undefined;
  const told = (fact: string): readonly number[] => {
    const value = sheet.told(fact);
    return typeof value === 'object' ? value : [];
  };
  sheet.numbers('club_bond_mpa');
  const least = sheet.numbers('club_bond_least_mpa');
  const rules = sheet.row('pull-tests', 'failure');
  const key = JSON.stringify([adhesive.id, share, scatter, told('club_bond_share'), least]);
  const kept = known.get(bonds) ?? new Map<string, LearnedBond>();
  known.set(bonds, kept);
  const before = kept.get(key);
  if (before !== undefined) return before;
  const published = numberCell(adhesive, 'bond_mean_mpa');
  const range = rangeCell(adhesive, 'bond_characteristic_mpa');
  const needed = numberCell(rules, 'enough_count');
  const failures = here(bonds, told('club_bond_share'), share);
  const atLeast = here(least, told('club_bond_least_share'), share);
  const learned = learnStrength(
    { mean: published * share, top: Math.max(published, range[1]) * share, scatter },
    failures,
    atLeast,
    needed,
  );
  const shown = (bond: number, stopped: boolean): PulledValue => ({ value: bond / share, stopped });
  const dry: LearnedBond = {
    used: learned.used / share,
    estimate: learned.estimate / share,
    median: learned.median / share,
    low: learned.low / share,
    enough: learned.enough,
    published,
    range,
    failures: failures.length,
    others: least.length,
    needed,
    tests: [...failures.map((bond) => shown(bond, false)), ...atLeast.map((bond) => shown(bond, true))],
  };
  kept.set(key, dry);
  return dry;
}

const mpa = (value: number) => ({ value, unit: 'MPa', metric: true }) as const;
const kn = (value: number) => ({ value, unit: 'kN' }) as const;

/** The same anchor with another bond. */
function withBond(say: string, setting: Setting, mean: number): Phrase[] {
  const { bond } = setting;
  if (bond === undefined) return [];
  const { learned: _, ...plain } = bond;
  const governs = strengthWithin({ ...setting, bond: { ...plain, mean } })?.tension.governs;
  if (governs === undefined) return [];
  const { mean: middle, characteristic: low, mode } = governs;
  return [{ say, with: { mean: kn(middle), characteristic: kn(low), mode: { say: `mode-${mode}` } } }];
}

/** What is published, what the club's pulls say, which of the two counts, and what the other would change. */
export function learnedLines(sheet: Worksheet, setting: Setting): Phrase[] {
  const learned = setting.bond?.learned;
  if (learned === undefined) return [];
  sheet.cite('eota-tr-053');
  const { published, range, failures, others, median, low, used, estimate, needed, enough } = learned;
  const counted = mpa(used);
  const verdict: Phrase[] = enough
    ? [
        { say: 'bond-ours-enough', with: { needed, used: counted, top: mpa(Math.max(published, range[1])) } },
        ...withBond('bond-ours-without', setting, published),
      ]
    : estimate < published
      ? [
          { say: 'bond-ours-lower', with: { used: counted } },
          ...withBond('bond-ours-without', setting, published),
        ]
      : [
          { say: 'bond-ours-higher', with: { needed, missing: Math.max(1, needed - failures) } },
          ...withBond('bond-ours-would', setting, Math.min(estimate, Math.max(published, range[1]))),
        ];
  return [
    {
      say: 'bond-ours',
      with: {
        low: mpa(range[0]),
        high: mpa(range[1]),
        published: mpa(published),
        failures,
        median: mpa(median),
        five: mpa(low),
      },
    },
    ...(others > 0 ? [{ say: 'bond-ours-least', with: { others } }] : []),
    ...verdict,
  ];
}

/** The same to be seen; none where the club has no pulls that count here. */
export function learnedPictures({ bond }: Setting): { readonly pictures?: readonly PictureWish[] } {
  if (bond?.learned === undefined) return {};
  const { range, tests, used } = bond.learned;
  const [low, high] = range;
  return { pictures: [{ kind: 'bond', data: { published: { low, high }, tests, used } }] };
}
