/** People on an anchor without a fall into it: hanging, lowering, top-roping, abseiling, rescue. */
import type { Phrase } from '../contracts/phrase.ts';
import { fallForce, loweringForce, runnerForce } from '../engineering/index.ts';
import { numberCell } from '../rules/index.ts';
import type { Draft } from './draft.ts';
import { compare, planLine } from './load-compare.ts';
import { draggedFactor, fallForces, friction, measuredFalls, slingLine, stiffest } from './load-rope.ts';
import { exactly, kn, massTold, metricKn, roundedUp, type Weight } from './load-weight.ts';
import type { Worksheet } from './worksheet.ts';

/** A jerky abseil over hanging still: 2.5 kN with 80 kg (common practice). */
const jerk = 3.2;

/** kN; of no weight here: what is let go onto a rope without slack gives twice its weight, whatever the rope. */
const anyModulus = 50;

function draft(
  sheet: Worksheet,
  weight: Weight,
  use: string,
  verdict: Phrase,
  load: number,
  own: readonly Phrase[],
): Draft {
  sheet.cite('practice');
  const { points, ok } = compare(sheet, load, use);
  return {
    stance: ok ? 'limit' : 'stop',
    verdict,
    points: [...weight.notes, ...own, planLine(sheet, use), ...points],
    recommend: { case: use, load_kn: roundedUp(load) },
    reject: [],
  };
}

const lowering = (sheet: Worksheet, { mass }: Weight): number =>
  sheet.compute(loweringForce({ mass, friction }));

/** Let go onto a rope without slack, over a carabiner. */
const caught = (sheet: Worksheet, { mass }: Weight): number => fallForces(sheet, mass, anyModulus, 0).bolt;

/** Pulled up over a carabiner: the hauling side pulls harder than the weight. */
const hauling = (sheet: Worksheet, { force }: Weight): number =>
  sheet.compute(runnerForce({ force: force / friction, friction }));

export function lowerOff(sheet: Worksheet, use: 'lower-off' | 'top-rope'): Draft {
  const weight = massTold(sheet);
  const lower = lowering(sheet, weight);
  const sudden = caught(sheet, weight);
  const slack = fallForces(sheet, weight.mass, stiffest(sheet), draggedFactor(sheet, 0.1)).bolt;
  const values = { mass: weight.said, lower: kn(lower), sudden: kn(sudden) };
  return draft(
    sheet,
    weight,
    use,
    { say: use === 'lower-off' ? 'load-lower' : 'load-top-rope', with: values },
    slack,
    [
      { say: 'load-lower-friction' },
      { say: 'load-top-rope-slack', with: { slack: kn(slack) } },
      { say: 'load-haul', with: { haul: kn(hauling(sheet, weight)) } },
    ],
  );
}

export function abseil(sheet: Worksheet): Draft {
  const weight = massTold(sheet);
  const jerky = jerk * weight.force;
  const values = { mass: weight.said, hang: kn(weight.force), jerky: kn(jerky) };
  return draft(sheet, weight, 'rappel', { say: 'load-abseil', with: values }, jerky, [
    { say: 'load-abseil-jerk' },
  ]);
}

export function rescue(sheet: Worksheet): Draft {
  const weight = massTold(sheet);
  const values = {
    mass: weight.said,
    hang: kn(weight.force),
    lower: kn(lowering(sheet, weight)),
    haul: kn(hauling(sheet, weight)),
  };
  const shock = numberCell(sheet.row('uses', 'rescue'), 'accidental_kn');
  return draft(
    sheet,
    weight,
    'rescue',
    { say: 'load-rescue', with: values },
    Math.max(shock, values.haul.value),
    [
      { say: 'load-rescue-rigger' },
      { say: 'load-rescue-shock', with: { least: metricKn(6), most: metricKn(shock) } },
    ],
  );
}

/** A stance without a word of a fall: hanging in it, and the fall that it must bear. */
export function stance(sheet: Worksheet): Draft {
  const weight = massTold(sheet);
  const { climber } = fallForces(sheet, weight.mass, stiffest(sheet), 2);
  const values = { mass: weight.said, hang: kn(weight.force), fall: kn(climber) };
  return draft(sheet, weight, 'belay', { say: 'load-belay', with: values }, climber, [
    slingLine(sheet, weight.mass),
  ]);
}

/** A lead fall of which only the weight is told, or not even that. */
export function leadFalls(sheet: Worksheet, use: 'lead' | 'aid'): Draft {
  const weight = massTold(sheet);
  const modulus = stiffest(sheet);
  const at = (factor: number) =>
    kn(fallForces(sheet, weight.mass, modulus, draggedFactor(sheet, factor)).bolt);
  const rare = numberCell(sheet.row('uses', use), 'accidental_kn');
  return draft(
    sheet,
    weight,
    use,
    { say: 'load-lead', with: { mass: weight.said, rare: exactly(rare, 'kN') } },
    rare,
    [
      { say: 'load-lead-factors', with: { easy: at(0.1), usual: at(0.3), hard: at(0.5) } },
      measuredFalls(sheet),
      { say: 'load-fall-factor' },
    ],
  );
}

/** Something hangs, and nobody said how it is used. */
export function hanging(sheet: Worksheet): Draft {
  const weight = massTold(sheet);
  const sudden = sheet.compute(fallForce({ mass: weight.mass, modulus: anyModulus, fallFactor: 0 }));
  const values = { mass: weight.said, hang: kn(weight.force), sudden: kn(sudden) };
  return draft(sheet, weight, 'other-load', { say: 'load-hang', with: values }, sudden, [
    { say: 'load-lower-of', with: { lower: kn(lowering(sheet, weight)) } },
    { say: 'load-tell-more' },
  ]);
}
