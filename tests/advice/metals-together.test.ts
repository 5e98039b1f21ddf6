/** Pairs of metals and damp salt. Potentials: galvanic series in sea water (ASTM G82, from memory). */
import { describe, expect, it } from 'vitest';
import { advise } from '../../src/advice/index.ts';
import type { Advice } from '../../src/contracts/advice.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { desk, rules, said, words } from '../support/desk.ts';

type Told = Readonly<Record<string, FactValue | undefined>>;
const ask = (facts: Told): Promise<Advice> => advise(desk, 'material', said(facts));
const apart = (advice: Advice) => advice.checks.find(({ id }) => id === 'galvanic');

describe('two metals that touch', () => {
  it.each([
    // Furthest ends of the two ranges: −0.10 and 0.06; −1.03 and 0.00; −0.71 and −0.05.
    ['titanium-grade-2', 'stainless-304', undefined, 'poor', 0.16, 0.15],
    ['zinc-plated', 'stainless-316', 'sea-cliff', 'never', 1.03, 0.15],
    ['mild-steel', 'stainless-304', 'temperate-inland', 'never', 0.66, 0.25],
    ['zinc-plated', 'stainless-304', 'indoor', 'poor', 0.98, 0.5],
  ])('%s with %s, %s: %s', async (metal, metal_other, environment, pairing, value, limit) => {
    const advice = await ask({ metal, metal_other, environment });
    expect(advice.recommend.pairing).toBe(pairing);
    expect(apart(advice)?.value).toBeCloseTo(value, 9);
    expect(apart(advice)).toMatchObject({ limit, ok: false });
  });

  it('one metal throughout is good and has no difference', async () => {
    const advice = await ask({ metal: 'stainless-316', metal_other: 'stainless-316' });
    expect(advice.recommend.pairing).toBe('good');
    expect(apart(advice)).toBeUndefined();
    expect(adviceText(words, advice)).toContain('tell me where the crag is');
  });

  it('names the part that goes, and the small bolt in the big hanger', async () => {
    const bolt = adviceText(words, await ask({ metal: 'zinc-plated', metal_other: 'stainless-316' }));
    expect(bolt).toContain('the part of zinc-plated steel is the one that goes');
    expect(bolt).toContain('A small bolt in a big hanger');
    const hanger = adviceText(words, await ask({ metal: 'stainless-316', metal_other: 'zinc-plated' }));
    expect(hanger).toContain('the part of zinc-plated steel is the one that goes');
    expect(hanger).not.toContain('A small bolt in a big hanger');
  });

  it('is the same whichever is the bolt, for every pair', async () => {
    const metals = rules.table('metals').rows.map(({ id }) => id);
    for (const one of metals)
      for (const other of metals) {
        const [a, b] = [
          await ask({ metal: one, metal_other: other }),
          await ask({ metal: other, metal_other: one }),
        ];
        expect(a.recommend.pairing).toBe(b.recommend.pairing);
        expect(apart(a)?.value).toBe(apart(b)?.value);
      }
  });

  it('rejects what is wrong for the place, however well the two bear each other', async () => {
    const advice = await ask({
      metal: 'stainless-304',
      metal_other: 'stainless-304',
      environment: 'tropical-sea-cliff',
      rain_washed: 'no',
    });
    expect(advice.recommend.pairing).toBe('good');
    expect(advice.reject.map(({ what }) => what.value)).toContain('stainless-304');
  });

  it('ranks pitting by the number of ISO 15156-3 (from memory): 304 last, 6 % molybdenum first', async () => {
    const place = async (metal: string) =>
      (await ask({ metal, metal_other: 'titanium-grade-2' })).points.find(({ say }) => say === 'pitting-line')
        ?.with?.place;
    expect(await place('stainless-6mo')).toBe(1);
    expect(await place('duplex-2205')).toBe(2);
    expect(await place('stainless-316')).toBe(3);
    expect(await place('stainless-304')).toBe(4);
  });
});

describe('damp salt on a warm bolt', () => {
  const sea = { environment: 'sea-cliff', rain_washed: 'no', metal: 'stainless-316' };

  // Humidity at the surface by the Magnus formula (WMO-No. 8); the band is common practice on laboratory work.
  it.each([
    [28, 75, 45, 30, 'cracks'],
    [20, 70, 35, 29, 'cracks'],
    [30, 70, 50, 24, 'cracks'],
    [10, 90, 25, 35, 'caution'],
    [25, 60, 60, 9.5, 'caution'],
    [30, 80, 30, 80, 'caution'],
    [5, 80, 10, 57, 'low'],
  ])('air %s °C, %s %%, metal %s °C: %s %%, %s', async (air, rh, metal, surface, danger) => {
    const advice = await ask({
      ...sea,
      air_temperature_c: air,
      humidity_pct: rh,
      surface_temperature_c: metal,
    });
    expect(advice.recommend).toMatchObject({ danger, surface_humidity_pct: surface });
  });

  it('is no danger to titanium, and the worst while metal and place are not told', async () => {
    const air = { air_temperature_c: 28, humidity_pct: 75, surface_temperature_c: 45 };
    expect((await ask({ ...sea, ...air, metal: 'titanium-grade-2' })).recommend.danger).toBe('none');
    expect((await ask(air)).recommend.danger).toBe('cracks');
  });

  it('in the shade the metal is as warm as the air', async () => {
    const advice = await ask({ ...sea, air_temperature_c: 30, humidity_pct: 50 });
    expect(advice.recommend).toMatchObject({ danger: 'cracks', surface_humidity_pct: 50 });
  });
});
