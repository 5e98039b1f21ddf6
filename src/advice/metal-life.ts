/** How long a metal lasts in a place: zinc reckoned, stainless steel and titanium by planning ranges. */
import type { Phrase, Term } from '../contracts/phrase.ts';
import {
  estimateBand,
  exponents,
  longTermLoss,
  OutOfRange,
  remainingSection,
  steelLoss,
} from '../engineering/index.ts';
import { rangeCell } from '../rules/index.ts';
import { coatingLife, lifeOf, placeAir } from './coating.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

export interface PlanningLife {
  readonly shortest: number;
  readonly longest: number;
  /** What sets it; undefined when it was reckoned from the zinc. */
  readonly because: Term | undefined;
}

const special = new Set(['pool', 'hot-spring', 'salt-pan', 'unknown']);

/** What the place does to the metal, by the key of the table and as a fact; what nobody told counts as worse. */
function placeKeys(sheet: Worksheet): readonly (readonly [key: string, why: Term])[] {
  const { salt = 'unknown', wetness, climate, sulphur, cracking_risk: risk = 'severe' } = sheet.situation;
  const { setting = 'unknown' } = sheet.situation;
  const air = salt === 'unknown' ? 'spray' : salt;
  const orUnknown = (value: string | undefined, worst: string): boolean =>
    value === worst || value === 'unknown';
  return [
    [`salt-${air}`, { fact: 'salt', value: air }],
    ...(orUnknown(wetness, 'always') ? [['always-wet', { fact: 'wetness', value: 'always' }] as const] : []),
    ...(orUnknown(climate, 'tropical')
      ? [['tropical', { fact: 'climate', value: 'tropical' }] as const]
      : []),
    ...(orUnknown(sulphur, 'high') ? [['dirty', { fact: 'sulphur', value: 'high' }] as const] : []),
    ...(risk === 'low' ? [] : [[`cracks-${risk}`, { fact: 'cracking_risk', value: risk }] as const]),
    ...(special.has(setting) ? [['special', { fact: 'setting', value: setting }] as const] : []),
  ];
}

/** The shortest range of all rows that fit. Nothing for bare steel, for a place not told, for a metal without a row. */
export function planningLife(sheet: Worksheet, metal: string): PlanningLife | undefined {
  if (sheet.choice('environment') === 'unknown') return undefined;
  const { is } = sheet.desk.rules.row('metals', metal);
  if (Array.isArray(is.zinc_um)) {
    const zinc = lifeOf(sheet, Number(is.zinc_um[0]));
    return zinc && { shortest: zinc.worst, longest: zinc.years, because: undefined };
  }
  const known = new Set(sheet.desk.rules.table('lives').rows.map(({ id }) => id));
  const fitting = placeKeys(sheet).filter(([key]) => known.has(`${metal}.${key}`));
  if (!fitting.some(([key]) => key.startsWith('salt-'))) return undefined;
  const ranges = fitting.map(([key, because]) => ({
    because,
    years: rangeCell(sheet.row('lives', `${metal}.${key}`), 'years'),
  }));
  const least = ranges.reduce((a, b) => (b.years[0] < a.years[0] ? b : a));
  return {
    shortest: least.years[0],
    longest: Math.min(...ranges.map(({ years }) => years[1])),
    because: least.because,
  };
}

/** A usual bolt, when no diameter was told. */
const usualDiameter = 10;

/** How much of a bar of bare steel is left, were it to rust evenly; nothing where it would be gone or out of range. */
export function barLines(sheet: Worksheet, afterYears: number): Phrase[] {
  const air = placeAir(sheet);
  if (air === undefined) return [];
  const diameter = sheet.number('diameter_mm') ?? usualDiameter;
  const rate = sheet.compute(steelLoss(air));
  const worst = estimateBand('steel', rate).high;
  try {
    const loss = sheet.compute(
      longTermLoss({ firstYear: worst, exponent: exponents.steel.B2, years: afterYears }),
    );
    const left = sheet.compute(remainingSection({ diameter, loss }));
    return [
      {
        say: 'life-bar',
        with: {
          diameter: { value: diameter, unit: 'mm', exact: true },
          years: afterYears,
          left: Math.floor(100 * left),
        },
      },
    ];
  } catch (error) {
    if (error instanceof OutOfRange) return [{ say: 'life-bar-gone', with: { years: afterYears } }];
    throw error;
  }
}

const becauseLine = (why: Term): Phrase => ({
  say: why.fact === 'cracking_risk' ? 'life-because-cracks' : 'life-because',
  with: { why },
});

const horizon = 25;

/** The metal that was asked for by name, if it is not zinc, for which the thickness decides. */
function askedMetal(sheet: Worksheet): string | undefined {
  const metal = sheet.told('metal');
  if (typeof metal !== 'string' || sheet.told('coating_um') !== undefined) return undefined;
  return sheet.desk.rules.row('metals', metal).is.zinc_um === undefined ? metal : undefined;
}

export async function metalLife(sheet: Worksheet): Promise<Draft> {
  const metal = askedMetal(sheet);
  if (metal === undefined) {
    const draft = await coatingLife(sheet);
    return draft.lacking === undefined
      ? { ...draft, points: [...draft.points, ...barLines(sheet, horizon)] }
      : draft;
  }
  const what = { fact: 'metal', value: sheet.choice('metal') };
  await sheet.decide('exposure');
  const { values, because } = await sheet.decide('metal', metal);
  const [rule = ''] = because.suitability ?? [];
  const why = { rule };
  const life = planningLife(sheet, metal);
  if (sheet.choice('environment') === 'unknown')
    return {
      stance: 'stop',
      verdict: { say: 'life-place' },
      points: [],
      recommend: {},
      reject: [],
      lacking: ['environment'],
    };
  const range = life && {
    what,
    low: life.shortest,
    high: life.longest,
    range: {
      say: life.shortest === life.longest ? 'life-range-one' : 'life-range',
      with: { low: life.shortest, high: life.longest },
    },
  };
  const bar = what.value === 'mild-steel' ? barLines(sheet, horizon) : [];
  const suitability = String(values.suitability);
  const reject = suitability === 'unsuitable' ? ([{ what, why: [rule] }] as const) : [];
  if (range === undefined || suitability === 'unsuitable')
    return {
      stance: 'stop',
      verdict: { say: 'life-none', with: { what, why } },
      points: [
        ...(range === undefined ? [] : [{ say: 'life-was', with: range }]),
        ...bar,
        { say: 'life-hidden' },
      ],
      recommend: { metal, suitability },
      reject,
    };
  return {
    stance: suitability === 'limited' ? 'limit' : 'tell',
    verdict: { say: `life-${suitability}`, with: { ...range, why } },
    points: [
      ...(life?.because === undefined ? [] : [becauseLine(life.because)]),
      { say: 'life-practice' },
      { say: 'life-hidden' },
      ...(life !== undefined && life.shortest >= 50 ? [{ say: 'life-rock' }] : []),
    ],
    recommend: { metal, suitability, years_from: range.low, years_to: range.high },
    reject: [],
  };
}
