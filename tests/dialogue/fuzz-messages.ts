/** Random, mutated and hostile messages, from a seed: real messages of every language, cut up, mixed and damaged. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('understand/', import.meta.url));

const real = ['', 'es', 'pt', 'fr', 'it', 'de'].flatMap((code) => {
  const place = `${folder}${code}`;
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .filter((name) => name.startsWith('messages') && name.endsWith('.json'))
    .flatMap((name) =>
      JSON.parse(readFileSync(`${place}/${name}`, 'utf8')).cases.map(
        (one: { say: string }) => one.say as string,
      ),
    );
});

const hostile = [
  '\u0000',
  '\u202e',
  '\u200b',
  '\ufeff',
  '💀'.repeat(50),
  '<b>',
  '@everyone',
  '[x](http://example.invalid)',
  '__proto__',
  'constructor',
  '{{x}}',
  '#{1+1}',
  "'; drop table sessions; --",
  '../../etc/passwd',
  '%s%n',
  'NaN mm',
  'Infinity kN',
  '1e309 mm',
  '-0 mm',
  '0x10 mm',
  '9'.repeat(400),
  'mm'.repeat(300),
  'x'.repeat(3000),
  '½'.repeat(60),
  '1/0 in',
  '/why',
  '/settings',
  '/help',
  '\n'.repeat(80),
  '((((((((((',
  '"',
  '> quoted granite',
];

/** A small generator with a seed (mulberry32), so that a failure can be had again. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function messagesFrom(random: () => number): () => string {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const damage = (text: string): string => {
    const at = Math.floor(random() * text.length);
    switch (Math.floor(random() * 6)) {
      case 0:
        return text.slice(0, at) + text.slice(at + 1);
      case 1:
        return text.slice(0, at) + pick(hostile) + text.slice(at);
      case 2:
        return text.slice(0, at) + String.fromCodePoint(32 + Math.floor(random() * 0x2000)) + text.slice(at);
      case 3:
        return text
          .split(' ')
          .toSorted(() => random() - 0.5)
          .join(' ');
      case 4:
        return text.toUpperCase();
      default:
        return text.replace(/\d+/g, () => String(Math.floor(random() * 10 ** Math.floor(random() * 7))));
    }
  };
  return () => {
    const kind = random();
    if (kind < 0.1) return pick(hostile);
    if (kind < 0.2)
      return Array.from({ length: Math.floor(random() * 60) }, () =>
        String.fromCodePoint(1 + Math.floor(random() * 0xd000)),
      ).join('');
    let text = pick(real);
    if (random() < 0.3) text += ` ${pick(real)}`;
    for (let times = Math.floor(random() * 4); times > 0; times -= 1) text = damage(text);
    return text;
  };
}
