/**
 * What the advice on a size reckons, against sums by hand of the formulas as printed (own computation): N = τ·π·d·h,
 * wall τ_r = min(0.15·UCS, τ), cone 9.0·√60·h^1.5, 5 % over mean 0.3444 at V 0.60 and 0.4500 at V 0.45.
 */
import { describe, expect, it } from 'vitest';
import { strengthOf } from '../../src/advice/capacity.ts';
import { settingOf } from '../../src/advice/capacity-setting.ts';
import { advise } from '../../src/advice/index.ts';
import { Worksheet } from '../../src/advice/worksheet.ts';
import type { Advice } from '../../src/contracts/advice.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { simulateFailure } from '../../src/engineering/index.ts';
import { adviceText } from '../../src/render/answer.ts';
import { desk, said, words } from '../support/desk.ts';

type Told = Readonly<Record<string, FactValue | undefined>>;

const good = {
  rock: 'granite',
  rock_condition: 'sound',
  hole_moisture: 'dry',
  anchor: 'glue-in-single-leg',
  adhesive: 'epoxy',
  shank: 'threaded',
  metal: 'stainless-316',
  use: 'belay',
  diameter_mm: 12,
  length_mm: 100,
  edge_distance_mm: 2000,
};
const size = (facts: Told = {}): Promise<Advice> => advise(desk, 'embedment', said({ ...good, ...facts }));
const numbers = async (facts: Told = {}): Promise<readonly unknown[]> => {
  const { verdict, governing, mean_kn, characteristic_kn } = (await size(facts)).recommend;
  return [verdict, governing, mean_kn, characteristic_kn];
};
const text = async (facts: Told = {}): Promise<string> => adviceText(words, await size(facts));

describe('strength of the rock', () => {
  it.each([
    // 13·π·12·100 = 49.0 at the rod; V 0.60: × 0.3444.
    ['by its name', {}, ['test-first', 'bondSteel', 49, 17]],
    // 0.15·50 = 7.5; 7.5·π·14·100 = 33.0; V 0.45.
    ['grade R4, 50 to 100 MPa', { rock_grade: 'R4' }, ['test-first', 'bondRock', 33, 15]],
    ['rebound 45, 50 to 100 MPa', { rebound: 45 }, ['test-first', 'bondRock', 33, 15]],
    // Below 50 MPa the rock crushes under the shank (CEB-FIP MC90 3.10): 1.3·12²·√(25·200) = 13.2 kN along it.
    ['rebound 38, 25 to 50 MPa', { rebound: 38 }, ['too-weak', 'bondRock', 16, 7.4]],
    // Two classes told: the weaker counts.
    ['rebound 45 and grade R3', { rebound: 45, rock_grade: 'R3' }, ['too-weak', 'bondRock', 16, 7.4]],
    // 0.15·120 = 18 is above the bond: the rod governs, V 0.45.
    ['120 MPa as measured', { ucs_mpa: 120 }, ['meets', 'bondSteel', 49, 22]],
    // Granite is not known above 250 MPa: counted with that.
    ['a slip of the hand, 390 MPa', { ucs_mpa: 390 }, ['meets', 'bondSteel', 49, 22]],
    // By the hammer it is weak, whatever its name: grade R2 from 5 MPa, 0.75·π·14·100 = 3.3.
    ['granite that a knife scrapes', { rock_grade: 'R2' }, ['too-weak', 'bondRock', 3.3, 1.5]],
  ])('%s', async (_, facts, expected) => {
    expect(await numbers(facts)).toEqual(expected);
  });

  it('says how far the published laws spread, and with what it counts', async () => {
    const shown = await text({ rebound: 40 });
    // A published list of rebound correlations: 24.35 to 117.5 MPa at 40.
    expect(shown).toMatch(/rebound number of 40 .* 25 MPa .* 50 MPa .* 24 MPa .* 120 MPa/);
    expect(await text({ ucs_mpa: 390 })).toContain('such rock reaches 250 MPa');
  });

  it('takes a vein or a rotten skin as known by name only', async () => {
    const [, , sound] = await numbers({ rock_grade: 'R4' });
    const veined = await size({ rock_grade: 'R4', rock_condition: 'veined' });
    // 90 mm left: 7.5·π·14·90 = 29.7, V 0.60.
    expect(veined.recommend).toMatchObject({ mean_kn: 30, characteristic_kn: 10 });
    expect(Number(sound)).toBeGreaterThan(30);
  });
});

