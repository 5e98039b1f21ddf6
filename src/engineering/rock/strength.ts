import { defineFormula } from '../formula.ts';
import { embedment, input, rockStrength } from '../quantities.ts';

/**
 * Compressive strength from the point load index: UCS = 24·I_s50 (14 for soft rock, below 20 MPa); MPa.
 * Source: ISRM suggested method for point load strength (24 from memory; 14 read). Worked: 2.5, 24 → 60 MPa.
 */
export const pointLoadStrength = defineFormula({
  id: 'point-load-strength',
  title: 'Compressive strength from the point load index',
  symbols: 'UCS = k·I_s50',
  source: 'isrm-grades',
  clause: 'point load strength',
  inputs: {
    index: input('I_s50', 'point load index', 'MPa', 0.05, 15),
    factor: input('k', 'conversion factor', '', 10, 30),
  },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => i.factor * i.index,
});

/**
 * Strength when wet: UCS_wet = f_w·UCS_dry. f_w is the share that is left: 35 sandstones kept 0.92 (siliceous) to 0.22
 * (clay-rich); MPa. Source: QJEGH 25 (1992) 115. Worked: 60, 0.22 → 13.20 MPa.
 */
export const wetStrength = defineFormula({
  id: 'wet-strength',
  title: 'Compressive strength of wet rock',
  symbols: 'UCS_wet = f_w·UCS_dry',
  source: 'sandstone-water-1992',
  clause: 'loss of strength on saturation',
  inputs: { rockStrength, left: input('f_w', 'share of the strength that is left', '', 0.1, 1) },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => i.left * i.rockStrength,
});

/**
 * Ultimate bond of cement grout in massive rock: τ = UCS/10, at most 4.2 MPa; working bond a third; MPa.
 * Source: rock anchor review of 1975-76 taken up in BS 8081 (from memory). Worked: UCS 100 → 4.2 MPa.
 */
export const groutBond = defineFormula({
  id: 'grout-bond',
  title: 'Ultimate bond of grout in massive rock',
  symbols: 'τ = UCS/10 ≤ 4.2',
  source: 'rock-anchor-review-1976',
  clause: 'rock to grout bond',
  inputs: { rockStrength },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => Math.min(i.rockStrength / 10, 4.2),
});

/**
 * Side resistance of a socket: τ = C·√(UCS·p_a), p_a 0.101325 MPa; C 1.0 mean, 0.63 lower bound; large sockets; MPa.
 * Source: ARMA/USRMS 05-767 (2005) (coefficients from memory). Worked: C 0.63, UCS 100 → 2.005 MPa.
 */
export const socketBond = defineFormula({
  id: 'socket-bond',
  title: 'Side resistance of a rock socket',
  symbols: 'τ = C·√(UCS·p_a)',
  source: 'usrms-05-767',
  clause: 'side resistance',
  inputs: { rockStrength, coefficient: input('C', 'coefficient', '', 0.5, 1.5) },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => i.coefficient * Math.sqrt(i.rockStrength * 0.101325),
});

/**
 * Cone breakout by fracture: N = 2.1·K_Ic·h^1.5, K_Ic toughness MPa·√m (× 31.62 N/mm^1.5), h mm; kN. A cross-check of
 * the square-root form, not a design value.
 * Source: linear fracture mechanics of headed anchors (from memory). Worked: K 1.0, h 80 → 47.52 kN.
 */
export const fractureCone = defineFormula({
  id: 'fracture-cone',
  title: 'Cone breakout by fracture toughness (cross-check)',
  symbols: 'N = 2.1·K_Ic·h^1.5',
  source: 'practice',
  clause: 'fracture mechanics of headed anchors',
  inputs: { toughness: input('K_Ic', 'fracture toughness', 'MPa·√m', 0.05, 5), embedment },
  unit: 'kN',
  kind: 'mean',
  compute: (i) => (2.1 * i.toughness * Math.sqrt(1000) * i.embedment ** 1.5) / 1000,
});

/**
 * Weight of a block or flake: G = l·b·t·ρ·9.80665; m, kg/m³; kN. A flake lighter than a fall comes off with the bolt.
 * Source: geometry. Worked: 1 × 1 × 0.2 m, 2700 → 5.296 kN.
 */
export const flakeWeight = defineFormula({
  id: 'flake-weight',
  title: 'Weight of a flake',
  symbols: 'G = l·b·t·ρ·g',
  source: 'practice',
  clause: 'geometry',
  inputs: {
    length: input('l', 'length', 'm', 0.01, 100),
    width: input('b', 'width', 'm', 0.01, 100),
    thickness: input('t', 'thickness', 'm', 0.005, 50),
    density: input('ρ', 'density', 'kg/m³', 1000, 3500),
  },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => (i.length * i.width * i.thickness * i.density * 9.80665) / 1000,
});
