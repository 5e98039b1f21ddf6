/** How hard a fall into the rope pulls: on the climber, on the top bolt, on the belay. */
import type { Measure, Phrase } from '../contracts/phrase.ts';
import { connectorStrengths, fallForce, legForce } from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import { compare } from './load-compare.ts';
import {
  draggedFactor,
  fallForces,
  labels,
  measuredFalls,
  modulusOfLabel,
  slingLine,
  stiffest,
  withDrag,
} from './load-rope.ts';
import { degrees, kn, massTold, metricKn, roundedUp, type Weight } from './load-weight.ts';
import type { Worksheet } from './worksheet.ts';

/** A basic carabiner. */
const carabiner = connectorStrengths.B;

interface Fall {
  readonly factor: number;
  /** With the belayer's rope held back by friction at the top carabiner. */
  readonly effective: number;
}

function fallOf(sheet: Worksheet): Fall | undefined {
  const told = sheet.number('fall_factor');
  if (told !== undefined) return { factor: told, effective: told > 2 ? told : draggedFactor(sheet, told) };
  const height = sheet.number('fall_m');
  const rope = sheet.number('rope_out_m');
  if (height === undefined || rope === undefined) return undefined;
  const factor = height / rope;
  return { factor, effective: factor > 2 ? factor : withDrag(sheet, Math.max(height, 0.2), rope) };
}

/** Modulus of the rope: told, from its label, or of the stiffest that EN 892 allows. */
function ropeOf(sheet: Worksheet): { readonly modulus: number; readonly from: 'told' | 'label' | 'limit' } {
  const modulus = sheet.number('rope_modulus_kn');
  if (modulus !== undefined) return { modulus, from: 'told' };
  const label = sheet.number('rope_peak_kn');
  return label === undefined
    ? { modulus: stiffest(sheet), from: 'limit' }
    : { modulus: modulusOfLabel(sheet, label), from: 'label' };
}

/** A fall beyond factor 2, or on a via ferrata: only an energy absorber survives it. */
export function absorber(sheet: Worksheet): Draft {
  sheet.cite('practice');
  return {
    stance: 'stop',
    verdict: { say: 'load-absorber' },
    points: [{ say: 'load-absorber-why' }, { say: 'load-absorber-next' }],
    recommend: { case: 'refused' },
    reject: [],
  };
}

/** What a rope of the common kind gives by the plain textbook sum, beside the worst case of the verdict. */
function commonRope(sheet: Worksheet, { mass }: Weight, { factor }: Fall, onBelay: boolean): Phrase {
  const { climber, bolt } = fallForces(sheet, mass, modulusOfLabel(sheet, labels.common), factor);
  return {
    say: onBelay ? 'load-fall-common-belay' : 'load-fall-common',
    with: { label: metricKn(labels.common), bolt: kn(bolt), climber: kn(climber) },
  };
}

function dragLine({ factor, effective }: Fall, shown: Measure): Phrase {
  return effective < 1.03 * factor
    ? { say: 'load-fall-strands' }
    : {
        say: 'load-fall-drag',
        with: { factor: shown, effective: { value: effective, unit: '1' } },
      };
}

function carabinerLine(sheet: Worksheet, bolt: number): Phrase[] {
  if (bolt <= carabiner.open) return [];
  sheet.cite('en-12275-2013');
  return [
    {
      say: 'load-fall-carabiner',
      with: { closed: metricKn(carabiner.closed), open: metricKn(carabiner.open) },
    },
  ];
}

/** The same load on an anchor of two bolts. */
function legsLine(sheet: Worksheet, load: number): Phrase[] {
  const angle = sheet.number('angle_deg');
  if (angle === undefined) return [];
  const each = sheet.compute(legForce({ load, angle }));
  return [{ say: 'load-fall-legs', with: { angle: degrees(angle), each: kn(each) } }];
}

export function fall(sheet: Worksheet): Draft {
  sheet.cite('practice');
  const fallen = fallOf(sheet);
  if (fallen === undefined)
    return {
      stance: 'stop',
      verdict: { say: 'load-fall-rope-out' },
      points: [{ say: 'load-fall-factor' }],
      recommend: {},
      reject: [],
      lacking: ['rope_out_m'],
    };
  if (fallen.factor > 2) return absorber(sheet);
  const weight = massTold(sheet);
  const { modulus, from } = ropeOf(sheet);
  const worst = fallForces(sheet, weight.mass, modulus, fallen.effective);
  // Straight onto the belay there is no carabiner above: the whole rope works.
  const onBelay = sheet.told('use') === 'belay';
  const climber = onBelay
    ? sheet.compute(fallForce({ mass: weight.mass, modulus, fallFactor: fallen.factor }))
    : worst.climber;
  const { points, ok } = compare(sheet, worst.bolt, 'lead');
  const factor = { value: fallen.factor, unit: '1', exact: sheet.told('fall_factor') !== undefined };
  return {
    stance: ok ? 'limit' : 'stop',
    verdict: {
      say: onBelay ? 'load-fall-belay' : 'load-fall-bolt',
      with: {
        factor,
        mass: weight.said,
        bolt: kn(worst.bolt),
        climber: kn(climber),
      },
    },
    points: [
      ...weight.notes,
      ...(from === 'limit' ? [commonRope(sheet, weight, fallen, onBelay)] : []),
      { say: `load-rope-${from}` },
      dragLine(fallen, factor),
      measuredFalls(sheet),
      ...points,
      ...legsLine(sheet, worst.bolt),
      ...carabinerLine(sheet, worst.bolt),
      ...(onBelay ? [slingLine(sheet, weight.mass)] : []),
    ],
    recommend: {
      case: 'fall',
      load_kn: roundedUp(worst.bolt),
      climber_kn: roundedUp(climber),
      fall_factor: Number(fallen.factor.toPrecision(3)),
    },
    reject: [],
  };
}
