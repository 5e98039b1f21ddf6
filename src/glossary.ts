/** The names and sentences that stand beside the knowledge, as the renderer wants them. */
import type { Glossary } from './render/words.ts';
import type { RuleSet } from './rules/index.ts';

const seen: Readonly<Record<string, string>> = {
  read: '',
  'read-second-hand': ', second hand',
  memory: ', from memory',
  practice: '',
};

export function glossaryOf(rules: RuleSet): Glossary {
  const fact = (id: string) => {
    const found = rules.facts.get(id);
    if (found === undefined) throw new Error(`there is no fact ${id}`);
    return found;
  };
  return {
    term(id, value) {
      const definition = fact(id);
      const labels = 'labels' in definition ? definition.labels : undefined;
      if (labels?.[value] !== undefined) return labels[value];
      if (definition.kind !== 'choice' || definition.table === undefined) return undefined;
      return rules.table(definition.table).rows.find((row) => row.id === value)?.name;
    },
    factName: (id) => fact(id).name,
    unit(id) {
      const definition = fact(id);
      return definition.kind === 'number' ? definition.unit : undefined;
    },
    ask(id) {
      const definition = fact(id);
      const question = 'ask' in definition ? definition.ask : undefined;
      if (question === undefined) throw new Error(`fact ${id} has no question in rules/facts.json`);
      return question;
    },
    whyAsked(id) {
      const definition = fact(id);
      return ('whyAsked' in definition ? definition.whyAsked : undefined) ?? '';
    },
    rule: (id) => rules.rule(id).words,
    caution: (id) => rules.caution(id).words,
    cautionInShort: (id) => rules.caution(id).short,
    sourceInShort: (id) => rules.source(id).short,
    source(id) {
      const { title, edition, state } = rules.source(id);
      return `${title}${edition === undefined ? '' : `, ${edition}`}${seen[state] ?? ''}`;
    },
  };
}
