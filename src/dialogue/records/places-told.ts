/** Where an anchor is and who set it, in plain words: "bolt 3 on Gannet Slab, sector Harbour, set 2024-05-02 by kes". */
import { dayIn, isSpan } from '../../field/index.ts';
import type { Expressions } from '../expressions.ts';

export interface PlaceTold {
  readonly texts: Readonly<Record<string, string>>;
  /** What is left, to be understood as facts. */
  readonly rest: string;
  /** A day or a year that cannot be. */
  readonly wrongDay: string | null;
}

type Words = Expressions['register'];

const escaped = (word: string): string => word.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);

/** Any of these as a whole word, the longest first. */
const anyOf = (words: readonly string[]): string =>
  `(?:${[...words]
    .toSorted((a, b) => b.length - a.length)
    .map(escaped)
    .join('|')})`;

const start = String.raw`(?<![\p{L}\p{N}])`;
const end = String.raw`(?![\p{L}\p{N}])`;

/** What follows one of these words at the beginning of a text; undefined where none stands there. */
export function afterLeading(text: string, words: readonly string[]): string | undefined {
  return new RegExp(`^\\s*${anyOf(words)}${end}[\\s:,]*(.*)$`, 'isu').exec(text)?.[1];
}

interface Patterns {
  readonly whole: readonly (readonly [text: string, pattern: RegExp])[];
  readonly position: RegExp;
  readonly crag: RegExp;
  readonly cragAfter: RegExp;
  readonly batch: RegExp;
  readonly by: RegExp;
  readonly set: RegExp;
}

const made = new WeakMap<Words, Patterns>();

function patternsOf(words: Words): Patterns {
  const known = made.get(words) ?? {
    whole: [
      ['sector', new RegExp(`^${anyOf(words.sector)}\\s+(.+)$`, 'iu')],
      ['route', new RegExp(`^${anyOf(words.route)}\\s+(.+)$`, 'iu')],
    ] as const,
    // "Bolt 12 mm" and "anchor 10x80" are sizes.
    position: new RegExp(
      `${start}${anyOf(words.position)}\\s*(?:no\\.?|nr\\.?|n[°º]|#)?\\s*(\\d{1,3}[a-z]?)(?![\\p{L}\\p{N}])(?!\\s*(?:[x×.,]\\s*\\d|mm|cm|kn|in|["″]))`,
      'iu',
    ),
    // A name is written large; small words after "on" are rock or use, unless a position stands before them.
    crag: new RegExp(`${start}${anyOf(words.at)}\\s+(\\p{Lu}[\\p{L}\\p{N}'’ -]+)$`, 'u'),
    cragAfter: new RegExp(`^${anyOf(words.at)}\\s+(\\p{L}[\\p{L}\\p{N}'’ -]+)$`, 'iu'),
    batch: new RegExp(`${start}${anyOf(words.batch)}\\s+((?=[^\\s]*\\d)[\\p{L}\\p{N}/._-]+)`, 'iu'),
    by: new RegExp(`${start}${anyOf(words.by)}\\s+@?([\\p{L}\\p{N}][\\p{L}\\p{N}_.-]{1,29})\\s*$`, 'iu'),
    set: new RegExp(`${start}${anyOf(words.set)}${end}`, 'iu'),
  };
  made.set(words, known);
  return known;
}

const year = /(?<![\p{L}\p{N}.,-])(1[89]\d\d|2[01]\d\d)(-\d{2})?(?![\p{L}\p{N}.,-])/u;

/** The day of setting in one part of a message, or a year where the part tells of setting. */
function dayOfPart(part: string, isSet: boolean, now: string): { text: string; day: string | null } | null {
  const day = dayIn(part);
  if (day !== undefined) return { text: day.text, day: day.kind === 'day' ? day.day : null };
  const found = isSet ? year.exec(part) : null;
  if (found === null) return null;
  return { text: found[0], day: isSpan(found[0], now) ? found[0] : null };
}

export function placeTold(words: Words, text: string, now: string): PlaceTold {
  const patterns = patternsOf(words);
  const texts: Record<string, string> = {};
  const rest: string[] = [];
  let wrongDay: string | null = null;
  for (const raw of text.split(/[,;\n]|:(?=\s)/)) {
    let part = raw.trim();
    const taken = (id: string, pattern: RegExp): boolean => {
      const found = pattern.exec(part);
      const value = found?.[1]?.trim();
      if (found === null || value === undefined || texts[id] !== undefined) return false;
      texts[id] = value;
      part = part.replace(found[0], ' ').trim();
      return true;
    };
    if (patterns.whole.some(([id, pattern]) => taken(id, pattern))) continue;
    const isSet = patterns.set.test(part);
    const day = dayOfPart(part, isSet, now);
    if (day !== null) {
      if (day.day === null) wrongDay ??= day.text;
      else texts.day = day.day;
      part = part.replace(day.text, ' ').trim();
    }
    if (day !== null || isSet) {
      taken('installer', patterns.by);
      part = part.replace(patterns.set, ' ').trim();
    }
    taken('batch', patterns.batch);
    taken('crag', patterns.crag);
    if (taken('position', patterns.position)) taken('crag', patterns.cragAfter);
    rest.push(part);
  }
  return { texts, rest: rest.filter((part) => part !== '').join(', '), wrongDay };
}
