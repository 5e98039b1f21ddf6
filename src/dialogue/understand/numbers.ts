/** Numbers as people write them: 12, 12,5, 1,000, 3 1/2, ½, minus 5, twenty-five, three eighths. */
import type { Language } from './compile.ts';
import type { Word } from './phrases.ts';

export interface Numeral {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  readonly negative: boolean;
  /** Written as a fraction, which in this trade means inches. */
  readonly fraction: boolean;
  readonly inWords: boolean;
}

const DENOMINATORS = new Set([2, 4, 8, 16, 32, 64]);

/** "1,000" is a thousand where the comma parts thousands; "12,5" and "0,500" are decimals everywhere. */
export function digits(text: string, thousands: ',' | '.'): number {
  const groups =
    thousands === ',' ? /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/ : /^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d+)?$/;
  const plain = groups.test(text) ? text.replaceAll(thousands, '') : text;
  const separators = plain.replace(/\d/g, '').length;
  return separators > 1 || plain.length > 15 ? Number.NaN : Number(plain.replace(',', '.'));
}

const isMark = (word: Word | undefined, mark: string): boolean => word?.kind === 'mark' && word.text === mark;

function fractionAt(words: readonly Word[], at: number): { value: number; to: number } | null {
  const [top, slash, bottom, after] = words.slice(at, at + 4);
  if (
    top?.kind !== 'number' ||
    !isMark(slash, '/') ||
    bottom?.kind !== 'number' ||
    !bottom.close ||
    !slash?.close
  )
    return null;
  const [a, b] = [Number(top.text), Number(bottom.text)];
  if (!DENOMINATORS.has(b) || !(a > 0 && a < b) || bottom.text.startsWith('0')) return null;
  if (isMark(after, '/') && after?.close) return null;
  return { value: a / b, to: at + 3 };
}

function digitsAt(
  words: readonly Word[],
  at: number,
  language: Language,
): Omit<Numeral, 'from' | 'negative'> | null {
  const part = fractionAt(words, at);
  if (part) return { ...part, fraction: true, inWords: false };
  const word = words[at];
  if (word?.kind !== 'number') return null;
  const value = digits(word.text, language.vocabulary.numbers.thousands);
  const gap = isMark(words[at + 1], '-') && words[at + 1]?.close ? 2 : 1;
  const rest = Number.isInteger(value) && value < 100 ? fractionAt(words, at + gap) : null;
  if (rest) return { value: value + rest.value, to: rest.to, fraction: true, inWords: false };
  return { value, to: at + 1, fraction: false, inWords: false };
}

function wordsAt(
  words: readonly Word[],
  at: number,
  language: Language,
): Omit<Numeral, 'from' | 'negative'> | null {
  let value: number | null = null;
  let to = at;
  for (let next = words[to]; next?.kind === 'word'; next = words[to]) {
    const step = next.forms
      .map((form) => language.numberWords.get(form))
      .find((known) => known !== undefined);
    if (step === undefined) break;
    if (value !== null && step >= 100) value *= step;
    else if (value !== null && value % 10 === 0 && step < 10) value += step;
    else if (value !== null) break;
    else value = step;
    to++;
  }
  const partOf = (word: Word | undefined): number | undefined =>
    word?.forms.map((form) => language.partWords.get(form)).find((known) => known !== undefined);
  const part = partOf(words[to]);
  if (part !== undefined) {
    // "half a mile", "a quarter of an inch", "three eighths".
    let end = to + 1;
    for (let link = language.link.longest(words, end); link; link = language.link.longest(words, end))
      end = link.to;
    return { value: (value ?? 1) * part, to: end, fraction: true, inWords: true };
  }
  return value === null ? null : { value, to, fraction: false, inWords: true };
}

/** "3 and a half", "two and a half". */
function andPart(
  words: readonly Word[],
  at: number,
  language: Language,
): { value: number; to: number } | null {
  const and = language.and.longest(words, at);
  if (!and) return null;
  const one = language.one.longest(words, and.to);
  const part = wordsAt(words, one?.to ?? and.to, language);
  return part?.fraction && part.value < 1 ? part : null;
}

export function numeralAt(words: readonly Word[], at: number, language: Language): Numeral | null {
  const sign = language.minus.longest(words, at);
  const apart = words[at]?.close === false || words[at - 1]?.kind === 'mark';
  const dash = isMark(words[at], '-') && apart && words[at + 1]?.close === true;
  const start = sign ? sign.to : dash ? at + 1 : at;
  const plain = digitsAt(words, start, language) ?? wordsAt(words, start, language);
  if (plain === null) return null;
  const more = plain.fraction ? null : andPart(words, plain.to, language);
  const whole = more ? { ...plain, value: plain.value + more.value, to: more.to, fraction: true } : plain;
  const negative = sign !== null || dash;
  return { ...whole, value: negative ? -whole.value : whole.value, from: at, negative };
}
