/** The names and sentences that stand beside the knowledge, in one language, as the renderer wants them. */
import { formulas } from './engineering/index.ts';
import type { Glossary } from './render/words.ts';
import type { RuleSet } from './rules/index.ts';
import { englishTexts, type FormulaTexts, type Translation } from './translation.ts';

export const formulaTexts: FormulaTexts = {
  titles: new Map([...formulas.values()].map(({ id, title }) => [id, title])),
  quantities: new Set(
    [...formulas.values()].flatMap((formula) =>
      [...Object.values(formula.inputs), ...(formula.derived ?? [])].map((input) => input.words),
    ),
  ),
};

/** A text that is not there is an error: a test finds it before a member does. */
function need(text: string | undefined, what: string): string {
  if (text === undefined) throw new Error(`there are no words for ${what}`);
  return text;
}

export function glossaryOf(rules: RuleSet, translation?: Translation): Glossary {
  const texts = translation ?? englishTexts(rules, formulaTexts);
  const fact = (id: string) => {
    const found = texts.facts[id];
    if (found === undefined) throw new Error(`there are no words for the fact ${id}`);
    return found;
  };
  return {
    language: texts.language,
    term(id, value) {
      const label = fact(id).labels?.[value];
      if (label !== undefined) return label;
      const definition = rules.facts.get(id);
      if (definition?.kind !== 'choice' || definition.table === undefined) return undefined;
      return texts.rows[definition.table]?.[value];
    },
    factName: (id) => fact(id).name,
    unit(id) {
      const definition = rules.facts.get(id);
      return definition?.kind === 'number' ? definition.unit : undefined;
    },
    ask: (id) => need(fact(id).ask, `the question for ${id}`),
    whyAsked: (id) => fact(id).whyAsked ?? '',
    rule: (id) => need(texts.rules[id], `the rule ${id}`),
    relation: (id) => need(texts.relations[id], `the relation ${id}`),
    quantity: (id) => need(texts.quantities[id], `the quantity ${id}`),
    row: (table, id) => need(texts.rows[table]?.[id], `the row ${table}/${id}`),
    formula: (id) => need(texts.formulas[id], `the formula ${id}`),
    caution: (id) => need(texts.cautions[id]?.words, `the caution ${id}`),
    cautionInShort: (id) => texts.cautions[id]?.short,
    sourceInShort: (id) => rules.source(id).short,
    source(id) {
      const { title, edition, state } = rules.source(id);
      return { title: edition === undefined ? title : `${title}, ${edition}`, state };
    },
  };
}
