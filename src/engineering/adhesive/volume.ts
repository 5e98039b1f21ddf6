import { defineFormula } from '../formula.ts';
import { diameter, embedment, fraction, holeDiameter, input } from '../quantities.ts';

/**
 * Adhesive between rod and hole: V = π/4·(d0² − d²)·h; mm; millilitres. Voids and waste come on top.
 * Source: geometry. Worked: d0 14, d 12, h 100 → 4.084 ml.
 */
export const annulusVolume = defineFormula({
  id: 'annulus-volume',
  title: 'Adhesive between rod and hole',
  symbols: 'V = π/4·(d0² − d²)·h',
  source: 'practice',
  clause: 'geometry',
  inputs: { holeDiameter, diameter, embedment },
  derived: [
    {
      ...input('d0−d', 'hole diameter less rod diameter', 'mm', 0.1, 30),
      of: (i) => i.holeDiameter - i.diameter,
    },
  ],
  unit: 'ml',
  kind: 'plain',
  compute: (i) => ((Math.PI / 4) * (i.holeDiameter ** 2 - i.diameter ** 2) * i.embedment) / 1000,
});

/** Share lost to overfill, voids and drips when nobody said otherwise (common practice 20 to 30 %). */
export const usualWaste = 0.25;

/**
 * Cartridges for a job: ⌈n·V·(1+w)/(C − z)⌉, n holes, V ml a hole, w waste share, C content of a cartridge ml,
 * z ml pumped away at each cartridge until the colour is even. Two legs are two holes.
 * Source: common practice. Worked: 40 holes of 4.084 ml, w 0.25, C 300, z 20 → 1.
 */
export const cartridgesNeeded = defineFormula({
  id: 'cartridges-needed',
  title: 'Cartridges for a job',
  symbols: '⌈n·V·(1+w)/(C − z)⌉',
  source: 'practice',
  clause: 'amount of adhesive',
  inputs: {
    holes: input('n', 'number of holes', '', 1, 10_000),
    volume: input('V', 'adhesive for one hole', 'ml', 0.1, 5000),
    waste: fraction('w', 'share of waste'),
    cartridge: input('C', 'content of a cartridge', 'ml', 10, 2000),
    nozzleLoss: input('z', 'adhesive pumped away at each cartridge', 'ml', 0, 200),
  },
  derived: [
    {
      ...input('C−z', 'usable content of a cartridge', 'ml', 5, 2000),
      of: (i) => i.cartridge - i.nozzleLoss,
    },
  ],
  unit: '',
  kind: 'plain',
  compute: (i) => Math.ceil((i.holes * i.volume * (1 + i.waste)) / (i.cartridge - i.nozzleLoss) - 1e-9),
});
