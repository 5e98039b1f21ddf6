/** Invented recordings, groups and plans of an invented club, drawn by the tests and by look.ts. */
import type { TopLevelSpec } from 'vega-lite';
import type {
  BondData,
  CostData,
  ForceData,
  ForcePoint,
  GroupData,
  RiskData,
} from '../../src/contracts/pictures.ts';
import {
  bondStrength,
  costPerYear,
  forceOverDisplacement,
  forceOverTime,
  groupComparison,
  rankedRisks,
} from '../../src/pictures/index.ts';
import {
  bondAlt,
  bondTexts,
  costAlt,
  costTexts,
  forceAlt,
  forceTexts,
  groupAlt,
  groupTexts,
  riskAlt,
  riskTexts,
} from '../../src/render/pictures.ts';
import type { Words } from '../../src/render/words.ts';

/** A pull that rises, drops once, rises to its peak and falls off. */
function pull(start: number, peak: number, withDisplacement: boolean): ForcePoint[] {
  const shape: readonly [number, number, number][] = [
    [0, 0, 0],
    [4, 0.35, 0.6],
    [8, 0.72, 1.3],
    [8.4, 0.66, 1.6],
    [14, 1, 3.2],
    [14.5, 0.45, 4.6],
    [18, 0.3, 7],
    [19, 0, 7.2],
  ];
  return shape.map(([after, share, mm]) => ({
    t_s: start + after,
    kn: share * peak,
    ...(withDisplacement ? { mm } : {}),
  }));
}

export function recording(name: string, peaks: readonly number[], displacement: boolean): ForceData {
  const pulls = peaks.map((peak, index) => pull(5 + index * 30, peak, displacement));
  const at = (points: readonly ForcePoint[], index: number): ForcePoint => points[index] ?? { t_s: 0, kn: 0 };
  return {
    name,
    outline: pulls.flat(),
    pulls: pulls.map((points) => ({ peak: at(points, 4), firstDrop: at(points, 2) })),
    needs: [
      { name: 'EN 959', kn: 15 },
      { name: 'EN 959', kn: 25 },
    ],
  };
}

const tests = (failed: readonly number[], stopped: readonly number[] = []) => [
  ...failed.map((value) => ({ value, stopped: false })),
  ...stopped.map((value) => ({ value, stopped: true })),
];

export const groups = (names: readonly string[]): GroupData => ({
  name: names[0] ?? '',
  groups: names.map((name, index) => {
    const base = 20 + 3 * index;
    return {
      name,
      tests: tests(
        [base, base + 0.2, base + 2.1, base + 3.4, base + 6, base + 0.1],
        index % 2 === 1 ? [15, 15, 15.1, 20] : [],
      ),
      mean_kn: base + 2,
      ...(index === 2 ? {} : { characteristic_kn: base - 6 }),
    };
  }),
  need: { name: 'EN 959', kn: 15 },
});

export const bond = (name: string): BondData => ({
  name,
  published: { low: 6, high: 12 },
  tests: tests([5.2, 6.1, 6.15, 6.2, 7.4, 8.8], [6.9, 7]),
  learned: { mean: 7.1, low: 6, high: 8.4, share: 0.9 },
  used: 4.6,
});

export const costs = (names: readonly string[]): CostData => ({
  name: names[0] ?? '',
  currency: '€',
  firstYear: 2027,
  policies: names.map((policy, index) => ({
    name: policy,
    perYear: Array.from({ length: 30 }, (_, year) =>
      year % (4 + 5 * index) === index ? 900 + 700 * index : 120,
    ),
  })),
});

export const risks = (names: readonly string[], count: number): RiskData => ({
  name: names[0] ?? '',
  anchors: Array.from({ length: count }, (_, index) => ({
    name: `${names[index % names.length]} ${index + 1}`,
    perYear: 0.031 / (index + 1) ** 1.3,
    act: index < 4,
  })),
});

export interface Drawn {
  readonly spec: TopLevelSpec;
  readonly alt: string;
}

export const force = (data: ForceData, words: Words): Drawn => ({
  spec: forceOverTime(data, forceTexts(words, data)),
  alt: forceAlt(words, data),
});

export const overDisplacement = (data: ForceData, words: Words): TopLevelSpec | undefined =>
  forceOverDisplacement(data, forceTexts(words, data));

export const comparison = (data: GroupData, words: Words): Drawn => ({
  spec: groupComparison(data, groupTexts(words, data)),
  alt: groupAlt(words, data),
});

export const bondPicture = (data: BondData, words: Words): Drawn => ({
  spec: bondStrength(data, bondTexts(words, data)),
  alt: bondAlt(words, data),
});

export const costPicture = (data: CostData, words: Words): Drawn => ({
  spec: costPerYear(data, costTexts(words, data)),
  alt: costAlt(words, data),
});

export const riskPicture = (data: RiskData, words: Words): Drawn => ({
  spec: rankedRisks(data, riskTexts(words, data)),
  alt: riskAlt(words, data),
});

const names = [
  'Sea wall, glued in, titanium, limestone',
  'Quarry, expansion bolts 10 × 80',
  'Old ring bolts of the eighties, north face, with unknown adhesive and depth',
  'Gully',
  'Donaudampfschifffahrtsgesellschaftsplatte links, eingeklebte Haken',
  'Slab',
];

/** One of each, with long names, as look.ts shows them. */
export function samples(words: Words): Readonly<Record<string, Drawn>> {
  const several = recording('Quarry, bay 3, load cell of the club', [24.1, 13.2, 27.3], true);
  const alt = forceAlt(words, several);
  const one = recording('Sea wall 7', [22.8], true);
  const many = recording(
    'Gully, a long day of pulls',
    [24, 22, 25, 19, 12, 27, 26, 23, 14, 20, 22, 21, 24],
    false,
  );
  return {
    'force-one': force(one, words),
    'force-several': force(several, words),
    'force-many': force(many, words),
    ...Object.fromEntries(
      [overDisplacement(several, words)].flatMap((spec) => (spec ? [['displacement', { spec, alt }]] : [])),
    ),
    'groups-one': comparison(groups(names.slice(0, 1)), words),
    'groups-three': comparison(groups(names.slice(0, 3)), words),
    'groups-six': comparison(groups(names), words),
    bond: bondPicture(bond('epoxy in granite, bolts of the long test weekend'), words),
    'costs-two': costPicture(costs(names.slice(0, 2)), words),
    'costs-four': costPicture(costs(names.slice(0, 4)), words),
    risks: riskPicture(risks(names, 22), words),
  };
}
