/** How long until it may be loaded, and whether it is cured. The data sheet always comes first. */
import type { Phrase } from '../contracts/phrase.ts';
import {
  adhesiveTerm,
  cannotCure,
  celsius,
  cureGuide,
  cureLine,
  hoursOf,
  roundedUp,
  sheetLines,
} from './cure-guide.ts';
import { cureAfterSpells, spellsTold } from './cure-spells.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

const stop = (verdict: Phrase): Draft => ({
  stance: 'stop',
  verdict,
  points: [{ say: 'cure-sheet' }],
  recommend: {},
  reject: [],
});

function ofEach(sheet: Worksheet, temperature: number): Draft {
  const all = sheet.desk.rules.table('adhesives').rows.map(({ id }) => id);
  return {
    stance: 'tell',
    verdict: { say: 'cure-any', with: { temperature: celsius(temperature) } },
    points: [...all.map((id) => cureLine(sheet, id, temperature)), { say: 'cure-sheet' }],
    recommend: {},
    reject: [],
  };
}

function ofOne(sheet: Worksheet, adhesive: string, temperature: number): Draft {
  const since = sheet.number('hours_since');
  const { time, workingMinutes, oddlyShort } = cureGuide(sheet, adhesive, temperature);
  const bySheet = time.from === 'sheet';
  const enough =
    since === undefined ||
    sheet.check({
      id: 'cured',
      name: { say: 'check-cured' },
      value: since,
      limit: roundedUp(time.hours),
      unit: 'h',
      kind: 'plain',
    });
  const args = {
    what: adhesiveTerm(adhesive),
    hours: hoursOf(roundedUp(time.hours)),
    temperature: celsius(temperature),
  };
  return {
    stance: enough ? 'limit' : 'stop',
    verdict: {
      say: since === undefined ? 'cure-wait' : enough ? 'cure-probably' : 'cure-not-yet',
      with: since === undefined ? args : { ...args, since: hoursOf(since) },
    },
    points: [
      ...(oddlyShort ? [{ say: 'cure-sheet-short' }] : []),
      ...(workingMinutes === undefined
        ? []
        : [{ say: 'cure-working', with: { working: { value: workingMinutes, unit: 'min' } } as const }]),
      ...(time.wetFactor > 1 ? [{ say: 'cure-wet' }] : []),
      { say: bySheet ? 'cure-by-sheet' : 'cure-sheet' },
      { say: 'cure-rock-temperature' },
    ],
    recommend: {
      hours: roundedUp(time.hours),
      from: time.from,
      ...(workingMinutes === undefined ? {} : { working_min: workingMinutes }),
    },
    reject: [],
  };
}

export async function cure(sheet: Worksheet): Promise<Draft> {
  sheet.cite('practice');
  const adhesive = sheet.choice('adhesive');
  if (spellsTold(sheet).length > 0) return cureAfterSpells(sheet, adhesive);
  const temperature = sheet.number('temperature_c');
  if (temperature === undefined) return stop({ say: 'cure-temperature' });
  if (adhesive === 'unknown' && sheetLines(sheet).length === 0) return ofEach(sheet, temperature);
  try {
    return ofOne(sheet, adhesive, temperature);
  } catch (error) {
    return {
      ...stop(cannotCure(sheet, error, adhesive)),
      points: [{ say: sheetLines(sheet).length > 0 ? 'cure-by-sheet' : 'cure-sheet' }],
    };
  }
}
