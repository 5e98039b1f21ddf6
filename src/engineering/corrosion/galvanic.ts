import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

const potential = (symbol: string, words: string) => input(symbol, words, 'V', -2, 1);

/**
 * Potential difference of two metals in contact: ΔE = |E1 − E2|; potentials against one electrode in one water, V.
 * Source: ASTM G82 (from memory). Worked: −1.00 and −0.05 → 0.95 V.
 */
export const potentialDifference = defineFormula({
  id: 'potential-difference',
  title: 'Potential difference of two metals',
  symbols: 'ΔE = |E1 − E2|',
  source: 'astm-g82',
  clause: 'galvanic series',
  inputs: {
    first: potential('E1', 'potential of the first metal'),
    second: potential('E2', 'potential of the second metal'),
  },
  unit: 'V',
  kind: 'plain',
  compute: (i) => Math.abs(i.first - i.second),
});

/**
 * How much faster the less noble metal goes: i_a = i_c·A_c/A_a; i_c cathodic current density (any unit), areas in one
 * unit. A small bolt in a big noble hanger is the bad case. Source: ASTM G82 (from memory).
 * Worked: i_c 0.1, areas 40 to 1 → 4.000.
 */
export const anodeCurrent = defineFormula({
  id: 'anode-current',
  title: 'Current density on the less noble part',
  symbols: 'i_a = i_c·A_c/A_a',
  source: 'astm-g82',
  clause: 'area ratio',
  inputs: {
    cathodeCurrent: input('i_c', 'current density on the nobler part', 'A/m²', 0, 100),
    cathodeArea: input('A_c', 'wetted area of the nobler part', 'cm²', 0.01, 100_000),
    anodeArea: input('A_a', 'wetted area of the less noble part', 'cm²', 0.01, 100_000),
  },
  unit: 'A/m²',
  kind: 'plain',
  compute: (i) => (i.cathodeCurrent * i.cathodeArea) / i.anodeArea,
});

export type GalvanicSite = 'marine' | 'outdoor' | 'indoor';

/** Largest potential difference for parts that stay in contact, V (common practice; the indoor figure from memory). */
export const galvanicLimits: Readonly<Record<GalvanicSite, number>> = {
  marine: 0.15,
  outdoor: 0.25,
  indoor: 0.5,
};

/** Whether two metals may stay in contact at a site. Common practice. Worked: 0.95 V outdoors → false. */
export function galvanicallyCompatible(differenceV: number, site: GalvanicSite): boolean {
  return differenceV >= 0 && differenceV <= galvanicLimits[site];
}