describe('what takes bond away', () => {
  it.each([
    ['a load that stays on, 0.6', { use: 'highline' }, 29],
    ['nobody told the use, so it may stay on', { use: undefined }, 29],
    ['a smooth shank, 0.8', { shank: 'smooth' }, 39],
    ['a damp hole, 0.7', { hole_moisture: 'damp' }, 34],
    ['45 °C in the sun, 0.65', { surface_temperature_c: 45 }, 32],
  ])('%s', async (_, facts, mean) => {
    expect((await size(facts)).recommend.mean_kn).toBe(mean);
  });

  it('epoxy on a face of 60 °C is not used, vinyl ester with 80 °C of its own may', async () => {
    expect((await size({ surface_temperature_c: 60 })).recommend.verdict).toBe('too-weak');
    const other = await size({ surface_temperature_c: 60, adhesive: 'vinyl-ester' });
    expect(other.recommend.verdict).toBe('test-first');
    expect(adviceText(words, other)).toContain('65 %');
  });

  it('warm rock while gluing counts as warm in use, cool rock says nothing of the summer', async () => {
    expect((await size({ temperature_c: 45 })).recommend.mean_kn).toBe(32);
    expect((await size({ temperature_c: 15 })).recommend.mean_kn).toBe(49);
  });
});

describe('what is near', () => {
  it('an edge takes from bond and cone, and gives the edge of the rock to break', async () => {
    // s_cr,Np = 7.3·12·√13 > 300: 300; A/A0 = (120 + 150)/300, ψ = 0.7 + 0.3·120/150; 49.0·0.9·0.94 = 41.5.
    const near = await size({ edge_distance_mm: 120 });
    expect(near.recommend).toMatchObject({ verdict: 'near-edge', mean_kn: 41 });
    expect(near.checks.some(({ id }) => id === 'shear.edge')).toBe(true);
  });

  it('nearer than it is deep is refused', async () => {
    expect((await size({ edge_distance_mm: 90 })).recommend.verdict).toBe('refuse');
  });

  it('a neighbour shares the rock, and is held against the distance to keep', async () => {
    const near = await size({ spacing_mm: 120 });
    // A/A0 of the pair (120 + 300)/300 = 1.4, half of it each: 49.0·0.7 = 34.3.
    expect(near.recommend.mean_kn).toBe(34);
    expect(near.checks.find(({ id }) => id === 'spacing')).toMatchObject({
      value: 120,
      limit: 300,
      ok: false,
    });
  });

  it('two legs hold more than one and less than two', async () => {
    const mean = async (anchor: string) => Number((await size({ anchor })).recommend.mean_kn);
    const [one, two] = [await mean('glue-in-single-leg'), await mean('glue-in-twin-leg')];
    expect(two).toBeGreaterThan(one);
    expect(two).toBeLessThan(2 * one);
  });
});

describe('standing off the rock', () => {
  it('20 mm are refused, with the bending strength that EN 1992-4 Eq. (7.37) gives', async () => {
    const advice = await size({ stick_out_mm: 20 });
    expect(advice.recommend.verdict).toBe('refuse');
    const bending = advice.checks.find(({ id }) => id === 'bending');
    // W_el = π·10.36³/32 = 109.1 mm³ for the thread; 1.2·109.1·500/(20 + 6) = 2.52 kN.
    expect(bending?.value).toBeCloseTo(2.518, 2);
    expect(bending?.ok).toBe(false);
    // Its length in the rock is what is left.
    expect(advice.checks.find(({ id }) => id === 'length')?.value).toBe(80);
  });

  it('up to half the diameter it counts as none (EN 1992-4, 6.2.2.3)', async () => {
    expect((await size({ stick_out_mm: 5, ucs_mpa: 120 })).recommend.verdict).not.toBe('refuse');
  });
});

