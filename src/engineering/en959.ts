/**
 * Minimums of EN 959:2018 for rock anchors, clauses 4.2.5 to 4.3.3. The loads are type-test minimums in a
 * good concrete block, neither working loads nor 5 % fractiles in any rock: never call them safe loads.
 */

export type AnchorFamily = 'glued-in' | 'mechanical';

export interface Minimum {
  readonly id: string;
  readonly words: string;
  readonly clause: string;
  readonly value: number;
  readonly unit: string;
}

const minimum = (id: string, words: string, clause: string, value: number, unit: string): Minimum => ({
  id,
  words,
  clause,
  value,
  unit,
});

export const en959 = {
  gluedLength: minimum('glued-length', 'installed length of a glued-in anchor', '4.2.6', 70, 'mm'),
  mechanicalLengthPerHole: minimum(
    'mechanical-length-per-hole',
    'installed length of a mechanical anchor over the diameter of its hole',
    '4.2.6',
    5,
    '',
  ),
  attachmentThickness: minimum('attachment-thickness', 'thickness where the rope may run', '4.2.8', 9, 'mm'),
  axialStrength: minimum('axial-strength', 'axial load held in the type test', '4.3.1', 15, 'kN'),
  radialStrength: minimum('radial-strength', 'radial load held in the type test', '4.3.2', 25, 'kN'),
  linkStrength: minimum('link-strength', 'load held by linking elements of a belay', '4.3.3', 25, 'kN'),
} as const satisfies Record<string, Minimum>;

export interface MinimumCheck {
  readonly minimum: Minimum;
  readonly given: number;
  readonly required: number;
  readonly unit: string;
  readonly ok: boolean;
}

function check(
  limit: Minimum,
  given: number,
  required = limit.value,
  unit: string = limit.unit,
): MinimumCheck {
  return { minimum: limit, given, required, unit, ok: given >= required };
}

/**
 * Installed length against EN 959:2018, 4.2.6: glued-in 70 mm, mechanical 5 times the drilled hole; mm.
 * A NaN fails. Worked: glued-in 65 → not ok; mechanical, hole 12, 60 → ok.
 */
export function checkInstalledLength(
  family: AnchorFamily,
  installed: number,
  holeDiameter: number,
): MinimumCheck {
  return family === 'glued-in'
    ? check(en959.gluedLength, installed)
    : check(
        en959.mechanicalLengthPerHole,
        installed,
        en959.mechanicalLengthPerHole.value * holeDiameter,
        'mm',
      );
}

/** Thickness of the place where the rope may run, EN 959:2018, 4.2.8; mm. Worked: 8.9 → not ok, 9 → ok. */
export function checkAttachmentThickness(thickness: number): MinimumCheck {
  return check(en959.attachmentThickness, thickness);
}

/** A tested strength against EN 959:2018, 4.3.1 to 4.3.3; kN. Worked: axial 15 → ok, 14.9 → not ok. */
export function checkStrength(direction: 'axial' | 'radial' | 'link', strength: number): MinimumCheck {
  const limits = { axial: en959.axialStrength, radial: en959.radialStrength, link: en959.linkStrength };
  return check(limits[direction], strength);
}
