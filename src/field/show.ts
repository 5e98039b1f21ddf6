/** Records in words: what is in them, what changed, who did what. */
import type { FactValue } from '../contracts/facts.ts';
import type { Phrase, PhraseArg } from '../contracts/phrase.ts';
import type { RecordBody, RecordKind, RecordStep } from '../contracts/record.ts';
import type { RuleSet } from '../rules/index.ts';
import { factsOfKind, textsOfKind } from './kinds.ts';
import { changedFacts, changedTexts } from './test-record.ts';

export function valueShown(rules: RuleSet, fact: string, value: FactValue | undefined): PhraseArg {
  if (value === undefined || value === 'unknown') return { say: 'not-known' };
  if (typeof value === 'string') return { fact, value };
  const definition = rules.facts.get(fact);
  const unit = definition?.kind === 'number' ? definition.unit : '1';
  return typeof value === 'number' ? { value, unit, exact: true } : { numbers: value, in: unit };
}

const name = (fact: string): PhraseArg =>
  fact === 'load_kn' ? { say: 'record-load' } : { of: 'fact', id: fact };

/** The day of a pull, of setting and of a look are words of their own. */
const textLine = (kind: RecordKind, text: string): string =>
  text === 'day' && kind !== 'test' ? `register-day-${kind}` : `record-text-${text}`;

export function bodyLines(
  rules: RuleSet,
  { facts, texts }: RecordBody,
  kind: RecordKind = 'test',
): readonly Phrase[] {
  const told = factsOfKind(kind).filter((fact) => facts[fact] !== undefined);
  return [
    ...told.map(
      (fact): Phrase => ({
        say: 'record-fact',
        with: { fact: name(fact), value: valueShown(rules, fact, facts[fact]) },
      }),
    ),
    ...textsOfKind(kind).flatMap((text): Phrase[] =>
      texts[text] === undefined ? [] : [{ say: textLine(kind, text), with: { text: texts[text] } }],
    ),
  ];
}

export function changeLines(
  rules: RuleSet,
  before: RecordBody,
  after: RecordBody,
  kind: RecordKind = 'test',
): readonly Phrase[] {
  return [
    ...changedFacts(before, after).map(
      (change): Phrase => ({
        say: 'record-change',
        with: {
          fact: name(change.fact),
          before: valueShown(rules, change.fact, change.before),
          after: valueShown(rules, change.fact, change.after),
        },
      }),
    ),
    ...changedTexts(before, after).map(
      (change): Phrase => ({
        say: 'record-change',
        with: { fact: { say: nameOfText(kind, change.text) }, before: change.before, after: change.after },
      }),
    ),
  ];
}

const nameOfText = (kind: RecordKind, text: string): string =>
  text === 'day' && kind !== 'test' ? `register-name-day-${kind}` : `record-name-${text}`;

/** "2027-05-02 09:00 UTC": the same for everybody. */
const moment = (at: string): string => `${new Date(at).toISOString().slice(0, 16).replace('T', ' ')} UTC`;

export function historyLines(
  rules: RuleSet,
  steps: readonly RecordStep[],
  kind: RecordKind = 'test',
): readonly Phrase[] {
  return steps.flatMap((step, index): Phrase[] => {
    const by: PhraseArg = step.by ?? { say: 'record-by-forgotten' };
    const head: Phrase = {
      say: `record-did-${step.did}`,
      with: { version: step.version, by, at: moment(step.at) },
    };
    const before = steps[index - 1];
    if (step.did === 'added') return [head, ...bodyLines(rules, step.body, kind)];
    return before === undefined ? [head] : [head, ...changeLines(rules, before.body, step.body, kind)];
  });
}
