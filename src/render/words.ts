import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { FactValue } from '../contracts/facts.ts';
import type { Measure, Phrase, PhraseArg, Reason, Term } from '../contracts/phrase.ts';
import { showMeasure, showMetric } from '../units/show.ts';

/** Names and sentences that stand beside the knowledge itself, in rules/: what `Words` needs of them. */
export interface Glossary {
  /** The name of a value ("titanium, grade 2"), or undefined where there is none. */
  term(fact: string, value: string): string | undefined;
  factName(fact: string): string;
  unit(fact: string): string | undefined;
  ask(fact: string): string;
  whyAsked(fact: string): string;
  rule(id: string): string;
  caution(id: string): string;
  /** A few words, for a caution that holds nearly always; undefined for one that is said in full. */
  cautionInShort(id: string): string | undefined;
  /** Title and edition, and how well it is known: ", from memory". */
  source(id: string): string;
  /** As an answer cites it, "EN 959:2018". */
  sourceInShort(id: string): string;
}

export interface Words {
  say(phrase: Phrase): string;
  value(fact: string, value: FactValue): string;
  readonly glossary: Glossary;
}

const isMeasure = (arg: object): arg is Measure => 'unit' in arg;
const isReason = (arg: object): arg is Reason => 'rule' in arg;
const isPhrase = (arg: object): arg is Phrase => 'say' in arg;

/** Joins the texts of rules/words/<language>.ftl with the glossary. A missing text is an error, not an empty line. */
export function makeWords(language: string, texts: string, glossary: Glossary): Words {
  const bundle = new FluentBundle(language, { useIsolating: false });
  const problems = bundle.addResource(new FluentResource(texts));
  if (problems.length > 0) throw new Error(`rules/words/${language}.ftl: ${problems.join('; ')}`);

  const value = (fact: string, of: FactValue): string => {
    if (typeof of === 'object') return of.map((one) => value(fact, one)).join(', ');
    if (typeof of === 'number') return showMeasure(of, glossary.unit(fact) ?? '1', true);
    return glossary.term(fact, of) ?? of;
  };
  const term = (of: Term): string => value(of.fact, of.value);
  const list = (of: readonly Term[]): string => {
    const names = of.map(term);
    return names.length < 2
      ? (names[0] ?? '')
      : say({ say: 'list-last', with: { first: names.slice(0, -1).join(', '), last: names.at(-1) ?? '' } });
  };
  const argument = (arg: PhraseArg): string | number => {
    if (typeof arg === 'string' || typeof arg === 'number') return arg;
    if (Array.isArray(arg)) return list(arg as readonly Term[]);
    const one = arg as Term | Measure | Reason | Phrase;
    if (isMeasure(one)) return (one.metric ? showMetric : showMeasure)(one.value, one.unit, one.exact);
    if (isPhrase(one)) return say(one);
    return isReason(one) ? glossary.rule(one.rule) : term(one);
  };
  const say = (phrase: Phrase): string => {
    const pattern = bundle.getMessage(phrase.say)?.value;
    if (!pattern) throw new Error(`rules/words/${language}.ftl has no text ${phrase.say}`);
    const args = Object.fromEntries(
      Object.entries(phrase.with ?? {}).map(([name, arg]) => [name, argument(arg)]),
    );
    const errors: Error[] = [];
    const text = bundle.formatPattern(pattern, args, errors);
    if (errors.length > 0) throw new Error(`text ${phrase.say}: ${errors.map((e) => e.message).join('; ')}`);
    return text;
  };
  return { say, value, glossary };
}
