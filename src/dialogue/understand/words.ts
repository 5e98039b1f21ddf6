import type { Language } from './compile.ts';
import type { Word } from './phrases.ts';
import type { Token } from './tokens.ts';

const MOST_CORRECTIONS = 150;

function withoutEnding(word: string, endings: readonly string[]): string[] {
  return endings
    .filter((ending) => word.endsWith(ending) && word.length - ending.length >= 3)
    .map((ending) => word.slice(0, -ending.length));
}

/** Gives every token the forms under which the vocabulary may know it. */
export function toWords(tokens: readonly Token[], language: Language): Word[] {
  let left = MOST_CORRECTIONS;
  return tokens.map((token) => {
    if (token.kind !== 'word') return { ...token, forms: [token.text] };
    const slip = language.vocabulary.misspellings[token.text];
    if (slip !== undefined) return { ...token, forms: [slip] };
    const bare = withoutEnding(token.text, language.vocabulary.endings).filter(language.isKnown);
    if (language.isKnown(token.text) || bare.length > 0) return { ...token, forms: [token.text, ...bare] };
    const fixed = left-- > 0 ? language.correct(token.text) : null;
    if (fixed === null) return { ...token, forms: [token.text] };
    return { ...token, forms: [token.text, fixed, ...withoutEnding(fixed, language.vocabulary.endings)] };
  });
}

/** Words that mean nothing to us, each once. */
export function strangeWords(words: readonly Word[], language: Language): string[] {
  const strange = words.filter(
    (word) => word.kind === 'word' && word.text.length > 2 && !word.forms.some(language.isKnown),
  );
  return [...new Set(strange.map((word) => word.text))].slice(0, 20);
}
