import { defineFormula } from '../formula.ts';
import {
  creditedStrength,
  cylinderStrength,
  diameter,
  edge,
  edgeAcross,
  embedment,
  fraction,
  input,
  rockStrength,
} from '../quantities.ts';

const edgeInLoad = { ...edge, symbol: 'c1', words: 'edge distance in the direction of the load', min: 20 };
const shortEnough = {
  ...input('h_ef/d', 'ratio of embedment depth to rod diameter', '', 1, 20),
  of: (i: { embedment: number; diameter: number }) => i.embedment / i.diameter,
};

function edgeBreakout(
  k9: number,
  i: { diameter: number; embedment: number; strength: number; edgeInLoad: number },
): number {
  const length = Math.min(i.embedment, 12 * i.diameter);
  const alpha = 0.1 * Math.sqrt(length / i.edgeInLoad);
  const beta = 0.1 * (i.diameter / i.edgeInLoad) ** 0.2;
  return (k9 * i.diameter ** alpha * length ** beta * Math.sqrt(i.strength) * i.edgeInLoad ** 1.5) / 1000;
}

/**
 * Breakout of a concrete edge under shear towards it, characteristic, one anchor with nothing else near:
 * V0 = k9·d^α·l_f^β·√f_ck·c1^1.5, α = 0.1·(l_f/c1)^0.5, β = 0.1·(d/c1)^0.2, l_f = min(h_ef, 12·d).
 * k9 1.7 cracked, 2.4 uncracked; d ≤ 24 mm for this l_f; mm, MPa; kN.
 * Source: EN 1992-4:2018 Eq. (7.41)-(7.43) (from memory). Worked: 2.4, d 12, h 100, f 20, c1 100 → 18.60 kN.
 */
export const concreteEdgeShear = defineFormula({
  id: 'concrete-edge-shear',
  title: 'Concrete edge breakout (characteristic)',
  symbols: 'V0 = k9·d^α·l_f^β·√f_ck·c1^1.5',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.41)',
  inputs: {
    edgeFactor: input('k9', 'edge factor', '', 1.7, 2.4),
    diameter: { ...diameter, max: 24 },
    embedment,
    strength: cylinderStrength,
    edgeInLoad,
  },
  derived: [shortEnough],
  unit: 'kN',
  kind: 'characteristic',
  compute: (i) => edgeBreakout(i.edgeFactor, i),
});

/**
 * Breakout of a rock edge, mean, own screening form: the concrete form with k9·9.0/11.0 = 1.96 (the reduction
 * that the rock cone has against its concrete form), UCS credited up to 60 MPa, times the joint factor J.
 * Source: common practice, no source; low trust: a pull test decides.
 * Worked: d 12, h 100, UCS 20, J 1, c1 100 → 15.22 kN.
 */
export const rockEdgeShearMean = defineFormula({
  id: 'rock-edge-shear-mean',
  title: 'Rock edge breakout (mean, screening)',
  symbols: 'V0 = 1.96·J·d^α·l_f^β·√min(UCS, 60)·c1^1.5',
  source: 'practice',
  clause: 'own screening form after EN 1992-4 Eq. (7.41)',
  inputs: {
    diameter: { ...diameter, max: 24 },
    embedment,
    rockStrength,
    jointFactor: fraction('J', 'joint factor'),
    edgeInLoad,
  },
  derived: [shortEnough],
  unit: 'kN',
  kind: 'mean',
  compute: (i) =>
    i.jointFactor *
    edgeBreakout((2.4 * 9.0) / 11.0, { ...i, strength: Math.min(i.rockStrength, creditedStrength) }),
});

/**
 * Factors on V0 for a second edge, a thin member, a load off the normal of the edge:
 * A/A0 = (1.5c1 + min(c2, 1.5c1))·min(h, 1.5c1)/(4.5·c1²); ψ_s = 0.7 + 0.3·c2/(1.5c1) ≤ 1;
 * ψ_h = √(1.5c1/h) ≥ 1; ψ_α = (cos²α + (0.5·sin α)²)^−½ (1 towards the edge, 2 along it). mm, degrees.
 * Source: EN 1992-4:2018 Eq. (7.44)-(7.48) (from memory). Worked: c1 150, c2 120, h 150, 45° → 0.6809.
 */
export const edgeShearFactor = defineFormula({
  id: 'edge-shear-factor',
  title: 'Influence of second edge, thickness and direction on edge breakout',
  symbols: 'A/A0·ψ_s,V·ψ_h,V·ψ_α,V',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.44)-(7.48)',
  inputs: {
    edgeInLoad,
    edgeAcross,
    thickness: input('h', 'thickness of the member', 'mm', 40, 100_000),
    angle: input('α', 'angle of the load from the normal of the edge', '°', 0, 90),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const reach = 1.5 * i.edgeInLoad;
    const area =
      ((reach + Math.min(i.edgeAcross, reach)) * Math.min(i.thickness, reach)) / (2 * reach * reach);
    const corner = Math.min(1, 0.7 + (0.3 * i.edgeAcross) / reach);
    const thin = Math.max(1, Math.sqrt(reach / i.thickness));
    const a = (i.angle * Math.PI) / 180;
    const direction = 1 / Math.sqrt(Math.cos(a) ** 2 + (0.5 * Math.sin(a)) ** 2);
    return area * corner * thin * direction;
  },
});

/**
 * Edge breakout in US units, characteristic, cracked: V_b = min(7·(l_e/d)^0.2·√d·√f'c·c1^1.5, 9·√f'c·c1^1.5),
 * l_e = min(h_ef, 8d); in, psi; lbf. Source: ACI 318-19 17.7.2.2.1.
 * Worked: h 4, d 0.5, f'c 4000, c1 4 → 3796 lbf.
 */
export const aciEdgeShear = defineFormula({
  id: 'aci-edge-shear',
  title: 'Concrete edge breakout in US units (characteristic)',
  symbols: "V_b = min(7·(l_e/d)^0.2·√d, 9)·√f'c·c1^1.5",
  source: 'aci-318-19',
  clause: '17.7.2.2.1',
  inputs: {
    diameter: input('d_a', 'diameter of the rod', 'in', 0.25, 2),
    embedment: input('h_ef', 'embedment depth', 'in', 1.5, 25),
    strength: input("f'c", 'concrete strength', 'psi', 2500, 10_000),
    edgeInLoad: input('c_a1', 'edge distance in the direction of the load', 'in', 1, 100),
  },
  unit: 'lbf',
  kind: 'characteristic',
  compute: (i) => {
    const bearing = Math.min(i.embedment, 8 * i.diameter);
    const factor = Math.min(7 * (bearing / i.diameter) ** 0.2 * Math.sqrt(i.diameter), 9);
    return factor * Math.sqrt(i.strength) * i.edgeInLoad ** 1.5;
  },
});
