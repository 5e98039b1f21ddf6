import { describe, expect, it } from 'vitest';
import { pullsPerGroup } from '../../src/advice/compare.ts';
import { advise } from '../../src/advice/index.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { adviceText } from '../../src/render/answer.ts';
import { desk, said, words } from '../support/desk.ts';

const compare = (pulls_kn: FactValue, pulls_other_kn?: FactValue) =>
  advise(desk, 'compare', said({ pulls_kn, pulls_other_kn }));

describe('two groups of pulls', () => {
  // Welch's test, the worked example of a public encyclopaedia: t −2.46, 25.0 degrees of freedom, p 0.021 (from memory).
  const first = [27.5, 21, 19, 23.6, 17, 17.9, 16.9, 20.1, 21.9, 22.6, 23.1, 19.6, 19, 21.7, 21.4];
  const second = [27.1, 22, 20.8, 23.4, 23.4, 23.5, 25.8, 22, 24.8, 20.2, 21.9, 22.1, 22.9, 20.5, 24.4];

  it('a difference beyond chance is said with its direction', async () => {
    const { recommend, stance } = await compare(first, second);
    expect(recommend).toMatchObject({ stronger: 'second', p: 0.0214 });
    expect(stance).toBe('limit');
    expect((await compare(second, first)).recommend.stronger).toBe('first');
  });

  // SciPy 1.17, ttest_ind(equal_var=False): p 0.0048304, 95 % interval 2.4512 to 9.8088.
  it('gives the interval of the difference', async () => {
    const advice = await compare(
      [24.1, 27.3, 22.8, 30.2, 26],
      [18.2, 21.5, 24, 15.9, 19.7, 22.3, 17.4, 20.6],
    );
    expect(advice.recommend.p).toBe(0.00483);
    expect(adviceText(words, advice)).toContain('between 2.5 kN and 9.8 kN');
  });

  it('never says equal', async () => {
    const advice = await compare([33, 35, 37], [36, 44, 51]);
    expect(advice.recommend.stronger).toBe('not-shown');
    expect(adviceText(words, advice).split('\n')[0]).toContain('does not mean that they are equal');
  });

  // SciPy 1.17, ttest_ind of the logarithms: p 0.015398, ratio 1/3, 95 % interval 0.14945 to 0.74347.
  it('takes logarithms when a group scatters by more than 20 %', async () => {
    const text = adviceText(words, await compare([10, 20, 30, 15], [30, 60, 90, 45]));
    expect(text).toContain('Compared by their logarithms');
    expect(text).toContain('First over second: 0.33 times; with 95 % confidence between 0.15 and 0.74 times');
  });

  it('needs three results in each group', async () => {
    expect((await compare([33, 35, 37], [36, 44])).checks).toEqual([]);
    expect(adviceText(words, await compare([33, 35, 37], [36, 44]))).toContain('at least 3 results');
    expect((await compare([33, 35, 37])).lacking).toEqual(['pulls_other_kn']);
    expect(adviceText(words, await compare([20, 20, 20], [22, 22, 22]))).toContain('rounded or copied');
  });

  // 2·((1.960 + 0.842)·V/δ)² = 8.83 at V 15 %, δ 20 %: the usual normal approximation, own computation; one more for t.
  it('says how many pulls a difference of 20 % would take', () => {
    expect(pullsPerGroup(0.15, 0.2)).toBe(10);
    expect(pullsPerGroup(0.3, 0.2)).toBeGreaterThan(pullsPerGroup(0.15, 0.2));
  });
});
