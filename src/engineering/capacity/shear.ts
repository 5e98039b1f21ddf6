import { defineFormula, defineStrengthPair } from '../formula.ts';
import { diameter, embedment, input, resistance, rockStrength, yieldStrength } from '../quantities.ts';

/**
 * Pry-out: V_cp = k8·N, k8 1 for h_ef < 60 mm, 2 from 60 mm; N the smallest of cone and bond resistance of the
 * same kind (mean or characteristic) kN; kN.
 * Source: EN 1992-4:2018 Eq. (7.39); the 60 mm step is the habit of the assessments (from memory).
 * Worked: N 22.86, h 60 → 45.72 kN; N 17.39, h 50 → 17.39 kN.
 */
export const pryOut = defineStrengthPair({
  id: 'pry-out',
  title: 'Pry-out under shear',
  symbols: 'V_cp = k8·N, k8 = 1 (h_ef < 60) or 2',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.39)',
  inputs: { pullOut: { ...resistance, symbol: 'N', words: 'pull-out resistance' }, embedment },
  unit: 'kN',
  compute: (i) => (i.embedment < 60 ? 1 : 2) * i.pullOut,
});

/**
 * Radial load on a rod in soft base material, mean-type: the wall crushes under a rod that bends,
 * V = 1.3·d²·(√(1+(1.3ε)²) − 1.3ε)·√(f_c·f_y·(1−ζ²)), ε = 3·(e/d)·√(f_c/f_y), ζ = axial stress/f_y.
 * d rod mm, f_c strength of the base material MPa, f_y yield MPa, e distance of the load from sound rock mm; kN.
 * From dowels in reinforced concrete; away from edges only, movement 0.1 to 0.3 d. Rock around a hole bears
 * more than its compressive strength, so this errs to the safe side there.
 * Source: CEB-FIP Model Code 1990, 3.10 (from memory). Worked: d 12, f_c 20, f_y 400, e 0, ζ 0 → 16.74 kN.
 */
export const dowelShearMean = defineFormula({
  id: 'dowel-shear-mean',
  title: 'Radial resistance of a rod in soft rock (mean)',
  symbols: 'V = 1.3·d²·(√(1+(1.3ε)²)−1.3ε)·√(f_c·f_y·(1−ζ²))',
  source: 'ceb-fip-mc90',
  clause: '3.10',
  inputs: {
    diameter,
    rockStrength,
    yieldStrength,
    standOff: input('e', 'distance of the load from sound rock', 'mm', 0, 200),
    axialShare: input('ζ', 'axial stress over yield strength', '', 0, 0.99),
  },
  unit: 'kN',
  kind: 'mean',
  compute: (i) => {
    const x = 1.3 * 3 * (i.standOff / i.diameter) * Math.sqrt(i.rockStrength / i.yieldStrength);
    const crushing = Math.sqrt(i.rockStrength * i.yieldStrength * (1 - i.axialShare ** 2));
    return (1.3 * i.diameter ** 2 * (Math.sqrt(1 + x * x) - x) * crushing) / 1000;
  },
});
