/** Every change of unit goes through here. The factors are those of the `convert` package, none is ours. */
import { convert } from 'convert';

export const lengthUnits = ['µm', 'mm', 'cm', 'm', 'km', 'in', 'ft', 'yd', 'mi', 'nmi'] as const;
export const temperatureUnits = ['C', 'F', 'K'] as const;
export const timeUnits = ['min', 'h', 'd', 'week'] as const;
export const forceUnits = ['N', 'daN', 'kN', 'kgf', 'lbf'] as const;
export const massUnits = ['g', 'kg', 't', 'lb', 'stone'] as const;
export const stressUnits = ['kPa', 'MPa', 'GPa', 'psi'] as const;

export type LengthUnit = (typeof lengthUnits)[number];
export type TemperatureUnit = (typeof temperatureUnits)[number];
export type TimeUnit = (typeof timeUnits)[number];
export type ForceUnit = (typeof forceUnits)[number];
export type MassUnit = (typeof massUnits)[number];
export type StressUnit = (typeof stressUnits)[number];

/** 5 °C came back as 40.999 999 999 999 886 °F: twelve digits are more than any of our numbers deserve. */
const tidy = (value: number): number => Number(value.toPrecision(12));

export const toMm = (value: number, unit: LengthUnit): number => tidy(convert(value, unit).to('mm'));
export const toMeters = (value: number, unit: LengthUnit): number => tidy(convert(value, unit).to('m'));
export const toMicrometers = (value: number, unit: LengthUnit): number => tidy(convert(value, unit).to('µm'));
export const toCelsius = (value: number, unit: TemperatureUnit): number => tidy(convert(value, unit).to('C'));
export const toHours = (value: number, unit: TimeUnit): number => tidy(convert(value, unit).to('h'));
export const toKn = (value: number, unit: ForceUnit): number => tidy(convert(value, unit).to('kN'));
export const toKg = (value: number, unit: MassUnit): number => tidy(convert(value, unit).to('kg'));
export const toMpa = (value: number, unit: StressUnit): number => tidy(convert(value, unit).to('MPa'));
