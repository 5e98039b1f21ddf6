/** Units that people say, and the way from them to the unit of a fact. */
import {
  forceUnits,
  lengthUnits,
  massUnits,
  stressUnits,
  temperatureUnits,
  timeUnits,
  toCelsius,
  toHours,
  toKg,
  toKn,
  toMeters,
  toMicrometers,
  toMm,
  toMpa,
} from '../../units/convert.ts';

export type Dimension =
  | 'length'
  | 'temperature'
  | 'time'
  | 'force'
  | 'mass'
  | 'stress'
  | 'years'
  | 'money'
  | 'percent'
  | 'mass-per-length'
  | 'degree'
  | 'pieces'
  | 'volume'
  | 'bare';

const isOneOf = <T extends string>(units: readonly T[], unit: string): unit is T =>
  (units as readonly string[]).includes(unit);

export function dimensionOf(unit: string | null): Dimension {
  if (unit === null) return 'bare';
  if (isOneOf(lengthUnits, unit)) return 'length';
  if (isOneOf(temperatureUnits, unit)) return 'temperature';
  if (isOneOf(timeUnits, unit)) return 'time';
  if (isOneOf(forceUnits, unit)) return 'force';
  if (isOneOf(massUnits, unit)) return 'mass';
  if (isOneOf(stressUnits, unit)) return 'stress';
  if (unit === 'a') return 'years';
  if (unit === '%') return 'percent';
  if (unit === 'g/m') return 'mass-per-length';
  if (unit === 'pcs') return 'pieces';
  if (unit === 'ml') return 'volume';
  return unit === '°' ? 'degree' : 'money';
}

/** What a fact in this unit can be told in. */
export function dimensionOfFact(unit: string): Dimension {
  if (unit === '°C') return 'temperature';
  if (unit === 'money' || unit === '1') return unit === '1' ? 'bare' : 'money';
  return dimensionOf(unit);
}

/** The value in the unit of the fact, or null if it cannot be told in this unit. Without a unit, the fact's own. */
export function inFactUnit(value: number, unit: string | null, factUnit: string): number | null {
  if (unit === null || unit === 'pcs') return value;
  if (isOneOf(lengthUnits, unit)) {
    if (factUnit === 'mm') return toMm(value, unit);
    if (factUnit === 'm') return toMeters(value, unit);
    return factUnit === 'µm' ? toMicrometers(value, unit) : null;
  }
  if (isOneOf(temperatureUnits, unit)) return factUnit === '°C' ? toCelsius(value, unit) : null;
  if (isOneOf(timeUnits, unit)) return factUnit === 'h' ? toHours(value, unit) : null;
  if (isOneOf(forceUnits, unit)) return factUnit === 'kN' ? toKn(value, unit) : null;
  if (isOneOf(massUnits, unit)) return factUnit === 'kg' ? toKg(value, unit) : null;
  if (isOneOf(stressUnits, unit)) return factUnit === 'MPa' ? toMpa(value, unit) : null;
  if (unit === '°') return factUnit === '°' || factUnit === '°C' ? value : null;
  if (unit === 'a' || unit === '%' || unit === 'ml' || unit === 'g/m')
    return factUnit === unit ? value : null;
  return factUnit === 'money' ? value : null;
}

/** "1 h 30 min", 5'6": the second in the unit of the first, or null if they do not belong together. */
export function inUnitOf(value: number, unit: string, first: string): number | null {
  if (isOneOf(lengthUnits, unit) && isOneOf(lengthUnits, first)) return toMm(value, unit) / toMm(1, first);
  if (isOneOf(timeUnits, unit) && isOneOf(timeUnits, first)) return toHours(value, unit) / toHours(1, first);
  return null;
}
