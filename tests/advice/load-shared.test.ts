/** Two legs and stretched lines, and the safe direction of every load. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advise, OutOfRange } from '../../src/advice/index.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { desk, said, words } from '../support/desk.ts';

type Told = Readonly<Record<string, FactValue | undefined>>;

const load = (facts: Told) => advise(desk, 'load', said(facts));
const number = async (facts: Told, name = 'load_kn'): Promise<number> =>
  Number((await load(facts)).recommend[name]);
const text = async (facts: Told): Promise<string> => adviceText(words, await load(facts));

describe('two legs', () => {
  // Sling angle factors of rigging handbooks for two legs, in percent of half the load (from memory).
  it.each([
    [60, 115.5],
    [90, 141.4],
    [120, 200],
  ])('%s degrees between them: %s %% of half the load on each', async (angle, percent) => {
    const share = percent / 200;
    expect(await number({ angle_deg: angle, load_kn: 10 }, 'leg_kn')).toBeCloseTo(10 * share, 1);
    expect(await text({ angle_deg: angle, load_kn: 10 })).toContain(
      `${Math.round(100 * share)} % of the load`,
    );
  });

  // Statics, own computation: sin 40°/sin 60° and sin 20°/sin 60°.
  it('20 and 40 degrees from the vertical: 0.742 and 0.395 of the load', async () => {
    const facts = { leg_a_deg: 20, leg_b_deg: 40, load_kn: 10 };
    expect(await number(facts, 'leg_kn')).toBeCloseTo(7.43, 2);
    expect(await number(facts, 'other_leg_kn')).toBeCloseTo(3.95, 2);
  });

  it('each bolt is planned for all of it, whatever the angle', async () => {
    for (const angle of [0, 30, 60, 90, 120, 150, 170]) {
      const facts = { angle_deg: angle, load_kn: 5 };
      expect(await number(facts)).toBeGreaterThanOrEqual(5);
      expect(await number(facts)).toBeGreaterThanOrEqual(await number(facts, 'leg_kn'));
      expect(await text(facts)).toContain('Plan each bolt for all of it');
    }
  });

  it('above 90 degrees it says no, by one angle or by two', async () => {
    for (const facts of [
      { angle_deg: 91, mass_kg: 80 },
      { leg_a_deg: 50, leg_b_deg: 45, mass_kg: 80 },
      { leg_a_deg: 20, leg_b_deg: 40, angle_deg: 100, mass_kg: 80 },
    ]) {
      const advice = await load(facts);
      expect(advice.stance).toBe('stop');
      expect(words.say(advice.verdict)).toMatch(/^Too wide/);
    }
    expect((await load({ angle_deg: 60, mass_kg: 80 })).stance).toBe('tell');
    // Common practice, no source: up to 60 degrees.
    expect((await load({ angle_deg: 61, mass_kg: 80 })).stance).toBe('limit');
    expect(await text({ angle_deg: 61, mass_kg: 80 })).toContain('60° or less is good practice');
  });

  // Elastic sling, 10 cm of slack in 1 m, own computation: 8.75 kN for 80 kg.
  it('tells what comes when one leg fails', async () => {
    expect(await text({ angle_deg: 60, mass_kg: 80 })).toMatch(/one leg fails.* 8\.7 kN/);
  });

  it('an anchor that people are lowered from gets both strands', async () => {
    const still = await number({ angle_deg: 60, mass_kg: 80 });
    const lowered = await number({ angle_deg: 60, mass_kg: 80, use: 'lower-off' });
    expect(lowered / still).toBeCloseTo(1.66, 1);
  });
});

describe('stretched lines', () => {
  // Statics, T = W/(2·sin(atan(2s/L))); own computation.
  it.each([
    [{ span_m: 50, sag_m: 2.5, load_kn: 0.8 }, 4.02],
    [{ span_m: 50, sag_m: 2.5, mass_kg: 80 }, 3.942],
    [{ span_m: 100, sag_m: 6, load_kn: 1 }, 4.197],
    // With its own weight: exact catenary of the line (0.1843 kN across) beside the load; own computation.
    [{ span_m: 100, sag_m: 4, mass_kg: 100, line_g_per_m: 60 }, 6.335],
  ])('%o pulls %s kN', async (facts, tension) => {
    expect(await number(facts, 'tension_kn')).toBeCloseTo(tension, 1);
  });

  it('a tension gives the sag back that gives this tension', async () => {
    // 0.8 kN on 40 m: sag 2 m pulls 4.02 kN (own computation).
    const shown = await text({ span_m: 40, tension_kn: 4.02, load_kn: 0.8 });
    expect(shown).toContain('with 2.0 m');
    expect(await number({ span_m: 40, tension_kn: 9, sag_m: 2, load_kn: 0.8 }, 'tension_kn')).toBe(9);
  });

  // Highline measurements (read, not peer reviewed): leash fall over walking, kN.
  it.each([
    [4.3, 2.4],
    [4.0, 2.1],
    [5.3, 3.1],
  ])('its movement covers the measured %s over %s', async (fall, walking) => {
    expect(
      await number({ span_m: 41, tension_kn: walking, mass_kg: 57 }, 'moving_kn'),
    ).toBeGreaterThanOrEqual(fall);
  });

  it('is never cleared: a rigger decides, each anchor point three times the tension', async () => {
    const advice = await load({ use: 'highline', span_m: 60, sag_m: 4, mass_kg: 80 });
    expect(advice.stance).toBe('stop');
    expect(words.say(advice.verdict)).toContain('A qualified rigger decides');
    expect(Number(advice.recommend.load_kn) / Number(advice.recommend.tension_kn)).toBeCloseTo(3, 1);
    expect(advice.cautions).toContain('rigger-decides');
  });

  // Slackliners' published advice, read on a community sheet: 7 kN at most.
  it.each([
    [3.67, true],
    [3.68, false],
  ])('a line at %s kN that moves is held against 7 kN', async (tension_kn, ok) => {
    const { checks } = await load({ span_m: 40, tension_kn, mass_kg: 80 });
    const most = checks.find(({ id }) => id === 'line-limit');
    expect(most).toMatchObject({ value: 7, kind: 'plain', ok });
  });

  it('without span, sag or tension there is no number, and it says what to tell', async () => {
    const advice = await load({ use: 'highline', mass_kg: 80 });
    expect(advice.lacking).toEqual(['span_m', 'sag_m']);
    expect(advice.computed).toEqual([]);
  });
});

describe('the safe direction', () => {
  const mass = fc.integer({ min: 40, max: 150 });
  const factor = fc.double({ min: 0, max: 2, noNaN: true });
  const runs = { numRuns: 40, seed: 5 };

  it('heavier, further, wider and flatter never pull less', async () => {
    await fc.assert(
      fc.asyncProperty(mass, fc.integer({ min: 1, max: 80 }), factor, async (kg, more, f) => {
        const pairs: readonly (readonly [Told, Told])[] = [
          [
            { fall_factor: f, mass_kg: kg },
            { fall_factor: f, mass_kg: kg + more },
          ],
          [
            { fall_factor: f, mass_kg: kg },
            { fall_factor: Math.min(2, f + more / 80), mass_kg: kg },
          ],
          [
            { angle_deg: more, mass_kg: kg },
            { angle_deg: 2 * more, mass_kg: kg },
          ],
          [
            { span_m: 50, sag_m: 5, mass_kg: kg },
            { span_m: 50, sag_m: 5 - more / 20, mass_kg: kg },
          ],
          [
            { use: 'lower-off', mass_kg: kg },
            { use: 'lower-off', mass_kg: kg + more },
          ],
        ];
        for (const [less, worse] of pairs)
          expect(await number(worse)).toBeGreaterThanOrEqual(await number(less));
      }),
      runs,
    );
  });

  it('an untold rope never pulls less than any that EN 892 allows, nor an untold weight than 100 kg', async () => {
    await fc.assert(
      fc.asyncProperty(factor, fc.double({ min: 7, max: 12, noNaN: true }), mass, async (f, label, kg) => {
        const open = await number({ fall_factor: f, mass_kg: kg });
        const told = await number({ fall_factor: f, mass_kg: kg, rope_peak_kn: label });
        expect(open).toBeGreaterThanOrEqual(told);
        expect(await number({ fall_factor: f })).toBeGreaterThanOrEqual(
          await number({ fall_factor: f, mass_kg: Math.min(kg, 100) }),
        );
      }),
      runs,
    );
  });

  it('any numbers give a finite load, a refusal, or say that they are out of range', async () => {
    const any = fc.record(
      {
        fall_factor: fc.double({ min: 0, max: 20, noNaN: true }),
        mass_kg: fc.double({ min: 1, max: 2000, noNaN: true }),
        load_kn: fc.double({ min: 0.01, max: 1000, noNaN: true }),
        angle_deg: fc.double({ min: 0, max: 179, noNaN: true }),
        leg_a_deg: fc.double({ min: 0, max: 89, noNaN: true }),
        leg_b_deg: fc.double({ min: 0, max: 89, noNaN: true }),
        span_m: fc.double({ min: 0.1, max: 5000, noNaN: true }),
        sag_m: fc.double({ min: 0.001, max: 2500, noNaN: true }),
        tension_kn: fc.double({ min: 0.01, max: 1000, noNaN: true }),
        line_g_per_m: fc.double({ min: 5, max: 5000, noNaN: true }),
        use: fc.constantFrom('lead', 'belay', 'lower-off', 'rescue', 'highline', 'via-ferrata', 'other-load'),
      },
      { requiredKeys: [] },
    );
    await fc.assert(
      fc.asyncProperty(any, async (facts) => {
        try {
          const { recommend, checks } = await load(facts);
          for (const value of Object.values(recommend))
            if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
          for (const { value, limit, ok } of checks) expect(ok).toBe(value >= limit);
        } catch (error) {
          if (!(error instanceof OutOfRange)) throw error;
        }
      }),
      { numRuns: 300, seed: 11 },
    );
  });
});
