/** Working time and time to load, by the temperature of the rock: by the data sheet where its figures are told. */
import type { Measure, Phrase, Term } from '../contracts/phrase.ts';
import {
  type CureData,
  type CurePoint,
  type CureTime,
  cureTime,
  TooColdToCure,
  TooHotToCure,
} from '../engineering/index.ts';
import { numberCell, type Row, rangeCell, textCell } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

export interface CureGuide {
  readonly time: CureTime;
  /** Shortest usual working time at the next warmer line of the table, minutes; absent for an adhesive not told. */
  readonly workingMinutes: number | undefined;
  /** The sheet's time is far below what is usual for the chemistry: perhaps misread. */
  readonly oddlyShort: boolean;
}

const at = (row: Row): number => numberCell(row, 'temperature_c');

/** A waiting time is shown, and held against, no shorter than it is. */
export const roundedUp = (hours: number): number => Math.ceil(hours * 10) / 10;

export const celsius = (value: number): Measure => ({ value, unit: '°C', exact: true });
export const hoursOf = (value: number): Measure => ({ value, unit: 'h', exact: true });
export const adhesiveTerm = (value: string): Term | Phrase =>
  value === 'unknown' ? { say: 'cure-your-adhesive' } : { fact: 'adhesive', value };

export const isWet = (sheet: Worksheet): boolean => sheet.choice('hole_moisture') !== 'dry';

/** Lines of the data sheet as far as they were told in pairs, coldest first. */
export function sheetLines(sheet: Worksheet): readonly CurePoint[] {
  const hours = sheet.numbers('sheet_hours');
  const temperatures = sheet.numbers('sheet_temperature_c');
  return temperatures
    .flatMap((temperature, index) => {
      const given = hours[index];
      return given === undefined ? [] : [{ temperature, hours: given }];
    })
    .toSorted((a, b) => a.temperature - b.temperature);
}

const rowsOf = (sheet: Worksheet, adhesive: string): readonly Row[] =>
  sheet.desk.rules.table('cure').rows.filter((row) => textCell(row, 'adhesive') === adhesive);

/** The sheet is that of the adhesive that was told, and of no other. */
const linesFor = (sheet: Worksheet, adhesive: string): readonly CurePoint[] => {
  const told = sheet.told('adhesive');
  return told === undefined || told === adhesive ? sheetLines(sheet) : [];
};

/** Doubled in wet rock (common practice), the sheet's figures too: they are those of a dry hole. */
const wetFactor = 2;

export function cureData(sheet: Worksheet, adhesive: string): CureData {
  const rows = rowsOf(sheet, adhesive);
  for (const source of rows[0]?.sources ?? []) sheet.cite(source);
  const lines = linesFor(sheet, adhesive);
  return {
    // A line that the sheet has is a temperature that the sheet allows.
    lowestTemperature:
      lines[0]?.temperature ?? numberCell(sheet.row('adhesives', adhesive), 'min_temperature_c'),
    sheet: lines,
    usual: rows.map((row) => ({ temperature: at(row), hours: rangeCell(row, 'load_h')[1] })),
    wetFactor,
  };
}

/** A sheet may be quicker than is usual for its kind, but hardly so much. */
const oddShare = 1 / 4;

function isOddlyShort(time: CureTime, data: CureData, temperature: number, wet: boolean): boolean {
  if (time.from !== 'sheet' || data.usual.length === 0) return false;
  try {
    return time.hours < oddShare * cureTime(temperature, { ...data, sheet: [] }, wet).hours;
  } catch (error) {
    if (error instanceof TooColdToCure || error instanceof TooHotToCure) return false;
    throw error;
  }
}

function workingMinutes(sheet: Worksheet, adhesive: string, temperature: number): number | undefined {
  const rows = rowsOf(sheet, adhesive).toSorted((a, b) => at(a) - at(b));
  if (rows.length === 0) return undefined;
  const warmer = rows.find((row) => at(row) >= temperature);
  if (warmer === undefined) throw new TooHotToCure(temperature, Math.max(...rows.map(at)));
  return rangeCell(warmer, 'gel_min')[0];
}

/** Errors: TooColdToCure, TooHotToCure. */
export function cureGuide(sheet: Worksheet, adhesive: string, temperature: number): CureGuide {
  const data = cureData(sheet, adhesive);
  const wet = isWet(sheet);
  const time = cureTime(temperature, data, wet);
  return {
    time,
    workingMinutes: workingMinutes(sheet, adhesive, temperature),
    oddlyShort: isOddlyShort(time, data, temperature, wet),
  };
}

/** Why there is no time for this adhesive at this temperature. */
export function cannotCure(sheet: Worksheet, error: unknown, adhesive: string): Phrase {
  const what = adhesiveTerm(adhesive);
  const bySheet = linesFor(sheet, adhesive).length > 0;
  if (error instanceof TooColdToCure)
    return {
      say: bySheet ? 'cure-below-sheet' : 'cure-too-cold',
      with: { what, lowest: celsius(error.lowest) },
    };
  if (error instanceof TooHotToCure)
    return {
      say: bySheet ? 'cure-above-sheet' : 'cure-too-hot',
      with: { what, highest: celsius(error.highest) },
    };
  throw error;
}

/** One line for one chemistry, or why there is none. */
export function cureLine(sheet: Worksheet, adhesive: string, temperature: number): Phrase {
  try {
    const { time, workingMinutes: working = 0 } = cureGuide(sheet, adhesive, temperature);
    return {
      say: time.wetFactor > 1 ? 'cure-line-wet' : 'cure-line',
      with: {
        what: adhesiveTerm(adhesive),
        hours: hoursOf(roundedUp(time.hours)),
        working: { value: working, unit: 'min' },
        temperature: celsius(temperature),
      },
    };
  } catch (error) {
    return cannotCure(sheet, error, adhesive);
  }
}
