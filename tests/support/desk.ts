/** The real rules and words, loaded once for the tests that need them. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Desk, guardedJudge } from '../../src/advice/index.ts';
import type { Facts, FactValue } from '../../src/contracts/facts.ts';
import { glossaryOf } from '../../src/glossary.ts';
import { makeWords } from '../../src/render/words.ts';
import { loadRules } from '../../src/rules/index.ts';

export const rulesFolder = fileURLToPath(new URL('../../rules', import.meta.url));
export const rules = await loadRules(rulesFolder);
export const desk: Desk = { rules, judge: guardedJudge(rules) };
export const words = makeWords(readFileSync(`${rulesFolder}/words/en.ftl`, 'utf8'), glossaryOf(rules));

/** Facts as a member would have said them. */
export const said = (facts: Readonly<Record<string, FactValue | undefined>>): Facts =>
  Object.fromEntries(
    Object.entries(facts).flatMap(([id, value]) =>
      value === undefined ? [] : [[id, { value, from: 'said' }]],
    ),
  );
