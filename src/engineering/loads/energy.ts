import { defineFormula } from '../formula.ts';
import { force, input } from '../quantities.ts';

/**
 * Energy in a loaded test frame: E = F·δ/2; kN, mm; J. It is set free when the anchor breaks.
 * Source: linear spring. Worked: 25 kN, 5 mm → 62.50 J.
 */
export const frameEnergy = defineFormula({
  id: 'frame-energy',
  title: 'Energy stored in a test frame',
  symbols: 'E = F·δ/2',
  source: 'practice',
  clause: 'linear spring',
  inputs: { force, movement: input('δ', 'movement', 'mm', 0, 1000) },
  unit: 'J',
  kind: 'plain',
  compute: (i) => (i.force * i.movement) / 2,
});

/**
 * Energy in a stretched line: E = F²·L/(2·EA); kN, m, kN; J. Rope and webbing store a hundred times what a chain does.
 * Source: linear spring. Worked: 10 kN, 10 m, EA 55.56 → 8999 J.
 */
export const lineEnergy = defineFormula({
  id: 'line-energy',
  title: 'Energy stored in a stretched line',
  symbols: 'E = F²·L/(2·EA)',
  source: 'practice',
  clause: 'linear spring',
  inputs: {
    force,
    length: input('L', 'length of the line', 'm', 0.1, 2000),
    modulus: input('EA', 'modulus of the line', 'kN', 1, 50_000),
  },
  unit: 'J',
  kind: 'plain',
  compute: (i) => ((i.force ** 2 * i.length) / (2 * i.modulus)) * 1000,
});

/**
 * Speed of a thrown part that takes all the energy: v = √(2E/m); J, kg; m/s.
 * Source: energy balance. Worked: 62.5 J, 1 kg → 11.18 m/s.
 */
export const thrownSpeed = defineFormula({
  id: 'thrown-speed',
  title: 'Speed of a thrown part',
  symbols: 'v = √(2E/m)',
  source: 'practice',
  clause: 'energy balance',
  inputs: {
    energy: input('E', 'energy', 'J', 0, 1e7),
    partMass: input('m', 'mass of the part', 'kg', 0.01, 1000),
  },
  unit: 'm/s',
  kind: 'plain',
  compute: (i) => Math.sqrt((2 * i.energy) / i.partMass),
});

/** Standard acceleration of free fall, m/s² (exact). */
const gravity = 9.80665;

/**
 * How far a thrown part can land on level ground, air left out: R = v²/g at 45°; m/s; m. An upper bound there, and none
 * below a wall. Source: ballistics without drag (physics). Worked: 11.18 m/s → 12.75 m.
 */
export const throwRange = defineFormula({
  id: 'throw-range',
  title: 'How far a thrown part can land',
  symbols: 'R = v²/g',
  source: 'practice',
  clause: 'ballistics without drag',
  inputs: { speed: input('v', 'speed of the part', 'm/s', 0, 1000) },
  unit: 'm',
  kind: 'plain',
  compute: (i) => i.speed ** 2 / gravity,
});

/**
 * Force of a hydraulic ram: F = p·A; bar, cm²; kN (1 bar·cm² = 10 N).
 * Source: definition of pressure. Worked: 350 bar, 7.1 cm² → 24.85 kN.
 */
export const ramForce = defineFormula({
  id: 'ram-force',
  title: 'Force of a hydraulic ram',
  symbols: 'F = p·A',
  source: 'practice',
  clause: 'definition of pressure',
  inputs: {
    pressure: input('p', 'pressure', 'bar', 0, 1000),
    area: input('A', 'area of the ram', 'cm²', 0.5, 200),
  },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => (i.pressure * i.area) / 100,
});
