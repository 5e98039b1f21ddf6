/** `npx tsx tests/pictures/look.ts <folder> [language …]`: draws every sample, to be looked at after each change. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Languages } from '../../src/languages.ts';
import { draw } from '../../src/pictures/index.ts';
import { rules, rulesFolder } from '../support/desk.ts';
import { samples } from './samples.ts';

const [folder = 'pictures', ...wanted] = process.argv.slice(2);
const languages = await Languages.find(rulesFolder, rules);
mkdirSync(folder, { recursive: true });
for (const code of wanted.length > 0 ? wanted : languages.codes) {
  const words = await languages.words(code);
  for (const [name, { spec, alt }] of Object.entries(samples(words))) {
    writeFileSync(join(folder, `${name}-${code}.png`), await draw(spec));
    console.log(`${name}-${code}: ${alt}\n`);
  }
}
