import type { Language } from './compile.ts';

export interface Command {
  readonly topic?: string | undefined;
  readonly act?: string | undefined;
  readonly rest: string;
}

/** "/material granite", "/why@the_bot": the name is the same in every language. */
export function readCommand(text: string, languages: readonly Language[]): Command | null {
  const match = /^\s*\/([a-z]+)(?:@\w+)?(?=\s|$)/i.exec(text);
  const name = match?.[1]?.toLowerCase();
  if (!match || name === undefined) return null;
  const known = languages
    .map(({ vocabulary }) => vocabulary.commands[name])
    .find((entry) => entry !== undefined);
  return known ? { ...known, rest: text.slice(match[0].length) } : null;
}
