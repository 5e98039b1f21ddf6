import { defineFormula } from '../formula.ts';
import {
  bondStress,
  creditedStrength,
  diameter,
  edge,
  edgeAcross,
  embedment,
  input,
  rockStrength,
  spacing,
} from '../quantities.ts';

const criticalSpacing = input('s_cr,Np', 'critical spacing of the bond', 'mm', 10, 3000);

/**
 * Spacing from which two bonded anchors no longer share: s_cr,Np = 7.3·d·√τ ≤ 3·h_ef; mm, MPa (bond in
 * uncracked base material). Source: EN 1992-4:2018 Eq. (7.15); EOTA TR 029 20·d·√(τ/7.5) is the same.
 * Worked: d 12, τ 10, h 100 → 277.0 mm; τ 15, h 70 → 210 (capped).
 */
export const bondCriticalSpacing = defineFormula({
  id: 'bond-critical-spacing',
  title: 'Critical spacing of bonded anchors',
  symbols: 's_cr,Np = 7.3·d·√τ ≤ 3·h_ef',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.15)',
  inputs: { diameter, bondStress, embedment },
  unit: 'mm',
  kind: 'plain',
  compute: (i) => Math.min(7.3 * i.diameter * Math.sqrt(i.bondStress), 3 * i.embedment),
});

/**
 * Edge factor of bond: ψ_s,Np = 0.7 + 0.3·c/c_cr,Np ≤ 1, c_cr,Np = s_cr,Np/2; mm.
 * Source: EN 1992-4:2018 Eq. (7.20). Worked: c 80, s_cr 277.0 → 0.8733.
 */
export const bondEdgeFactor = defineFormula({
  id: 'bond-edge-factor',
  title: 'Edge factor of bond',
  symbols: 'ψ_s,Np = 0.7 + 0.3·c/(s_cr,Np/2) ≤ 1',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.20)',
  inputs: { edge, criticalSpacing },
  unit: '',
  kind: 'plain',
  compute: (i) => Math.min(1, 0.7 + (0.6 * i.edge) / i.criticalSpacing),
});

/**
 * Share of the influence area of bond: A_p,N/A0_p,N with A0 = s_cr,Np²; one anchor or a pair s apart, edges c
 * and c2 as for the cone; mm.
 * Source: EN 1992-4:2018, 7.2.1.6 (3), Eq. (7.13). Worked: c 80, s_cr 277.0 → 0.7888; pair s 50, s_cr 206.5 → 1.242.
 */
export const bondAreaRatio = defineFormula({
  id: 'bond-area-ratio',
  title: 'Share of the influence area of bond',
  symbols: 'A/A0 = (min(c,s_cr/2)+s_cr/2)·(min(c2,s_cr/2)+min(s,s_cr)+s_cr/2)/s_cr²',
  source: 'en-1992-4-2018',
  clause: '7.2.1.6, Eq. (7.13)',
  inputs: { criticalSpacing, edge, edgeAcross, spacing },
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const half = i.criticalSpacing / 2;
    const beside = Math.min(i.edge, half) + half;
    const across = Math.min(i.edgeAcross, half) + Math.min(i.spacing, i.criticalSpacing) + half;
    return (beside * across) / i.criticalSpacing ** 2;
  },
});

/**
 * Bond stress above which the cone breaks first: τ_Rk,c = k3/(π·d)·√(h_ef·f). k3 7.7 cracked, 11.0 uncracked;
 * f strength of the base material MPa, credited up to 60; mm; MPa.
 * Source: EN 1992-4:2018 Eq. (7.19). Worked: 11, d 12, h 100, f 20 → 13.05 MPa.
 */
export const coneLimitedBondStress = defineFormula({
  id: 'cone-limited-bond-stress',
  title: 'Bond stress at which the cone breaks first',
  symbols: 'τ_Rk,c = k3/(π·d)·√(h_ef·f)',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.19)',
  inputs: {
    factor: input('k3', 'factor of the method', '', 7.7, 11),
    diameter,
    embedment,
    strength: rockStrength,
  },
  unit: 'MPa',
  kind: 'characteristic',
  compute: (i) =>
    (i.factor / (Math.PI * i.diameter)) * Math.sqrt(i.embedment * Math.min(i.strength, creditedStrength)),
});

/**
 * Gain of a close group over the area rule, at spacing 0: ψ0_g,Np = √n − (√n − 1)·(τ/τ_c)^1.5 ≥ 1.
 * n anchors or legs, τ and τ_c MPa. Source: EN 1992-4:2018 Eq. (7.18). Worked: n 4, τ 5, τ_c 13.05 → 1.763.
 */
export const groupFactorAtZeroSpacing = defineFormula({
  id: 'bond-group-factor-zero',
  title: 'Group factor of bond at zero spacing',
  symbols: 'ψ0_g,Np = √n − (√n−1)·(τ/τ_c)^1.5 ≥ 1',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.18)',
  inputs: {
    count: input('n', 'number of anchors in the group', '', 1, 9),
    bondStress,
    coneStress: { ...bondStress, symbol: 'τ_c', words: 'bond stress at which the cone breaks' },
  },
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const root = Math.sqrt(i.count);
    return Math.max(1, root - (root - 1) * (i.bondStress / i.coneStress) ** 1.5);
  },
});

/**
 * Group factor of bond: ψ_g,Np = ψ0 − √(s/s_cr,Np)·(ψ0 − 1) ≥ 1; mm.
 * Source: EN 1992-4:2018 Eq. (7.17). Worked: ψ0 1.763, s 100, s_cr 195.9 → 1.218.
 */
export const groupFactor = defineFormula({
  id: 'bond-group-factor',
  title: 'Group factor of bond',
  symbols: 'ψ_g,Np = ψ0 − √(s/s_cr,Np)·(ψ0 − 1) ≥ 1',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.17)',
  inputs: {
    zeroSpacingFactor: input('ψ0_g', 'group factor at zero spacing', '', 1, 3),
    spacing,
    criticalSpacing,
  },
  unit: '',
  kind: 'plain',
  compute: (i) =>
    Math.max(1, i.zeroSpacingFactor - Math.sqrt(i.spacing / i.criticalSpacing) * (i.zeroSpacingFactor - 1)),
});

/**
 * Critical edge distance of bond in US practice, SI form: c_Na = 10·d·√(τ_uncr/7.6); mm, MPa.
 * Source: ACI 318-19 17.6.5.1.2. Worked: d 12, τ 10 → 137.6 mm.
 */
export const aciCriticalBondEdge = defineFormula({
  id: 'aci-critical-bond-edge',
  title: 'Critical edge distance of bond (US)',
  symbols: 'c_Na = 10·d·√(τ_uncr/7.6)',
  source: 'aci-318-19',
  clause: '17.6.5.1.2',
  inputs: { diameter, bondStress },
  unit: 'mm',
  kind: 'plain',
  compute: (i) => 10 * i.diameter * Math.sqrt(i.bondStress / 7.6),
});
