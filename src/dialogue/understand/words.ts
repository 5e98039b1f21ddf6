import type { Language } from './compile.ts';
import type { Word } from './phrases.ts';
import type { Token } from './tokens.ts';

const MOST_CORRECTIONS = 150;

function withoutEnding(word: string, endings: readonly string[]): string[] {
  return endings
    .filter((ending) => word.endsWith(ending) && word.length - ending.length >= 3)
    .map((ending) => word.slice(0, -ending.length));
}

/** Gives every token the forms under which the vocabulary may know it; a word made of several becomes several. */
export function toWords(tokens: readonly Token[], language: Language): Word[] {
  const { misspellings, endings } = language.vocabulary;
  let left = MOST_CORRECTIONS;
  const bareOf = (text: string): string[] => withoutEnding(text, endings).filter(language.isKnown);
  const apart = (token: Token, pieces: readonly string[]): Word[] =>
    pieces.map((text, index) => ({
      ...token,
      text,
      forms: [text, ...bareOf(text)],
      ...(index === 0 ? {} : { glued: false, close: true, capital: false }),
    }));
  return joinAbbreviations(readShorthand(tokens, language), language)
    .flatMap((token): Word[] => {
      if (token.kind !== 'word') return [{ ...token, forms: [token.text] }];
      const slip = misspellings[token.text];
      if (slip !== undefined) return [{ ...token, forms: [slip] }];
      const spelt = withMarks(token.text, language);
      const told = spelt.map(language.split.told).find((pieces) => pieces !== null);
      if (told) return apart(token, told);
      for (const text of spelt) {
        const bare = bareOf(text);
        if (language.isKnown(text) || bare.length > 0)
          return [{ ...token, forms: [...new Set([token.text, text, ...bare])] }];
      }
      for (const text of spelt) {
        const pieces = language.split.found(text);
        if (pieces !== null) return apart(token, pieces);
      }
      const fixed = left-- > 0 ? (spelt.map(language.correct).find((known) => known !== null) ?? null) : null;
      return [
        {
          ...token,
          forms: fixed === null ? [token.text] : [token.text, fixed, ...withoutEnding(fixed, endings)],
        },
      ];
    })
    .map((word) => withVariants(word, language));
}

/** "Bagnate" is "bagnato" in another gender and number. */
function withVariants(word: Word, { variantsOf }: Language): Word {
  const others = word.kind === 'word' ? word.forms.flatMap(variantsOf) : [];
  return others.length === 0 ? word : { ...word, forms: [...new Set([...word.forms, ...others])] };
}

/** "Loecher" is "löcher", and marks are left out when words are compared. */
function withMarks(text: string, { vocabulary }: Language): string[] {
  let other = text;
  for (const [written, meant] of Object.entries(vocabulary.letters)) other = other.replaceAll(written, meant);
  return other === text ? [text] : [text, other];
}

/** "Haste c/ 80 mm" is "haste com 80 mm", and no 80 degrees. */
function readShorthand(tokens: readonly Token[], { vocabulary: { shorthand } }: Language): Token[] {
  const read: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const [token, slash] = [tokens[at], tokens[at + 1]];
    if (token === undefined) continue;
    const meant = token.kind === 'word' && !token.close ? shorthand[token.text] : undefined;
    const short = meant !== undefined && slash?.text === '/' && slash.close;
    read.push(short ? { ...token, text: meant, end: slash.end } : token);
    if (short) at++;
  }
  return read;
}

/** "Vor 3 Std. geklebt": the full stop belongs to the word. */
function joinAbbreviations(tokens: readonly Token[], { abbreviations }: Language): Token[] {
  if (abbreviations.size === 0) return [...tokens];
  const kept: Token[] = [];
  let joined = 0;
  for (const [index, token] of tokens.entries()) {
    if (token.text === '.' && token.close && abbreviations.has(tokens[index - 1]?.text ?? '')) joined++;
    else kept.push(joined === 0 ? token : { ...token, sentence: token.sentence - joined });
  }
  return kept;
}

/** Words that mean nothing to us, each once. */
export function strangeWords(words: readonly Word[], language: Language): string[] {
  const strange = words.filter(
    (word) => word.kind === 'word' && word.text.length > 2 && !word.forms.some(language.isKnown),
  );
  return [...new Set(strange.map((word) => word.text))].slice(0, 20);
}
