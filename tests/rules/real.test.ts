import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import {
  exampleProblems,
  exampleSituation,
  faults,
  loadRules,
  remarks,
  survey,
} from '../../src/rules/index.ts';
import { differences, randomSituation, seeded } from './machine/same.ts';

const rules = await loadRules(fileURLToPath(new URL('../../rules', import.meta.url)));
const names = [...rules.decisions.keys()];
const mostRuns = 3000;

/** Looking at every combination takes seconds for the large decisions: once is enough. */
const surveyed = new Map(names.map((name) => [name, survey(rules, name)]));
const surveyOf = (name: string) => {
  const found = surveyed.get(name);
  if (found === undefined) throw new Error(`decision ${name} was not surveyed`);
  return found;
};

it('every example comes out as it says', () => {
  expect(exampleProblems(rules)).toEqual([]);
});

describe('every combination of facts', () => {
  it.each(names)('%s: no gap, no conflict, no bold unknown, no broken order', (name) => {
    const found = surveyOf(name);
    console.log(
      [`${name}: ${found.combinations} combinations, ${found.examined} looked at`, ...remarks(found)].join(
        '\n',
      ),
    );
    expect(faults(found)).toEqual([]);
    expect(found.neverFires).toEqual([]);
  });
});

it.each(names)('%s: the rules engine and its compiled twin say the same', async (name) => {
  const decision = rules.decision(name);
  const random = seeded(20261125);
  const tenth = Math.ceil(surveyOf(name).combinations / 10);
  const runs = Math.min(tenth, Math.floor(mostRuns / names.length));
  const chosen = Array.from({ length: runs }, () => randomSituation(rules, name, random));
  const examples = decision.examples.map((example) => exampleSituation(rules, decision, example));
  expect(await differences(rules, name, [...examples, ...chosen])).toEqual([]);
});

it('every caution that is given has words, and every caution with words can be given', () => {
  const given = new Set(rules.decision('cautions').outcomes.set?.values);
  expect([...given].toSorted()).toEqual(rules.cautions.map(({ id }) => id).toSorted());
});

it('every fact that may be asked for has a question, and says why it is asked', () => {
  const { need, ask } = rules.decision('questions').outcomes;
  for (const id of [...(need?.values ?? []), ...(ask?.values ?? [])]) {
    const fact = rules.facts.get(id);
    expect(fact && 'ask' in fact && fact.ask, id).toBeTruthy();
    expect(fact && 'whyAsked' in fact && fact.whyAsked, id).toBeTruthy();
  }
});
