import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';
import { exponents, yearsToLoss } from './iso9224.ts';

/**
 * Life of a zinc coating to first maintenance, linear: t = x/r. x thickness µm, r first-year zinc loss µm/a; a.
 * Source: ISO 14713-1:2017, 6.2 (thickness over rate). Worked: 85 µm at 4.2 → 20.24 a.
 */
export const linearZincLife = defineFormula({
  id: 'linear-zinc-life',
  title: 'Life of a zinc coating (linear)',
  symbols: 't = x/r',
  source: 'iso-14713-1-2017',
  clause: 'thickness over rate',
  inputs: {
    thickness: input('x', 'zinc thickness', 'µm', 0.5, 250),
    firstYear: input('r', 'first-year loss of zinc', 'µm/a', 0.001, 200),
  },
  unit: 'a',
  kind: 'plain',
  compute: (i) => i.thickness / i.firstYear,
});

export interface ZincLife {
  readonly years: number;
  readonly linear: number;
  readonly upperCurve: number;
}

/**
 * Planning life of a zinc coating: the smaller of the linear rule and the B2 curve of ISO 9224; µm, µm/a; a.
 * The end of the zinc is the start of steel loss; under a hanger or in a wet cave it comes sooner.
 * Source: ISO 14713-1:2017 and ISO 9224:2012. Worked: 5 µm at 8.4 µm/a → 0.5520 a.
 */
export function zincLife(thickness: number, firstYear: number): ZincLife {
  const linear = linearZincLife({ thickness, firstYear }).value;
  const upperCurve = yearsToLoss({ loss: thickness, firstYear, exponent: exponents.zinc.B2 }).value;
  return { years: Math.min(linear, upperCurve), linear, upperCurve };
}
