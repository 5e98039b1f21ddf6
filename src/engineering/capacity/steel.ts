import { defineFormula } from '../formula.ts';
import { diameter, fraction, input, metalArea, steelStrength, yieldStrength } from '../quantities.ts';

/**
 * Stress area of a metric thread: A_s = (π/4)·(d − 0.9382·P)²; mm; mm².
 * Source: ISO 898-1:2013, 9.1.6.1. Worked: M10, P 1.5 → 57.99 mm².
 */
export const threadStressArea = defineFormula({
  id: 'thread-stress-area',
  title: 'Stress area of a metric thread',
  symbols: 'A_s = (π/4)·(d − 0.9382·P)²',
  source: 'iso-898-1',
  clause: '9.1.6.1',
  inputs: { diameter: { ...diameter, min: 4 }, pitch: input('P', 'thread pitch', 'mm', 0.5, 5) },
  unit: 'mm²',
  kind: 'plain',
  compute: (i) => (Math.PI / 4) * (i.diameter - 0.9382 * i.pitch) ** 2,
});

/** Area of a plain round bar: A = π·d²/4; mm; mm². Source: geometry. Worked: d 12 → 113.1 mm². */
export const roundBarArea = defineFormula({
  id: 'round-bar-area',
  title: 'Area of a round bar',
  symbols: 'A = π·d²/4',
  source: 'practice',
  clause: 'geometry',
  inputs: { diameter },
  unit: 'mm²',
  kind: 'plain',
  compute: (i) => (Math.PI / 4) * i.diameter ** 2,
});

/**
 * Tension that breaks the metal: N_Rk,s = A_s·f_uk; mm², MPa; kN. Characteristic because f_uk is the
 * specified minimum. Source: EN 1992-4:2018, 7.2.1.3. Worked: 57.99 mm², 700 MPa → 40.59 kN.
 */
export const steelTension = defineFormula({
  id: 'steel-tension',
  title: 'Tension strength of the metal (characteristic)',
  symbols: 'N_Rk,s = A_s·f_uk',
  source: 'en-1992-4-2018',
  clause: '7.2.1.3',
  inputs: { metalArea, steelStrength },
  unit: 'kN',
  kind: 'characteristic',
  compute: (i) => (i.metalArea * i.steelStrength) / 1000,
});

/**
 * Shear that breaks the metal, no lever arm: V0_Rk,s = k6·A_s·f_uk, k6 0.6 for f_uk ≤ 500 MPa, 0.5 above
 * (to 1000 MPa); mm², MPa; kN. Source: EN 1992-4:2018 Eq. (7.34). Worked: 84.27 mm², 700 MPa → 29.49 kN.
 */
export const steelShear = defineFormula({
  id: 'steel-shear',
  title: 'Shear strength of the metal (characteristic)',
  symbols: 'V0_Rk,s = k6·A_s·f_uk',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.34)',
  inputs: { metalArea, steelStrength: { ...steelStrength, max: 1000 } },
  unit: 'kN',
  kind: 'characteristic',
  compute: (i) => ((i.steelStrength <= 500 ? 0.6 : 0.5) * i.metalArea * i.steelStrength) / 1000,
});

/**
 * Shear with a lever arm (the eye stands off the rock):
 * V_Rk,s,M = α_M·1.2·W_el·f_uk·(1 − n)/(e1 + a3), W_el = π·d_s³/32, d_s = √(4·A_s/π), a3 = 0.5·d.
 * A_s mm², f_uk MPa, d rod mm, e1 distance of the load from the rock mm, n share of the design tension in use,
 * α_M 1 free to turn, 2 held; kN. Too low as a breaking load of a bent shank (it then hangs in tension):
 * a reason to recess the eye, not a strength to advertise. At e1 0 with a clamped plate use `steelShear`.
 * Source: EN 1992-4:2018 Eq. (7.37), 6.2.2.3. Worked: M12 84.27 mm², 700 MPa, e1 25, n 0, α 1 → 2.957 kN.
 */
export const leverArmShear = defineFormula({
  id: 'lever-arm-shear',
  title: 'Shear strength of a rod that stands off the rock (characteristic)',
  symbols: 'V_Rk,s,M = α_M·1.2·W_el·f_uk·(1−n)/(e1+a3)',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.37), 6.2.2.3',
  inputs: {
    metalArea,
    steelStrength: { ...steelStrength, max: 1000 },
    diameter,
    standOff: input('e1', 'distance of the load from the rock', 'mm', 0, 200),
    tensionShare: fraction('n', 'share of the design tension in use'),
    restraint: input('α_M', 'degree of restraint', '', 1, 2),
  },
  unit: 'kN',
  kind: 'characteristic',
  compute: (i) => {
    const rod = Math.sqrt((4 * i.metalArea) / Math.PI);
    const moment = 1.2 * ((Math.PI * rod ** 3) / 32) * i.steelStrength * (1 - i.tensionShare);
    return (i.restraint * moment) / (i.standOff + 0.5 * i.diameter) / 1000;
  },
});

const yieldBelowUltimate = {
  ...input('f_yk/f_uk', 'ratio of yield to ultimate strength', '', 0.1, 1),
  of: (i: { yieldStrength: number; steelStrength: number }) => i.yieldStrength / i.steelStrength,
};

/**
 * Partial factor of the metal in tension: γ_Ms = max(1.2/(f_yk/f_uk), 1.4); MPa.
 * Source: EN 1992-4:2018 Table 4.1 (from memory). Worked: 450/700 → 1.867.
 */
export const steelTensionPartialFactor = defineFormula({
  id: 'steel-tension-partial-factor',
  title: 'Partial factor of the metal in tension',
  symbols: 'γ_Ms = max(1.2/(f_yk/f_uk), 1.4)',
  source: 'en-1992-4-2018',
  clause: 'Table 4.1',
  inputs: { yieldStrength, steelStrength },
  derived: [yieldBelowUltimate],
  unit: '',
  kind: 'plain',
  compute: (i) => Math.max((1.2 * i.steelStrength) / i.yieldStrength, 1.4),
});

/**
 * Partial factor of the metal in shear: γ_Ms = max(1.0/(f_yk/f_uk), 1.25) when f_uk ≤ 800 MPa and
 * f_yk/f_uk ≤ 0.8, else 1.5. Source: EN 1992-4:2018 Table 4.1 (from memory). Worked: 450/700 → 1.556.
 */
export const steelShearPartialFactor = defineFormula({
  id: 'steel-shear-partial-factor',
  title: 'Partial factor of the metal in shear',
  symbols: 'γ_Ms = max(f_uk/f_yk, 1.25), or 1.5',
  source: 'en-1992-4-2018',
  clause: 'Table 4.1',
  inputs: { yieldStrength, steelStrength },
  derived: [yieldBelowUltimate],
  unit: '',
  kind: 'plain',
  compute: (i) =>
    i.steelStrength <= 800 && i.yieldStrength / i.steelStrength <= 0.8
      ? Math.max(i.steelStrength / i.yieldStrength, 1.25)
      : 1.5,
});
