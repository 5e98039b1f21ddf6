import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

/** The rock is colder than the adhesive may be: no time makes this right. */
export class TooColdToCure extends Error {
  override readonly name = 'TooColdToCure';
  constructor(
    readonly rockTemperature: number,
    readonly lowest: number,
  ) {
    super(
      `The rock is at ${rockTemperature} °C; this adhesive must not be used below ${lowest} °C. ` +
        'Waiting longer does not help.',
    );
  }
}

/** The rock is hotter than the data go: it may set before the bolt is in. */
export class TooHotToCure extends Error {
  override readonly name = 'TooHotToCure';
  constructor(
    readonly rockTemperature: number,
    readonly highest: number,
  ) {
    super(`The rock is at ${rockTemperature} °C; there are no times for this adhesive above ${highest} °C.`);
  }
}

/**
 * Cure time away from 20 °C when the sheet gives 20 °C only: t = t20·2^((20−T)/10). t20 h, T rock °C; h.
 * Source: rule of thumb, common practice; never below the sheet's lowest temperature: see `cureTime`.
 * Worked: t20 1 h, T −5 → 5.657 h.
 */
export const scaledCureTime = defineFormula({
  id: 'scaled-cure-time',
  title: 'Cure time scaled from 20 °C',
  symbols: 't = t20·2^((20−T)/10)',
  source: 'practice',
  clause: 'doubling each 10 °C',
  inputs: {
    at20: input('t20', 'cure time at 20 °C', 'h', 0.01, 240),
    temperature: input('T', 'temperature of the rock', '°C', -20, 45),
  },
  unit: 'h',
  kind: 'plain',
  compute: (i) => i.at20 * 2 ** ((20 - i.temperature) / 10),
});

/** One line of a data sheet: from this rock temperature on, so many hours to load. */
export interface CurePoint {
  readonly temperature: number;
  readonly hours: number;
}

export interface CureData {
  /** Lowest rock temperature the adhesive may be used at, °C. */
  readonly lowestTemperature: number;
  /** The sheet's own table; it always comes before any scaling. */
  readonly sheet?: readonly CurePoint[] | undefined;
  /** Cure time at 20 °C in hours, when the sheet says only that; scaled, and never shorter than `usual`. */
  readonly at20?: number | undefined;
  /** Usual range for the chemistry, slow end; used when the sheet is not at hand. */
  readonly usual: readonly CurePoint[];
  /** 2 for most resins in wet rock (common practice); 1 when the sheet has its own wet figures. */
  readonly wetFactor: number;
}

export interface CureTime {
  readonly hours: number;
  readonly from: 'sheet' | 'scaled' | 'usual';
  readonly wetFactor: number;
}

/**
 * Hours until an adhesive may be loaded. A sheet's table is read as sheets are: the time of the next colder
 * line (never interpolated to something shorter). A usual table is interpolated, linear in log time.
 * Errors: TooColdToCure below the lowest temperature or the coldest line, TooHotToCure above the hottest usual
 * line (a sheet's warmest line goes on to hold up to 10 °C above), RangeError for a value that is no number.
 * Source: practice of data sheets. Worked: sheet 10 °C 24 h, 20 °C 12 h; rock 15 °C, wet factor 2 → 48 h.
 */
export function cureTime(rockTemperature: number, data: CureData, wet: boolean): CureTime {
  if (!Number.isFinite(rockTemperature)) throw new RangeError('the temperature of the rock is not a number');
  const sheet = data.sheet !== undefined && data.sheet.length > 0;
  const points = [...(sheet ? data.sheet : data.usual)].sort((a, b) => a.temperature - b.temperature);
  const coldest = points[0];
  const hottest = points.at(-1);
  if (coldest === undefined || hottest === undefined) throw new RangeError('no cure times are known');
  const lowest = Math.max(data.lowestTemperature, coldest.temperature);
  if (rockTemperature < lowest) throw new TooColdToCure(rockTemperature, lowest);
  const highest = hottest.temperature + (sheet ? 10 : 0);
  if (rockTemperature > highest) throw new TooHotToCure(rockTemperature, highest);
  const tabled = sheet ? colderLine(points, rockTemperature) : interpolate(points, rockTemperature);
  const scaled =
    sheet || data.at20 === undefined
      ? 0
      : scaledCureTime({ at20: data.at20, temperature: rockTemperature }).value;
  const hours = Math.max(tabled, scaled);
  const from = sheet ? 'sheet' : scaled > tabled ? 'scaled' : 'usual';
  const wetFactor = wet ? data.wetFactor : 1;
  return { hours: hours * wetFactor, from, wetFactor };
}

function colderLine(points: readonly CurePoint[], temperature: number): number {
  const at = points.filter((p) => p.temperature <= temperature);
  return Math.max(...at.slice(-1).map((p) => p.hours));
}

function interpolate(points: readonly CurePoint[], temperature: number): number {
  const above = points.findIndex((p) => p.temperature >= temperature);
  const warm = points[above];
  const cold = points[Math.max(0, above - 1)];
  if (warm === undefined || cold === undefined) throw new RangeError('no cure times are known');
  if (warm.temperature === cold.temperature) return warm.hours;
  const share = (temperature - cold.temperature) / (warm.temperature - cold.temperature);
  return cold.hours * (warm.hours / cold.hours) ** share;
}
