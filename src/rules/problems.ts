import { nearest } from './nearest.ts';

/** One thing wrong in a rule file, for the person who wrote it. */
export interface Problem {
  readonly file: string;
  /** Which entry of the file: "rule boots.ice", "row gravel". Empty for the file as a whole. */
  readonly entry: string;
  readonly path: string;
  readonly wrong: string;
  readonly mend: string;
}

const shownAtMost = 10;

export const line = ({ file, entry, path, wrong, mend }: Problem): string =>
  `${[file, entry, path].filter((part) => part !== '').join(', ')}: ${wrong}${mend === '' ? '' : ` ${mend}`}`;

/** Everything that is wrong, at once, so that a rule author need not mend it one start at a time. */
export class RuleFileError extends Error {
  override readonly name = 'RuleFileError';
  readonly #problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    const shown = problems.slice(0, shownAtMost).map((problem) => `  ${line(problem)}`);
    const more = problems.length - shown.length;
    super(
      [
        `${problems.length} ${problems.length === 1 ? 'problem' : 'problems'} in the rule files:`,
        ...shown,
        ...(more > 0 ? [`  and ${more} more`] : []),
      ].join('\n'),
    );
    this.#problems = problems;
  }

  get problems(): readonly Problem[] {
    return this.#problems;
  }
}

/** Collects the problems of one entry of one file. */
export class Entry {
  constructor(
    private readonly problems: Problem[],
    readonly file: string,
    readonly entry: string,
  ) {}

  add(path: string, wrong: string, mend = ''): void {
    this.problems.push({ file: this.file, entry: this.entry, path, wrong, mend });
  }

  /** True when the word is one of those known; otherwise says so, with the nearest of them. */
  known(path: string, word: string, known: readonly string[], what: string): boolean {
    if (known.includes(word)) return true;
    this.add(path, `"${word}" is not ${what}.`, suggestion(word, known));
    return false;
  }
}

const listedAtMost = 12;

export function suggestion(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  if (near !== null) return `Did you mean "${near}"?`;
  if (known.length === 0) return 'There is none yet.';
  const rest = known.length > listedAtMost ? ', …' : '';
  return `Known: ${known.slice(0, listedAtMost).join(', ')}${rest}.`;
}
