import { defineFormula } from '../formula.ts';
import { bondStress, embedment, input, rockStrength } from '../quantities.ts';

/**
 * Depth that bears: h' = h − skin, the weathered skin of the rock taken off; mm.
 * Source: common practice, no source (at least 10 mm in soft rock). Worked: 100, skin 10 → 90 mm.
 */
export const effectiveDepth = defineFormula({
  id: 'effective-depth',
  title: 'Depth in sound rock',
  symbols: "h' = h − skin",
  source: 'practice',
  clause: 'weathered skin bears nothing',
  inputs: {
    embedment: { ...embedment, symbol: 'h', words: 'embedment depth from the face' },
    weatheredSkin: input('skin', 'depth of the weathered skin', 'mm', 0, 500),
  },
  derived: [
    { ...input("h'", 'depth in sound rock', 'mm', 20, 1000), of: (i) => i.embedment - i.weatheredSkin },
  ],
  unit: 'mm',
  kind: 'plain',
  compute: (i) => i.embedment - i.weatheredSkin,
});

/**
 * Bond at the rod as the hole is: τ = f·τ_a. τ_a mean bond of the adhesive in a clean dry hole MPa; f 0.7 damp or dirty
 * hole, 0.6 load that stays, both multiplied, never above 1; MPa.
 * Source: common practice, no source. Worked: 15, 0.7 → 10.50 MPa.
 */
export const adhesiveBond = defineFormula({
  id: 'adhesive-bond',
  title: 'Bond at the rod as the hole is (mean)',
  symbols: 'τ = f·τ_a',
  source: 'practice',
  clause: 'hole condition',
  inputs: {
    bondStress: { ...bondStress, symbol: 'τ_a', words: 'bond strength of the adhesive' },
    factor: input('f', 'factor for hole and lasting load', '', 0.1, 1),
  },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => i.factor * i.bondStress,
});

/**
 * Bond at the wall of the hole: τ_r = min(k_r·UCS, τ). k_r share of the compressive strength that a rough wall bears in
 * shear, 0.10 to 0.20 (0.15 usual); τ bond at the rod, which the wall cannot exceed; MPa.
 * Source: common practice on the shear strength of intact rock, 0.21 to 0.26 UCS, times an evenness of 0.5 to 0.7; low trust.
 * Worked: 10 MPa rock, k_r 0.15, τ 15 → 1.500 MPa.
 */
export const wallBond = defineFormula({
  id: 'wall-bond',
  title: 'Bond at the wall of the hole (mean, screening)',
  symbols: 'τ_r = min(k_r·UCS, τ)',
  source: 'practice',
  clause: 'share of the compressive strength',
  inputs: {
    rockStrength,
    share: input('k_r', 'share of the compressive strength', '', 0.1, 0.2),
    bondStress,
  },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => Math.min(i.share * i.rockStrength, i.bondStress),
});
