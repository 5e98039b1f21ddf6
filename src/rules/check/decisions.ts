import { accepted, factsIn, leaves } from '../conditions.ts';
import { domainOf, isOrdered, knownValues, unknown } from '../domains.ts';
import { impliedBy } from '../links.ts';
import { Entry, type Problem } from '../problems.ts';
import type { RuleFiles } from '../ruleset.ts';
import type { DecisionFile, Leaf, RuleEntry } from '../schema.ts';
import { definitionsOf } from './definitions.ts';

const listed = (value: string | readonly string[]) => (typeof value === 'string' ? [value] : value);

export function checkDecisions(files: RuleFiles): Problem[] {
  const problems: Problem[] = [];
  const definitions = definitionsOf(files);
  const { facts, tables } = definitions;
  const readable = [...facts.values()].flatMap(({ id, kind }) => (kind === 'number' ? [] : [id]));

  const checkFact = (report: Entry, path: string, id: string): boolean => {
    if (facts.get(id)?.kind !== 'number') return report.known(path, id, readable, 'a fact');
    report.add(path, `${id} is a number, and a rule reads no numbers.`, 'Read a band of it.');
    return false;
  };
  const checkLeaf = (report: Entry, path: string, leaf: Leaf) => {
    const fact = facts.get(leaf.fact);
    if (!checkFact(report, `${path}.fact`, leaf.fact) || fact === undefined) return;
    const along = leaf.operator === 'orWorse' || leaf.operator === 'orBetter';
    if (along && !isOrdered(fact)) {
      report.add(`${path}.operator`, `${leaf.fact} has no order.`, 'Use "in", or order its values.');
      return;
    }
    if (knownValues(definitions, fact).length === 0) return;
    const values = along ? knownValues(definitions, fact) : domainOf(definitions, fact);
    const fits = listed(leaf.value).map((value) =>
      report.known(`${path}.value`, value, values, `a value of ${leaf.fact}`),
    );
    const holds = fits.includes(false) ? [] : accepted(definitions, leaf);
    if (new Set(listed(leaf.value)).size < listed(leaf.value).length)
      report.add(`${path}.value`, 'a value stands twice.', 'Take one out.');
    if (along && new Set(holds).size === domainOf(definitions, fact).length)
      report.add(`${path}.value`, 'every value passes this test.', 'Use "in" to say so outright.');
  };
  const checkResult = (
    report: Entry,
    path: string,
    decision: DecisionFile,
    result: RuleEntry['gives'],
    manyAllowed: boolean,
  ) => {
    for (const [name, value] of Object.entries(result)) {
      const spec = decision.outcomes[name];
      const where = `${path}.${name}`;
      if (!report.known(where, name, Object.keys(decision.outcomes), 'an outcome') || spec === undefined)
        continue;
      if (typeof value !== 'string' && spec.combine !== 'all')
        report.add(where, `${name} has one value.`, 'Give it, not a list.');
      for (const one of listed(value)) report.known(where, one, spec.values, `a value of ${name}`);
    }
    if (!manyAllowed && Object.keys(result).length === 0)
      report.add(path, 'it gives nothing.', `Give ${Object.keys(decision.outcomes).join(' or ')}.`);
  };

  for (const decision of files.decisions) {
    const file = `decisions/${decision.decision}.json`;
    const top = new Entry(problems, file, '');
    const { each, reads } = decision;
    if (each !== undefined && checkFact(top, 'each', each) && facts.get(each)?.kind !== 'choice')
      top.add('each', `${each} is not a choice.`, 'Name a choice fact.');
    for (const id of each === undefined ? [] : impliedBy(facts, tables, each))
      if (reads.includes(id))
        top.add('each', `rows of ${each} imply ${id}, which is settled before.`, 'Derive it from the row.');
    const used = new Set(decision.rules.flatMap((rule) => factsIn(rule.when)));
    for (const [place, id] of reads.entries())
      if (checkFact(top, `reads[${place}]`, id) && !used.has(id) && id !== each)
        top.add(`reads[${place}]`, `no rule reads ${id}.`, 'Take it out.');
    for (const id of used)
      if (readable.includes(id) && !reads.includes(id) && id !== each)
        top.add('reads', `${id} is read and not listed.`, 'Add it.');
    for (const [name, spec] of Object.entries(decision.outcomes)) {
      const path = `outcomes.${name}.values`;
      if (new Set(spec.values).size < spec.values.length)
        top.add(path, 'a value stands twice.', 'Take one out.');
      if (spec.values.includes(unknown))
        top.add(path, `"${unknown}" is no outcome.`, 'Say what follows from it.');
      if (spec.mayBeEmpty !== undefined && spec.combine !== 'all')
        top.add(`outcomes.${name}.mayBeEmpty`, 'only what is gathered may be empty.', 'Take it out.');
    }
    for (const id of Object.keys(decision.notOrdered ?? {}))
      top.known(`notOrdered.${id}`, id, [...reads, ...(each === undefined ? [] : [each])], 'read here');

    const ids = decision.rules.map((rule) => rule.id);
    for (const rule of decision.rules) {
      const report = new Entry(problems, file, `rule ${rule.id}`);
      for (const { leaf, path } of leaves(rule.when)) checkLeaf(report, path, leaf);
      checkResult(report, 'gives', decision, rule.gives, false);
      for (const [place, id] of (rule.overrides ?? []).entries())
        report.known(`overrides[${place}]`, id, ids, 'a rule of this decision');
    }
    for (const example of decision.examples) {
      const report = new Entry(problems, file, `example ${example.name}`);
      for (const [id, value] of Object.entries(example.facts)) {
        const fact = facts.get(id);
        if (!checkFact(report, `facts.${id}`, id) || fact === undefined) continue;
        const values = domainOf(definitions, fact);
        if (values.length > 0) report.known(`facts.${id}`, value, values, `a value of ${id}`);
      }
      checkResult(report, 'expect', decision, example.expect, false);
    }
  }
  return problems;
}
