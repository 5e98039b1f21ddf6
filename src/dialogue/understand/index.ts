/** Understanding free text: rules and word lists only, the same answer every time. */
import { hear, isAct, unknownFacts } from './acts.ts';
import { choose } from './choose.ts';
import { combineFound } from './combine.ts';
import { type Command, readCommand } from './command.ts';
import { compile, type Language } from './compile.ts';
import { type FactsView, valuesOf } from './facts-view.ts';
import { ignoredSpans } from './ignored.ts';
import { readMeasures } from './measured.ts';
import { maskNames } from './names.ts';
import { normalise } from './normalise.ts';
import type { Act, Found, Parsed, Problem, UnderstandContext } from './parsed.ts';
import { readQuantities } from './quantities.ts';
import { refineMentions } from './refine.ts';
import { joinSizes } from './sizes.ts';
import { tokenise } from './tokens.ts';
import { findTopics } from './topic.ts';
import { readValues } from './values.ts';
import type { Vocabulary } from './vocabulary.ts';
import { strangeWords, toWords } from './words.ts';

export type { FactsView } from './facts-view.ts';
export { loadVocabulary, strayWords, VocabularyError } from './load.ts';
export type { Act, Found, Parsed, Problem, UnderstandContext } from './parsed.ts';
export { type Vocabulary, vocabularySchema } from './vocabulary.ts';

export type Understand = (text: string, context?: UnderstandContext) => Parsed;

export function makeUnderstand(vocabularies: readonly Vocabulary[], facts: FactsView): Understand {
  const languages = vocabularies.map((vocabulary) => compile(vocabulary, facts));
  return (text, context = {}) => {
    const command = readCommand(text, languages);
    const own = languages.filter(({ vocabulary }) => vocabulary.language === context.language);
    const others = languages.filter((language) => !own.includes(language));
    let best: Parsed | null = null;
    for (const language of [...own, ...others]) {
      const parsed = understandIn(language, facts, command?.rest ?? text, context, command);
      best ??= parsed;
      if (!isEmpty(parsed)) return parsed;
    }
    return best ?? nothing(command);
  };
}

/** Another language is tried only when the first one understands nothing at all. */
const isEmpty = (parsed: Parsed): boolean =>
  parsed.act === 'ask' &&
  (parsed.topic === null || parsed.topic === 'unknown') &&
  parsed.found.length + parsed.problems.length === 0;

const nothing = (command: Command | null): Parsed => ({
  act: 'ask',
  topic: command?.topic ?? null,
  topicSure: command?.topic !== undefined,
  topics: command?.topic ? [command.topic] : [],
  found: [],
  ruledOut: [],
  unknownFacts: [],
  alternatives: [],
  problems: [],
  unknownWords: [],
});