describe('metal', () => {
  it('a thread has less metal, and so has a shank that nobody described', async () => {
    const steel = async (facts: Told) =>
      (await size(facts)).checks.find(({ id, kind }) => id === 'tension.steel' && kind === 'characteristic')
        ?.value;
    // ISO 898-1: M12 has 84.27 mm², at 500 MPa 42.1 kN; a plain bar 113.1 mm², 56.5 kN.
    expect(await steel({})).toBeCloseTo(42.13, 1);
    expect(await steel({ shank: undefined })).toBeCloseTo(42.13, 1);
    expect(await steel({ shank: 'notched' })).toBeCloseTo(56.55, 1);
  });
});

describe('what is asked of it', () => {
  it('a load told above the least of the standard counts, one below does not', async () => {
    const limit = async (facts: Told) =>
      (await size(facts)).checks.find(({ id }) => id === 'tension.cone')?.limit;
    expect(await limit({ load_kn: 22 })).toBe(22);
    expect(await limit({ load_kn: 8 })).toBe(15);
    expect(await limit({ load_kn: 22, load_direction: 'shear' })).toBe(15);
  });

  it('99 of 100 is harder than 95 of 100', async () => {
    expect((await size({ ucs_mpa: 120 })).recommend.verdict).toBe('meets');
    expect((await size({ ucs_mpa: 120, reliability_pct: 99.9 })).recommend.verdict).toBe('test-first');
  });

  it('an oblique pull lies between straight out and along the rock', async () => {
    const shown = await text({ pull_angle_deg: 45 });
    // ((cos 45°/16.9)^1.5 + (sin 45°/25.3)^1.5)^(−1/1.5) = 18.1 kN.
    expect(shown).toMatch(/at 45° from its axis: 5 % value 18 kN/);
    expect(await text({ load_direction: 'combined' })).toContain('Pulled out and sideways at once');
  });

  it('the chance of being weak is that of a simulation (own computation)', () => {
    const sheet = new Worksheet(desk, 'embedment', said({ ...good, rock_grade: 'R4' }));
    const { tension } = strengthOf(
      settingOf(sheet, { anchor: 'glue-in-single-leg', diameter: 12, length: 100 }),
    );
    const modes = Object.values(tension.modes).map(({ mean, scatter }) => ({ mean: mean.value, scatter }));
    const { chance, error } = simulateFailure(
      modes,
      { mean: 15, scatter: 1e-6 },
      { seed: 4, samples: 200_000, common: 0 },
    );
    expect(Math.abs(chance - tension.chanceBelow(15))).toBeLessThan(4 * error);
  });

  // V 0.45, 33.0 kN at the wall and 49.0 at the rod: Φ(−1.62) + Φ(−2.54) = 0.053 + 0.006; at 20 kN 0.171 + 0.031.
  it('says the chance with the load of the use and with what climbing seldom exceeds', async () => {
    const shown = await text({ rock_grade: 'R4' });
    expect(shown).toMatch(/Of 1000 such anchors, .* 15 kN .*: 59; .* 6 kN .*: fewer than 1; .* 4 kN/);
    expect(shown).toMatch(/UIAA 123 ask 20 kN .* 200 of 1000/);
    expect(await text({ anchor: 'wedge' })).not.toContain('f 1000');
  });
});

describe('the hole', () => {
  it('a hole wider than the adhesive fills is refused', async () => {
    expect((await size({ hole_diameter_mm: 16, adhesive: 'vinyl-ester' })).recommend.verdict).toBe('refuse');
    expect((await size({ hole_diameter_mm: 16 })).recommend.verdict).not.toBe('refuse');
  });
});
