/** The whole chain behind an advice: facts and where they came from, rules that fired, formulas with numbers, sources. */
import type { Advice, Computed } from '../contracts/advice.ts';
import type { FactOrigin } from '../contracts/facts.ts';
import { cautionsInFull, factLine } from './answer.ts';
import type { Words } from './words.ts';

function computedText(words: Words, one: Computed): string {
  const inputs = one.inputs
    .map(
      ({ symbol, value, unit }) =>
        `${symbol} = ${Number(value.toPrecision(4))}${unit === '1' ? '' : ` ${unit}`}`,
    )
    .join(', ');
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

export function whyText(words: Words, advice: Advice, origins: Readonly<Record<string, FactOrigin>>): string {
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
  return [
    words.say(advice.verdict),
    list('title-why-facts', facts),
    list('title-why-rules', rules),
    list(
      'title-why-formulas',
      advice.computed.map((one) => computedText(words, one)),
    ),
    cautionsInFull(words, advice),
    words.say({ say: 'deferral' }),
    list(
      'title-why-sources',
      advice.sources.map((id) => words.source(id)),
    ),
    words.say({ say: 'footer-why', with: { id: advice.id, ruleset: advice.ruleset } }),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}
