import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

const reboundL = input('R_L', 'rebound number, small (L type) hammer', '', 20, 60);

/**
 * Strength from rebound: UCS = 10^(0.00088·γ·R_L + 1.01). γ unit weight kN/m³, R_L rebound of the L type hammer held
 * downwards on smooth dry intact rock; MPa. At rebound 40 published laws span 24 to 174 MPa, so this is an upper
 * hint: the class of `reboundClass` is the answer.
 * Source: Deere and Miller (1966), as in ISRM practice (from memory). Worked: γ 26, R 40 → 84.18 MPa.
 */
export const reboundStrength = defineFormula({
  id: 'rebound-strength',
  title: 'Compressive strength hinted by rebound',
  symbols: 'UCS = 10^(0.00088·γ·R_L + 1.01)',
  source: 'rebound-tables',
  clause: 'Deere and Miller (1966), rebound and unit weight',
  inputs: { rebound: reboundL, unitWeight: input('γ', 'unit weight of the rock', 'kN/m³', 18, 30) },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => 10 ** (0.00088 * i.unitWeight * i.rebound + 1.01),
});

/**
 * The same law as a review prints it: UCS = 6.9·10^(0.16 + 0.0087·ρ·R), ρ density g/cm³; MPa.
 * Source: Deere and Miller (1966) in a published list of rebound correlations. Worked: ρ 2.6, R 40 → 80.10 MPa.
 */
export const reboundStrengthByDensity = defineFormula({
  id: 'rebound-strength-by-density',
  title: 'Compressive strength hinted by rebound and density',
  symbols: 'UCS = 6.9·10^(0.16 + 0.0087·ρ·R)',
  source: 'rebound-tables',
  clause: 'Deere and Miller (1966), as printed in a review',
  inputs: { rebound: reboundL, density: input('ρ', 'density of the rock', 'g/cm³', 1.8, 3.1) },
  unit: 'MPa',
  kind: 'mean',
  compute: (i) => 6.9 * 10 ** (0.16 + 0.0087 * i.density * i.rebound),
});

/**
 * Large (N type) hammer reading that belongs to a small one: R_N = 1.0646·R_L + 6.3673.
 * Source: ISRM suggested method 2009 (from memory). Worked: 40 → 48.95.
 */
export const reboundLargeFromSmall = defineFormula({
  id: 'rebound-large-from-small',
  title: 'Rebound of the large hammer from the small one',
  symbols: 'R_N = 1.0646·R_L + 6.3673',
  source: 'rebound-tables',
  clause: 'ISRM 2009, conversion between hammers',
  inputs: { rebound: { ...reboundL, min: 10 } },
  unit: '',
  kind: 'mean',
  compute: (i) => 1.0646 * i.rebound + 6.3673,
});

export interface ReboundClass {
  readonly reboundFrom: number;
  readonly reboundTo: number;
  readonly min: number;
  readonly max: number;
}

/** N type rebound and the strength it stands for, MPa. Published geomorphology strength table. */
const classes: readonly ReboundClass[] = [
  { reboundFrom: 10, reboundTo: 35, min: 1, max: 25 },
  { reboundFrom: 35, reboundTo: 40, min: 25, max: 50 },
  { reboundFrom: 40, reboundTo: 50, min: 50, max: 100 },
  { reboundFrom: 50, reboundTo: 60, min: 100, max: 200 },
  { reboundFrom: 60, reboundTo: 80, min: 200, max: 400 },
];

/**
 * Strength class of an N type rebound: take its lower end. On a limit the weaker class counts.
 * Source: published rebound class table (N type). Errors: RangeError outside 10 to 80. Worked: 45 → 50 to 100 MPa.
 */
export function reboundClass(rebound: number): ReboundClass {
  const found = classes.find((c) => rebound >= c.reboundFrom && rebound <= c.reboundTo);
  if (found === undefined) throw new RangeError(`a rebound of ${rebound} is outside the table, 10 to 80`);
  return found;
}

/** Published laws for various rocks, each from its own data, UCS in MPa: they show how little one number says. */
const laws: readonly ((rebound: number) => number)[] = [
  (r) => 2 * r,
  (r) => 0.994 * r - 0.383,
  (r) => (702 * r - 11_040) * 0.00689476,
  (r) => 2.208 * Math.exp(0.067 * r),
  (r) => 2.75 * r - 36.83,
  (r) => 4e-6 * r ** 4.29,
  (r) => 1.4459 * Math.exp(0.0706 * r),
];

/**
 * Lowest and highest strength that published laws give for one rebound, and all of them in the order of the list:
 * sand- and siltstone, coal, sandstone, carbonates and granite, volcanic rocks, mixed, granite; MPa.
 * Source: a published list of rebound correlations (the seven that need no density). Errors: RangeError outside
 * 20 to 60. Worked: 40 → 24.35 to 117.5 MPa.
 */
export function reboundSpread(rebound: number): {
  readonly min: number;
  readonly max: number;
  readonly all: readonly number[];
} {
  if (!(rebound >= 20 && rebound <= 60)) throw new RangeError(`a rebound of ${rebound} is outside 20 to 60`);
  const all = laws.map((law) => law(rebound));
  return { min: Math.min(...all), max: Math.max(...all), all };
}
