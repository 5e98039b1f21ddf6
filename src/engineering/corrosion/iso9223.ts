import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

/** Air of a site, yearly means; ranges are those of ISO 9223:2012 Table 3. */
const air = {
  temperature: input('T', 'mean temperature of the year', '°C', -17.1, 28.7),
  humidity: input('RH', 'mean relative humidity of the year', '%', 34, 93),
  sulphurDioxide: input('P_d', 'deposition of sulphur dioxide', 'mg/(m²·d)', 0.7, 150.4),
  chloride: input('S_d', 'deposition of chloride', 'mg/(m²·d)', 0.4, 760.5),
};

type Air = Readonly<Record<keyof typeof air, number>>;

const branch = (t: number, cold: number, warm: number) => (t <= 10 ? cold : warm) * (t - 10);

/**
 * First-year loss of carbon steel: r = 1.77·P_d^0.52·exp(0.020·RH + f) + 0.102·S_d^0.62·exp(0.033·RH + 0.040·T),
 * f = 0.150·(T−10) up to 10 °C, −0.054·(T−10) above (inside the first exponential only). µm/a.
 * Estimates of this kind are good to −33 %/+50 % only: print a class range (`estimateBand`).
 * Errors: OutOfRange outside Table 3, among them P_d 0 or S_d 0: use 0.7 and 0.4.
 * Source: ISO 9223:2012 Eq. (1) (second hand). Worked: 12 °C, 82 %, 3, 300 → 99.24.
 */
export const steelLoss = defineFormula({
  id: 'steel-first-year-loss',
  title: 'First-year corrosion of carbon steel',
  symbols: 'r = 1.77·Pd^0.52·exp(0.020·RH+f) + 0.102·Sd^0.62·exp(0.033·RH+0.040·T)',
  source: 'iso-9223-2012',
  clause: 'Eq. (1)',
  inputs: air,
  unit: 'µm/a',
  kind: 'mean',
  compute: (i: Air) =>
    1.77 * i.sulphurDioxide ** 0.52 * Math.exp(0.02 * i.humidity + branch(i.temperature, 0.15, -0.054)) +
    0.102 * i.chloride ** 0.62 * Math.exp(0.033 * i.humidity + 0.04 * i.temperature),
});

/**
 * First-year loss of zinc: r = 0.0129·P_d^0.44·exp(0.046·RH + f) + 0.0175·S_d^0.57·exp(0.008·RH + 0.085·T),
 * f = 0.038·(T−10) up to 10 °C, −0.071·(T−10) above. µm/a. A public copy has 0.52 and 0.038 in the chloride
 * term: a quarter of the right value at a warm sea.
 * Source: ISO 9223:2012 Eq. (2) (second hand). Worked: 27 °C, 80 %, 2, 300 → 8.712.
 */
export const zincLoss = defineFormula({
  id: 'zinc-first-year-loss',
  title: 'First-year corrosion of zinc',
  symbols: 'r = 0.0129·Pd^0.44·exp(0.046·RH+f) + 0.0175·Sd^0.57·exp(0.008·RH+0.085·T)',
  source: 'iso-9223-2012',
  clause: 'Eq. (2)',
  inputs: air,
  unit: 'µm/a',
  kind: 'mean',
  compute: (i: Air) =>
    0.0129 * i.sulphurDioxide ** 0.44 * Math.exp(0.046 * i.humidity + branch(i.temperature, 0.038, -0.071)) +
    0.0175 * i.chloride ** 0.57 * Math.exp(0.008 * i.humidity + 0.085 * i.temperature),
});

/**
 * First-year loss of copper: r = 0.0053·P_d^0.26·exp(0.059·RH + f) + 0.01025·S_d^0.27·exp(0.036·RH + 0.049·T),
 * f = 0.126·(T−10) up to 10 °C, −0.080·(T−10) above. µm/a.
 * Source: ISO 9223:2012 Eq. (3) (second hand). Worked: 27 °C, 80 %, 2, 300 → 3.381.
 */
export const copperLoss = defineFormula({
  id: 'copper-first-year-loss',
  title: 'First-year corrosion of copper',
  symbols: 'r = 0.0053·Pd^0.26·exp(0.059·RH+f) + 0.01025·Sd^0.27·exp(0.036·RH+0.049·T)',
  source: 'iso-9223-2012',
  clause: 'Eq. (3)',
  inputs: air,
  unit: 'µm/a',
  kind: 'mean',
  compute: (i: Air) =>
    0.0053 * i.sulphurDioxide ** 0.26 * Math.exp(0.059 * i.humidity + branch(i.temperature, 0.126, -0.08)) +
    0.01025 * i.chloride ** 0.27 * Math.exp(0.036 * i.humidity + 0.049 * i.temperature),
});

/**
 * First-year loss of aluminium: r = 0.0042·P_d^0.73·exp(0.025·RH + f) + 0.0018·S_d^0.60·exp(0.020·RH + 0.094·T),
 * f = 0.009·(T−10) up to 10 °C, −0.043·(T−10) above. g/(m²·a): aluminium pits, a thickness says nothing.
 * Source: ISO 9223:2012 Eq. (4) (second hand, one transcription). Worked: 11 °C, 80 %, 3, 60 → 0.3588.
 */
export const aluminiumLoss = defineFormula({
  id: 'aluminium-first-year-loss',
  title: 'First-year corrosion of aluminium',
  symbols: 'r = 0.0042·Pd^0.73·exp(0.025·RH+f) + 0.0018·Sd^0.60·exp(0.020·RH+0.094·T)',
  source: 'iso-9223-2012',
  clause: 'Eq. (4)',
  inputs: air,
  unit: 'g/(m²·a)',
  kind: 'mean',
  compute: (i: Air) =>
    0.0042 * i.sulphurDioxide ** 0.73 * Math.exp(0.025 * i.humidity + branch(i.temperature, 0.009, -0.043)) +
    0.0018 * i.chloride ** 0.6 * Math.exp(0.02 * i.humidity + 0.094 * i.temperature),
});

/**
 * Deposition of sulphur dioxide from its concentration: P_d = 0.8·P_c; µg/m³; mg/(m²·d).
 * Source: ISO 9223:2012 Table B.3, note (second hand). Worked: 30 → 24.
 */
export const sulphurDeposition = defineFormula({
  id: 'sulphur-deposition',
  title: 'Deposition of sulphur dioxide from its concentration',
  symbols: 'P_d = 0.8·P_c',
  source: 'iso-9223-2012',
  clause: 'Annex B',
  inputs: { concentration: input('P_c', 'concentration of sulphur dioxide', 'µg/m³', 0, 400) },
  unit: 'mg/(m²·d)',
  kind: 'plain',
  compute: (i) => 0.8 * i.concentration,
});
