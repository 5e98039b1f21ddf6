/** Which language a message is in, and what it says. */
import type { TableWords } from '../field/table/words.ts';
import type { Expressions } from './expressions.ts';
import type { Parsed, UnderstandContext } from './understand/index.ts';

export type Understand = (text: string, context?: UnderstandContext) => Parsed;

/** The languages that can be understood; each is loaded when it is first needed. */
export interface Ears {
  readonly codes: readonly string[];
  /** Name of a language, in any language → its code. */
  readonly names: ReadonlyMap<string, string>;
  readonly expressions: Expressions;
  /** What columns of tables are called. */
  readonly tables: TableWords;
  understand(code: string): Promise<Understand>;
}

export interface Heard {
  readonly parsed: Parsed;
  readonly language: string;
}

const wordsIn = (text: string): number => text.match(/\p{L}{2,}/gu)?.length ?? 0;

const saysNothing = ({ act, topic, found, problems }: Parsed): boolean =>
  act === 'ask' && (topic === null || topic === 'unknown') && found.length + problems.length === 0;

/**
 * A member's own language is tried first. Only when it leaves much of the message unknown are the others tried,
 * and one of them counts only when it knows clearly more of the words: a single shared word changes no language.
 */
export async function hear(
  ears: Ears,
  text: string,
  own: string,
  context: UnderstandContext,
): Promise<Heard> {
  const listen = async (language: string): Promise<Heard> => ({
    language,
    parsed: (await ears.understand(language))(text, { ...context, language }),
  });
  const first = await listen(own);
  const strange = first.parsed.unknownWords.length;
  const much = strange >= 2 && strange * 3 >= wordsIn(text);
  if (!much && !(saysNothing(first.parsed) && wordsIn(text) > 0)) return first;
  let best = first;
  for (const language of ears.codes.filter((code) => code !== own)) {
    const other = await listen(language);
    if (saysNothing(other.parsed)) continue;
    const clearly =
      saysNothing(best.parsed) || other.parsed.unknownWords.length * 2 <= best.parsed.unknownWords.length;
    if (clearly && other.parsed.unknownWords.length <= best.parsed.unknownWords.length) best = other;
  }
  return best;
}

/** "español", "in English", "/language de": a message that asks for a language and nothing else. */
export function languageAsked(ears: Ears, text: string): string | undefined {
  const words = text
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[^\p{L}\s/]/gu, ' ')
    .trim()
    .split(/\s+/);
  if (words.length > 3) return undefined;
  const [lead = '', ...rest] = words;
  const name = words.length === 1 || lead === '/language' || lead.length <= 3 ? words.at(-1) : undefined;
  if (name === undefined || (words.length === 1 && name.length <= 2)) return undefined;
  return rest.length > 1 ? undefined : ears.names.get(name);
}
