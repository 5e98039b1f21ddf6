/** Cured after spells at different temperatures: "6 h at 10 °C, then 4 h at 2 °C". Spells that are too cold count nothing. */
import type { Phrase } from '../contracts/phrase.ts';
import {
  type CureHistory,
  cureHistory,
  cureTime,
  type Spell,
  TooColdToCure,
  TooHotToCure,
} from '../engineering/index.ts';
import { adhesiveTerm, celsius, cureData, hoursOf, isWet, roundedUp, sheetLines } from './cure-guide.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

export function spellsTold(sheet: Worksheet): readonly Spell[] {
  const hours = sheet.numbers('step_hours');
  const temperatures = sheet.numbers('step_temperature_c');
  return temperatures.flatMap((temperature, index) => {
    const spent = hours[index];
    return spent === undefined ? [] : [{ temperature, hours: spent }];
  });
}

const percent = (share: number): string => String(Math.floor(100 * share));

const spellLine = ({ temperature, hours, share }: CureHistory['spells'][number]): Phrase =>
  share === undefined
    ? { say: 'cure-spell-cold', with: { hours: hoursOf(hours), temperature: celsius(temperature) } }
    : {
        say: 'cure-spell',
        with: {
          hours: hoursOf(hours),
          temperature: celsius(temperature),
          needed: hoursOf(roundedUp(share.inputs.needed ?? 0)),
          share: percent(share.value),
        },
      };

/** How much longer at the temperature of the last spell; none if that is too cold or too hot. */
function restLine(sheet: Worksheet, adhesive: string, share: number, last: Spell | undefined): Phrase[] {
  if (last === undefined || share >= 1) return [];
  try {
    const { hours } = cureTime(last.temperature, cureData(sheet, adhesive), isWet(sheet));
    return [
      {
        say: 'cure-spells-rest',
        with: { hours: hoursOf(roundedUp((1 - share) * hours)), temperature: celsius(last.temperature) },
      },
    ];
  } catch (error) {
    if (error instanceof TooColdToCure || error instanceof TooHotToCure)
      return [{ say: 'cure-spells-warmer' }];
    throw error;
  }
}

/** For each chemistry while it is not known which: the members know what they had in hand. */
function ofEach(sheet: Worksheet, spells: readonly Spell[]): Draft {
  const all = sheet.desk.rules.table('adhesives').rows.map(({ id }) => id);
  return {
    stance: 'stop',
    verdict: { say: 'cure-spells-which' },
    points: [
      ...all.map((id): Phrase => {
        const { share } = cureHistory(spells, cureData(sheet, id), isWet(sheet));
        return { say: 'cure-spells-line', with: { what: adhesiveTerm(id), share: percent(share) } };
      }),
      { say: 'cure-sheet' },
    ],
    recommend: {},
    reject: [],
  };
}

export function cureAfterSpells(sheet: Worksheet, adhesive: string): Draft {
  const spells = spellsTold(sheet);
  if (adhesive === 'unknown' && sheetLines(sheet).length === 0) return ofEach(sheet, spells);
  const wet = isWet(sheet);
  const { share, spells: shares } = cureHistory(spells, cureData(sheet, adhesive), wet);
  for (const { share: one } of shares) if (one !== undefined) sheet.compute(one);
  const enough = sheet.check({
    id: 'cure-share',
    name: { say: 'check-cure-share' },
    value: Math.floor(100 * share),
    limit: 100,
    unit: '%',
    kind: 'plain',
  });
  return {
    stance: enough ? 'limit' : 'stop',
    verdict: {
      say: enough ? 'cure-spells-probably' : 'cure-spells-not-yet',
      with: { what: adhesiveTerm(adhesive), share: percent(share) },
    },
    points: [
      ...shares.map(spellLine),
      ...restLine(sheet, adhesive, share, spells.at(-1)),
      ...(wet ? [{ say: 'cure-wet' }] : []),
      { say: sheetLines(sheet).length > 0 ? 'cure-by-sheet' : 'cure-sheet' },
      { say: 'cure-rock-temperature' },
    ],
    recommend: { cured_pct: Number(percent(share)) },
    reject: [],
  };
}
