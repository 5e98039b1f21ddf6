import { fold } from './normalise.ts';

export interface Token {
  readonly kind: 'word' | 'number' | 'mark';
  /** As it is compared. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Written against the token before, a letter against a digit: the "4" of "A4". */
  readonly glued: boolean;
  /** No space before it. */
  readonly close: boolean;
  /** Begins with a capital and goes on in small letters. */
  readonly capital: boolean;
  readonly sentence: number;
}

const PIECE = /\d+(?:[.,]\d+)*|[\p{L}\p{M}]+(?:'[\p{L}\p{M}]+)*|[^\s]|\n/gu;
/** Ten thousand characters of language have two thousand of them; what has more is no language. */
const MOST = 4000;
const SENTENCE_END = new Set(['.', '?', '!', ';', '\n']);
const NONE: ReadonlySet<string> = new Set();
const isDigit = (char: string): boolean => char >= '0' && char <= '9';

/**
 * A hyphen inside a compound ("glue-in", "3/8-inch") is dropped; between digits ("4-6") and before a lone
 * digit ("-5") it stays. Ignored stretches leave a sentence end behind, so that nothing joins across them.
 */
export function tokenise(
  text: string,
  ignored: readonly (readonly [number, number])[] = [],
  /** Words written against the next with an apostrophe: the "l" of "l'inox". */
  elisions: ReadonlySet<string> = NONE,
): Token[] {
  const tokens: Token[] = [];
  let sentence = 0;
  let next = 0;
  let hyphen = false;
  for (const [raw, start] of pieces(text, elisions)) {
    if (tokens.length >= MOST) break;
    while (next < ignored.length && (ignored[next]?.[1] ?? 0) <= start) next++;
    if (start >= (ignored[next]?.[0] ?? Number.POSITIVE_INFINITY)) {
      sentence++;
      continue;
    }
    const first = raw.charAt(0);
    const kind = isDigit(first) ? 'number' : /^[\p{L}\p{M}]/u.test(first) || raw.length > 1 ? 'word' : 'mark';
    const before = tokens.at(-1);
    // Where apostrophes part words, one at the end of a word stands for an accent: "profondita'".
    if (raw === "'" && elisions.size > 0 && before?.kind === 'word' && before.end === start) continue;
    // A row of the same mark says no more than two.
    if (kind === 'mark' && before?.text === raw && tokens.at(-2)?.text === raw) continue;
    if (raw === '-' && before !== undefined && before.end === start && before.kind !== 'mark') {
      const after = text.charAt(start + 1);
      const compound = before.kind === 'word' ? /[\p{L}\d]/u.test(after) : /\p{L}/u.test(after);
      if (compound) {
        hyphen = true;
        continue;
      }
    }
    const close = before !== undefined && before.end === start;
    const elided = before?.text.endsWith("'") === true;
    const glued = close && kind !== 'mark' && before.kind !== 'mark' && before.kind !== kind && !elided;
    const capital = kind === 'word' && /^\p{Lu}\p{Ll}{2,}/u.test(raw);
    const token = {
      kind,
      text: fold(raw),
      start,
      end: start + raw.length,
      glued,
      close,
      capital,
      sentence,
    } as const;
    tokens.push(hyphen ? { ...token, glued: false } : token);
    hyphen = false;
    if (SENTENCE_END.has(raw)) sentence++;
  }
  return tokens;
}

function* pieces(
  text: string,
  elisions: ReadonlySet<string>,
): Generator<readonly [raw: string, start: number]> {
  let done = 0;
  for (const { 0: found, index } of text.matchAll(PIECE)) {
    if (index < done) continue;
    let raw = found;
    let start = index;
    // "L' inox", "moins d'1 m".
    if (elisions.has(fold(raw)) && text.charAt(index + raw.length) === "'") {
      done = index + raw.length + 1;
      yield [`${raw}'`, index];
      continue;
    }
    for (let end = raw.indexOf("'"); end > 0; end = raw.indexOf("'")) {
      if (!elisions.has(fold(raw.slice(0, end)))) break;
      yield [raw.slice(0, end + 1), start];
      start += end + 1;
      raw = raw.slice(end + 1);
    }
    yield* LIST.test(raw) ? listed(raw, start) : [[raw, start] as const];
  }
}

/** "35,36,34" and "17.5,18.2" are lists; "1,000,000" is a number, and "17,5,18,2" may be anything. */
const LIST = /^(?!\d{1,3}(?:,\d{3})+(?:\.\d+)?$)(?:\d{2,}(?:,\d{2,}){2,}|\d+\.\d+(?:,\d+\.\d+)+)$/u;

function* listed(raw: string, start: number): Generator<readonly [raw: string, start: number]> {
  let at = start;
  for (const piece of raw.split(/(,)/u)) {
    yield [piece, at];
    at += piece.length;
  }
}
