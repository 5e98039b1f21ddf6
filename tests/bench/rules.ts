/** The guarded rules engine against its compiled twin on the same decisions, without memory. */
import { decide, decideNow, exampleSituation } from '../../src/rules/index.ts';
import { rules } from '../support/desk.ts';
import { measure, row } from './measure.ts';

export async function run(): Promise<void> {
  for (const name of ['exposure', 'metal', 'adhesive', 'cautions']) {
    const decision = rules.decision(name);
    const situations = decision.examples.map((example) => exampleSituation(rules, decision, example));
    const of = (index: number) => situations[index % situations.length] ?? situations[0];
    const rows = `${decision.rules.length} rules`;
    console.log(
      row(
        `${name}, ${rows}, rules engine`,
        await measure(300, (index) => decide(rules, name, of(index) ?? {})),
      ),
    );
    console.log(
      row(
        `${name}, ${rows}, compiled`,
        await measure(3000, async (index) => decideNow(rules, name, of(index) ?? {})),
      ),
    );
  }
}
