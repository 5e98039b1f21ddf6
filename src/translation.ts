/** Names and sentences of the rule files in another language: rules/words/<language>.json. English stands in the rule files. */
import { z } from 'zod';
import type { RuleSet } from './rules/index.ts';

const words = z.string().trim().min(1);
const byId = z.record(z.string(), words);

export const translationSchema = z.strictObject({
  language: z.string().min(2).max(10),
  facts: z.record(
    z.string(),
    z.strictObject({
      name: words,
      ask: words.optional(),
      whyAsked: words.optional(),
      labels: byId.optional(),
    }),
  ),
  /** Table → row → name, for the tables whose rows are shown. */
  rows: z.record(z.string(), byId),
  rules: byId,
  cautions: z.record(z.string(), z.strictObject({ words, short: words.optional() })),
  relations: byId,
  /** Formula id → title. */
  formulas: byId,
  /** A quantity's English words → its words. */
  quantities: byId,
});

export type Translation = z.infer<typeof translationSchema>;

export interface FormulaTexts {
  readonly titles: ReadonlyMap<string, string>;
  readonly quantities: ReadonlySet<string>;
}

/** Tables whose rows members read: those behind a fact, and the steps of drilling. */
export function shownTables(rules: RuleSet): readonly string[] {
  const behind = [...rules.facts.values()].flatMap((fact) =>
    fact.kind === 'choice' && fact.table !== undefined ? [fact.table] : [],
  );
  return [...new Set([...behind, 'steps'])];
}

/** Everything that a full translation has to say, in English: what a translator starts from, and what a test holds each language to. */
export function englishTexts(rules: RuleSet, formulas: FormulaTexts): Translation {
  return {
    language: 'en',
    facts: Object.fromEntries(
      [...rules.facts.values()].map((fact) => [
        fact.id,
        {
          name: fact.name,
          ...('ask' in fact && fact.ask !== undefined ? { ask: fact.ask } : {}),
          ...('whyAsked' in fact && fact.whyAsked !== undefined ? { whyAsked: fact.whyAsked } : {}),
          ...('labels' in fact && fact.labels !== undefined ? { labels: fact.labels } : {}),
        },
      ]),
    ),
    rows: Object.fromEntries(
      shownTables(rules).map((table) => [
        table,
        Object.fromEntries(rules.table(table).rows.map(({ id, name }) => [id, name])),
      ]),
    ),
    rules: Object.fromEntries(
      [...rules.decisions.values()].flatMap((decision) =>
        decision.rules.map((rule) => [rule.id, rule.words]),
      ),
    ),
    cautions: Object.fromEntries(
      rules.cautions.map(({ id, words: full, short }) => [
        id,
        { words: full, ...(short === undefined ? {} : { short }) },
      ]),
    ),
    relations: Object.fromEntries(rules.relations.map((relation) => [relation.id, relation.words])),
    formulas: Object.fromEntries(formulas.titles),
    quantities: Object.fromEntries([...formulas.quantities].map((one) => [one, one])),
  };
}
