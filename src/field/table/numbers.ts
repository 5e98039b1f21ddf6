/** Numbers in cells, with either decimal mark, and into the unit of the fact. */
import {
  forceUnits,
  lengthUnits,
  temperatureUnits,
  timeUnits,
  toCelsius,
  toHours,
  toKn,
  toMm,
} from '../../units/convert.ts';

const isOneOf = <T extends string>(units: readonly T[], unit: string): unit is T =>
  (units as readonly string[]).includes(unit);

/** Null where this unit does not measure what the fact is. */
export function inUnit(value: number, unit: string, wanted: string): number | null {
  if (unit === wanted) return value;
  if (wanted === 'kN') return isOneOf(forceUnits, unit) ? toKn(value, unit) : null;
  if (wanted === 'mm') return isOneOf(lengthUnits, unit) ? toMm(value, unit) : null;
  if (wanted === '°C') return isOneOf(temperatureUnits, unit) ? toCelsius(value, unit) : null;
  if (wanted === 'h') return isOneOf(timeUnits, unit) ? toHours(value, unit) : null;
  return null;
}

/** "36.5", "36,5"; two marks may be thousands in one country and decimals in another, so they are no number here. */
export function numberIn(cell: string): number | null {
  const [, number = ''] = /^([+-]?\d{1,9}(?:[.,]\d{1,9})?)$/.exec(cell.trim()) ?? [];
  return number === '' ? null : Number(number.replace(',', '.'));
}
