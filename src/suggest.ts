/** What a member may go on to type: the last word completed by the names of rocks, metals, adhesives, anchors, places. */
import type { App } from './app.ts';
import { domain } from './rules/index.ts';
import { plain } from './units/plain.ts';

/** The facts whose values are worth offering while somebody types. */
const completed = ['rock', 'metal', 'adhesive', 'anchor', 'environment', 'use', 'hole_moisture'];
const most = 25;
const longest = 100;

export type Suggest = (typed: string, language: string) => Promise<readonly string[]>;

export function suggester({ rules, languages }: App): Suggest {
  const known = new Map<string, Promise<readonly string[]>>();
  const namesIn = async (language: string): Promise<readonly string[]> => {
    const words = await languages.words(language);
    const names = completed.flatMap((fact) =>
      domain(rules, fact)
        .filter((value) => value !== 'unknown')
        .map((value) => words.value(fact, value)),
    );
    return [...new Set(names)];
  };
  return async (typed, language) => {
    const names = known.get(language) ?? namesIn(language);
    known.set(language, names);
    // The beginning of a name of several words may already be typed: the longest ending that begins a name counts.
    const words = typed.trimStart().split(/\s+/);
    for (let from = Math.max(0, words.length - 3); from < words.length; from++) {
      const end = plain(words.slice(from).join(' '));
      if (end === '') continue;
      const head = words.slice(0, from).join(' ');
      const found = (await names).filter((name) => plain(name).startsWith(end));
      const lines = found.map((name) => (head === '' ? name : `${head} ${name}`));
      const fitting = lines.filter((line) => line.length <= longest).slice(0, most);
      if (fitting.length > 0) return fitting;
    }
    return typed.trim() === '' ? (await names).slice(0, most) : [typed.slice(0, longest)];
  };
}
