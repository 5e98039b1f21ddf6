import { checkCircles } from './check/circles.ts';
import { checkDecisions } from './check/decisions.ts';
import { checkFacts } from './check/facts.ts';
import { checkLists } from './check/lists.ts';
import { checkTables } from './check/tables.ts';
import { readRuleFiles } from './files.ts';
import { type Problem, RuleFileError } from './problems.ts';
import { assemble, type RuleSet } from './ruleset.ts';

/** Every rule file under the folder, or one error that says all that is wrong with them. */
export async function loadRules(dir: string): Promise<RuleSet> {
  const { files, problems } = await readRuleFiles(dir);
  if (files === null) throw new RuleFileError(problems);
  const found: Problem[] = [
    ...checkLists(files),
    ...checkFacts(files),
    ...checkTables(files),
    ...checkDecisions(files),
  ];
  // A circle is looked for last: names that are wrong would make it up or hide it.
  if (found.length === 0) found.push(...checkCircles(files));
  if (found.length > 0) throw new RuleFileError(found);
  return assemble(files);
}
