/** Understanding free text: rules and word lists only, the same answer every time. */
import { readCommand } from './command.ts';
import { compile } from './compile.ts';
import { conclude } from './conclude.ts';
import type { FactsView } from './facts-view.ts';
import { type Leaning, leaned } from './leaning.ts';
import type { Parsed, UnderstandContext } from './parsed.ts';
import { read } from './reading.ts';
import type { Vocabulary } from './vocabulary.ts';

export type { FactsView } from './facts-view.ts';
export type { Leaning } from './leaning.ts';
export { loadLeaning, loadVocabulary, strayWords, VocabularyError } from './load.ts';
export type { Act, Found, Parsed, Problem, UnderstandContext } from './parsed.ts';
export { type Vocabulary, vocabularySchema } from './vocabulary.ts';

export type Understand = (text: string, context?: UnderstandContext) => Parsed;

/** The vocabulary of the member's language is tried first, the others only if it understands nothing at all. */
/** `leaning` is that of the first vocabulary: what a message is about where no rule says it outright. */
export function makeUnderstand(
  vocabularies: readonly Vocabulary[],
  facts: FactsView,
  leaning?: Leaning,
): Understand {
  const languages = vocabularies.map((vocabulary) => compile(vocabulary, facts));
  const [fallback] = languages;
  if (fallback === undefined) throw new Error('no vocabulary given');
  return (text, context = {}) => {
    const command = readCommand(text, languages);
    const rest = command?.rest ?? text;
    const own = languages.find(({ vocabulary }) => vocabulary.language === context.language) ?? fallback;
    const parse = (language: typeof own): Parsed =>
      conclude(read(language, facts, rest, context), language, facts, context, command);
    const ruled = parse(own);
    const leans = leaning !== undefined && own === fallback && command?.topic === undefined;
    const first =
      leans && isMostlyKnown(rest, ruled)
        ? leaned(leaning, rest, ruled, context.pending !== undefined)
        : ruled;
    if (!isEmpty(first)) return first;
    const others = languages.filter((language) => language !== own);
    return others.map(parse).find((parsed) => !isEmpty(parsed)) ?? first;
  };
}

const isEmpty = ({ act, topic, found, problems }: Parsed): boolean =>
  act === 'ask' && (topic === null || topic === 'unknown') && found.length + problems.length === 0;

/** Where most words are strange the message is in another language, and leans nowhere in this one. */
const isMostlyKnown = (text: string, { unknownWords }: Parsed): boolean =>
  unknownWords.length * 2 <= (text.match(/\p{L}{2,}/gu)?.length ?? 0);
