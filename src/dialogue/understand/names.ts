/** Proper names that sound like rocks and metals: "the route called Titanium Man", "Granite Groove". */
import type { Language } from './compile.ts';
import type { Word } from './phrases.ts';

/** Which words are part of a name and tell no fact. */
export function maskNames(words: readonly Word[], language: Language): boolean[] {
  const masked: boolean[] = [];
  const { articles, capitalNouns } = language.vocabulary;
  const strange = (word: Word | undefined): boolean =>
    !capitalNouns && word?.capital === true && !word.forms.some((form) => language.means(form));
  // "Sonho de Granito", "Sueño del Granito".
  const joins = (at: number, start: number): boolean =>
    at > start && articles.includes(words[at]?.text ?? '') && words[at + 1]?.capital === true;
  for (let at = 0; at < words.length; at++) {
    const named = language.named.longest(words, at);
    if (named && (capitalNouns || words[at]?.capital !== true))
      for (let next = named.to; words[next]?.capital === true || joins(next, named.to); next++)
        masked[next] = true;
    const word = words[at];
    // A capital beside a capitalised word that is no word of ours: both are the name.
    if (
      word?.capital &&
      ((strange(words[at + 1]) && near(word, words[at + 1])) ||
        (strange(words[at - 1]) && near(words[at - 1], word)))
    )
      masked[at] = at > 0 || strange(words[at + 1]);
  }
  return masked;
}

const near = (a: Word | undefined, b: Word | undefined): boolean =>
  a !== undefined && b !== undefined && b.start - a.end <= 1;
