/** "One leg 20, the other 40 degrees from vertical": the two angles nearest to what says so, in their order. */
import type { RoleCue } from './compile.ts';
import type { Match } from './phrases.ts';
import type { Quantity } from './quantities.ts';
import type { Item } from './sizes.ts';

const STEEPEST = 89;

export function legAngles(items: readonly Item[], cues: readonly Match<RoleCue>[]): readonly Quantity[] {
  const named = cues.find(({ said }) => said.some(({ role }) => role === 'leg_a_deg'));
  if (named === undefined) return [];
  const angles = items.flatMap((item) => {
    if (item.kind === 'size') return [];
    const { unit, inWords, fraction, low, high } = item.quantity;
    const fits = (unit === '°' || unit === null) && !inWords && !fraction && low >= 0 && high <= STEEPEST;
    return fits ? [item.quantity] : [];
  });
  const far = ({ from, to }: Quantity): number => (to <= named.from ? named.from - to : from - named.to);
  return angles
    .toSorted((a, b) => far(a) - far(b))
    .slice(0, 2)
    .toSorted((a, b) => a.from - b.from);
}
