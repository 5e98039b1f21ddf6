import { defineFormula } from '../formula.ts';
import {
  coneDepth,
  creditedStrength,
  cubeStrength,
  cylinderStrength,
  fraction,
  input,
  rockStrength,
} from '../quantities.ts';

export type ConeFastener = 'post-installed' | 'cast-in';

/**
 * k1 of EN 1992-4:2018, 7.2.1.4 (2): 7.7 cracked and 11.0 uncracked for post-installed fasteners, 8.9 and
 * 12.7 for cast-in headed ones. A public table has the two swapped; drilled anchors take the lower pair.
 */
export function coneFactor(fastener: ConeFastener, cracked: boolean): number {
  if (fastener === 'post-installed') return cracked ? 7.7 : 11.0;
  return cracked ? 8.9 : 12.7;
}

/**
 * Breakout of a concrete cone, characteristic: N0_Rk,c = k1·√f_ck·h_ef^1.5. f_ck cylinder MPa, h_ef mm;
 * kN. Strength above 60 MPa is not credited by the callers that use rock; the standard itself ends at 90.
 * Source: EN 1992-4:2018 Eq. (7.2). Worked: k1 11, f_ck 20, h 70 → 28.81 kN.
 */
export const concreteConeCharacteristic = defineFormula({
  id: 'concrete-cone-characteristic',
  title: 'Concrete cone breakout (characteristic)',
  symbols: 'N = k1·√f_ck·h_ef^1.5',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.2)',
  inputs: {
    coneFactor: input('k1', 'cone factor', '', 7.7, 12.7),
    strength: cylinderStrength,
    embedment: coneDepth,
  },
  unit: 'kN',
  kind: 'characteristic',
  compute: (i) => (i.coneFactor * Math.sqrt(i.strength) * i.embedment ** 1.5) / 1000,
});

/**
 * Breakout of a concrete cone, mean of the tests behind the method: N = k·√f_cube·h_ef^1.5, k 13.5
 * post-installed, 15.5 headed; 200 mm cube MPa, mm; kN.
 * Source: ACI Structural Journal 92 (1995) 73-94 (CCD method). Worked: 13.5, cube 25, h 70 → 39.53 kN.
 */
export const concreteConeMean = defineFormula({
  id: 'concrete-cone-mean',
  title: 'Concrete cone breakout (mean)',
  symbols: 'N = k·√f_cube·h_ef^1.5',
  source: 'ccd-1995',
  clause: 'uncracked, single anchor',
  inputs: {
    coneFactor: input('k', 'cone factor', '', 13.5, 15.5),
    strength: cubeStrength,
    embedment: coneDepth,
  },
  unit: 'kN',
  kind: 'mean',
  compute: (i) => (i.coneFactor * Math.sqrt(i.strength) * i.embedment ** 1.5) / 1000,
});

/**
 * The cone in the cube-strength form of the guideline for bonded anchors, characteristic:
 * N = k·√f_ck,cube·h_ef^1.5 with k 7.2 cracked, 10.1 uncracked; MPa, mm; kN.
 * Source: EOTA TR 029 (2007, am. 2010) 5.2.2.4. Worked: 7.2, cube 25, h 70 → 21.08 kN.
 */
export const bondedConeCharacteristic = defineFormula({
  id: 'bonded-cone-characteristic',
  title: 'Concrete cone of a bonded anchor, cube strength (characteristic)',
  symbols: 'N = k·√f_ck,cube·h_ef^1.5',
  source: 'eota-tr-029',
  clause: '5.2.2.4',
  inputs: {
    coneFactor: input('k', 'cone factor', '', 7.2, 10.1),
    strength: cubeStrength,
    embedment: coneDepth,
  },
  unit: 'kN',
  kind: 'characteristic',
  compute: (i) => (i.coneFactor * Math.sqrt(i.strength) * i.embedment ** 1.5) / 1000,
});

/**
 * The cone in US units, characteristic, cracked: N_b = k_c·√f'c·h_ef^1.5 in lbf, psi, in; k_c 17
 * post-installed, 24 cast-in (also the ceiling for a tested product).
 * Source: ACI 318-19 17.6.2.2.1. Worked: 17, 4000 psi, 2.75 in → 4903 lbf.
 */
export const aciConeCharacteristic = defineFormula({
  id: 'aci-cone-characteristic',
  title: 'Concrete cone in US units (characteristic)',
  symbols: "N_b = k_c·√f'c·h_ef^1.5",
  source: 'aci-318-19',
  clause: '17.6.2.2.1',
  inputs: {
    coneFactor: input('k_c', 'cone factor', '', 17, 24),
    strength: input("f'c", 'concrete strength', 'psi', 2500, 10_000),
    embedment: input('h_ef', 'embedment depth', 'in', 1.5, 25),
  },
  unit: 'lbf',
  kind: 'characteristic',
  compute: (i) => i.coneFactor * Math.sqrt(i.strength) * i.embedment ** 1.5,
});

/**
 * Cone breakout in rock, mean, our own screening form: N = 9.0·J·√min(UCS, 60)·h_ef^1.5. UCS of the rock as
 * it is (wet if wet) MPa, h_ef mm, J joint factor 0..1 (1 no visible joint); kN.
 * 9.0 against 14.7 for the mean in concrete and the cap at 60 MPa because rock is more brittle than
 * concrete of the same strength, and its cracks are unseen. No code covers rock: a pull test decides.
 * Source: common practice, no source; low trust. Worked: J 1, UCS 150, h 90 → 59.52 kN.
 */
export const rockConeMean = defineFormula({
  id: 'rock-cone-mean',
  title: 'Rock cone breakout (mean, screening)',
  symbols: 'N = 9.0·J·√min(UCS, 60)·h_ef^1.5',
  source: 'practice',
  clause: 'own screening form after EN 1992-4 Eq. (7.2)',
  inputs: { rockStrength, embedment: coneDepth, jointFactor: fraction('J', 'joint factor') },
  unit: 'kN',
  kind: 'mean',
  compute: (i) =>
    (9.0 * i.jointFactor * Math.sqrt(Math.min(i.rockStrength, creditedStrength)) * i.embedment ** 1.5) / 1000,
});
