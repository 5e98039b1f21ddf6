/** A stretched line between two anchors: highline, slackline, rope bridge, hand line. Explained, never cleared. */
import type { Phrase } from '../contracts/phrase.ts';
import {
  catenaryHorizontal,
  catenaryTension,
  legForce,
  lineTension,
  OutOfRange,
} from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import { compare } from './load-compare.ts';
import { degrees, exactly, kn, metricKn, roundedUp, type Weight, weightTold } from './load-weight.ts';
import type { Worksheet } from './worksheet.ts';

/** Bounce or leash fall over walking: the highest of the published pairs 4.3/2.4, 4.0/2.1 and 5.3/3.1 kN. */
const bounce = 4 / 2.1;

/** Strength of each anchor point over the line tension (common practice). */
const anchorTimes = 3;

/** Most tension that a published sheet for slackliners advises, kN. */
const mostAdvised = 7;

interface Line {
  readonly tension: number;
  readonly sag: number | undefined;
  readonly points: readonly Phrase[];
}

/** Sag at which a load W in the middle gives the tension T: s = (L/2)·tan(asin(W/2T)), the inverse of `lineTension`. */
function sagAt(span: number, load: number, tension: number): number | undefined {
  const sine = load / (2 * tension);
  return sine < 1 ? (span / 2) * Math.tan(Math.asin(sine)) : undefined;
}

/** The line's own weight adds to the pull; its horizontal part is exact (catenary), the sum slightly high. */
function withOwnWeight(sheet: Worksheet, load: number, span: number, sag: number, lineMass: number): number {
  const own = sheet.compute(catenaryHorizontal({ lineMass, span, sag }));
  const end = sheet.compute(catenaryTension({ lineMass, span, sag }));
  const loaded = sheet.compute(lineTension({ load, span, sag }));
  const ownRise = Math.sqrt(Math.max(0, end ** 2 - own ** 2));
  const loadedAcross = Math.sqrt(loaded ** 2 - (load / 2) ** 2);
  return Math.hypot(loadedAcross + own, load / 2 + ownRise);
}

function lineOf(sheet: Worksheet, weight: Weight, span: number | undefined): Line | undefined {
  const told = sheet.number('tension_kn');
  const sag = sheet.number('sag_m');
  const lineMass = sheet.number('line_g_per_m');
  const load = weight.force;
  if (span !== undefined && sag !== undefined) {
    const plain = sheet.compute(lineTension({ load, span, sag }));
    const tension = lineMass === undefined ? plain : withOwnWeight(sheet, load, span, sag, lineMass);
    const points =
      lineMass === undefined ? [] : [{ say: 'load-line-own', with: { added: kn(tension - plain) } }];
    if (told === undefined || told <= tension) return { tension, sag, points };
    return {
      tension: told,
      sag,
      points: [...points, { say: 'load-line-both', with: { tension: kn(tension) } }],
    };
  }
  if (told === undefined) return undefined;
  const follows = span === undefined ? undefined : sagAt(span, load, told);
  if (span !== undefined && follows !== undefined) sheet.compute(lineTension({ load, span, sag: follows }));
  return { tension: told, sag: follows, points: [{ say: 'load-line-pretension' }] };
}

/** What half the sag would do: the lesson that saves most anchors. */
function halfSag(sheet: Worksheet, { force }: Weight, span: number | undefined, { sag }: Line): Phrase[] {
  if (span === undefined || sag === undefined) return [];
  try {
    const half = sheet.compute(lineTension({ load: force, span, sag: sag / 2 }));
    return [{ say: 'load-line-half', with: { sag: { value: sag / 2, unit: 'm' }, tension: kn(half) } }];
  } catch (error) {
    if (error instanceof OutOfRange) return [];
    throw error;
  }
}

function ends(sheet: Worksheet, tension: number): Phrase[] {
  const angle = sheet.number('angle_deg');
  if (angle === undefined) return [];
  const each = sheet.compute(legForce({ load: tension, angle }));
  return [{ say: 'load-line-ends', with: { angle: degrees(angle), each: kn(each) } }];
}

function cannot(lacking: readonly string[]): Draft {
  return {
    stance: 'stop',
    verdict: { say: 'load-line-cannot' },
    points: [{ say: 'load-line-rule' }, { say: 'load-line-rigger' }],
    recommend: {},
    reject: [],
    lacking,
  };
}

export function line(sheet: Worksheet): Draft {
  sheet.cite('practice');
  sheet.cite('highline-measurements');
  const span = sheet.number('span_m');
  const weight = weightTold(sheet);
  const found = lineOf(sheet, weight, span);
  if (found === undefined)
    return cannot(['span_m', 'sag_m'].filter((fact) => sheet.told(fact) === undefined));
  const { tension, sag } = found;
  const moving = bounce * tension;
  const anchor = anchorTimes * tension;
  sheet.check({
    id: 'line-limit',
    name: { say: 'check-line-most' },
    value: mostAdvised,
    limit: roundedUp(moving),
    unit: 'kN',
    kind: 'plain',
  });
  const { points } = compare(sheet, anchor, 'highline');
  const values = { load: weight.said, tension: kn(tension), anchor: kn(anchor) };
  return {
    stance: 'stop',
    verdict:
      span === undefined || sag === undefined
        ? { say: 'load-line-tension', with: values }
        : {
            say: 'load-line',
            with: {
              ...values,
              span: exactly(span, 'm'),
              sag: { value: sag, unit: 'm', exact: sheet.told('sag_m') !== undefined },
            },
          },
    points: [
      ...weight.notes,
      { say: 'load-line-rigger' },
      { say: 'load-line-bounce', with: { moving: kn(moving) } },
      { say: 'load-line-anchor', with: { anchor: kn(anchor) } },
      ...ends(sheet, anchor),
      ...found.points,
      ...halfSag(sheet, weight, span, found),
      ...(moving > mostAdvised ? [{ say: 'load-line-slacken', with: { most: metricKn(mostAdvised) } }] : []),
      { say: 'load-line-measured' },
      ...points,
    ],
    recommend: {
      case: 'line',
      tension_kn: roundedUp(tension),
      moving_kn: roundedUp(moving),
      load_kn: roundedUp(anchor),
    },
    reject: [],
  };
}
