/** The alternative text says what the picture shows: verdict first, with its figures, in the member's language. */
import { describe, expect, it } from 'vitest';
import { Languages } from '../../src/languages.ts';
import { longestAlt } from '../../src/render/pictures.ts';
import { rules, rulesFolder, words } from '../support/desk.ts';
import {
  bond,
  bondPicture,
  comparison,
  costPicture,
  costs,
  force,
  groups,
  recording,
  riskPicture,
  risks,
  samples,
} from './samples.ts';
import { laidOut } from './texts.ts';

const languages = await Languages.find(rulesFolder, rules);

describe.each(languages.codes)('in %s', (code) => {
  it('each sample has one with figures, of a length that is read to the end', async () => {
    const spoken = await languages.words(code);
    for (const [name, { alt }] of Object.entries(samples(spoken))) {
      expect(alt.match(/\d+/g)?.length, name).toBeGreaterThan(2);
      expect(alt.length, name).toBeLessThanOrEqual(longestAlt);
      expect(alt, name).not.toMatch(/NaN|undefined|\{|\}/);
      // Where the comma is the decimal mark, no figure keeps a point.
      if (code !== 'en') expect(alt, name).not.toMatch(/\d\.\d/);
    }
  });

  it('the ticks and figures of the picture have the decimal mark of the language', async () => {
    const spoken = await languages.words(code);
    const data = { ...recording('A', [0.4], false), needs: [] };
    const { texts } = await laidOut(force(data, spoken).spec);
    const drawn = texts.map(({ lines }) => lines.join(' '));
    expect(drawn).toContain(code === 'en' ? '0.1' : '0,1');
    expect(drawn).toContain(code === 'en' ? '0.40 kN' : '0,40 kN');
  });
});

describe('verdicts', () => {
  it('how many pulls reached what is asked', () => {
    const { alt } = force(recording('Gully', [24.1, 14.99, 27.3], false), words);
    expect(alt).toMatch(/^2 of 3 pulls reached 15 kN \(EN 959\)\. 1 of 3 pulls reached 25 kN/);
  });

  it('no verdict without a demand: only the peaks', () => {
    const { alt } = force({ ...recording('Gully', [24.1, 12], false), needs: [] }, words);
    expect(alt).toMatch(/^2 pulls, peaks from 12 kN to 24 kN\./);
  });

  it('how many groups reach it by their 5 % value, and a group without one never does', () => {
    const data = groups(['A', 'B', 'C']);
    // By groups(): 5 % values 14 and 17 kN, and none for the third.
    expect(comparison(data, words).alt).toMatch(/^In 1 of 3 groups the 5 % value reaches 15 kN/);
    expect(comparison({ name: data.name, groups: data.groups }, words).alt).toMatch(
      /^Lowest 5 % value of 3 groups: 14 kN \(A\)/,
    );
  });

  it('the value used comes first, then how many own tests gave way below what is published', () => {
    const { alt } = bondPicture(bond('granite'), words);
    expect(alt).toMatch(/^Value used: 4\.6 MPa\. 1 of 8 own tests gave way below the published range\./);
  });

  it('a stopped test is not counted as a failure below', () => {
    const data = { ...bond('granite'), tests: [{ value: 3, stopped: true }] };
    expect(bondPicture(data, words).alt).toContain('0 of 1 own tests gave way below');
  });

  it('the cheapest policy with its sum', () => {
    const data = {
      ...costs([]),
      policies: [
        { name: 'wait', perYear: [100, 900, 0] },
        { name: 'now', perYear: [700, 0, 0] },
      ],
    };
    const { alt } = costPicture(data, words);
    expect(alt).toMatch(/^Cheapest over 3 years: now, 700 € in all\./);
    expect(alt).toContain('Wait: 1000 € in all, at most 900 € in one year (2028).');
  });

  it('which anchor first; no risk is ever nothing', () => {
    const { alt } = riskPicture(risks(['Gully'], 5), words);
    expect(alt).toMatch(/^4 of 5 anchors: act on these first\. Highest chance .*: Gully 1, 3\.1 %\./);
    const none = { name: 'A', anchors: [{ name: 'A', perYear: 0, act: false }] };
    expect(riskPicture(none, words).alt).toContain('under 0.001 %');
  });

  it('too many lines are counted and never cut within a figure', () => {
    const { alt } = riskPicture(risks(['A rather long name of a bolt'], 300), words);
    expect(alt.length).toBeLessThanOrEqual(longestAlt);
    expect(alt).toMatch(/%\. And \d+ more\.$/);
  });

  it('a name written from right to left leaves the figures on their side', () => {
    const { alt } = comparison(groups(['שלום']), words);
    // U+200E, left-to-right mark: Unicode Standard Annex 9, section 2.6.
    expect(alt).toContain('שלום\u200e: 6 tests');
  });
});
