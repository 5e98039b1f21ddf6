import { describe, expect, it } from 'vitest';
import { advise } from '../../src/advice/index.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { contradictions, domain } from '../../src/rules/index.ts';
import { desk, rules, said, words } from '../support/desk.ts';

const cost = (facts: Record<string, FactValue>) => advise(desk, 'cost', said(facts));
const text = async (facts: Record<string, FactValue>) => adviceText(words, await cost(facts));

describe('cost over the years', () => {
  // Present worth of a yearly payment at 3 % for 10 years 8.530: NIST Handbook 135 tables, as read. 26/8.530 = 3.048.
  it('one choice: equal yearly cost of a chain of identical replacements', async () => {
    const { recommend } = await cost({ unit_cost: 6, labour_cost: 20, life_years: 10 });
    expect((recommend.yearly as readonly number[])[0]).toBeCloseTo(26 / 8.53, 2);
    expect(recommend.holes).toEqual([5]);
  });

  it('rate and horizon as told, else 3 % over 50 years, said aloud', async () => {
    const told = await text({
      unit_cost: 6,
      labour_cost: 20,
      life_years: 10,
      discount_pct: 0,
      horizon_years: 20,
    });
    expect(told).toContain('Reckoned over 20 years at 0 % a year');
    expect(await text({ unit_cost: 6, life_years: 10 })).toContain('Reckoned over 50 years at 3 % a year');
    expect(await text({ unit_cost: 6, life_years: 10 })).toContain('The work is not counted');
  });

  // Own computation: 40 + 40·1.03^−25 = 59.10 against 63 once.
  it('two metals at a place where both are safe: ranking, break-even and what it hangs on', async () => {
    const facts = {
      option_1: 'stainless-316',
      option_2: 'titanium-grade-2',
      unit_cost: [20, 43],
      labour_cost: 20,
      life_years: [25, 50],
      environment: 'temperate-inland',
    };
    const { recommend } = await cost(facts);
    expect(recommend).toMatchObject({ cheapest: 'stainless-316', holes: [2, 1] });
    const answer = await text(facts);
    expect(answer).toContain('59 in today');
    // 59.10 − 20 = 39.10 for the parts.
    expect(answer).toContain('With parts at 39 or less, titanium grade 2');
    expect(answer).toContain(
      'at 0 % titanium grade 2, at 3 % stainless steel 316, at 5 % stainless steel 316',
    );
  });

  it('the longest and the shortest life that may be told are compared as well', async () => {
    const facts = { option_1: 'stainless-316', option_2: 'titanium-grade-2', unit_cost: [20, 43] };
    const { recommend } = await cost({ ...facts, environment: 'temperate-inland', life_years: [0.5, 1000] });
    expect(recommend).toMatchObject({ cheapest: 'titanium-grade-2', holes: [1, 100] });
  });

  it('an own life told is used, a missing one is planned from the place by its short end', async () => {
    const answer = await text({
      option_1: 'stainless-316',
      option_2: 'titanium-grade-2',
      unit_cost: [20, 43],
      environment: 'temperate-inland',
    });
    expect(answer).toContain('The life of stainless steel 316 is planned from the place (30 to 50 years');
    expect(answer).toContain('lasts 30 years');
  });

  it('asks for what is missing and gives no number', async () => {
    expect((await cost({})).lacking).toEqual(['unit_cost']);
    expect((await cost({ unit_cost: 6 })).lacking).toEqual(['life_years']);
    const open = await cost({ option_1: 'stainless-316', option_2: 'titanium-grade-2', unit_cost: [20, 43] });
    expect(open.lacking).toEqual(['environment']);
    expect(open.recommend).toEqual({});
  });
});

describe('safety comes first', () => {
  it('without the place metals are not ranked, however cheap', async () => {
    const { recommend, verdict } = await cost({
      option_1: 'zinc-plated',
      option_2: 'stainless-316',
      unit_cost: [6, 20],
      life_years: [10, 25],
    });
    expect(recommend).not.toHaveProperty('cheapest');
    expect(verdict.say).toBe('cost-place');
  });

  it('at every place and for every pair, what is unfit there is never ranked', async () => {
    const metals = domain(rules, 'metal').filter((metal) => metal !== 'unknown');
    for (const environment of domain(rules, 'environment').filter((place) => place !== 'unknown'))
      for (const climate of ['cold', 'tropical', undefined]) {
        const place = { environment, climate };
        if (contradictions(rules, said(place)).length > 0) continue;
        const fit = await advise(desk, 'material', said(place));
        const unfit = fit.reject.map(({ what }) => what.value);
        for (const metal of metals) {
          const { recommend, reject } = await advise(
            desk,
            'cost',
            said({ ...place, option_1: metal, option_2: 'titanium-grade-2', unit_cost: [0.01, 500] }),
          );
          const ranked = recommend.options as readonly string[];
          for (const one of ranked) expect(unfit, `${environment} ${climate}`).not.toContain(one);
          if (unfit.includes(metal)) expect(reject.map(({ what }) => what.value)).toContain(metal);
        }
      }
  }, 60_000);

  it('when nothing is safe there, it says so and compares nothing', async () => {
    const advice = await cost({
      option_1: 'zinc-plated',
      option_2: 'stainless-304',
      unit_cost: [6, 10],
      life_years: [5, 5],
      environment: 'tropical-sea-cliff',
    });
    expect(advice).toMatchObject({ stance: 'stop', verdict: { say: 'cost-none-safe' }, recommend: {} });
    expect(advice.reject).toHaveLength(2);
  });
});
