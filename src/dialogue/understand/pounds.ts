/** "6 pounds" is money where a price is spoken of, and a weight elsewhere. */
import type { Language } from './compile.ts';
import type { PhraseTree, Word } from './phrases.ts';
import type { Quantity } from './quantities.ts';

export function pricedPounds(
  quantities: readonly Quantity[],
  words: readonly Word[],
  language: Language,
): readonly Quantity[] {
  if (!quantities.some(({ unit }) => unit === 'lb')) return quantities;
  const present = (tree: PhraseTree<true>): boolean =>
    words.some((_, at) => tree.longest(words, at) !== null);
  if (!present(language.priced) || present(language.weighed)) return quantities;
  return quantities.map((quantity) => (quantity.unit === 'lb' ? { ...quantity, unit: 'money' } : quantity));
}
