/** Every language says everything that English says: a missing text fails here and not with a member. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formulaTexts } from '../../src/glossary.ts';
import { Languages } from '../../src/languages.ts';
import { englishTexts, translationSchema } from '../../src/translation.ts';
import { rules, rulesFolder } from '../support/desk.ts';

const languages = await Languages.find(rulesFolder, rules);
const english = englishTexts(rules, formulaTexts);

/** Path → text, for everything that a translation holds. */
function flat(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  return Object.entries(value as object).flatMap(([key, inner]) =>
    flat(inner, path === '' ? key : `${path}/${key}`),
  );
}

const messages = (code: string): Map<string, string> => {
  const text = readFileSync(join(rulesFolder, 'words', `${code}.ftl`), 'utf8');
  const parts = text.split(/^(?=[a-zA-Z][\w-]* =)/m).filter((part) => /^[a-zA-Z][\w-]* =/.test(part));
  return new Map(parts.map((part) => [part.slice(0, part.indexOf(' =')), part.replace(/^#.*$/gm, '')]));
};
const variables = (text: string): string[] => [...new Set(text.match(/\$\w+/g) ?? [])].toSorted();
/** Figures in a sentence must survive translation; decimal and thousands marks may change. */
const figures = (text: string): string[] =>
  (text.replaceAll(/\{[^}]*\}/g, '').match(/\d+/g) ?? []).toSorted();

const others = languages.codes.filter((code) => code !== 'en');

it('English and at least the languages that have a vocabulary are spoken', () => {
  const heard = ['en', 'es', 'pt', 'fr', 'it', 'de'].filter((code) =>
    existsSync(join(rulesFolder, 'vocabulary', `${code}.json`)),
  );
  expect(languages.codes).toEqual(heard);
});

describe.each(others)('%s', (code) => {
  const own = translationSchema.parse(
    JSON.parse(readFileSync(join(rulesFolder, 'words', `${code}.json`), 'utf8')),
  );
  const texts = new Map(flat(own));
  const needed = flat(english).filter(([path]) => path !== 'language');

  it('names everything that English names, and nothing else', () => {
    const missing = needed.map(([path]) => path).filter((path) => !texts.has(path));
    const known = new Set(needed.map(([path]) => path));
    const left = [...texts.keys()].filter((path) => path !== 'language' && !known.has(path));
    expect({ missing, left }).toEqual({ missing: [], left: [] });
  });

  it('keeps the figures of rules, cautions and questions', () => {
    const changed = needed.filter(
      ([path, text]) => figures(text).join() !== figures(texts.get(path) ?? '').join(),
    );
    expect(changed.map(([path, text]) => [path, text, texts.get(path)])).toEqual([]);
  });

  it('has the same sentences with the same blanks', () => {
    const [theirs, ours] = [messages('en'), messages(code)];
    expect([...ours.keys()].toSorted()).toEqual([...theirs.keys()].toSorted());
    for (const [id, text] of theirs)
      expect([id, variables(ours.get(id) ?? '')]).toEqual([id, variables(text)]);
  });

  it('is not English left as it was', () => {
    const same = needed.filter(([path, text]) => text.length > 25 && texts.get(path) === text);
    expect(same).toEqual([]);
  });

  it('can be spoken', async () => {
    const words = await languages.words(code);
    expect(words.say({ say: 'deferral' }).length).toBeGreaterThan(40);
  });
});
