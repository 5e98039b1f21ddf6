/** How long a zinc coating lasts in this air. */
import {
  category,
  estimateBand,
  exponents,
  linearZincLife,
  yearsToLoss,
  zincLoss,
} from '../engineering/index.ts';
import { numberCell } from '../rules/index.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

/** What a club plans for when it drills: 25 years is the least that the work is worth (common practice). */
const wantedYears = 25;

/** Usual thickness of electroplated fasteners (ISO 4042). */
const usualPlating = 8;

export interface Life {
  readonly years: number;
  readonly worst: number;
  readonly rate: number;
}

export interface Air {
  readonly temperature: number;
  readonly humidity: number;
  readonly sulphurDioxide: number;
  readonly chloride: number;
}

/** The air to count with; undefined while the place is not told. */
export function placeAir(sheet: Worksheet): Air | undefined {
  const place = sheet.choice('environment');
  if (place === 'unknown') return undefined;
  const { climate } = sheet.situation;
  const warmer = sheet.desk.rules.table('climate-inputs').rows.find(({ id }) => id === `${place}.${climate}`);
  const air = warmer ? sheet.row('climate-inputs', warmer.id) : sheet.row('environments', place);
  return {
    temperature: numberCell(air, 'temperature_c'),
    humidity: numberCell(air, 'humidity_pct'),
    sulphurDioxide: numberCell(air, 'so2_mg'),
    chloride: numberCell(air, 'chloride_mg'),
  };
}

/** Life at the mean rate and at the upper end of the estimate, each the smaller of the linear rule and the B2 curve. */
export function lifeOf(sheet: Worksheet, thickness: number): Life | undefined {
  const air = placeAir(sheet);
  if (air === undefined) return undefined;
  const result = zincLoss(air);
  const years = (rate: number, record: boolean): number => {
    const results = [
      linearZincLife({ thickness, firstYear: rate }),
      yearsToLoss({ loss: thickness, firstYear: rate, exponent: exponents.zinc.B2 }),
    ];
    return Math.min(...results.map((one) => (record ? sheet.compute(one) : one.value)));
  };
  const rate = sheet.compute(result);
  return { rate, years: years(rate, true), worst: years(estimateBand('zinc', rate).high, false) };
}

/** For the choice of metal: plating against the life that a club plans for. */
export function platingCheck(sheet: Worksheet): void {
  const life = lifeOf(sheet, usualPlating);
  if (life)
    sheet.check({
      id: 'plating-life',
      name: { say: 'check-plating', with: { thickness: { value: usualPlating, unit: 'µm', exact: true } } },
      value: life.years,
      limit: wantedYears,
      unit: 'a',
      kind: 'plain',
    });
}

/** The thinnest that is usual for the metal that was told, or a plating. */
function usualThickness(sheet: Worksheet): number {
  const metal = sheet.told('metal');
  const range = typeof metal === 'string' ? sheet.row('metals', metal).is.zinc_um : undefined;
  return Array.isArray(range) ? Number(range[0]) : usualPlating;
}

export async function coatingLife(sheet: Worksheet): Promise<Draft> {
  const told = sheet.number('coating_um');
  const thickness = told ?? usualThickness(sheet);
  const life = lifeOf(sheet, thickness);
  await sheet.decide('exposure');
  if (life === undefined)
    return {
      stance: 'stop',
      verdict: { say: 'coating-place' },
      points: [],
      recommend: {},
      reject: [],
      lacking: ['environment'],
    };
  const band = estimateBand('zinc', life.rate);
  const ok = sheet.check({
    id: 'coating-life',
    name: { say: 'check-plating', with: { thickness: { value: thickness, unit: 'µm', exact: true } } },
    value: life.worst,
    limit: wantedYears,
    unit: 'a',
    kind: 'plain',
  });
  return {
    stance: ok ? 'tell' : 'stop',
    verdict: {
      say: 'coating-life',
      with: {
        thickness: { value: thickness, unit: 'µm', exact: true },
        worst: { value: life.worst, unit: 'a' },
        mean: { value: life.years, unit: 'a' },
      },
    },
    points: [
      {
        say: 'coating-rate',
        with: {
          rate: { value: life.rate, unit: 'µm/a' },
          category: category('zinc', life.rate),
          from: band.from,
          to: band.to,
        },
      },
      ...(told === undefined
        ? [
            {
              say: 'coating-usual',
              with: { thickness: { value: thickness, unit: 'µm', exact: true } as const },
            },
          ]
        : []),
      { say: 'coating-hidden' },
    ],
    recommend: { coating_um: thickness, years: Number(life.worst.toPrecision(2)) },
    reject: [],
  };
}
