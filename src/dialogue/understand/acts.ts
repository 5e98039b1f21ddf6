/** What a message does besides telling facts: asks why, says no, does not know. */
import type { Language } from './compile.ts';
import type { Act } from './parsed.ts';
import type { PhraseTree, Word } from './phrases.ts';

const ACTS: readonly Act[] = [
  'ask',
  'why',
  'why-all',
  'back',
  'restart',
  'forget',
  'help',
  'dont-know',
  'yes',
  'no',
  'thanks',
  'greeting',
  'correction',
];
export const isAct = (name: string): name is Act => (ACTS as readonly string[]).includes(name);

export interface Heard {
  readonly acts: ReadonlySet<Act>;
  /** The message is nothing but one of these. */
  readonly whole: Act | null;
  readonly correctedAt: number | null;
  /** Words that serve a correction or a "don't know" and are no denial. */
  readonly spent: readonly boolean[];
}

function content(words: readonly Word[], language: Language): Word[] {
  const kept: Word[] = [];
  for (let at = 0; at < words.length; ) {
    const filler = language.fillers.longest(words, at);
    const word = words[at];
    if (filler === null && word && word.kind !== 'mark') kept.push(word);
    at = filler?.to ?? at + 1;
  }
  return kept;
}

export function hear(words: readonly Word[], language: Language): Heard {
  const acts = new Set<Act>();
  const spent: boolean[] = [];
  let correctedAt: number | null = null;
  let whole: Act | null = null;
  const plain = words.filter(({ kind }) => kind !== 'mark');
  const bare = content(words, language);
  for (const candidate of [plain, bare]) {
    const match = language.acts.longest(candidate, 0);
    for (const { act, where } of match?.said ?? []) {
      if (!match || !isAct(act)) continue;
      if (match.to === candidate.length && where !== 'anywhere') whole ??= act;
      // "No, granite" answers, "no granite here" tells something.
      const alone = words[match.to] === undefined || words[match.to]?.kind === 'mark';
      if (where === 'lead' && (alone || (act !== 'yes' && act !== 'no'))) acts.add(act);
    }
  }
  for (const { from, to, said } of language.acts.all(words))
    for (const { act, where } of said) {
      if (where !== 'anywhere' || !isAct(act)) continue;
      acts.add(act);
      for (let at = from; at < to; at++) spent[at] = true;
      if (act === 'correction') correctedAt = to;
    }
  words.forEach((_, from) => {
    if (from > 0 && words[from - 1]?.kind !== 'mark') return;
    const match = language.acts.longest(words, from);
    for (const { act, where } of match?.said ?? []) {
      if (where !== 'lead' || !match || (act !== 'correction' && act !== 'why')) continue;
      if (act === 'why' && from > 0) continue;
      acts.add(act);
      for (let at = from; at < match.to; at++) spent[at] = true;
      if (act === 'correction') correctedAt = Math.max(correctedAt ?? 0, match.to);
    }
  });
  for (const { from, to } of language.dontKnow.all(words))
    for (let at = from; at < to; at++) spent[at] = true;
  return { acts, whole, correctedAt, spent };
}

/** "I don't know the rock or the metal": the facts named after it. */
export function unknownFacts(words: readonly Word[], language: Language, pending?: string): string[] {
  const named: string[] = [];
  const missing = language.dontKnow.all(words);
  for (const { from, to } of missing) {
    const rest = words.findIndex(({ sentence }, at) => at >= to && sentence !== words[from]?.sentence);
    const end = Math.min(rest < 0 ? words.length : rest, to + 8);
    for (let at = to; at < end; at++) {
      const name = language.factNames.longest(words, at);
      if (name) named.push(...name.said);
    }
    // "rock unknown", "rock: no idea".
    const before = nameBefore(language.factNames, words, from);
    if (named.length === 0 && before !== null) named.push(before);
  }
  if (missing.length > 0 && named.length === 0 && pending !== undefined) named.push(pending);
  return [...new Set(named)];
}

function nameBefore(names: PhraseTree<string>, words: readonly Word[], to: number): string | null {
  for (let from = Math.max(0, to - 4); from < to; from++) {
    const match = names.longest(words, from);
    if (match && match.to <= to && to - match.to <= 2) return match.said[0] ?? null;
  }
  return null;
}
