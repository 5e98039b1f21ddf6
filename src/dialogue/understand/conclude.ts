/** From what was read to the act and the topics of the message. */
import { isAct } from './acts.ts';
import type { Command } from './command.ts';
import type { Language } from './compile.ts';
import { type FactsView, valuesOf } from './facts-view.ts';
import { readOptions } from './options.ts';
import type { Act, Found, Parsed, Problem, UnderstandContext } from './parsed.ts';
import type { PhraseTree, Word } from './phrases.ts';
import type { Reading } from './reading.ts';
import { findTopics, type TopicResult } from './topic.ts';
import { strangeWords } from './words.ts';

const present = (tree: PhraseTree<unknown>, words: readonly Word[]): boolean =>
  words.some((_, at) => tree.longest(words, at) !== null);

export function conclude(
  reading: Reading,
  language: Language,
  facts: FactsView,
  context: UnderstandContext,
  command: Command | null,
): Parsed {
  const { words, heard, chosen, spokenOf } = reading;
  const { pending } = context;
  const scored = findTopics({
    words,
    spent: heard.spent,
    naming: reading.naming,
    mentions: reading.mentions,
    language,
    spokenOf,
    compared: chosen.compared,
    pulls: reading.items.some(
      ({ kind, ...item }) => 'quantity' in item && item.quantity.listed && item.quantity.unit === 'kN',
    ),
    corrected: reading.corrects,
    answering: pending !== undefined,
    hasTopic: context.topic !== undefined,
  });
  const topics = topicsOf(reading, scored, language, command);
  const costed = topics.includes('cost') || (topics.length === 0 && context.topic === 'cost');
  const told = { found: withAnswer(reading, pending, facts), problems: reading.problems };
  const { found: all, problems: ofFacts } = (costed ? readOptions(reading, told) : undefined) ?? told;
  const found = topics[0] === 'compare' ? all.filter(({ fact }) => !namesGroups(reading, fact)) : all;
  const act = actOf(reading, found, topics, language, command, pending);
  const measured = reading.items.some((item) => item.kind === 'size' || item.quantity.unit !== null);
  const understood =
    topics.length > 0 ||
    act !== 'ask' ||
    scored.heard ||
    measured ||
    spokenOf.size + found.length + chosen.ruledOut.length > 0;
  const wordy = words.some(({ kind }) => kind === 'word');
  const problems: Problem[] = [...ofFacts];
  if (!understood && wordy && pending !== undefined && facts.facts.get(pending)?.kind === 'number')
    problems.push({ kind: 'not-a-number', fact: pending, text: reading.clean.trim().slice(0, 80) });
  return {
    act,
    topic: topics[0] ?? (understood || pending !== undefined || !wordy ? null : 'unknown'),
    topicSure: topics.length > 0 && (scored.sure || topics[0] !== scored.topics[0]),
    topics,
    // "Why not 304?" tells nothing, and an emergency is no time for it.
    found: act === 'why' || topics[0] === 'emergency' ? [] : found,
    ruledOut: chosen.ruledOut,
    unknownFacts: reading.unknownFacts,
    alternatives: chosen.alternatives,
    problems,
    unknownWords: strangeWords(words, language),
  };
}

/** "Dry 24 22 25, wet 15 17 14": two values of a fact tell the groups apart, and neither holds for both. */
function namesGroups({ mentions }: Reading, fact: string): boolean {
  const said = mentions.filter((one) => one.fact === fact && !one.denied && typeof one.value === 'string');
  return new Set(said.map(({ value }) => value)).size > 1;
}

/** "Yes" and "no" answer a question that has them as values. */
function withAnswer(
  { found, heard, clean }: Reading,
  pending: string | undefined,
  facts: FactsView,
): readonly Found[] {
  const { whole } = heard;
  if (pending === undefined || (whole !== 'yes' && whole !== 'no')) return found;
  if (!valuesOf(facts, pending).includes(whole) || found.some(({ fact }) => fact === pending)) return found;
  return [...found, { fact: pending, value: whole, text: clean.trim() }];
}

function topicsOf(
  reading: Reading,
  scored: TopicResult,
  language: Language,
  command: Command | null,
): readonly string[] {
  const { words, heard } = reading;
  if (language.emergency.find(words).length > 0) {
    // "What if my partner is hanging …" is a question; "now" and "unconscious" are not.
    if (!present(language.notEmergency, words) || present(language.urgent, words)) return ['emergency'];
  }
  if (command?.topic) return [command.topic, ...scored.topics.filter((topic) => topic !== command.topic)];
  if (reading.requests.length > 0) return ['refuse', ...scored.topics];
  if (heard.whole === 'why' || heard.whole === 'why-all') return ['why'];
  if (heard.whole === 'help') return ['help'];
  // "Why just 100 mm?" asks for the reason of an answer.
  if (heard.acts.has('why') && !scored.sure) return ['why'];
  if (scored.topics.length > 0) return scored.topics;
  if (heard.acts.has('why')) return ['why'];
  if (heard.whole === 'thanks' || heard.whole === 'greeting') return ['smalltalk'];
  // "Thanks a lot, you are a star" tells and asks nothing.
  if (reading.mentions.length > 0) return [];
  const thanked = heard.acts.has('thanks') && !words.some(({ text }) => text === '?');
  return thanked || present(language.smalltalk, words) ? ['smalltalk'] : [];
}

function actOf(
  { words, heard, mentions, unknownFacts }: Reading,
  found: readonly Found[],
  topics: readonly string[],
  language: Language,
  command: Command | null,
  pending: string | undefined,
): Act {
  if (topics[0] === 'emergency') return 'ask';
  if (command?.act !== undefined && isAct(command.act)) return command.act;
  if (heard.whole !== null && !(heard.whole === 'correction' && mentions.length > 0)) return heard.whole;
  if (heard.acts.has('correction')) return 'correction';
  if (heard.acts.has('no') && mentions.length > 0 && pending === undefined) return 'correction';
  for (const act of ['why-all', 'why', 'back', 'restart', 'forget', 'help'] as const)
    if (heard.acts.has(act) && (act !== 'why' || topics[0] === 'why')) return act;
  if (unknownFacts.length > 0 || present(language.dontKnow, words))
    return found.length > 0 || topics.length > 0 ? 'ask' : 'dont-know';
  for (const act of ['yes', 'no', 'thanks'] as const)
    if (heard.acts.has(act) && topics.length === 0) return act;
  return 'ask';
}
