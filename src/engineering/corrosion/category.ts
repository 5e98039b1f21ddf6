/**
 * Corrosivity categories of ISO 9223:2012 Table 2. An interval is open below and closed above, so a rate on
 * a limit belongs to the lower class; above the end of CX the answer is 'beyond CX', not CX.
 */

export type AtmosphereMetal = 'steel' | 'zinc' | 'copper' | 'aluminium';
export const categories = ['C1', 'C2', 'C3', 'C4', 'C5', 'CX', 'beyond CX'] as const;
export type Category = (typeof categories)[number];

/** Upper limits of C1 to CX in µm/a. Aluminium has none: it is classed by mass. */
const byThickness: Readonly<Record<Exclude<AtmosphereMetal, 'aluminium'>, readonly number[]>> = {
  steel: [1.3, 25, 50, 80, 200, 700],
  zinc: [0.1, 0.7, 2.1, 4.2, 8.4, 25],
  copper: [0.1, 0.6, 1.3, 2.8, 5.6, 10],
};

/** Upper limits of C1 to CX in g/(m²·a); 0 for "negligible", Infinity where the table is open. */
const byMass: Readonly<Record<AtmosphereMetal, readonly number[]>> = {
  steel: [10, 200, 400, 650, 1500, 5500],
  zinc: [0.7, 5, 15, 30, 60, 180],
  copper: [0.9, 5, 12, 25, 50, 90],
  aluminium: [0, 0.6, 2, 5, 10, Number.POSITIVE_INFINITY],
};

/** Densities in g/cm³ that the table's two columns are related by. */
export const densities: Readonly<Record<AtmosphereMetal, number>> = {
  steel: 7.86,
  zinc: 7.14,
  copper: 8.96,
  aluminium: 2.7,
};

function classify(rate: number, limits: readonly number[]): Category {
  if (!(rate >= 0)) throw new RangeError('a corrosion rate must be a number of 0 or more');
  const at = limits.findIndex((upper) => rate <= upper);
  return categories[at === -1 ? categories.length - 1 : at] ?? 'beyond CX';
}

/**
 * Category from a first-year loss in the unit of the dose-response functions: µm/a, aluminium g/(m²·a).
 * Source: ISO 9223:2012 Table 2. Errors: RangeError for a negative rate or NaN. Worked: steel 25 → C2, 25.01 → C3.
 */
export function category(metal: AtmosphereMetal, rate: number): Category {
  return classify(rate, metal === 'aluminium' ? byMass.aluminium : byThickness[metal]);
}

/** Category from a mass loss in g/(m²·a). Source: ISO 9223:2012 Table 2. Worked: zinc 15 → C3, 15.1 → C4. */
export function categoryByMass(metal: AtmosphereMetal, rate: number): Category {
  return classify(rate, byMass[metal]);
}

/** Mass loss g/(m²·a) of a thickness loss µm/a: r·ρ. Source: ISO 9223:2012 (densities). Worked: steel 25 → 196.5. */
export function massLoss(metal: AtmosphereMetal, micrometres: number): number {
  return micrometres * densities[metal];
}

/** The worse of categories, by the order of the standard. */
export function worstCategory(found: readonly [Category, ...Category[]]): Category {
  return categories[Math.max(...found.map((c) => categories.indexOf(c)))] ?? 'beyond CX';
}

export interface EstimateBand {
  readonly low: number;
  readonly high: number;
  readonly from: Category;
  readonly to: Category;
}

/**
 * Band of a dose-response estimate and the range of classes it spans: −33 %/+50 %, aluminium −50 %/+100 %.
 * Source: ISO 9223:2012 Annex A (figures from memory). Worked: steel 99.24 → 66.49 to 148.9, C4 to C5.
 */
export function estimateBand(metal: AtmosphereMetal, rate: number): EstimateBand {
  const [down, up] = metal === 'aluminium' ? [0.5, 2] : [0.67, 1.5];
  const low = rate * down;
  const high = rate * up;
  return { low, high, from: category(metal, low), to: category(metal, high) };
}
