import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

/**
 * Pitting resistance equivalent: PREN = %Cr + 3.3·%Mo + 16·%N. Ranks pitting of stainless steel, not cracking;
 * says nothing for titanium. Source: ISO 15156-3 (from memory). Worked: 17.2, 2.1, 0.05 → 24.93.
 */
export const pittingEquivalent = defineFormula({
  id: 'pitting-equivalent',
  title: 'Pitting resistance equivalent',
  symbols: 'PREN = %Cr + 3.3·%Mo + 16·%N',
  source: 'iso-15156-3',
  clause: 'PREN',
  inputs: {
    chromium: input('Cr', 'chromium', '%', 10.5, 35),
    molybdenum: input('Mo', 'molybdenum', '%', 0, 10),
    nitrogen: input('N', 'nitrogen', '%', 0, 1),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => i.chromium + 3.3 * i.molybdenum + 16 * i.nitrogen,
});
