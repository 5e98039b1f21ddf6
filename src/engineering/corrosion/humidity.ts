import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

const airTemperature = input('T_a', 'temperature of the air', '°C', -45, 60);
const relativeHumidity = input('RH', 'relative humidity', '%', 1, 100);
const saturation = (t: number) => 6.112 * Math.exp((17.62 * t) / (243.12 + t));

/**
 * Saturation vapour pressure over water: e_s = 6.112·exp(17.62·T/(243.12+T)); °C; hPa.
 * Source: WMO-No. 8, Annex 4.B (Magnus). Worked: 28 → 37.71 hPa.
 */
export const saturationPressure = defineFormula({
  id: 'saturation-pressure',
  title: 'Saturation vapour pressure',
  symbols: 'e_s = 6.112·exp(17.62·T/(243.12+T))',
  source: 'magnus-wmo-8',
  clause: 'Annex 4.B',
  inputs: { temperature: { ...airTemperature, symbol: 'T', words: 'temperature', max: 90 } },
  unit: 'hPa',
  kind: 'plain',
  compute: (i) => saturation(i.temperature),
});

/**
 * Humidity at the surface of a warmed or cooled bolt: RH_s = RH·e_s(T_a)/e_s(T_s), at most 100 (dew); °C, %; %.
 * Source: WMO-No. 8, Annex 4.B. Worked: 28 °C, 75 %, metal 45 °C → 29.52 %.
 */
export const surfaceHumidity = defineFormula({
  id: 'surface-humidity',
  title: 'Relative humidity at the surface of a bolt',
  symbols: 'RH_s = RH·e_s(T_a)/e_s(T_s) ≤ 100',
  source: 'magnus-wmo-8',
  clause: 'Annex 4.B',
  inputs: {
    airTemperature,
    relativeHumidity,
    surfaceTemperature: input('T_s', 'temperature of the metal', '°C', -45, 90),
  },
  unit: '%',
  kind: 'plain',
  compute: (i) =>
    Math.min(100, (i.relativeHumidity * saturation(i.airTemperature)) / saturation(i.surfaceTemperature)),
});

/**
 * Dew point: T_d = 243.12·x/(17.62 − x), x = ln(RH/100) + 17.62·T/(243.12+T); °C, %; °C.
 * Source: WMO-No. 8, Annex 4.B solved for T. Worked: 28 °C, 75 % → 23.15 °C.
 */
export const dewPoint = defineFormula({
  id: 'dew-point',
  title: 'Dew point',
  symbols: 'T_d = 243.12·x/(17.62−x), x = ln(RH/100) + 17.62·T/(243.12+T)',
  source: 'magnus-wmo-8',
  clause: 'Annex 4.B solved for T',
  inputs: { airTemperature, relativeHumidity },
  unit: '°C',
  kind: 'plain',
  compute: (i) => {
    const x = Math.log(i.relativeHumidity / 100) + (17.62 * i.airTemperature) / (243.12 + i.airTemperature);
    return (243.12 * x) / (17.62 - x);
  },
});
