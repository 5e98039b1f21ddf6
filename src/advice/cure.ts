/** Working time and time to load, by the temperature of the rock. The data sheet always comes first. */
import type { Phrase } from '../contracts/phrase.ts';
import { type CureTime, cureTime, TooColdToCure, TooHotToCure } from '../engineering/index.ts';
import { numberCell, type Row, rangeCell, textCell } from '../rules/index.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

export interface CureGuide {
  readonly time: CureTime;
  /** Shortest usual working time at the next warmer line of the table, minutes: conservative. */
  readonly workingMinutes: number;
}

const at = (row: Row): number => numberCell(row, 'temperature_c');

/** A waiting time is shown, and held against, no shorter than it is. */
const roundedUp = (hours: number): number => Math.ceil(hours * 10) / 10;

const isWet = (moisture: string): boolean => moisture !== 'dry';

/** Usual times for a chemistry. Errors: TooColdToCure, TooHotToCure. */
export function cureGuide(sheet: Worksheet, adhesive: string, temperature: number): CureGuide {
  const chemistry = sheet.row('adhesives', adhesive);
  const rows = sheet.desk.rules.table('cure').rows.filter((row) => textCell(row, 'adhesive') === adhesive);
  for (const source of rows[0]?.sources ?? []) sheet.cite(source);
  const time = cureTime(
    temperature,
    {
      lowestTemperature: numberCell(chemistry, 'min_temperature_c'),
      usual: rows.map((row) => ({ temperature: at(row), hours: rangeCell(row, 'load_h')[1] })),
      wetFactor: 2,
    },
    isWet(sheet.choice('hole_moisture')),
  );
  const warmer = rows.filter((row) => at(row) >= temperature).toSorted((a, b) => at(a) - at(b))[0];
  if (warmer === undefined) throw new TooHotToCure(temperature, Math.max(...rows.map(at)));
  return { time, workingMinutes: rangeCell(warmer, 'gel_min')[0] };
}

/** One line for one chemistry, or why there is none. */
export function cureLine(sheet: Worksheet, adhesive: string, temperature: number): Phrase {
  const what = { fact: 'adhesive', value: adhesive };
  try {
    const { time, workingMinutes } = cureGuide(sheet, adhesive, temperature);
    return {
      say: time.wetFactor > 1 ? 'cure-line-wet' : 'cure-line',
      with: {
        what,
        hours: { value: roundedUp(time.hours), unit: 'h', exact: true },
        working: { value: workingMinutes, unit: 'min' },
        temperature: { value: temperature, unit: '°C', exact: true },
      },
    };
  } catch (error) {
    return cannotCure(error, what.value);
  }
}

function cannotCure(error: unknown, adhesive: string): Phrase {
  const what = { fact: 'adhesive', value: adhesive };
  if (error instanceof TooColdToCure)
    return { say: 'cure-too-cold', with: { what, lowest: { value: error.lowest, unit: '°C', exact: true } } };
  if (error instanceof TooHotToCure)
    return {
      say: 'cure-too-hot',
      with: { what, highest: { value: error.highest, unit: '°C', exact: true } },
    };
  throw error;
}

export async function cure(sheet: Worksheet): Promise<Draft> {
  sheet.cite('practice');
  const adhesive = sheet.choice('adhesive');
  const temperature = sheet.number('temperature_c');
  const since = sheet.number('hours_since');
  if (temperature === undefined)
    return {
      stance: 'stop',
      verdict: { say: 'cure-temperature' },
      points: [{ say: 'cure-sheet' }],
      recommend: {},
      reject: [],
      lacking: ['temperature_c'],
    };
  const all = sheet.desk.rules.table('adhesives').rows.map(({ id }) => id);
  if (adhesive === 'unknown')
    return {
      stance: 'tell',
      verdict: { say: 'cure-any', with: { temperature: { value: temperature, unit: '°C', exact: true } } },
      points: [...all.map((id) => cureLine(sheet, id, temperature)), { say: 'cure-sheet' }],
      recommend: {},
      reject: [],
    };
  const what = { fact: 'adhesive', value: adhesive };
  try {
    const { time, workingMinutes } = cureGuide(sheet, adhesive, temperature);
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
      what,
      hours: { value: roundedUp(time.hours), unit: 'h', exact: true } as const,
      temperature: { value: temperature, unit: '°C', exact: true } as const,
    };
    return {
      stance: enough ? 'limit' : 'stop',
      verdict: {
        say: since === undefined ? 'cure-wait' : enough ? 'cure-probably' : 'cure-not-yet',
        with: since === undefined ? args : { ...args, since: { value: since, unit: 'h', exact: true } },
      },
      points: [
        { say: 'cure-working', with: { working: { value: workingMinutes, unit: 'min' } } },
        ...(time.wetFactor > 1 ? [{ say: 'cure-wet' }] : []),
        { say: 'cure-sheet' },
        { say: 'cure-rock-temperature' },
      ],
      recommend: { hours: roundedUp(time.hours), working_min: workingMinutes },
      reject: [],
    };
  } catch (error) {
    return {
      stance: 'stop',
      verdict: cannotCure(error, adhesive),
      points: [{ say: 'cure-sheet' }],
      recommend: {},
      reject: [],
    };
  }
}
