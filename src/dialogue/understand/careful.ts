/** Which way is the careful one when a number is told as a range or a bound. */

/** For these the larger end of a range. */
export const HIGH_IS_CAREFUL: ReadonlySet<string> = new Set([
  'load_kn',
  'tension_kn',
  'mass_kg',
  'fall_factor',
  'count',
  'humidity_pct',
  'span_m',
  'stick_out_mm',
  'angle_deg',
  'fall_m',
  'rope_peak_kn',
  'line_g_per_m',
  'surface_temperature_c',
]);

/** "Within 250 m of the sea" is how the standards say it, and it is the band that counts. */
export const LIMIT_IS_VALUE: ReadonlySet<string> = new Set([
  'sea_distance_m',
  'count',
  'load_kn',
  'tension_kn',
  'mass_kg',
  'fall_factor',
  'fall_m',
  'rope_peak_kn',
  'horizon_years',
  'surface_temperature_c',
]);

/** Thicker is no bolt, shorter is no length; between the two a lone number is neither. */
export const THICKEST_MM = 26;
export const SHORTEST_MM = 35;

/** "Bolt 4", "anchor 7": no bolt has that size in mm, and it is the bolt's number. */
const THINNEST_MM = 6;
const NO_SIZES: ReadonlySet<number> = new Set([7, 9, 11]);
export const isBoltNumber = (bare: number): boolean => bare < THINNEST_MM || NO_SIZES.has(bare);
/** "A rod of twelve": sizes that are also said in words. */
export const SIZES_IN_WORDS: ReadonlySet<number> = new Set([8, 10, 12, 14, 16]);

/** Without a unit, a smaller number for one of these is as well centimetres. */
export const BARE_MM_FROM: Readonly<Record<string, number>> = {
  edge_distance_mm: 40,
  spacing_mm: 40,
  embedment_mm: 15,
};

/** Degrees without a letter: above this they may be Fahrenheit. */
export const SURELY_CELSIUS = 30;
