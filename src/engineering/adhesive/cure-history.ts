import { defineFormula, type Result } from '../formula.ts';
import { input } from '../quantities.ts';
import { type CureData, cureTime, TooColdToCure, TooHotToCure } from './cure.ts';

/**
 * Share of the cure that one spell brings: s = t/t_c. t hours at one temperature, t_c hours that the adhesive needs at
 * it; no unit. Shares of spells add up, the adhesive is cured at 1.
 * Source: common practice, no source; the same rule as the sum of equivalent ages of concrete. Errors: OutOfRange.
 * Worked: 6 h of 4 h → 1.5; 10 h of 48 h → 0.2083.
 */
export const cureShare = defineFormula({
  id: 'cure-share',
  title: 'Share of the cure that a spell brings',
  symbols: 's = t/t_c, cured at Σs ≥ 1',
  source: 'practice',
  clause: 'sum of spells at different temperatures',
  inputs: {
    hours: input('t', 'hours at one temperature', 'h', 0, 100_000),
    needed: input('t_c', 'hours to load at that temperature', 'h', 0.01, 5000),
  },
  unit: '',
  kind: 'plain',
  compute: (i) => i.hours / i.needed,
});

export interface Spell {
  readonly temperature: number;
  readonly hours: number;
}

export interface SpellShare extends Spell {
  /** Absent for a spell that was too cold to count. */
  readonly share: Result | undefined;
}

export interface CureHistory {
  /** Cured at 1. */
  readonly share: number;
  readonly spells: readonly SpellShare[];
}

/**
 * What spells at different temperatures add up to, each s = t/t_c(T) by `cureTime`; no unit. A spell below the lowest
 * temperature counts nothing, one above the hottest line of the data counts as that line.
 * Source: common practice, no source. Errors: RangeError for a value that is no number, OutOfRange.
 * Worked: 24 h needed at 5 °C, 12 h at 10 °C by the sheet: 6 h at 10 °C and 6 h at 5 °C → 0.5 + 0.25 = 0.75.
 */
export function cureHistory(spells: readonly Spell[], data: CureData, wet: boolean): CureHistory {
  const shares = spells.map((spell): SpellShare => {
    const needed = hoursAt(spell.temperature, data, wet);
    return { ...spell, share: needed === undefined ? undefined : cureShare({ hours: spell.hours, needed }) };
  });
  return { share: shares.reduce((sum, { share }) => sum + (share?.value ?? 0), 0), spells: shares };
}

function hoursAt(temperature: number, data: CureData, wet: boolean): number | undefined {
  try {
    return cureTime(temperature, data, wet).hours;
  } catch (error) {
    if (error instanceof TooColdToCure) return undefined;
    if (error instanceof TooHotToCure) return cureTime(error.highest, data, wet).hours;
    throw error;
  }
}
