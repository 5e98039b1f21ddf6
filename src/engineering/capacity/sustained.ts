import { defineFormula } from '../formula.ts';
import { fraction, input, resistance } from '../quantities.ts';

/**
 * Factor on bond for load that stays: ψ_sus = 1 while α_sus ≤ ψ0_sus, else ψ0_sus + 1 − α_sus.
 * α_sus sustained share of the action 0..1; ψ0_sus from the product's assessment, 0.6 when it is silent.
 * Source: EN 1992-4:2018 Eq. (7.14a), (7.14b). Worked: α 0.8, ψ0 0.6 → 0.8.
 */
export const sustainedFactor = defineFormula({
  id: 'sustained-factor',
  title: 'Reduction of bond under load that stays',
  symbols: 'ψ_sus = 1 if α_sus ≤ ψ0_sus, else ψ0_sus + 1 − α_sus',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.14a), (7.14b)',
  inputs: {
    sustainedShare: fraction('α_sus', 'share of the load that stays'),
    assessedFactor: input('ψ0_sus', 'assessed factor for sustained load', '', 0.1, 1),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => (i.sustainedShare <= i.assessedFactor ? 1 : i.assessedFactor + 1 - i.sustainedShare),
});

/**
 * Sustained tension a bonded anchor may carry in US practice: N_sus = 0.55·φ·N_ba. φ strength reduction
 * factor, N_ba characteristic bond resistance kN; a design value in kN.
 * Source: ACI 318-19 Eq. 17.5.2.2. Worked: φ 0.65, N_ba 16.90 → 6.041 kN.
 */
export const aciSustainedDesign = defineFormula({
  id: 'aci-sustained-design',
  title: 'Sustained tension allowed by bond',
  symbols: 'N_sus = 0.55·φ·N_ba',
  source: 'aci-318-19',
  clause: '17.5.2.2',
  inputs: { reduction: fraction('φ', 'strength reduction factor'), bondResistance: resistance },
  unit: 'kN',
  kind: 'design',
  compute: (i) => 0.55 * i.reduction * i.bondResistance,
});
