/** Cure, amount and gap, against sums by hand (own computation) of usual times from memory and practice. */
import { describe, expect, it } from 'vitest';
import { advise } from '../../src/advice/index.ts';
import type { Advice } from '../../src/contracts/advice.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { numberCell } from '../../src/rules/index.ts';
import { desk, rules, said, words } from '../support/desk.ts';

type Told = Readonly<Record<string, FactValue | undefined>>;

const on = (topic: string, facts: Told): Promise<Advice> => advise(desk, topic, said(facts));
const cure = (facts: Told): Promise<Advice> => on('cure', { hole_moisture: 'dry', ...facts });

describe('spells at different temperatures', () => {
  it.each([
    // Vinyl ester, slow end: 2 h at 10 °C; 3 h at 5 °C and 7 h at 0 °C, in log time 4.99 h at 2 °C: 3 + 0.80.
    ['6 h at 10 °C, then 4 h at 2 °C', 'vinyl-ester', [6, 4], [10, 2], 380],
    // Epoxy 48 h at 10 °C and 24 h at 20 °C: 41.8 h at 12 °C, 33.9 h at 15 °C; 4 °C is below its 5 °C.
    ['a night too cold for epoxy', 'epoxy', [10, 12, 8], [12, 4, 15], 47],
    ['cold alone counts nothing, however long', 'epoxy', [500], [3], 0],
    // Hotter than the hottest line, 6 h at 40 °C: counts as that line.
    ['3 h at 45 °C', 'epoxy', [3], [45], 50],
  ])('%s', async (_, adhesive, step_hours, step_temperature_c, share) => {
    const advice = await cure({ adhesive, step_hours, step_temperature_c });
    expect(advice.recommend.cured_pct).toBe(share);
    expect(advice.stance).toBe(share >= 100 ? 'limit' : 'stop');
  });

  it('a hole that is not known to be dry takes twice as long', async () => {
    const spells = { adhesive: 'vinyl-ester', step_hours: [6, 4], step_temperature_c: [10, 2] };
    expect((await cure({ ...spells, hole_moisture: undefined })).recommend.cured_pct).toBe(190);
  });

  it('needs no temperature of now, and without the adhesive says nothing is safe to load', async () => {
    const advice = await cure({ step_hours: [6, 4], step_temperature_c: [10, 2] });
    expect(advice.stance).toBe('stop');
    expect(advice.points.length).toBeGreaterThan(rules.table('adhesives').rows.length);
  });

  it('never counts more for less time or a colder spell', async () => {
    const share = async (hours: number, celsius: number) =>
      Number(
        (await cure({ adhesive: 'hybrid', step_hours: [hours, 2], step_temperature_c: [celsius, 8] }))
          .recommend.cured_pct,
      );
    for (let celsius = -15; celsius < 40; celsius += 5) {
      expect(await share(3, celsius)).toBeLessThanOrEqual(await share(3, celsius + 5));
      expect(await share(3, celsius)).toBeLessThanOrEqual(await share(4, celsius));
    }
  });
});

describe('the sheet that was read out comes first', () => {
  const sheet = { sheet_hours: [24, 12], sheet_temperature_c: [5, 10] };

  it.each([
    // The line of the next colder temperature, as sheets are read.
    [14, 12],
    [10, 12],
    [7, 24],
  ])('%s °C: %s h', async (temperature_c, hours) => {
    const advice = await cure({ adhesive: 'epoxy', temperature_c, ...sheet });
    expect(advice.recommend).toMatchObject({ hours, from: 'sheet' });
  });

  it('is doubled in a wet hole, and refused below its coldest line', async () => {
    const wet = await cure({ adhesive: 'epoxy', temperature_c: 10, hole_moisture: 'wet', ...sheet });
    expect(wet.recommend.hours).toBe(24);
    const cold = await cure({ adhesive: 'epoxy', temperature_c: 3, ...sheet });
    expect(cold.stance).toBe('stop');
    expect(cold.verdict.say).toBe('cure-below-sheet');
  });

  it('asks to read again what is far shorter than usual', async () => {
    const odd = await cure({ adhesive: 'epoxy', temperature_c: 10, sheet_hours: 1, sheet_temperature_c: 10 });
    expect(odd.points.map(({ say }) => say)).toContain('cure-sheet-short');
  });

  it('is used for spells too', async () => {
    const advice = await cure({
      adhesive: 'epoxy',
      step_hours: [6, 6],
      step_temperature_c: [10, 5],
      ...sheet,
    });
    // 6/12 + 6/24.
    expect(advice.recommend.cured_pct).toBe(75);
  });

  it('holds for the adhesive that was told and no other', async () => {
    const told = { hole_moisture: 'dry', overhead: 'no', temperature_c: 10, adhesive: 'epoxy', ...sheet };
    const shown = adviceText(words, await on('adhesive', told));
    expect(shown).toMatch(/epoxy at 10 °C .* 12 h before load/);
    expect(shown).toMatch(/vinyl ester, styrene-free at 10 °C .* 2 h before load/);
  });
});

