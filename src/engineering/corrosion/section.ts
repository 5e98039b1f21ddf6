import { defineFormula } from '../formula.ts';
import { diameter, input } from '../quantities.ts';

/**
 * Section left of a round bar that lost D all round: A/A0 = ((d − 2·D/1000)/d)²; d mm, D µm.
 * Even loss only: pits under a hanger run 2 to 5 times deeper, and cracking needs no loss at all, so this is
 * the best case. Errors: OutOfRange when nothing would be left. Source: geometry.
 * Worked: d 10, D 521.4 → 0.8023.
 */
export const remainingSection = defineFormula({
  id: 'remaining-section',
  title: 'Section left after even corrosion (best case)',
  symbols: 'A/A0 = ((d − 2·D)/d)²',
  source: 'practice',
  clause: 'geometry',
  inputs: { diameter, loss: input('D', 'loss all round', 'µm', 0, 25_000) },
  derived: [
    { ...input('d−2D', 'diameter that is left', 'mm', 0, 50), of: (i) => i.diameter - (2 * i.loss) / 1000 },
  ],
  unit: '',
  kind: 'plain',
  compute: (i) => ((i.diameter - (2 * i.loss) / 1000) / i.diameter) ** 2,
});
