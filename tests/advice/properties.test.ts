import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advise, canAdvise, OutOfRange } from '../../src/advice/index.ts';
import type { Advice } from '../../src/contracts/advice.ts';
import type { Facts } from '../../src/contracts/facts.ts';
import { adviceInReply, adviceText } from '../../src/render/answer.ts';
import { whyText } from '../../src/render/why.ts';
import { contradictions, domain, knownValues } from '../../src/rules/index.ts';
import { desk, rules, said, words } from '../support/desk.ts';

const topics = domain(rules, 'topic').filter(canAdvise);

function anyValues(): Record<string, fc.Arbitrary<string | number>> {
  const values: Record<string, fc.Arbitrary<string | number>> = {};
  for (const fact of rules.facts.values()) {
    if (fact.kind === 'number') {
      const [min, max] = fact.possible;
      values[fact.id] = fc.double({ min, max, noNaN: true });
    }
    if (fact.kind === 'choice' && fact.id !== 'topic')
      values[fact.id] = fc.constantFrom(...domain(rules, fact.id));
  }
  return values;
}

/** Any set of facts that the loader allows: some told, some not, some said to be unknown. */
const anyFacts: fc.Arbitrary<Facts> = fc
  .record(anyValues(), { requiredKeys: [] })
  .map((facts) => said(facts))
  .filter((facts) => contradictions(rules, facts).length === 0);

async function tryAdvise(topic: string, facts: Facts): Promise<Advice | null> {
  try {
    return await advise(desk, topic, facts);
  } catch (error) {
    // Outside a formula's range there is no advice, and the dialogue says which range.
    if (error instanceof OutOfRange) return null;
    throw error;
  }
}

describe('advice on any facts', () => {
  it('has cautions, deferral and sources, in words too, and no number that is none', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...topics), anyFacts, async (topic, facts) => {
        const advice = await tryAdvise(topic, facts);
        if (advice === null) return;
        expect(advice.cautions.length).toBeGreaterThan(0);
        expect(advice.sources.length).toBeGreaterThan(0);
        const text = adviceText(words, advice);
        for (const id of advice.cautions) {
          const { short = '', words: full } = rules.caution(id);
          expect(text.includes(full) || (short !== '' && text.includes(short)), id).toBe(true);
        }
        expect(text).toContain(words.say({ say: 'deferral' }));
        expect(text).toContain(rules.hash);
        const machine = JSON.stringify(adviceInReply(words, advice));
        const why = whyText(words, advice, {});
        for (const id of advice.cautions) expect(why).toContain(rules.caution(id).words);
        expect(`${text}${machine}${why}`).not.toMatch(/NaN|Infinity|undefined|\[object|null kN/);
      }),
      { numRuns: 400, seed: 20_261_125 },
    );
  }, 60_000);

  it('is the same for the same facts, whoever asks', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...topics), anyFacts, async (topic, facts) => {
        const [one, two] = [await tryAdvise(topic, facts), await tryAdvise(topic, facts)];
        expect(one).toEqual(two);
      }),
      { numRuns: 60, seed: 7 },
    );
  });
});

describe('the safe direction of whole answers', () => {
  const order = ['refuse', 'too-short', 'too-weak', 'near-edge', 'test-first', 'meets'];
  const bold = (advice: Advice | null): number =>
    order.indexOf(String(advice?.recommend.verdict ?? 'refuse'));
  const base = { anchor: 'glue-in-single-leg', adhesive: 'epoxy', diameter_mm: 12, edge_distance_mm: 2000 };
  const someRock = fc.constantFrom(...rules.table('rocks').rows.map(({ id }) => id));

  it('a longer bolt is never judged worse', async () => {
    await fc.assert(
      fc.asyncProperty(
        someRock,
        fc.integer({ min: 80, max: 150 }),
        fc.integer({ min: 1, max: 60 }),
        async (rock, length, more) => {
          const facts = { ...base, rock, rock_condition: 'sound', hole_moisture: 'dry' };
          const short = await tryAdvise('embedment', said({ ...facts, length_mm: length }));
          const long = await tryAdvise('embedment', said({ ...facts, length_mm: length + more }));
          expect(bold(long)).toBeGreaterThanOrEqual(bold(short));
        },
      ),
      { numRuns: 100, seed: 1 },
    );
  });

  it.each(['hole_moisture', 'rock_condition', 'shank', 'edge_distance_mm'])(
    'leaving out %s is never bolder than a good value of it',
    async (fact) => {
      const good = {
        hole_moisture: 'dry',
        rock_condition: 'sound',
        shank: 'threaded',
        edge_distance_mm: 2000,
      };
      await fc.assert(
        fc.asyncProperty(someRock, fc.integer({ min: 80, max: 200 }), async (rock, length) => {
          const facts: Record<string, string | number> = { ...base, ...good, rock, length_mm: length };
          const told = await tryAdvise('embedment', said(facts));
          delete facts[fact];
          const open = await tryAdvise('embedment', said(facts));
          expect(bold(open)).toBeLessThanOrEqual(bold(told));
        }),
        { numRuns: 60, seed: 2 },
      );
    },
  );

  it.each(['rain_washed', 'climate', 'coast', 'environment'])(
    'without %s no metal is suitable that is not suitable at its worst known value',
    async (fact) => {
      const definition = rules.facts.get(fact);
      const known = definition ? knownValues(rules, definition) : [];
      const metals = async (facts: Record<string, string>): Promise<Set<string>> => {
        const told = said(facts);
        if (contradictions(rules, told).length > 0) return new Set(domain(rules, 'metal'));
        const advice = await advise(desk, 'material', told);
        return new Set(advice.recommend.metal as readonly string[]);
      };
      for (const environment of domain(rules, 'environment')) {
        const rest: Record<string, string> = {
          environment,
          rain_washed: 'yes',
          climate: 'temperate',
          coast: 'baltic',
        };
        delete rest[fact];
        const open = await metals(rest);
        for (const value of known)
          for (const metal of open)
            expect(
              [...(await metals({ ...rest, [fact]: value }))],
              `${environment}, ${fact} ${value}`,
            ).toContain(metal);
      }
    },
    60_000,
  );
});
