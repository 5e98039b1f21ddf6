import { defineFormula, defineStrengthPair } from '../formula.ts';
import { force, input, resistance } from '../quantities.ts';

const exponent = input('p', 'exponent of the interaction', '', 1, 2);

/**
 * Use of an anchor under tension and shear together: u = (N/N_R)^p + (V/V_R)^p, in order while u ≤ 1.
 * p 2 when metal fails in both, 1.5 for rock or concrete modes and for different modes (EN), 5/3 (ACI
 * commentary); N, V and their resistances kN, actions and resistances of one level (both design).
 * Source: EN 1992-4:2018 Table 7.3. Worked: N 6 of 10, V 7 of 10, p 1.5 → 1.050.
 */
export const interaction = defineFormula({
  id: 'interaction',
  title: 'Tension and shear together',
  symbols: 'u = (N/N_R)^p + (V/V_R)^p ≤ 1',
  source: 'en-1992-4-2018',
  clause: 'Table 7.3',
  inputs: {
    tension: { ...force, symbol: 'N', words: 'tension' },
    shear: { ...force, symbol: 'V', words: 'shear' },
    tensionResistance: { ...resistance, symbol: 'N_R', words: 'tension resistance' },
    shearResistance: { ...resistance, symbol: 'V_R', words: 'shear resistance' },
    exponent,
  },
  unit: '',
  kind: 'plain',
  compute: (i) =>
    (i.tension / i.tensionResistance) ** i.exponent + (i.shear / i.shearResistance) ** i.exponent,
});

/**
 * The linear form: u = (N/N_R + V/V_R)/1.2, in order while u ≤ 1 and neither share exceeds 1.
 * Source: EN 1992-4:2018 Table 7.3; ACI 318-19 17.8.3. Worked: 0.6 and 0.7 → 1.083.
 */
export const linearInteraction = defineFormula({
  id: 'linear-interaction',
  title: 'Tension and shear together, linear form',
  symbols: 'u = (N/N_R + V/V_R)/1.2 ≤ 1',
  source: 'aci-318-19',
  clause: '17.8.3',
  inputs: {
    tension: { ...force, symbol: 'N', words: 'tension' },
    shear: { ...force, symbol: 'V', words: 'shear' },
    tensionResistance: { ...resistance, symbol: 'N_R', words: 'tension resistance' },
    shearResistance: { ...resistance, symbol: 'V_R', words: 'shear resistance' },
  },
  unit: '',
  kind: 'plain',
  compute: (i) => (i.tension / i.tensionResistance + i.shear / i.shearResistance) / 1.2,
});

/**
 * Resistance to a pull at an angle θ from the bolt's axis: F = ((cos θ/N_R)^p + (sin θ/V_R)^p)^(−1/p).
 * 0° is straight out, 90° along the rock. N_R, V_R of the same kind, kN; θ degrees; kN.
 * Source: EN 1992-4:2018 Table 7.3 solved for the load. Worked: 15, 25, 45°, p 1.5 → 16.45 kN.
 */
export const obliqueResistance = defineStrengthPair({
  id: 'oblique-resistance',
  title: 'Resistance to an oblique pull',
  symbols: 'F = ((cos θ/N_R)^p + (sin θ/V_R)^p)^(−1/p)',
  source: 'en-1992-4-2018',
  clause: 'Table 7.3 solved for the load',
  inputs: {
    tensionResistance: { ...resistance, symbol: 'N_R', words: 'tension resistance' },
    shearResistance: { ...resistance, symbol: 'V_R', words: 'shear resistance' },
    angle: input('θ', 'angle of the pull from the axis of the bolt', '°', 0, 90),
    exponent,
  },
  unit: 'kN',
  compute: (i) => {
    const a = (i.angle * Math.PI) / 180;
    const used =
      (Math.cos(a) / i.tensionResistance) ** i.exponent + (Math.sin(a) / i.shearResistance) ** i.exponent;
    return used ** (-1 / i.exponent);
  },
});
