/** What an anchor is held against: the least of the standard's type test, or more where a member asks for more. */
import { en959 } from '../engineering/index.ts';
import type { Side, Strength } from './capacity.ts';
import type { Worksheet } from './worksheet.ts';

export type Direction = 'tension' | 'shear';
export type Grade = 'passes' | 'uncertain' | 'fails';

/** What the 5 % fractile means: 19 of 20 hold it. */
const usualShare = 0.95;

export interface Need {
  readonly kn: Readonly<Record<Direction, number>>;
  /** Share of such anchors that must hold it; never below that of the 5 % fractile. */
  readonly share: number;
}

export function needOf(sheet: Worksheet): Need {
  const load = sheet.number('load_kn') ?? 0;
  const direction = sheet.told('load_direction');
  const asked = (unless: Direction): number => (direction === unless ? 0 : load);
  return {
    kn: {
      tension: Math.max(en959.axialStrength.value, asked('shear')),
      shear: Math.max(en959.radialStrength.value, asked('tension')),
    },
    share: Math.max(usualShare, (sheet.number('reliability_pct') ?? 0) / 100),
  };
}

/** passes: so large a share holds it; uncertain: only the mean does; fails: not even the mean. */
function gradeOf({ governs, modes, chanceBelow }: Side, kn: number, share: number): Grade {
  const means = Object.values(modes).map(({ mean }) => mean.value);
  if (Math.min(...means) < kn) return 'fails';
  if (governs.characteristic < kn) return 'uncertain';
  return share > usualShare && chanceBelow(kn) > 1 - share ? 'uncertain' : 'passes';
}

export function gradesOf({ tension, shear, upperBound }: Strength, need: Need): Record<Direction, Grade> {
  const out = gradeOf(tension, need.kn.tension, need.share);
  return {
    tension: upperBound && out === 'passes' ? 'uncertain' : out,
    shear: gradeOf(shear, need.kn.shear, need.share),
  };
}
