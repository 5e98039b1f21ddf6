/** From shell to answer: the built program, cold, a new process each time. */
import { run as runProgram } from '../support/program.ts';
import { measure, row } from './measure.ts';

export async function run(): Promise<void> {
  const question = 'which bolt for an overhanging limestone sea cliff in the Mediterranean?';
  console.log(row('node dist/chough.js ask "…"', await measure(10, () => runProgram(['ask', question]))));
  console.log(row('node dist/chough.js --help', await measure(10, () => runProgram(['--help']))));
}
