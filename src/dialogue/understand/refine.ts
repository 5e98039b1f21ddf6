/** "Soft wet sandstone", "the sandstone is quite soft": a word near a value makes it a narrower one. */
import type { Language } from './compile.ts';
import type { Mention } from './mention.ts';
import { standing } from './negation.ts';
import type { Word } from './phrases.ts';
import { endingAt } from './quantities.ts';

const FARTHEST = 5;

export function refineMentions(
  mentions: readonly Mention[],
  words: readonly Word[],
  language: Language,
  spent: readonly boolean[],
): Mention[] {
  const inMention = (at: number): Mention | undefined =>
    mentions.find(({ from, to }) => at >= from && at < to);
  return mentions.map((mention) => {
    for (const rule of language.refine) {
      if (rule.fact !== mention.fact || rule.of !== mention.value) continue;
      const said = (at: number, to: number): string | null => {
        if (rule.unlessNext.longest(words, to) !== null) return null;
        if (standing(words, at, language, spent, [], to) !== 'said') return null;
        return rule.by.longest(words, at)?.said[0] ?? null;
      };
      // Before it: across other adjectives ("soft, wet sandstone").
      for (let at = mention.from - 1; at >= Math.max(0, mention.from - FARTHEST); at--) {
        const match = rule.by.longest(words, at);
        if (match) {
          const value = said(at, match.to);
          if (value !== null) return { ...mention, value, from: at };
          break;
        }
        const other = inMention(at);
        const skip = endingAt(language.fillers, words, at + 1) !== null || words[at]?.text === ',';
        if (!skip && (other === undefined || other.fact === mention.fact)) break;
      }
      for (let at = mention.to; at < mention.to + FARTHEST; ) {
        const match = rule.by.longest(words, at);
        if (match) {
          const value = said(at, match.to);
          if (value !== null && words[at]?.sentence === words[mention.from]?.sentence)
            return { ...mention, value, to: match.to };
          break;
        }
        const filler = language.fillers.longest(words, at);
        const other = inMention(at);
        if (
          filler === null &&
          words[at]?.text !== ',' &&
          (other === undefined || other.fact === mention.fact)
        )
          break;
        at = filler?.to ?? at + 1;
      }
    }
    return mention;
  });
}
