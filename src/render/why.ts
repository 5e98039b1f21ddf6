/** The whole chain behind an advice: facts and where they came from, rules that fired, formulas with numbers, sources. */
import type { Advice, Computed, ComputedInput, InputOrigin } from '../contracts/advice.ts';
import type { FactOrigin } from '../contracts/facts.ts';
import type { Paragraph } from '../contracts/reply.ts';
import { cautionsInFull, factLine, joined } from './answer.ts';
import type { Words } from './words.ts';

function originText(words: Words, from: InputOrigin): string {
  switch (from.kind) {
    case 'fact':
      return words.say({
        say: 'why-from-fact',
        with: { fact: { of: 'fact', id: from.fact }, origin: { say: `origin-${from.origin}` } },
      });
    case 'row':
      return words.say({ say: 'why-from-row', with: { row: from.row } });
    case 'formula':
      return words.glossary.formula(from.id);
    case 'method':
      return words.say({ say: 'why-from-method' });
  }
}

function inputText(words: Words, input: ComputedInput): string {
  const number = (value: number): string => words.number(Number(value.toPrecision(4)));
  return words.say({
    say: 'why-input',
    with: {
      symbol: input.symbol,
      value: input.unit === '1' ? number(input.value) : `${number(input.value)} ${input.unit}`,
      from: originText(words, input.from),
      least: number(input.least),
      most: number(input.most),
    },
  });
}

function computedText(words: Words, one: Computed): string {
  const inputs = one.inputs.map((input) => inputText(words, input)).join('; ');
  return words.say({
    say: 'why-formula',
    with: {
      name: words.glossary.formula(one.id),
      symbols: one.symbols,
      inputs,
      value: words.measure({ value: one.value, unit: one.unit }),
      kind: words.say({ say: `kind-${one.kind}` }),
      source: words.source(one.source),
      clause: one.clause,
    },
  });
}

export function whyParagraphs(
  words: Words,
  advice: Advice,
  origins: Readonly<Record<string, FactOrigin>>,
): readonly Paragraph[] {
  const facts = Object.entries(advice.facts).map(([fact, value]) =>
    words.say({
      say: 'why-fact',
      with: {
        line: factLine(words, fact, value),
        origin: words.say({ say: `origin-${origins[fact] ?? 'assumed'}` }),
      },
    }),
  );
  const rules = advice.rules.map((id) => words.say({ say: 'why-rule', with: { id, words: { rule: id } } }));
  const list = (title: string, lines: readonly string[]): string =>
    lines.length === 0 ? '' : [words.say({ say: title }), ...lines.map((line) => `• ${line}`)].join('\n');
  const must = (text: string): Paragraph => ({ text, first: true });
  const may = (text: string): Paragraph => ({ text, first: false });
  return [
    must(words.say(advice.verdict)),
    may(list('title-why-facts', facts)),
    may(list('title-why-rules', rules)),
    may(
      list(
        'title-why-formulas',
        advice.computed.map((one) => computedText(words, one)),
      ),
    ),
    must(cautionsInFull(words, advice)),
    must(words.say({ say: 'deferral' })),
    may(
      list(
        'title-why-sources',
        advice.sources.map((id) => words.source(id)),
      ),
    ),
    may(words.say({ say: 'footer-why', with: { id: advice.id, ruleset: advice.ruleset } })),
  ].filter(({ text }) => text !== '');
}

export const whyText = (
  words: Words,
  advice: Advice,
  origins: Readonly<Record<string, FactOrigin>>,
): string => joined(whyParagraphs(words, advice, origins));
