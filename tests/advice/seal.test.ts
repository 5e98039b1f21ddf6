import { describe, expect, it } from 'vitest';
import { sealAdvice } from '../../src/advice/seal.ts';
import type { AdviceParts } from '../../src/contracts/advice.ts';

const parts: AdviceParts = {
  topic: 'material',
  stance: 'go',
  verdict: { say: 'material-use' },
  points: [],
  recommend: {},
  reject: [],
  checks: [],
  lacking: [],
  computed: [],
  assumed: [],
  facts: { rock: 'granite', environment: 'alpine' },
  cautions: ['competent'],
  sources: ['practice'],
  rules: [],
  ruleset: '0123456789ab',
};

describe('the seal', () => {
  it('refuses advice without cautions or sources, even when the types were circumvented', () => {
    const empty = [] as unknown as AdviceParts['cautions'];
    expect(() => sealAdvice({ ...parts, cautions: empty })).toThrow('no cautions');
    expect(() => sealAdvice({ ...parts, sources: empty })).toThrow('no sources');
  });

  it('refuses a check that is not a number', () => {
    const check = {
      id: 'x',
      name: { say: 'check-length' },
      value: Number.NaN,
      limit: 15,
      unit: 'kN',
      kind: 'mean' as const,
      ok: false,
    };
    expect(() => sealAdvice({ ...parts, checks: [check] })).toThrow('not a number');
  });

  it('gives the same facts the same id whatever their order, and other facts another', () => {
    const turned = { ...parts, facts: { environment: 'alpine', rock: 'granite' } };
    expect(sealAdvice(turned).id).toBe(sealAdvice(parts).id);
    expect(sealAdvice({ ...parts, facts: { rock: 'gneiss' } }).id).not.toBe(sealAdvice(parts).id);
    expect(sealAdvice({ ...parts, ruleset: 'other' }).id).not.toBe(sealAdvice(parts).id);
  });

  it('always defers, and cannot be changed afterwards', () => {
    const advice = sealAdvice(parts);
    expect(advice.deferral).toBe(true);
    expect(Object.isFrozen(advice)).toBe(true);
  });
});
