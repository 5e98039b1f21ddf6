import { describe, expect, it } from 'vitest';
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
