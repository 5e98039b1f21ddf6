/** "Alle haben 6 kN gehalten": what became of the tests, with the load in the midst of it. */
import type { Language, Saying } from './compile.ts';
import { dimensionOf } from './measure.ts';
import { numeralAt } from './numbers.ts';
import type { Match, Word } from './phrases.ts';
import { endingAt } from './quantities.ts';

const RESULTS: ReadonlySet<string> = new Set(['proof_tests']);

export interface Across extends Match<Saying> {
  /** Where the words behind the load begin: the load keeps its own place. */
  readonly behind: number;
}

/** Where a load that begins at this word ends. */
function loadAt(words: readonly Word[], at: number, language: Language): number | null {
  const numeral = numeralAt(words, at, language);
  const unit = numeral && language.units.longest(words, numeral.to, true);
  return unit && dimensionOf(unit.said[0] ?? null) === 'force' ? unit.to : null;
}

export function acrossLoads(words: readonly Word[], language: Language): Across[] {
  const found: Across[] = [];
  for (let at = 1; at < words.length; at++) {
    const end = loadAt(words, at, language);
    if (end === null) continue;
    // "Alle haben bei 6 kN gehalten".
    const start = endingAt(language.timed, words, at) ?? at;
    const rest = [...words.slice(0, start), ...words.slice(end)];
    for (let from = Math.max(0, start - 6); from < start; from++) {
      const match = language.values.longest(rest, from);
      if (match === null || match.to <= start) continue;
      if (!match.said.every((saying) => 'fact' in saying && RESULTS.has(saying.fact))) continue;
      found.push({ from, to: match.to - start + end, said: match.said, behind: end });
      break;
    }
    at = end - 1;
  }
  return found;
}
