/** From message to reply in process: one answer to a whole question, and one turn that has to choose a question. */
import { makeApp } from '../../src/app.ts';
import { keepNothing } from '../../src/store/nothing.ts';
import { rulesFolder } from '../support/desk.ts';
import { measure, row } from './measure.ts';

const questions = [
  'which bolt for an overhanging limestone sea cliff in the Mediterranean?',
  'is a 10x80 glue-in in granite with epoxy deep enough?',
  '12mm x 100 twin-leg in soft wet sandstone, 4 C, which glue and how much for 20 bolts?',
  'how long must vinyl ester cure at 6 C?',
  'how far from the edge for a 12x100?',
  'how long does 50 µm of zinc last on an inland crag?',
  'how do I clean the hole for a glue-in?',
  'can you certify this anchor?',
];

export async function run(): Promise<void> {
  for (const [name, oneShot] of [
    ['whole answer', true],
    ['turn of a talk, choosing the next question', false],
  ] as const) {
    const app = await makeApp(rulesFolder, keepNothing, { oneShot });
    console.log(` ${name}`);
    for (const text of questions) {
      const figures = await measure(200, (index) =>
        app.respond({ id: String(index), chat: 'bench', user: 'bench', text }),
      );
      console.log(row(text.slice(0, 56), figures));
    }
  }
}
