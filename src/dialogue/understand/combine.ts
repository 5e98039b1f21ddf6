/** Values that together say more than each alone: a sea cliff, and the tropics. */
import type { Language } from './compile.ts';
import type { Found } from './parsed.ts';
import type { Word } from './phrases.ts';

export function combineFound(found: readonly Found[], words: readonly Word[], language: Language): Found[] {
  let all = [...found];
  for (const { when, where, gives } of language.combine) {
    const holds = Object.entries(when).every(([fact, value]) =>
      all.some((entry) => entry.fact === fact && entry.value === value),
    );
    if (!holds || (where !== undefined && where.all(words).length === 0)) continue;
    const text = all
      .filter(({ fact }) => fact in when)
      .map((entry) => entry.text)
      .join(', ');
    for (const [fact, value] of Object.entries(gives)) {
      const source = all.find((entry) => entry.fact === fact)?.text ?? text;
      all = [...all.filter((entry) => entry.fact !== fact), { fact, value, text: source }];
    }
  }
  return all;
}
