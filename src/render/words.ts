import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { FactValue } from '../contracts/facts.ts';
import type {
  Measure,
  Named,
  Numbers,
  Phrase,
  PhraseArg,
  Reason,
  Term,
  Together,
} from '../contracts/phrase.ts';
import type { Units } from '../contracts/session.ts';
import { longTime, showMeasure, showMetric } from '../units/show.ts';

/** Names and sentences that stand beside the knowledge itself, in rules/: what `Words` needs of them. */
export interface Glossary {
  readonly language: string;
  /** The name of a value ("titanium, grade 2"), or undefined where there is none. */
  term(fact: string, value: string): string | undefined;
  factName(fact: string): string;
  unit(fact: string): string | undefined;
  ask(fact: string): string;
  whyAsked(fact: string): string;
  rule(id: string): string;
  /** What `Named` may name besides a fact. */
  relation(id: string): string;
  quantity(words: string): string;
  row(table: string, id: string): string;
  /** The title of a formula. */
  formula(id: string): string;
  caution(id: string): string;
  /** A few words, for a caution that holds nearly always; undefined for one that is said in full. */
  cautionInShort(id: string): string | undefined;
  /** Title and edition, and how well it is known: read, read-second-hand, memory, practice. */
  source(id: string): { readonly title: string; readonly state: string };
  /** As an answer cites it, "EN 959:2018". */
  sourceInShort(id: string): string;
}

export interface Words {
  say(phrase: Phrase): string;
  value(fact: string, value: FactValue): string;
  /** Title and edition of a source, and that it is from memory where it is. */
  source(id: string): string;
  measure(measure: Measure): string;
  /** A plain number with the decimal mark of the language. */
  number(value: number): string;
  readonly glossary: Glossary;
  /** The same words with these units first; the others always stand beside. */
  first(units: Units): Words;
}

const isMeasure = (arg: object): arg is Measure => 'unit' in arg;
const isReason = (arg: object): arg is Reason => 'rule' in arg;
const isNamed = (arg: object): arg is Named => 'of' in arg;
const isTogether = (arg: object): arg is Together => 'together' in arg;
const isNumbers = (arg: object): arg is Numbers => 'numbers' in arg;
const isPhrase = (arg: object): arg is Phrase => 'say' in arg;

/** Joins the texts of rules/words/<language>.ftl with the glossary. A missing text is an error, not an empty line. */
export function makeWords(texts: string, glossary: Glossary, units: Units = 'metric'): Words {
  const { language } = glossary;
  const bundle = new FluentBundle(language, { useIsolating: false });
  const problems = bundle.addResource(new FluentResource(texts));
  if (problems.length > 0) throw new Error(`rules/words/${language}.ftl: ${problems.join('; ')}`);

  const comma = new Intl.NumberFormat(language).format(1.1).slice(1, 2);
  const localised = (text: string): string =>
    comma === '.' ? text : text.replace(/(\d)\.(\d)/g, `$1${comma}$2`);
  const measure = (one: Measure): string => {
    const long = longTime(one.value, one.unit, one.exact);
    const text =
      long?.number ?? (one.metric ? showMetric : showMeasure)(one.value, one.unit, one.exact, units);
    const local = localised(text);
    return long === undefined ? local : say({ say: long.words, with: { number: local } });
  };
  /** "24.1, 27.3, 26 kN": the unit once, and no conversion of each. */
  const row = (of: readonly number[], unit: string): string =>
    of
      .map((one, index) => {
        const last = index === of.length - 1;
        return measure({ value: one, unit: last ? unit : '1', exact: true, metric: last && unit === 'kN' });
      })
      // Where the comma is the decimal mark it cannot part numbers as well.
      .join(comma === ',' ? '; ' : ', ');
  const value = (fact: string, of: FactValue): string => {
    const unit = glossary.unit(fact) ?? '1';
    if (typeof of === 'object') return row(of, unit);
    if (typeof of === 'number') return measure({ value: of, unit, exact: true });
    return glossary.term(fact, of) ?? of;
  };
  const term = (of: Term): string => value(of.fact, of.value);
  const list = (of: readonly Term[]): string => {
    const names = of.map(term);
    return names.length < 2
      ? (names[0] ?? '')
      : say({ say: 'list-last', with: { first: names.slice(0, -1).join(', '), last: names.at(-1) ?? '' } });
  };
  const named = ({ of, id }: Named): string => {
    switch (of) {
      case 'fact':
        return glossary.factName(id);
      case 'relation':
        return glossary.relation(id);
      case 'quantity':
        return glossary.quantity(id);
      case 'row': {
        const [table = '', row = ''] = id.split('/');
        return glossary.row(table, row);
      }
    }
  };
  const argument = (arg: PhraseArg): string | number => {
    if (typeof arg === 'string' || typeof arg === 'number') return arg;
    if (Array.isArray(arg)) return list(arg as readonly Term[]);
    const one = arg as Term | Measure | Reason | Named | Together | Numbers | Phrase;
    if (isMeasure(one)) return measure(one);
    if (isPhrase(one)) return say(one);
    if (isNumbers(one)) return row(one.numbers, one.in);
    if (isTogether(one)) return one.together.map(term).join(' · ');
    if (isNamed(one)) return named(one);
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
  const source = (id: string): string => {
    const { title, state } = glossary.source(id);
    return state === 'memory' || state === 'read-second-hand'
      ? say({ say: `source-${state}`, with: { title } })
      : title;
  };
  return {
    say,
    value,
    source,
    measure,
    number: (one) => localised(String(one)),
    glossary,
    first: (wanted) => makeWords(texts, glossary, wanted),
  };
}
