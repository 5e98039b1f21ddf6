import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadVocabulary, strayWords, VocabularyError } from '../../../src/dialogue/understand/index.ts';
import { distance, makeCorrector } from '../../../src/dialogue/understand/typo.ts';
import { languagesPresent, loadUnderstand } from './setup.ts';

const { vocabulary, view } = await loadUnderstand();

describe.each(await languagesPresent())('the vocabulary %s', async (language) => {
  const { understand, vocabulary } = await loadUnderstand(language);

  it('names only facts, values and topics that the rules have', () => {
    expect(strayWords(vocabulary, view)).toEqual([]);
    const wrong = { ...vocabulary, factNames: { no_such_fact: ['x'] } };
    expect(strayWords(wrong, view)).toEqual(['no_such_fact']);
  });

  it('has a word for every value of every fact that people tell', () => {
    const silent = new Set([
      'bolt_history none-told',
      'seep none-told',
      'cartridge none-told',
      'request advice',
    ]);
    const families = vocabulary.families.flatMap(({ fact, values }) =>
      values.map((value) => `${fact} ${value}`),
    );
    const spoken = new Set(families);
    for (const [fact, byValue] of Object.entries(vocabulary.values))
      for (const value of Object.keys(byValue)) spoken.add(`${fact} ${value}`);
    for (const request of Object.keys(vocabulary.requests)) spoken.add(`request ${request}`);
    const facts = [...view.facts.values()].filter(({ id }) => id in vocabulary.values || id === 'request');
    const rows = facts.flatMap((fact) =>
      fact.kind !== 'choice'
        ? []
        : (fact.values ?? view.tables.get(fact.table ?? '')?.rows.map(({ id }) => id) ?? []).map(
            (value) => `${fact.id} ${value}`,
          ),
    );
    expect(rows.filter((row) => !spoken.has(row) && !silent.has(row))).toEqual([]);
  });

  it('understands every phrase that it lists for a value', () => {
    const lost: string[] = [];
    for (const [fact, byValue] of Object.entries(vocabulary.values))
      for (const [value, phrases] of Object.entries(byValue))
        for (const phrase of phrases) {
          const { found, problems } = understand(phrase);
          const said = [...found, ...problems].some((one) => one.fact === fact);
          if (!said) lost.push(`${phrase} (${fact} ${value})`);
        }
    expect(lost).toEqual([]);
  });
});

describe('a vocabulary file', () => {
  it('is refused if it is broken, and the faults are named', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'vocabulary-'));
    const path = join(folder, 'xx.json');
    await writeFile(path, JSON.stringify({ ...vocabulary, fillers: [], colour: 'blue' }));
    await expect(loadVocabulary(path)).rejects.toThrow(VocabularyError);
    await expect(loadVocabulary(path)).rejects.toThrow(/fillers.*colour|colour.*fillers/s);
    await writeFile(path, '{');
    await expect(loadVocabulary(path)).rejects.toThrow(VocabularyError);
  });
});

describe('typing errors', () => {
  it.each([
    ['granite', 'granite', 0],
    ['granit', 'granite', 1],
    ['graniet', 'granite', 1],
    ['sandsotne', 'sandstone', 1],
    ['limstne', 'limestone', 2],
    ['epoxy', 'granite', 3],
  ])('%s, %s: %i', (a, b, far) => {
    expect(distance(a, b, 2)).toBe(far);
    expect(distance(b, a, 2)).toBe(far);
  });

  it('does not choose between two meanings, and keeps names of metals and rocks from far words', () => {
    const correct = makeCorrector([
      { word: 'slate', meaning: 'rock', guarded: true },
      { word: 'spate', meaning: 'rain', guarded: false },
      { word: 'quartzite', meaning: 'quartzite', guarded: true },
      { word: 'carefully', meaning: 'care', guarded: false },
    ]);
    expect(correct('skate')).toBeNull();
    expect(correct('slatee')).toBe('slate');
    expect(correct('qartzit')).toBeNull();
    expect(correct('quartzie')).toBe('quartzite');
    expect(correct('qrtzite')).toBeNull();
    expect(correct('cerefuly')).toBe('carefully');
    expect(correct('late')).toBeNull();
  });
});
