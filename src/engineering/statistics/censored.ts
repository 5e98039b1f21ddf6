import { dnorm, pnorm } from 'lib-r-math.js';
import { checkStrengths, TooFewResults } from './sample.ts';
import { toleranceFactor } from './tolerance.ts';

export interface CensoredFit {
  /** Of the logarithms. */
  readonly location: number;
  readonly spread: number;
  readonly median: number;
  /** 5 % fractile of the fitted curve: a point estimate, without confidence. */
  readonly fractile5: number;
  /** 5 % fractile with the tolerance factor for the number of real failures: the value to use. */
  readonly characteristic: number;
  readonly failures: number;
  readonly stopped: number;
}

/** Mean excess of a standard normal above z, stable far out in the tail. */
function hazard(z: number): number {
  const above = pnorm(z, 0, 1, false);
  return above > 0 ? dnorm(z) / above : z + 1 / z;
}

/**
 * Lognormal fit to pulls of which some were stopped before failure (right-censored), maximum likelihood by
 * expectation-maximisation: a stopped pull counts as "at least this much".
 * Errors: TooFewResults with fewer than 3 real failures: then only "all above X" can be said; BadResults for a value not above 0.
 * Source: maximum likelihood for censored normal data (handbook). The penalty k by NIST/SEMATECH e-Handbook 7.2.6.3.
 * Worked: failures 18.2 21.5 24.0, stopped 25 25 → location 3.1684, spread 0.1821.
 */
export function fitCensored(
  failures: readonly number[],
  stopped: readonly number[],
  confidence = 0.9,
): CensoredFit {
  checkStrengths(failures, 0);
  checkStrengths(stopped, 0);
  if (failures.length < 3) throw new TooFewResults(failures.length, 3);
  const x = failures.map(Math.log);
  const c = stopped.map(Math.log);
  const n = x.length + c.length;
  let location = [...x, ...c].reduce((a, b) => a + b, 0) / n;
  let spread = Math.max(1e-6, Math.sqrt([...x, ...c].reduce((a, v) => a + (v - location) ** 2, 0) / n));
  for (let step = 0; step < 20_000; step++) {
    const tails = c.map((v) => {
      const z = (v - location) / spread;
      const h = hazard(z);
      return { first: location + spread * h, second: spread * spread * (1 + z * h - h * h) };
    });
    const next = [...x, ...tails.map((t) => t.first)].reduce((a, b) => a + b, 0) / n;
    const squares =
      x.reduce((a, v) => a + (v - next) ** 2, 0) +
      tails.reduce((a, t) => a + t.second + (t.first - next) ** 2, 0);
    const nextSpread = Math.sqrt(squares / n);
    const moved = Math.abs(next - location) + Math.abs(nextSpread - spread);
    location = next;
    spread = nextSpread;
    if (moved < 1e-13) break;
  }
  const factor = toleranceFactor({ count: failures.length, content: 0.95, confidence }).value;
  return {
    location,
    spread,
    median: Math.exp(location),
    fractile5: Math.exp(location - 1.6448536269514722 * spread),
    characteristic: Math.exp(location - factor * spread),
    failures: failures.length,
    stopped: stopped.length,
  };
}
