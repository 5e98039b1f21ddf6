/** Every standard size of every kind, each with all its ways of failing; then the whole advice on a size. */
import { strengthWithin } from '../../src/advice/capacity.ts';
import { settingOf } from '../../src/advice/capacity-setting.ts';
import { standardSizes, withSize } from '../../src/advice/embedment-sizes.ts';
import { advise } from '../../src/advice/index.ts';
import { Worksheet } from '../../src/advice/worksheet.ts';
import { desk, rules, said } from '../support/desk.ts';
import { measure, row } from './measure.ts';

const facts = said({
  rock: 'granite',
  adhesive: 'epoxy',
  rock_condition: 'sound',
  hole_moisture: 'dry',
  metal: 'stainless-316',
  use: 'lead',
});

function allSizes(): number {
  const sheet = new Worksheet(desk, 'embedment', facts);
  let reckoned = 0;
  for (const { id } of rules.table('anchors').rows) {
    const [first, ...rest] = standardSizes(sheet, id);
    if (first === undefined) continue;
    const base = settingOf(sheet, { anchor: id, diameter: first.diameter, length: first.length });
    for (const size of [first, ...rest]) if (strengthWithin(withSize(base, size))) reckoned += 1;
  }
  return reckoned;
}

export async function run(): Promise<void> {
  console.log(row(`${allSizes()} standard sizes, all modes`, await measure(200, async () => allSizes())));
  console.log(row('advice on a size', await measure(200, () => advise(desk, 'embedment', facts))));
}
