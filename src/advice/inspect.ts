/** What a sign on an anchor means: what to do with it now, what next, and when to look again. */
import type { Stance } from '../contracts/advice.ts';
import type { Phrase } from '../contracts/phrase.ts';
import type { Draft } from './draft.ts';
import { exposureFrom } from './exposure.ts';
import type { Worksheet } from './worksheet.ts';

const stances: Readonly<Record<string, Stance>> = { trust: 'tell', limit: 'limit' };

export async function inspect(sheet: Worksheet): Promise<Draft> {
  const signs = sheet.choice('signs');
  exposureFrom(await sheet.decide('exposure'));
  const { values, because } = await sheet.decide('inspection', signs);
  const interval = await sheet.decide('inspection-interval');
  const verdict = String(values.verdict);
  return {
    stance: stances[verdict] ?? 'stop',
    verdict: { say: `inspect-${verdict}`, with: { signs: { fact: 'signs', value: signs } } },
    points: [
      ...(because.verdict ?? []).map((rule): Phrase => ({ say: 'reason', with: { why: { rule } } })),
      { say: `inspect-${verdict}-next` },
      { say: `inspect-interval-${String(interval.values.interval)}` },
      { say: 'inspect-hidden' },
    ],
    recommend: { verdict, interval: String(interval.values.interval) },
    reject: [],
    lacking: signs === 'unknown' ? ['signs'] : [],
  };
}
