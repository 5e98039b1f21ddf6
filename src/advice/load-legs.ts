/** Two bolts share a load by the angle of their legs; each must be able to take all of it. */
import type { Phrase } from '../contracts/phrase.ts';
import {
  legFailureShock,
  legForce,
  loweringForce,
  triangleForce,
  unequalLegForce,
} from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import { compare, planLine } from './load-compare.ts';
import { friction, slingModulus } from './load-rope.ts';
import { degrees, exactly, kn, roundedUp, type Weight, weightTold } from './load-weight.ts';
import type { Worksheet } from './worksheet.ts';

/** Up to the first is good practice; above the second no anchor is rigged (common practice). */
const angles = { good: 60, most: 90 };

/** Slack and length of a sling in the example of a leg that fails, m. */
const example = { slack: 0.1, length: 1 };

/** What comes on the bolt that is left when the other leg goes and slack runs out. */
function failure(sheet: Worksheet, { mass }: Weight): Phrase[] {
  if (mass < 20 || mass > 400) return [];
  const shock = sheet.compute(legFailureShock({ mass, modulus: slingModulus, ...example }));
  return [
    {
      say: 'load-legs-failure',
      with: {
        slack: exactly(example.slack, 'm'),
        length: exactly(example.length, 'm'),
        shock: kn(shock),
      },
    },
  ];
}

/** Over an anchor that people are lowered from, both strands of the rope pull: times the weight. */
function lowered(sheet: Worksheet, { mass, force }: Weight): number {
  const use = String(sheet.told('use') ?? 'unknown');
  const lowers = ['lower-off', 'top-rope', 'rescue'].includes(use) && sheet.told('mass_kg') !== undefined;
  return lowers ? sheet.compute(loweringForce({ mass, friction })) / force : 1;
}

const percent = (part: number, whole: number): string => String(Math.round((100 * part) / whole));

/** Common to both riggings: what each bolt must bear, and what happens when one goes. */
function rest(sheet: Worksheet, weight: Weight, most: number) {
  const times = lowered(sheet, weight);
  const load = times * Math.max(weight.force, most);
  const use = sheet.told('use') === undefined ? 'belay' : sheet.choice('use');
  const { points, ok } = compare(sheet, load, 'belay');
  return {
    ok,
    load,
    points: [
      ...weight.notes,
      ...(times > 1 ? [{ say: 'load-legs-lowering', with: { most: kn(times * most) } }] : []),
      { say: 'load-legs-each', with: { load: kn(load) } },
      planLine(sheet, use),
      ...failure(sheet, weight),
      ...points,
    ],
  };
}

export function equalLegs(sheet: Worksheet, angle: number): Draft {
  sheet.cite('practice');
  const weight = weightTold(sheet);
  const load = weight.force;
  const each = sheet.compute(legForce({ load, angle }));
  const triangle = sheet.compute(triangleForce({ load, angle }));
  const wide = angle > angles.most;
  const { points, ok, load: plan } = rest(sheet, weight, each);
  return {
    stance: wide || !ok ? 'stop' : angle > angles.good ? 'limit' : 'tell',
    verdict: {
      say: wide ? 'load-legs-too-wide' : 'load-legs',
      with: { load: weight.said, angle: degrees(angle), each: kn(each), share: percent(each, load) },
    },
    points: [
      ...(angle > angles.good && !wide ? [{ say: 'load-legs-narrow' }] : []),
      ...points,
      { say: 'load-legs-triangle', with: { triangle: kn(triangle) } },
    ],
    recommend: { case: 'legs', leg_kn: roundedUp(each), load_kn: roundedUp(plan) },
    reject: [],
  };
}

/** Legs that lean a and b degrees from the vertical: the steeper one carries more. */
export function unequalLegs(sheet: Worksheet, a: number, b: number): Draft {
  sheet.cite('practice');
  const weight = weightTold(sheet);
  const load = weight.force;
  const first = sheet.compute(unequalLegForce({ load, own: a, other: b }));
  const second = sheet.compute(unequalLegForce({ load, own: b, other: a }));
  const told = sheet.number('angle_deg');
  const between = told === undefined ? a + b : Math.max(a + b, told);
  const wide = between > angles.most;
  const { points, ok, load: plan } = rest(sheet, weight, Math.max(first, second));
  return {
    stance: wide || !ok ? 'stop' : 'limit',
    verdict: {
      say: wide ? 'load-legs-unequal-wide' : 'load-legs-unequal',
      with: {
        load: weight.said,
        a: degrees(a),
        b: degrees(b),
        first: kn(first),
        second: kn(second),
        firstShare: percent(first, load),
        secondShare: percent(second, load),
      },
    },
    points: [
      ...(told === undefined || told === a + b ? [] : [otherAngle(sheet, load, a + b, told)]),
      ...points,
    ],
    recommend: {
      case: 'legs',
      leg_kn: roundedUp(Math.max(first, second)),
      other_leg_kn: roundedUp(Math.min(first, second)),
      load_kn: roundedUp(plan),
    },
    reject: [],
  };
}

/** The angle that was told between the legs is not the sum of the two: what it would give, beside. */
function otherAngle(sheet: Worksheet, load: number, sum: number, told: number): Phrase {
  const each = sheet.compute(legForce({ load, angle: told }));
  return {
    say: 'load-legs-sum',
    with: { sum: degrees(sum), told: degrees(told), each: kn(each) },
  };
}
