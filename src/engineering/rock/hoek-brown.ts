import { defineFormula } from '../formula.ts';
import { input, rockStrength } from '../quantities.ts';

const gsi = input('GSI', 'geological strength index', '', 10, 100);
const disturbance = input('D', 'disturbance', '', 0, 1);
const intact = input('m_i', 'constant of the intact rock', '', 4, 40);

const sOf = (i: { gsi: number; disturbance: number }) => Math.exp((i.gsi - 100) / (9 - 3 * i.disturbance));
const aOf = (i: { gsi: number }) => 0.5 + (Math.exp(-i.gsi / 15) - Math.exp(-20 / 3)) / 6;
const mOf = (i: { gsi: number; disturbance: number; intact: number }) =>
  i.intact * Math.exp((i.gsi - 100) / (28 - 14 * i.disturbance));

/**
 * Hoek-Brown constant of the mass: m_b = m_i·exp((GSI−100)/(28−14D)).
 * Source: Hoek, Carranza-Torres and Corkum (2002). Worked: m_i 10, GSI 45, D 0 → 1.403.
 */
export const hoekBrownM = defineFormula({
  id: 'hoek-brown-m',
  title: 'Hoek-Brown constant m of the rock mass',
  symbols: 'm_b = m_i·exp((GSI−100)/(28−14D))',
  source: 'hoek-brown-2002',
  clause: 'generalised criterion',
  inputs: { gsi, disturbance, intact },
  unit: '',
  kind: 'plain',
  compute: mOf,
});

/**
 * Hoek-Brown constant s = exp((GSI−100)/(9−3D)).
 * Source: Hoek, Carranza-Torres and Corkum (2002). Worked: GSI 45, D 0 → 0.002218.
 */
export const hoekBrownS = defineFormula({
  id: 'hoek-brown-s',
  title: 'Hoek-Brown constant s of the rock mass',
  symbols: 's = exp((GSI−100)/(9−3D))',
  source: 'hoek-brown-2002',
  clause: 'generalised criterion',
  inputs: { gsi, disturbance },
  unit: '',
  kind: 'plain',
  compute: sOf,
});

/**
 * Hoek-Brown exponent a = ½ + (e^(−GSI/15) − e^(−20/3))/6.
 * Source: Hoek, Carranza-Torres and Corkum (2002). Worked: GSI 45 → 0.5081.
 */
export const hoekBrownA = defineFormula({
  id: 'hoek-brown-a',
  title: 'Hoek-Brown exponent a of the rock mass',
  symbols: 'a = ½ + (e^(−GSI/15) − e^(−20/3))/6',
  source: 'hoek-brown-2002',
  clause: 'generalised criterion',
  inputs: { gsi },
  unit: '',
  kind: 'plain',
  compute: aOf,
});

/**
 * Compressive strength of the mass: σ_c,m = σ_ci·s^a; MPa.
 * Source: Hoek, Carranza-Torres and Corkum (2002). Worked: 50 MPa, GSI 45, D 0 → 2.241 MPa.
 */
export const rockMassStrength = defineFormula({
  id: 'rock-mass-strength',
  title: 'Compressive strength of the rock mass',
  symbols: 'σ_c,m = σ_ci·s^a',
  source: 'hoek-brown-2002',
  clause: 'generalised criterion',
  inputs: { rockStrength, gsi, disturbance },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => i.rockStrength * sOf(i) ** aOf(i),
});

/**
 * Tensile strength of the mass: σ_t,m = s·σ_ci/m_b (as a positive number); MPa.
 * Source: Hoek, Carranza-Torres and Corkum (2002). Worked: 50 MPa, m_i 10, GSI 45, D 0 → 0.07907 MPa.
 */
export const rockMassTension = defineFormula({
  id: 'rock-mass-tension',
  title: 'Tensile strength of the rock mass',
  symbols: 'σ_t,m = s·σ_ci/m_b',
  source: 'hoek-brown-2002',
  clause: 'generalised criterion',
  inputs: { rockStrength, gsi, disturbance, intact },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => (sOf(i) * i.rockStrength) / mOf(i),
});

/**
 * Joint factor for the rock cone: J = √(s^a) at D 0, since the cone goes with the root of strength.
 * Anchors are smaller than most joint spacings: judge the circle of twice the depth around the bolt, not the cliff.
 * Source: common practice on Hoek, Carranza-Torres and Corkum (2002). Worked: GSI 70 → 0.4336.
 */
export const jointFactor = defineFormula({
  id: 'joint-factor',
  title: 'Joint factor of the rock cone',
  symbols: 'J = √(s^a)',
  source: 'practice',
  clause: 'root of the Hoek-Brown strength ratio',
  inputs: { gsi },
  unit: '',
  kind: 'plain',
  compute: (i) => Math.sqrt(sOf({ ...i, disturbance: 0 }) ** aOf(i)),
});
