import { defineFormula, defineStrengthPair } from '../formula.ts';
import { bondStress, diameter, embedment, holeDiameter, input, resistance } from '../quantities.ts';

const slenderness = {
  ...input('h_ef/d', 'ratio of embedment depth to rod diameter', '', 4, 20),
  of: (i: { embedment: number; diameter: number }) => i.embedment / i.diameter,
};

const annulusNotNegative = {
  ...input('d0−d', 'hole diameter less rod diameter', 'mm', 0, 30),
  of: (i: { diameter: number; holeDiameter: number }) => i.holeDiameter - i.diameter,
};

/**
 * Uniform bond: N = τ·π·d·h_ef. τ bond strength MPa, d rod mm, h_ef embedment mm; N in kN.
 * A mean τ gives a mean N (`uniformBond.mean`), a 5 % fractile τ_Rk the characteristic N.
 * Valid for 4 ≤ h_ef/d ≤ 20 (EOTA TR 029; ACI 318-19 ch. 17), else OutOfRange.
 * Source: EN 1992-4:2018 Eq. (7.14) without ψ_sus; ACI 318-19 17.6.5.2.1 (same form).
 * Worked: τ 10, d 12, h 100 → 37.70 kN.
 */
export const uniformBond = defineStrengthPair({
  id: 'bond',
  title: 'Pull-out by bond along the whole rod',
  symbols: 'N = τ·π·d·h_ef',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.14)',
  inputs: { bondStress, diameter, embedment },
  derived: [slenderness],
  unit: 'kN',
  compute: (i) => (i.bondStress * Math.PI * i.diameter * i.embedment) / 1000,
});

/**
 * Pull-out along the wall of the hole: N = τ_r·π·d0·h_ef. τ_r strength of the rock side MPa, d0 hole mm,
 * d rod mm (for the slenderness limit), h_ef mm; N in kN, mean or characteristic as τ_r is.
 * The weaker of this and the rod side governs: N = min(τ_s·π·d·h, τ_r·π·d0·h).
 * Errors: hole narrower than the rod, slenderness outside 4..20.
 * Source: EN 1992-4:2018 Eq. (7.14), applied to the second interface (common practice).
 * Worked: d 12, d0 14, h 100, τ_r 3 → 13.19 kN.
 */
export const holeWallBond = defineStrengthPair({
  id: 'bond-hole-wall',
  title: 'Pull-out along the wall of the hole',
  symbols: 'N = τ_r·π·d0·h_ef',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.14) at the hole wall',
  inputs: {
    bondStress: { ...bondStress, symbol: 'τ_r', words: 'bond strength of the rock side' },
    diameter,
    holeDiameter,
    embedment,
  },
  derived: [slenderness, annulusNotNegative],
  unit: 'kN',
  compute: (i) => (i.bondStress * Math.PI * i.holeDiameter * i.embedment) / 1000,
});

/**
 * Embedment that a wanted resistance needs: h = N/(τ·π·d). N kN, τ MPa, d mm; h in mm.
 * Whether the result keeps 4 ≤ h/d ≤ 20 is checked when it is put back into `uniformBond`.
 * Source: EN 1992-4:2018 Eq. (7.14) solved for h_ef. Worked: N 25, τ 5, d 12 → 132.6 mm.
 */
export const bondLength = defineFormula({
  id: 'bond-length',
  title: 'Embedment that the bond needs',
  symbols: 'h = N/(τ·π·d)',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.14) solved for h_ef',
  inputs: { resistance, bondStress, diameter },
  unit: 'mm',
  kind: 'plain',
  compute: (i) => (i.resistance * 1000) / (i.bondStress * Math.PI * i.diameter),
});

/**
 * Bond stress that a pull has shown or must exceed: τ = N/(π·d·h). N kN, d mm, h mm; τ in MPa.
 * Source: EN 1992-4:2018 Eq. (7.14) solved for τ. Worked: N 15, d 10, h 70 → 6.821 MPa.
 */
export const bondStressOf = defineFormula({
  id: 'bond-stress',
  title: 'Bond stress behind a pull-out force',
  symbols: 'τ = N/(π·d·h)',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.14) solved for τ',
  inputs: { resistance, diameter, embedment },
  unit: 'MPa',
  kind: 'plain',
  compute: (i) => (i.resistance * 1000) / (Math.PI * i.diameter * i.embedment),
});

/**
 * How evenly an elastic adhesive layer carries: e = tanh(αh)/(αh), α = √(4·G/(E·d·t)).
 * G shear modulus of the adhesive MPa, E modulus of the rod MPa, d rod mm, t layer mm, h embedment mm.
 * 1 is even. At failure a tough adhesive redistributes, brittle rock less: below 1 the uniform model is
 * optimistic for rock-governed pull-out. Source: elastic shear-lag theory (handbook, from memory).
 * Worked: G 1900, E 200 000, d 12, t 1, h 100 → 0.1777.
 */
export const shearLagEfficiency = defineFormula({
  id: 'shear-lag-efficiency',
  title: 'Evenness of the elastic bond stress',
  symbols: 'e = tanh(αh)/(αh), α = √(4G/(E·d·t))',
  source: 'practice',
  clause: 'elastic shear-lag theory',
  inputs: {
    shearModulus: input('G', 'shear modulus of the adhesive', 'MPa', 10, 20_000),
    modulus: input('E', 'elastic modulus of the rod', 'MPa', 10_000, 300_000),
    diameter,
    layer: input('t', 'thickness of the adhesive layer', 'mm', 0.2, 10),
    embedment,
  },
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const x = Math.sqrt((4 * i.shearModulus) / (i.modulus * i.diameter * i.layer)) * i.embedment;
    return Math.tanh(x) / x;
  },
});
