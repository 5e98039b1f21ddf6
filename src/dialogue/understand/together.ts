/** Words that tell a topic only together, in any order: "cartridges" and "enough". */
import type { PhraseTree, Word } from './phrases.ts';

export interface TogetherRule {
  readonly topic: string;
  readonly weight: number;
  /** Groups of words; one word of each must be there, and none of another group. */
  readonly all: readonly string[];
  readonly none?: readonly string[] | undefined;
}

export interface TogetherCue {
  readonly topic: string;
  readonly weight: number;
  /** Where the first of the words stands. */
  readonly from: number;
}

export function findTogether(
  words: readonly Word[],
  groups: PhraseTree<string>,
  rules: readonly TogetherRule[],
  counts: (from: number, to: number) => boolean,
): TogetherCue[] {
  if (rules.length === 0) return [];
  const first = new Map<string, number>();
  words.forEach((word, at) => {
    const match = word.glued ? null : groups.longest(words, at);
    if (match === null || !counts(match.from, match.to)) return;
    for (const group of match.said) if (!first.has(group)) first.set(group, at);
  });
  return rules.flatMap(({ topic, weight, all, none }) => {
    if (none?.some((group) => first.has(group)) || !all.every((group) => first.has(group))) return [];
    return [{ topic, weight, from: Math.min(...all.map((group) => first.get(group) ?? words.length)) }];
  });
}