describe('amount', () => {
  it('takes the cartridges that were told: 300 holes of 4.08 ml, a quarter lost, 20 ml a nozzle', async () => {
    // 300·4.084·1.25 = 1531.6 ml; 280 ml of 300 usable: 6; 360 of 380: 5.
    const told = { diameter_mm: 12, length_mm: 100, count: 300 };
    expect((await on('adhesive-amount', told)).recommend.cartridges).toBe(6);
    expect((await on('adhesive-amount', { ...told, cartridge_ml: 380 })).recommend.cartridges).toBe(5);
  });

  it('refuses what is past its date, whatever is asked of it', async () => {
    for (const topic of ['adhesive', 'adhesive-amount', 'cure', 'embedment', 'hole']) {
      const advice = await on(topic, { cartridge: 'expired', adhesive: 'epoxy', temperature_c: 15 });
      expect(advice.topic).toBe('refuse');
      expect(advice.recommend.refusal).toBe('expired-adhesive');
    }
  });
});

describe('the gap', () => {
  it('12 in 18 is 3 mm on each side: only what fills 3 mm', async () => {
    const advice = await on('adhesive-amount', { diameter_mm: 12, hole_diameter_mm: 18 });
    expect(advice.stance).toBe('stop');
    expect(advice.recommend).toMatchObject({ gap_mm: 3, gap: 'too-wide' });
    expect(JSON.stringify(advice.verdict.with?.who)).toBe(
      JSON.stringify([
        { fact: 'adhesive', value: 'epoxy' },
        { fact: 'adhesive', value: 'cement-grout' },
      ]),
    );
  });

  it.each([
    ['12 in 14', 14, 'vinyl-ester', undefined],
    ['12 in 12.5', 12.5, 'vinyl-ester', 'too-tight'],
    ['12 in 12', 12, 'vinyl-ester', 'too-tight'],
    ['12 in 16 with vinyl ester', 16, 'vinyl-ester', 'too-wide'],
    ['12 in 16 with epoxy', 16, 'epoxy', undefined],
    ['12 in 16 with nobody knows what', 16, undefined, 'too-wide'],
    ['12 in 22 with epoxy', 22, 'epoxy', 'too-wide'],
  ])('%s', async (_, hole_diameter_mm, adhesive, gap) => {
    const told = { diameter_mm: 12, length_mm: 100, hole_diameter_mm, adhesive };
    expect((await on('adhesive-amount', told)).recommend.gap).toBe(gap);
  });

  it('the rules say of each adhesive what its row says', async () => {
    for (const row of rules.table('adhesives').rows) {
      const widest = numberCell(row, 'widest_gap_mm');
      for (const each of [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5]) {
        const told = { diameter_mm: 12, hole_diameter_mm: 12 + 2 * each, temperature_c: 15 };
        const { reject } = await on('adhesive', told);
        const why = reject.find(({ what }) => what.value === row.id)?.why ?? [];
        const byGap = why.some((rule) => rule.startsWith('adhesive.gap-'));
        expect(byGap, `${row.id}, ${each} mm`).toBe(each > widest);
      }
    }
  });
});
