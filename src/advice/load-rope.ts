/** What a rope makes of a fall: its stiffness, friction at the top carabiner, and forces on climber and bolt. */
import type { Phrase } from '../contracts/phrase.ts';
import { effectiveFallFactor, fallForce, ropeModulus, runnerForce } from '../engineering/index.ts';
import { kn, metricKn } from './load-weight.ts';
import type { Worksheet } from './worksheet.ts';

/** Share of the pull that friction at a carabiner lets through: 1 + 0.66 on the bolt (common practice). */
export const friction = 0.66;

/** Mass and fall factor of the peak-force test of a single rope (EN 892:2012). */
const test = { mass: 80, fallFactor: 1.77 };

/** Most that the test may give for a single rope (EN 892:2012), and what the label of a common one says, kN. */
export const labels = { highest: 12, common: 9 };

/** Modulus of a static sling, kN (common practice). */
export const slingModulus = 400;

export const modulusOfLabel = (sheet: Worksheet, peakForce: number): number => {
  sheet.cite('en-892');
  return sheet.compute(ropeModulus({ peakForce, ...test }));
};

/** Stiffest rope that the standard allows: what counts while no rope is told. */
export const stiffest = (sheet: Worksheet): number => modulusOfLabel(sheet, labels.highest);

export interface Forces {
  readonly climber: number;
  readonly bolt: number;
}

export function fallForces(sheet: Worksheet, mass: number, modulus: number, fallFactor: number): Forces {
  const climber = sheet.compute(fallForce({ mass, modulus, fallFactor }));
  return { climber, bolt: sheet.compute(runnerForce({ force: climber, friction })) };
}

/** Fall factor that counts of a climber who falls twice as far as he stood above the bolt; m. */
export function withDrag(sheet: Worksheet, height: number, rope: number): number {
  const climberSide = height / 2;
  const belayerSide = Math.max(0, rope - climberSide);
  return sheet.compute(effectiveFallFactor({ height, climberSide, belayerSide, friction }));
}

/** The same from the factor alone, for which the length of the rope drops out. Below 0.01 as 0.01. */
export const draggedFactor = (sheet: Worksheet, factor: number): number =>
  withDrag(sheet, Math.max(factor, 0.01) * 20, 20);

/** Measured falls, for comparison: the reckoning is an upper estimate. */
export function measuredFalls(sheet: Worksheet): Phrase {
  sheet.cite('hall-fall-measurements');
  return { say: 'load-fall-measured', with: { mean: metricKn(3.54), most: metricKn(4.78) } };
}

/** A climber above the belay on a static sling: a factor 1 fall without a rope. */
export function slingLine(sheet: Worksheet, mass: number): Phrase {
  const force = sheet.compute(fallForce({ mass, modulus: slingModulus, fallFactor: 1 }));
  return { say: 'load-sling', with: { force: kn(force) } };
}
