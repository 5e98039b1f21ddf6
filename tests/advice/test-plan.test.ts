import { describe, expect, it } from 'vitest';
import { pullsPerGroup, smallestSeen } from '../../src/advice/compare.ts';
import { advise } from '../../src/advice/index.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { desk, said, words } from '../support/desk.ts';

const plan = (facts: Record<string, FactValue>) => advise(desk, 'pulltest-plan', said(facts));
const text = async (facts: Record<string, FactValue>) => adviceText(words, await plan(facts));
const proof = { test_purpose: 'proof', rock: 'granite', rock_condition: 'sound', use: 'lead' };

describe('planning a pull test', () => {
  it('nothing told: a few to failure first, then prove every one', async () => {
    expect((await plan({})).recommend).toEqual({
      test: 'failure-first',
      which: 'all',
      to_failure: 5,
      proof_kn: 6,
    });
  });

  // One in ten, at least three: common practice, no source. BS 8539 Annex B (second hand) asks 2.5 %, at least three.
  it.each([
    [40, '4 of 40'],
    [8, '3 of 8'],
    [2, '2 of 2'],
  ])('of %i lead anchors proves %s', async (count, words) => {
    expect(await text({ ...proof, count })).toContain(words);
  });

  it('proves every anchor where people hang', async () => {
    expect(await text({ ...proof, use: 'belay', count: 12 })).toContain('every anchor, 12 in all');
  });

  it('in weak rock a proof load alone is not enough', async () => {
    const { recommend } = await plan({ ...proof, rock: 'sandstone-soft' });
    expect(recommend.test).toBe('failure-first');
  });

  // Proof load 6 kN for 15 s: rope access practice (BS 7883), from memory. More may bend an eye: field reports.
  it('never proves above 8 kN, whatever is asked', async () => {
    expect((await plan({ ...proof, load_kn: 12 })).recommend.proof_kn).toBe(8);
    expect((await plan({ ...proof, load_kn: 2 })).recommend.proof_kn).toBe(6);
    expect(await text({ ...proof, load_kn: 12 })).toContain('too much for an anchor that stays');
  });

  it('warns when half of the reckoned 5 % value is below the proof load', async () => {
    const weak = {
      ...proof,
      anchor: 'glue-in-single-leg',
      adhesive: 'epoxy',
      diameter_mm: 10,
      length_mm: 70,
    };
    const { checks } = await plan(weak);
    expect(checks.find(({ id }) => id === 'proof-load')).toMatchObject({ kind: 'characteristic', ok: false });
  });

  // ASTM E488 from memory: supports at least twice the depth away; 100 mm deep: 200 mm each side, ring 400 mm.
  it('sets the feet of the frame by the depth', async () => {
    const answer = await text({ ...proof, embedment_mm: 100 });
    expect(answer).toContain('200 mm');
    expect(answer).toContain('400 mm');
  });

  // E = F·δ/2: 25 kN, 5 mm → 62.5 J; v = √(2E/m) = 11.18 m/s (physics).
  it('says what energy is stored, and forbids webbing', async () => {
    const { computed } = await plan({ test_purpose: 'failure' });
    expect(computed.find(({ id }) => id === 'frame-energy')?.value).toBeCloseTo(62.5, 9);
    expect(computed.find(({ id }) => id === 'thrown-speed')?.value).toBeCloseTo(11.18, 2);
    expect(await text({ test_purpose: 'failure' })).toContain('chain and rods only');
  });

  it('is refused for hollow rock', async () => {
    expect((await plan({ ...proof, rock_condition: 'hollow' })).recommend).toEqual({
      refusal: 'hollow-rock',
    });
  });
});

describe('what a plan says of number, load and rig', () => {
  // k(5) = 3.400, k(10) = 2.568 (NBS Handbook 91 Table A-7, from memory): 1 − 0.2·k = 0.32 and 0.49.
  it('few results cost strength', async () => {
    const answer = await text({ test_purpose: 'failure', count: 5 });
    expect(answer).toContain('with 5 results the 5 % value is about 32 % of the mean, with 10 about 49 %');
    expect(await text({ test_purpose: 'failure', count: 2 })).toContain('With fewer than 3 results');
  });

  // δ = 2.8016·0.2·√(2/(5 − 1)) = 0.396: normal quantiles, form of NIST/SEMATECH 7.2.2.2 turned round.
  it('so many pulls of each kind show so large a difference', async () => {
    const { recommend } = await plan({ test_purpose: 'compare', count: 10 });
    expect(recommend.test).toBe('failure');
    expect(await text({ test_purpose: 'compare', count: 10 })).toContain(
      'With 5 pulls of each kind only a difference of 40 % or more',
    );
    expect(smallestSeen(0.15, pullsPerGroup(0.15, 0.2))).toBeLessThanOrEqual(0.2);
  });

  it('plans steps, rig and distance for what the anchor may hold', async () => {
    const strong = {
      test_purpose: 'failure',
      rock: 'granite',
      rock_condition: 'sound',
      anchor: 'glue-in-twin-leg',
      adhesive: 'epoxy',
      diameter_mm: 12,
      length_mm: 100,
      hole_moisture: 'dry',
      shank: 'notched',
      edge_distance_mm: 1000,
      use: 'lead',
    };
    const [weak, known] = [await plan({ test_purpose: 'failure' }), await plan(strong)];
    const energyOf = ({ computed }: typeof weak) =>
      computed.find(({ id }) => id === 'frame-energy')?.value ?? 0;
    expect(energyOf(known)).toBeGreaterThan(energyOf(weak));
    // R = v²/g: 11.18² / 9.80665 = 12.75 m (physics), shown rounded up.
    expect(adviceText(words, weak)).toContain('up to 13 m');
    const answer = adviceText(words, known);
    for (const part of ['in steps of at most', 'rated for at least', 'let the pressure out', '/log'])
      expect(answer).toContain(part);
  });
});
