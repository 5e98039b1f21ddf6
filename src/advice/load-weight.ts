/** How heavy: told in kN or kg, or taken heavy aloud. */
import type { Measure, Phrase } from '../contracts/phrase.ts';
import { gravity } from '../engineering/index.ts';
import type { Worksheet } from './worksheet.ts';

/** A heavy person with gear, where nobody told a weight (common practice). */
const heavyPerson = 100;

/** Two persons and the gear (common practice). */
const rescueLoad = 200;

export interface Weight {
  readonly mass: number;
  readonly force: number;
  /** As it was said: "80 kg" or "2 kN". */
  readonly said: Measure;
  /** What was taken because nobody told it. */
  readonly notes: readonly Phrase[];
}

export const kn = (value: number): Measure => ({ value, unit: 'kN' });

export const exactly = (value: number, unit: string): Measure => ({ value, unit, exact: true });

/** For comparisons, where the conversion stands with the checks. */
export const metricKn = (value: number): Measure => ({ value, unit: 'kN', exact: true, metric: true });

export const degrees = (value: number): string => String(Math.round(value * 10) / 10);

/** Three digits, rounded up: for machines and checks a load is never smaller than it is. */
export function roundedUp(value: number): number {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(value)) - 2);
  return Number((Math.ceil(Number((value / step).toPrecision(10))) * step).toPrecision(3));
}

/** Weight in kN of so many kg: W = m·g, g 9.80665 m/s². Worked: 80 → 0.7845. */
export const weightOf = (mass: number): number => (mass * gravity) / 1000;

function ofMass(mass: number, notes: readonly Phrase[]): Weight {
  return { mass, force: weightOf(mass), said: exactly(mass, 'kg'), notes };
}

/** Who falls or hangs; a heavy one where nobody told it. */
export function massTold(sheet: Worksheet): Weight {
  const mass = sheet.number('mass_kg');
  if (mass !== undefined) return ofMass(mass, []);
  const rescue = sheet.told('use') === 'rescue';
  const taken = rescue ? rescueLoad : heavyPerson;
  const say = rescue ? 'load-took-rescue' : 'load-took-person';
  return ofMass(taken, [{ say, with: { mass: exactly(taken, 'kg') } }]);
}

/** What hangs on it. Of a mass and a force that were both told the heavier counts. */
export function weightTold(sheet: Worksheet): Weight {
  const force = sheet.number('load_kn');
  if (force === undefined) return massTold(sheet);
  const mass = sheet.number('mass_kg');
  if (mass !== undefined && weightOf(mass) > force) return ofMass(mass, []);
  return { mass: (force * 1000) / gravity, force, said: exactly(force, 'kN'), notes: [] };
}
