/** How much pulls on an anchor: which case it is follows from what was told. */
import type { Draft } from './draft.ts';
import { absorber, fall } from './load-fall.ts';
import { abseil, hanging, leadFalls, lowerOff, rescue, stance } from './load-hang.ts';
import { equalLegs, unequalLegs } from './load-legs.ts';
import { line } from './load-line.ts';
import { strength } from './load-strength.ts';
import type { Worksheet } from './worksheet.ts';

function told(sheet: Worksheet, ...facts: readonly string[]): boolean {
  return facts.some((fact) => sheet.told(fact) !== undefined);
}

/** Two legs: the angle between them, or that of each from the vertical. */
function legs(sheet: Worksheet): Draft | undefined {
  const a = sheet.number('leg_a_deg');
  const b = sheet.number('leg_b_deg');
  if (a !== undefined && b !== undefined) return unequalLegs(sheet, a, b);
  const angle = sheet.number('angle_deg');
  return angle === undefined ? undefined : equalLegs(sheet, angle);
}

function byUse(sheet: Worksheet): Draft | undefined {
  const use = sheet.told('use') === undefined ? 'unknown' : sheet.choice('use');
  switch (use) {
    case 'lower-off':
    case 'top-rope':
      return lowerOff(sheet, use);
    case 'lead':
    case 'aid':
      return leadFalls(sheet, use);
    case 'rappel':
      return abseil(sheet);
    case 'rescue':
      return rescue(sheet);
    case 'belay':
      return stance(sheet);
    default:
      return told(sheet, 'mass_kg') ? hanging(sheet) : undefined;
  }
}

function cannot(sheet: Worksheet): Draft {
  sheet.cite('practice');
  return {
    stance: 'stop',
    verdict: { say: 'load-cannot' },
    points: [{ say: 'load-tell-more' }],
    recommend: {},
    reject: [],
    lacking: ['use'],
  };
}

export async function load(sheet: Worksheet): Promise<Draft> {
  const use = sheet.told('use');
  if (use === 'via-ferrata') {
    sheet.choice('use');
    return absorber(sheet);
  }
  if (told(sheet, 'fall_factor', 'fall_m')) return fall(sheet);
  if (use === 'highline' || use === 'traverse' || told(sheet, 'span_m', 'sag_m', 'tension_kn'))
    return line(sheet);
  const shared = legs(sheet);
  if (shared !== undefined) return shared;
  if (told(sheet, 'leg_a_deg', 'leg_b_deg')) return { ...cannot(sheet), lacking: ['leg_b_deg'] };
  // A load in kN with a use asks whether it holds; a weight asks what comes of it.
  if (told(sheet, 'diameter_mm', 'load_kn', 'signs')) return strength(sheet);
  return byUse(sheet) ?? cannot(sheet);
}
