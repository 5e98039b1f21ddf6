import { describe, expect, it } from 'vitest';
import { advise } from '../../src/advice/index.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { contradictions, domain } from '../../src/rules/index.ts';
import { desk, rules, said, words } from '../support/desk.ts';

const life = (facts: Record<string, FactValue | undefined>) => advise(desk, 'coating-life', said(facts));
const text = async (facts: Record<string, FactValue>) => adviceText(words, await life(facts));

describe('how long a metal lasts', () => {
  // Planning ranges are common practice, no source.
  it('316 inland: a range, called a planning range', async () => {
    const advice = await life({ metal: 'stainless-316', environment: 'temperate-inland' });
    expect(advice.recommend).toMatchObject({ suitability: 'suitable', years_from: 30, years_to: 50 });
    expect(adviceText(words, advice)).toContain('a planning range, never a guarantee');
  });

  // UIAA notices 2009-2015, as read: stainless anchors at warm sea cliffs broke within months to years.
  it('where the metal is not fit there is no life to plan', async () => {
    const advice = await life({ metal: 'stainless-316', environment: 'tropical-sea-cliff' });
    expect(advice).toMatchObject({ stance: 'stop', verdict: { say: 'life-none' } });
    expect(advice.recommend).not.toHaveProperty('years_from');
    expect(advice.cautions).toContain('invisible-cracks');
  });

  it('asks for the place', async () => {
    expect((await life({ metal: 'stainless-316' })).lacking).toEqual(['environment']);
  });

  // ISO 9224:2012 Table 3: steel, B2 0.575. Even loss of a 10 mm bar, own computation from the registered formulas.
  it('bare steel: the section that even rust would leave, as the best case', async () => {
    const { computed } = await life({ metal: 'mild-steel', environment: 'temperate-inland' });
    const value = (id: string): number => computed.find((one) => one.id === id)?.value ?? Number.NaN;
    const worst = value('steel-first-year-loss') * 1.5;
    const twenty = 20 ** 0.575;
    const loss = worst * (twenty + (0.575 * twenty * 5) / 20);
    expect(value('long-term-loss')).toBeCloseTo(loss, 6);
    expect(value('remaining-section')).toBeCloseTo(((10 - (2 * loss) / 1000) / 10) ** 2, 9);
    expect(await text({ metal: 'mild-steel', environment: 'temperate-inland' })).toContain('the best case');
  });

  it('zinc: the metal told sets the usual thickness, and it is said', async () => {
    const answer = await text({ metal: 'hot-dip-galvanised', environment: 'temperate-inland' });
    expect(answer).toContain('I took 40 µm');
    expect(answer).toContain('Plan 40 µm of zinc');
  });
});

describe('the safe direction', () => {
  const shortest = async (facts: Record<string, string | undefined>): Promise<number> => {
    const { recommend } = await life(facts);
    return Number(recommend.years_from ?? 0);
  };

  it('a climate or washing that nobody told never gives a longer life than the worst one', async () => {
    for (const metal of ['stainless-304', 'stainless-316', 'duplex-2205', 'stainless-6mo'])
      for (const environment of domain(rules, 'environment').filter((place) => place !== 'unknown')) {
        const open = await shortest({ metal, environment });
        for (const facts of [{ climate: 'tropical' }, { rain_washed: 'no' }] as const) {
          const told = { metal, environment, ...facts };
          if (contradictions(rules, said(told)).length === 0)
            expect(open, `${metal} ${environment}`).toBeLessThanOrEqual(
              Math.max(await shortest(told), await shortest({ ...told, rain_washed: 'yes' })),
            );
        }
      }
  });

  it('every planning life is a range from short to long, and none is above 50 years', () => {
    for (const { id, is } of rules.table('lives').rows) {
      const [from = 0, to = 0] = is.years as readonly number[];
      expect(from <= to && to <= 50 && from > 0, id).toBe(true);
    }
  });
});