function understandIn(
  language: Language,
  facts: FactsView,
  text: string,
  context: UnderstandContext,
  command: Command | null,
): Parsed {
  const clean = normalise(text);
  const words = toWords(tokenise(clean, ignoredSpans(clean)), language);
  const textOf = (from: number, to: number): string => clean.slice(words[from]?.start, words[to - 1]?.end);
  const masked = maskNames(words, language);
  const heard = hear(words, language);

  const mentions = refineMentions(
    readValues(words, masked, heard.spent, language, context),
    words,
    language,
    heard.spent,
  );
  const taken: boolean[] = [];
  for (const { from, to } of mentions)
    if (words.slice(from, to).some(({ kind }) => kind === 'number'))
      for (let at = from; at < to; at++) taken[at] = true;
  const items = joinSizes(readQuantities(words, taken, language), words, language);
  const measures = readMeasures(items, words, textOf, language, facts, context);

  const everything = [...mentions, ...measures.mentions].sort((a, b) => a.from - b.from);
  const correction = heard.correctedAt ?? (heard.acts.has('no') && everything.length > 0 ? 0 : null);
  const chosen = choose(everything, words, textOf, language, facts, correction);
  const requests = language.requests
    .find(words)
    .flatMap(({ from, to, said }) =>
      said.map((value): Found => ({ fact: 'request', value, text: textOf(from, to) })),
    );
  const found = combineFound([...chosen.found, ...requests.slice(0, 1)], words, language);
  const problems: Problem[] = [...measures.problems, ...chosen.problems];
  const corrected = correction !== null;

  const { pending } = context;
  const answer = pending === undefined ? null : yesNo(pending, heard.whole, facts);
  if (answer && !found.some(({ fact }) => fact === answer.fact))
    found.push({ ...answer, text: clean.trim() });
  const unknown = [...new Set([...unknownFacts(words, language, pending), ...chosen.unsure])];
  const spokenOf = new Set(
    [...everything.filter(({ denied }) => !denied), ...problems].flatMap(({ fact }) => fact ?? []),
  );
  const scored = findTopics({
    words,
    spent: heard.spent,
    language,
    spokenOf,
    compared: chosen.alternatives.flatMap(([first]) => first?.fact ?? []),
    corrected,
    answering: pending !== undefined,
    hasTopic: context.topic !== undefined,
  });
  const topics = topicsOf();
  const act = actOf();
  const recognised =
    topics.length > 0 ||
    act !== 'ask' ||
    scored.heard ||
    spokenOf.size + found.length + chosen.ruledOut.length > 0;
  const strange = strangeWords(words, language);
  const wordy = words.some(({ kind }) => kind === 'word');
  if (!recognised && isNumberAsked(pending, facts) && wordy)
    problems.push({ kind: 'not-a-number', fact: pending ?? '', text: clean.trim().slice(0, 80) });
  return {
    act,
    topic: topics[0] ?? (recognised || pending !== undefined || !wordy ? null : 'unknown'),
    topicSure: topics.length > 0 && (scored.sure || topics[0] !== scored.topics[0]),
    topics,
    found,
    ruledOut: chosen.ruledOut,
    unknownFacts: unknown,
    alternatives: chosen.alternatives,
    problems,
    unknownWords: strange,
  };

  function topicsOf(): readonly string[] {
    const calm = words.some((_, at) => language.notEmergency.longest(words, at) !== null);
    if (language.emergency.find(words).length > 0 && !calm) return ['emergency'];
    if (command?.topic) return [command.topic, ...scored.topics.filter((topic) => topic !== command.topic)];
    if (requests.length > 0) return ['refuse', ...scored.topics];
    if (heard.whole === 'why' || heard.whole === 'why-all') return ['why'];
    if (heard.whole === 'help') return ['help'];
    if (scored.topics.length > 0) return scored.topics;
    const chat = heard.whole === 'thanks' || heard.whole === 'greeting';
    const smalltalk = words.some((_, at) => language.smalltalk.longest(words, at) !== null);
    return chat || (smalltalk && everything.length === 0) ? ['smalltalk'] : [];
  }

  function actOf(): Act {
    if (topics[0] === 'emergency') return 'ask';
    if (command?.act !== undefined && isAct(command.act)) return command.act;
    if (heard.whole !== null && !(heard.whole === 'correction' && everything.length > 0)) return heard.whole;
    if (
      heard.acts.has('correction') ||
      (heard.acts.has('no') && everything.length > 0 && pending === undefined)
    )
      return 'correction';
    for (const act of ['why-all', 'why', 'back', 'restart', 'forget', 'help'] as const)
      if (heard.acts.has(act)) return act;
    if (unknown.length > 0 || words.some((_, at) => language.dontKnow.longest(words, at) !== null))
      return found.length > 0 || topics.length > 0 ? 'ask' : 'dont-know';
    for (const act of ['yes', 'no', 'thanks'] as const)
      if (heard.acts.has(act) && topics.length === 0) return act;
    return 'ask';
  }
}

function yesNo(pending: string, act: Act | null, facts: FactsView): { fact: string; value: string } | null {
  if (act !== 'yes' && act !== 'no') return null;
  return valuesOf(facts, pending).includes(act) ? { fact: pending, value: act } : null;
}

const isNumberAsked = (pending: string | undefined, facts: FactsView): boolean =>
  pending !== undefined && facts.facts.get(pending)?.kind === 'number';
