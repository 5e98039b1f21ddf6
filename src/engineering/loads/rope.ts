import { defineFormula } from '../formula.ts';
import { input } from '../quantities.ts';

/** Standard gravity, m/s² (exact by definition). */
export const gravity = 9.80665;

const mass = input('m', 'mass', 'kg', 20, 400);
const modulus = input('EA', 'rope modulus', 'kN', 1, 10_000);
const fallFactor = input('f', 'fall factor', '', 0, 2);
const friction = input('r', 'friction ratio at the carabiner', '', 0.3, 1);

const weight = (m: number) => (m * gravity) / 1000;
const arrest = (m: number, ea: number, f: number) => {
  const w = weight(m);
  return w + Math.sqrt(w * w + 2 * w * ea * f);
};

/**
 * Modulus of a dynamic rope from its certified peak force: EA = F0·(F0 − 2mg)/(2mg·f0), m 80 kg, f0 1.77. F0 kN; kN.
 * Errors: OutOfRange when F0 is not above 2mg. Source: elastic fall of EN 892:2012, 5.6 (test of the peak force);
 * energy balance. Worked: F0 9 → 24.08 kN.
 */
export const ropeModulus = defineFormula({
  id: 'rope-modulus',
  title: 'Rope modulus from the certified peak force',
  symbols: 'EA = F0·(F0 − 2mg)/(2mg·f0)',
  source: 'en-892',
  clause: 'peak force test, energy balance',
  inputs: {
    peakForce: input('F0', 'certified peak force', 'kN', 2, 25),
    mass: { ...mass, words: 'mass of the certification test' },
    fallFactor: input('f0', 'fall factor of the certification test', '', 0.3, 2),
  },
  derived: [
    {
      ...input('F0/2mg', 'peak force over twice the weight', '', 1.01, 100),
      of: (i) => i.peakForce / (2 * weight(i.mass)),
    },
  ],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => {
    const w = weight(i.mass);
    return (i.peakForce * (i.peakForce - 2 * w)) / (2 * w * i.fallFactor);
  },
});

/**
 * Force on a falling climber by an elastic rope: F = mg + √((mg)² + 2mg·EA·f). m kg, EA kN, f fall factor 0..2; kN.
 * No slip at the belayer, stiff body: an upper estimate; measured lead falls lie 30 to 60 % lower. A wet, iced or
 * old rope is stiffer. Beyond factor 2 an energy absorber is needed: refused.
 * Source: energy balance of an elastic rope (common textbook). Worked: m 80, EA 24.08, f 0.3 → 4.242 kN.
 */
export const fallForce = defineFormula({
  id: 'fall-force',
  title: 'Force of a fall on the climber',
  symbols: 'F = mg + √((mg)² + 2mg·EA·f)',
  source: 'practice',
  clause: 'elastic rope, energy balance',
  inputs: { mass, modulus, fallFactor },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => arrest(i.mass, i.modulus, i.fallFactor),
});

/**
 * Force on the runner that turns the rope: F_r = F·(1 + r). F force on the climber kN, r friction ratio at the
 * carabiner (1 none, 0.66 usual); kN. Source: textbook pulley with friction. Worked: 12, 0.66 → 19.92 kN.
 */
export const runnerForce = defineFormula({
  id: 'runner-force',
  title: 'Force on the runner',
  symbols: 'F_r = F·(1 + r)',
  source: 'practice',
  clause: 'pulley with friction',
  inputs: { force: input('F', 'force on the climber', 'kN', 0, 100), friction },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => i.force * (1 + i.friction),
});

/**
 * Friction ratio of a rope turned by 180° over a bar: r = e^(−μπ), μ friction coefficient.
 * Source: capstan equation (Euler). Worked: μ 0.25 → 0.4559.
 */
export const capstanRatio = defineFormula({
  id: 'capstan-ratio',
  title: 'Friction ratio over a carabiner',
  symbols: 'r = e^(−μπ)',
  source: 'practice',
  clause: 'capstan equation',
  inputs: { coefficient: input('μ', 'coefficient of friction', '', 0, 0.6) },
  unit: '',
  kind: 'plain',
  compute: (i) => Math.exp(-i.coefficient * Math.PI),
});

/**
 * Fall factor that counts when friction at the runner holds back the belayer's rope: f_eff = h/(L1 + r·L2), L1 rope
 * from climber to runner, L2 from runner to belayer, h fall height, m.
 * Errors: OutOfRange when the result is above 2. Source: energy balance with friction (own derivation on the
 * textbook model). Worked: h 6, L1 4, L2 16, r 0.6 → 0.4412.
 */
export const effectiveFallFactor = defineFormula({
  id: 'effective-fall-factor',
  title: 'Fall factor with friction at the runner',
  symbols: 'f_eff = h/(L1 + r·L2)',
  source: 'practice',
  clause: 'elastic rope with friction',
  inputs: {
    height: input('h', 'height of the fall', 'm', 0, 200),
    climberSide: input('L1', 'rope from climber to runner', 'm', 0.1, 200),
    belayerSide: input('L2', 'rope from runner to belayer', 'm', 0, 200),
    friction,
  },
  derived: [{ ...fallFactor, of: (i) => i.height / (i.climberSide + i.friction * i.belayerSide) }],
  unit: '',
  kind: 'plain',
  compute: (i) => i.height / (i.climberSide + i.friction * i.belayerSide),
});

/**
 * Steady load on a top anchor while a person is lowered: F = (1 + r)·m·g; kg; kN.
 * Source: textbook pulley with friction. Worked: 80 kg, r 0.66 → 1.302 kN.
 */
export const loweringForce = defineFormula({
  id: 'lowering-force',
  title: 'Load on the top anchor while lowering',
  symbols: 'F = (1 + r)·m·g',
  source: 'practice',
  clause: 'pulley with friction',
  inputs: { mass, friction },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => (1 + i.friction) * weight(i.mass),
});

/**
 * Shock when one leg of an anchor fails and slack e runs out in a sling of length L: the fall force with f = e/L.
 * m kg, EA of the sling kN, e and L m; kN. Static slings give forces that break anchors.
 * Source: energy balance of an elastic sling. Worked: 80 kg, EA 400, e 0.1, L 1 → 8.746 kN.
 */
export const legFailureShock = defineFormula({
  id: 'leg-failure-shock',
  title: 'Shock when one leg of an anchor fails',
  symbols: 'F = mg + √((mg)² + 2mg·EA·e/L)',
  source: 'practice',
  clause: 'elastic sling, energy balance',
  inputs: {
    mass,
    modulus,
    slack: input('e', 'slack that runs out', 'm', 0, 5),
    length: input('L', 'length of the sling', 'm', 0.1, 30),
  },
  derived: [{ ...input('e/L', 'slack over length', '', 0, 2), of: (i) => i.slack / i.length }],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => arrest(i.mass, i.modulus, i.slack / i.length),
});
