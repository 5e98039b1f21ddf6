/** "Air is 15 but the rock only 7": where the warmth of both is told, numbers without a unit are degrees as well. */
import type { Language, RoleCue } from './compile.ts';
import type { Match, Word } from './phrases.ts';
import type { Quantity } from './quantities.ts';
import type { Item } from './sizes.ts';

const COLDEST = -30;
const HOTTEST = 60;

const isPlain = ({ unit, fraction, thread, inWords, listed, low, high }: Quantity): boolean =>
  unit === null && !fraction && !thread && !inWords && !listed && low >= COLDEST && high <= HOTTEST;

const isWarmth = ({ unit }: Quantity): boolean => unit === '°' || unit === 'C' || unit === 'F';

export function readWarmth(
  items: readonly Item[],
  words: readonly Word[],
  language: Language,
  cues: readonly Match<RoleCue>[],
): readonly Item[] {
  /** The word right before the number, fillers apart, says that it is of the air or of the rock. */
  const placeOf = ({ from }: Quantity): string | null => {
    const near = cues.findLast(
      (cue) => cue.to <= from && words[cue.from]?.sentence === words[from]?.sentence && isNear(cue.to, from),
    );
    const roles = near?.said.flatMap(({ role, side }) => (side.startsWith('before') ? [role] : [])) ?? [];
    if (roles.includes('air')) return 'air';
    return roles.includes('temperature_c') && !roles.includes('load_kn') ? 'rock' : null;
  };
  const isNear = (start: number, end: number): boolean => {
    let at = start;
    for (; at < end; ) {
      const filler = language.fillers.longest(words, at);
      if (filler === null) return false;
      at = filler.to;
    }
    return at === end;
  };
  const told = items.map((item) => {
    if (item.kind === 'size') return null;
    return isPlain(item.quantity) || isWarmth(item.quantity) ? placeOf(item.quantity) : null;
  });
  if (!told.includes('air') || !told.includes('rock')) return items;
  return items.map((item, index) =>
    item.kind === 'quantity' && told[index] != null && isPlain(item.quantity)
      ? { ...item, quantity: { ...item.quantity, unit: '°' } }
      : item,
  );
}
