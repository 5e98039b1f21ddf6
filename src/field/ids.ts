/** Short ids for members to type: a letter for the kind, then letters and digits that cannot be mistaken for one another. */
import { createHash } from 'node:crypto';
import type { RecordKind } from '../contracts/record.ts';

const letters: Readonly<Record<RecordKind, string>> = { test: 't', anchor: 'a', inspection: 'i' };
/** Without i, l, o and u, which are read as 1, 0 and v. */
const digits = '0123456789abcdefghjkmnpqrstvwxyz';
const shortest = 4;
const longest = 12;

const hasDigit = (text: string): boolean => /\d/.test(text);

/** A digit in the first places tells an id from a word. */
function written(seed: string, round: number): string {
  const bytes = createHash('sha256').update(`${round} ${seed}`).digest();
  const text = [...bytes.subarray(0, longest)].map((byte) => digits[byte % digits.length]).join('');
  return hasDigit(text.slice(0, shortest)) ? text : written(seed, round + 1);
}

/** The same message at the same place gives the same id, so that an update that comes twice adds nothing. */
export async function freshId(
  kind: RecordKind,
  from: readonly string[],
  isTaken: (id: string) => Promise<boolean>,
): Promise<string> {
  const text = written(JSON.stringify(from), 0);
  for (let length = shortest; length <= longest; length++) {
    const id = letters[kind] + text.slice(0, length);
    if (!(await isTaken(id))) return id;
  }
  throw new Error(`no free id for ${kind}`);
}

const inText = /(?<![\p{L}\p{N}_-])([tai][0-9a-hjkmnp-tv-z]{4,12})(?![\p{L}\p{N}_])/giu;

/** What may be an id in a message, in small letters. */
export const idsIn = (text: string): readonly string[] =>
  [...text.matchAll(inText)].map(([, id = '']) => id.toLowerCase()).filter((id) => hasDigit(id));

/** A short mark of what was shown, so that a button of an older draft does not keep a newer one. */
export const markOf = (shown: unknown): string =>
  createHash('sha256').update(JSON.stringify(shown)).digest('hex').slice(0, 8);
