/**
 * Inputs that many formulas share, with the range in which this library answers at all. Ranges of a
 * single standard stand in the formula; these only keep out what no climbing anchor can be.
 * Forces are kN, lengths mm, stresses MPa (N/mm²).
 */
import type { InputSpec } from './formula.ts';

export const input = (symbol: string, words: string, unit: string, min: number, max: number): InputSpec => ({
  symbol,
  words,
  unit,
  min,
  max,
});

export const diameter = input('d', 'diameter of the rod', 'mm', 6, 50);
export const holeDiameter = input('d0', 'diameter of the hole', 'mm', 6, 80);
export const embedment = input('h_ef', 'embedment depth', 'mm', 20, 1000);
export const coneDepth = input('h_ef', 'embedment depth', 'mm', 40, 500);
export const edge = input('c', 'distance to the edge', 'mm', 1, 100_000);
export const edgeAcross = input('c2', 'distance to the second edge', 'mm', 1, 100_000);
export const spacing = input('s', 'spacing', 'mm', 0, 100_000);
export const bondStress = input('τ', 'bond strength', 'MPa', 0.05, 60);
export const cylinderStrength = input('f_ck', 'cylinder strength', 'MPa', 12, 90);
export const cubeStrength = input('f_cube', 'cube strength', 'MPa', 15, 60);
export const rockStrength = input('UCS', 'compressive strength of the rock', 'MPa', 0.5, 400);
export const steelStrength = input('f_uk', 'ultimate strength of the metal', 'MPa', 100, 1500);
export const yieldStrength = input('f_yk', 'yield strength of the metal', 'MPa', 80, 1400);
export const metalArea = input('A_s', 'stressed cross-section of the metal', 'mm²', 10, 3000);
export const force = input('F', 'load', 'kN', 0, 1000);
export const resistance = input('R', 'resistance', 'kN', 0.001, 5000);
export const scatter = input('V', 'coefficient of variation', '', 0.01, 1.5);
export const fraction = (symbol: string, words: string): InputSpec => input(symbol, words, '', 0, 1);

/** Strength above this is not credited by the concrete formulas, and for rock the same cap is kept. */
export const creditedStrength = 60;
