import { defineFormula } from '../formula.ts';
import { force, input } from '../quantities.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const included = input('θ', 'angle between the legs', '°', 0, 175);
const leg = (load: number, angle: number) => load / (2 * Math.cos(radians(angle) / 2));

/**
 * Load on each of two equal legs: F = W/(2·cos(θ/2)). W kN, θ included angle °; kN. Up to 60° is good practice, above
 * 90° never. Each bolt must still carry everything: directions change.
 * Source: statics. Worked: 1 kN, 120° → 1.000 kN.
 */
export const legForce = defineFormula({
  id: 'leg-force',
  title: 'Load on each of two equal legs',
  symbols: 'F = W/(2·cos(θ/2))',
  source: 'practice',
  clause: 'statics',
  inputs: { load: { ...force, symbol: 'W' }, angle: included },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => leg(i.load, i.angle),
});

/**
 * Load on each bolt of the "triangle" (one loop through both bolts): F = 2·T·cos((90° − θ/2)/2), T the leg force.
 * Always worse than two legs: 1.31 W at 90°. Source: statics. Worked: 1 kN, 90° → 1.307 kN.
 */
export const triangleForce = defineFormula({
  id: 'triangle-force',
  title: 'Load on each bolt of a triangle rigging',
  symbols: 'F = 2·T·cos((90° − θ/2)/2)',
  source: 'practice',
  clause: 'statics',
  inputs: { load: { ...force, symbol: 'W' }, angle: included },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => 2 * leg(i.load, i.angle) * Math.cos(radians(90 - i.angle / 2) / 2),
});

/**
 * Load on the first of two unequal legs: F_a = W·sin b/sin(a + b), a and b the angles of the legs from the vertical, °.
 * The other leg has a and b exchanged. Source: statics. Worked: 1 kN, 20°, 40° → 0.7422 kN.
 */
export const unequalLegForce = defineFormula({
  id: 'unequal-leg-force',
  title: 'Load on one of two unequal legs',
  symbols: 'F_a = W·sin b/sin(a+b)',
  source: 'practice',
  clause: 'statics',
  inputs: {
    load: { ...force, symbol: 'W' },
    own: input('a', 'angle of this leg from the vertical', '°', 0, 89),
    other: input('b', 'angle of the other leg from the vertical', '°', 0, 89),
  },
  derived: [{ ...input('a+b', 'angle between the legs', '°', 1, 175), of: (i) => i.own + i.other }],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => (i.load * Math.sin(radians(i.other))) / Math.sin(radians(i.own + i.other)),
});
