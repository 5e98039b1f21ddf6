import { type CharacteristicStrength, characteristicStrength } from './characteristic.ts';
import { BadResults, TooFewResults } from './sample.ts';

export interface OriginFit {
  readonly slope: number;
  readonly slopeError: number;
  /** Residual standard deviation, n − 1. */
  readonly deviation: number;
  /** Uncentred: 1 − Σres²/Σy². */
  readonly rSquared: number;
}

/**
 * Least squares through the origin: b = Σxy/Σx², s² = Σ(y − bx)²/(n − 1), se = s/√Σx².
 * Source: NIST StRD NoInt1, NoInt2 (certified values). Errors: TooFewResults below 3, BadResults for unequal lengths,
 * values that are no numbers, or all x zero. Worked: NoInt1 → 2.07438016528926.
 */
export function fitThroughOrigin(x: readonly number[], y: readonly number[]): OriginFit {
  if (x.length !== y.length) throw new BadResults('the two columns are not equally long.');
  if (x.length < 3) throw new TooFewResults(x.length, 3);
  if (![...x, ...y].every(Number.isFinite)) throw new BadResults('a value is not a number.');
  const pairs = x.map((value, i) => [value, y[i] ?? 0] as const);
  const sxx = pairs.reduce((a, [u]) => a + u * u, 0);
  if (sxx === 0) throw new BadResults('all values of the first column are zero.');
  const slope = pairs.reduce((a, [u, v]) => a + u * v, 0) / sxx;
  const residual = pairs.reduce((a, [u, v]) => a + (v - slope * u) ** 2, 0);
  const total = pairs.reduce((a, [, v]) => a + v * v, 0);
  const deviation = Math.sqrt(residual / (x.length - 1));
  return { slope, slopeError: deviation / Math.sqrt(sxx), deviation, rSquared: 1 - residual / total };
}

export interface BondTest {
  /** kN */
  readonly load: number;
  /** mm */
  readonly diameter: number;
  /** mm */
  readonly embedment: number;
}

export interface BondStrength {
  /** MPa, by regression through the origin. */
  readonly mean: number;
  /** 5 % fractile of the single ratios, MPa. Never the confidence limit of the slope. */
  readonly characteristic: CharacteristicStrength;
  readonly fit: OriginFit;
}

/**
 * Bond strength from pull-outs of several sizes: mean τ by regression of N on π·d·h, 5 % fractile from the ratios
 * τ_i = N_i/(π·d·h). Only results that failed by bond. kN, mm; MPa.
 * Source: least squares; ratio estimator with EN 1990 Annex D. Errors: those of the two parts.
 * Worked: six pulls of the checks → mean 9.367 MPa.
 */
export function bondFromTests(tests: readonly BondTest[], confidence = 0.9): BondStrength {
  const surface = tests.map((t) => Math.PI * t.diameter * t.embedment);
  const loads = tests.map((t) => t.load * 1000);
  const fit = fitThroughOrigin(surface, loads);
  const ratios = loads.map((load, i) => load / (surface[i] ?? Number.NaN));
  return { mean: fit.slope, characteristic: characteristicStrength(ratios, confidence), fit };
}
