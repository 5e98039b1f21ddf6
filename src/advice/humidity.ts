/** What damp air does to salt on a bolt that the sun warms: whether the brine on it is the one that cracks stainless steel. */
import type { Stance } from '../contracts/advice.ts';
import type { Measure, Phrase } from '../contracts/phrase.ts';
import { dewPoint, surfaceHumidity } from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

/** Common practice on laboratory work: brine strong enough to crack stainless steel, from this warmth on. */
const driest = 15;
const wettest = 60;
const hotFrom = 30;
const warmFrom = 20;

const filmOf = (humidity: number): string =>
  humidity > wettest ? 'dilute' : humidity >= driest ? 'concentrated' : 'dry';

const warmthOf = (celsius: number): string =>
  celsius >= hotFrom ? 'hot' : celsius >= warmFrom ? 'warm' : 'cool';

const stances: Readonly<Record<string, Stance>> = { cracks: 'stop', caution: 'limit' };

const celsius = (value: number): Measure => ({ value, unit: '°C', exact: true });
const percent = (value: number): Measure => ({ value, unit: '%' });

export async function humidity(sheet: Worksheet): Promise<Draft> {
  const airTemperature = sheet.number('air_temperature_c') ?? Number.NaN;
  const relativeHumidity = sheet.number('humidity_pct') ?? Number.NaN;
  const surfaceTemperature = sheet.number('surface_temperature_c') ?? airTemperature;
  const atSurface = sheet.compute(surfaceHumidity({ airTemperature, relativeHumidity, surfaceTemperature }));
  const dew = sheet.compute(dewPoint({ airTemperature, relativeHumidity }));
  sheet.choice('metal');
  sheet.know('salt_film', filmOf(atSurface));
  sheet.know('metal_warmth', warmthOf(surfaceTemperature));
  const { values, because } = await sheet.decide('damp-salt');
  sheet.cite('deliquescence-1977');
  const danger = String(values.danger);
  const args = { surface: celsius(surfaceTemperature), humidity: percent(atSurface) };
  return {
    stance: stances[danger] ?? 'tell',
    verdict: { say: `humidity-${danger}`, with: args },
    points: [
      ...(because.danger ?? []).map((rule): Phrase => ({ say: 'reason', with: { why: { rule } } })),
      {
        say: `humidity-film-${filmOf(atSurface)}`,
        with: { driest: percent(driest), wettest: percent(wettest) },
      },
      {
        say: 'humidity-dew',
        with: { dew: { value: Math.round(dew * 10) / 10, unit: '°C' } },
      },
      { say: 'humidity-changes' },
    ],
    recommend: { danger, surface_humidity_pct: Number(atSurface.toPrecision(2)) },
    reject: [],
  };
}
