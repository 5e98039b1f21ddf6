/** Whether a word is denied ("not stainless") or only perhaps so ("maybe granite"), by what stands before it. */
import type { Language } from './compile.ts';
import type { PhraseTree, Word } from './phrases.ts';
import { endingAt } from './quantities.ts';

const FARTHEST = 6;

export type Standing = 'said' | 'denied' | 'hedged';

export function standing(
  words: readonly Word[],
  from: number,
  language: Language,
  /** Words that already serve another phrase: the "no" of "no wait". */
  spent: readonly boolean[],
  /** Words of a value that was denied: in "no rust or cracks" the list goes on. */
  denied: readonly boolean[],
  to = from + 1,
): Standing {
  const before = standingBefore(words, from, language, spent, denied);
  return before === 'said' ? standingBehind(words, to, language) : before;
}

function standingBefore(
  words: readonly Word[],
  from: number,
  language: Language,
  spent: readonly boolean[],
  denied: readonly boolean[],
): Standing {
  const sentence = words[from]?.sentence;
  let at = from;
  let noun = false;
  while (at > 0 && from - at < FARTHEST && words[at - 1]?.sentence === sentence) {
    if (spent[at - 1]) return 'said';
    if (ends(language.hedges, words, at)) return 'hedged';
    // "Not sure if the rock is granite" goes on behind the noun; "no hanger is loose" is left as it is.
    if (!noun && ends(language.not, words, at)) return 'denied';
    const list = endingAt(language.notList, words, at);
    if (!noun && list !== null && denied[list - 1]) return 'denied';
    const filler = endingAt(language.fillers, words, at);
    const next = filler ?? endingAt(language.nouns, words, at);
    if (next === null) return 'said';
    noun ||= filler === null;
    at = next;
  }
  return 'said';
}

/** "Granit ist es nicht", "Granit oder so": in a question ("reicht Granit nicht?") nothing is denied. */
function standingBehind(words: readonly Word[], to: number, language: Language): Standing {
  const sentence = words[to - 1]?.sentence;
  for (let at = to; at - to < FARTHEST && words[at]?.sentence === sentence; ) {
    const not = language.notAfter.longest(words, at);
    const next = not && words[not.to];
    if (not && (next === undefined || (next?.kind === 'mark' && next.text !== '?'))) return 'denied';
    if (language.hedgesAfter.longest(words, at)) return 'hedged';
    const skip = language.fillers.longest(words, at) ?? language.nouns.longest(words, at);
    if (skip === null) return 'said';
    at = skip.to;
  }
  return 'said';
}

const ends = (tree: PhraseTree<unknown>, words: readonly Word[], to: number): boolean =>
  endingAt(tree, words, to) !== null;
