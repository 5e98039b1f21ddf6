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
  const grouped = spacedAt(words, at, language);
  if (grouped) return { ...grouped, fraction: false, inWords: false };
  const gap = isMark(words[at + 1], '-') && words[at + 1]?.close ? 2 : 1;
  const rest = Number.isInteger(value) && value < 100 ? fractionAt(words, at + gap) : null;
  if (rest) return { value: value + rest.value, to: rest.to, fraction: true, inWords: false };
  return { value, to: at + 1, fraction: false, inWords: false };
}

/** "2 500 kg". Not before millimetres: "10 100 mm" is a bolt; nor after what has a number: "belay 2 300 m". */
function spacedAt(
  words: readonly Word[],
  at: number,
  language: Language,
): { value: number; to: number } | null {
  const first = words[at];
  if (language.vocabulary.numbers.spacedThousands !== true || !first || first.glued) return null;
  const numbered = [language.named, language.nouns].some((tree) => tree.longest(words, at - 1)?.to === at);
  if (!/^[1-9]\d{0,2}$/.test(first.text) || numbered) return null;
  let to = at + 1;
  for (
    let next = words[to];
    next?.kind === 'number' && !next.close && /^\d{3}$/.test(next.text);
    next = words[to]
  )
    to++;
  const groups = words.slice(at + 1, to).map(({ text }) => text);
  const unit = language.units.longest(words, to, true)?.said[0];
  const round = groups.every((group) => group === '000');
  if (groups.length === 0 || (!round && (unit === undefined || unit === 'mm'))) return null;
  return { value: Number(first.text + groups.join('')), to };
}

/** "Quatre-vingt-douze" is one phrase; "two thousand five hundred" is put together. */
function whole(words: readonly Word[], at: number, language: Language): { value: number | null; to: number } {
  let thousands = 0;
  let group: number | null = null;
  let to = at;
  for (
    let match = language.numberWords.longest(words, to, true);
    match;
    match = language.numberWords.longest(words, to, true)
  ) {
    const step = match.said[0] ?? 0;
    if (step >= 1000) {
      thousands += (group || 1) * step;
      group = 0;
    } else if (step === 100 && (group ?? 0) < 100) group = (group || 1) * 100;
    else if (group === null || group === 0) group = step;
    else if (step < 100 && group % 100 === 0) group += step;
    // "Twenty-four"; but "ten and four" are two numbers.
    else if (step < 10 && group % 10 === 0 && group % 100 >= 20) group += step;
    else break;
    to = match.to;
  }
  return { value: group === null ? null : thousands + group, to };
}

function wordsAt(
  words: readonly Word[],
  at: number,
  language: Language,
): Omit<Numeral, 'from' | 'negative'> | null {
  const { value, to: end } = whole(words, at, language);
  let to = end;
  const partOf = (word: Word | undefined): number | undefined =>
    word?.forms.map((form) => language.partWords.get(form)).find((known) => known !== undefined);
  const part = partOf(words[to]);
  if (part !== undefined) {
    // "half a mile", "a quarter of an inch", "three eighths".
    to++;
    for (let link = language.link.longest(words, to); link; link = language.link.longest(words, to))
      to = link.to;
    return { value: (value ?? 1) * part, to, fraction: true, inWords: true };
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

/** The "moins" of "au moins 80" and of "plus ou moins 80" takes nothing away. */
const isCovered = (words: readonly Word[], at: number, to: number, language: Language): boolean =>
  [1, 2].some((back) =>
    [language.atLeast, language.fillers].some((tree) => (tree.longest(words, at - back)?.to ?? 0) >= to),
  );

export function numeralAt(words: readonly Word[], at: number, language: Language): Numeral | null {
  const minus = language.minus.longest(words, at);
  const sign = minus && !isCovered(words, at, minus.to, language) ? minus : null;
  const apart = words[at]?.close === false || words[at - 1]?.kind === 'mark';
  const dash = isMark(words[at], '-') && apart && words[at + 1]?.close === true;
  const start = sign ? sign.to : dash ? at + 1 : at;
  // "3 dozen" is a number in words that begins with a digit.
  const spelled = words[start]?.kind === 'number' ? wordsAt(words, start, language) : null;
  const dozens = spelled?.to === start + 2 ? spelled : null;
  const plain = dozens ?? digitsAt(words, start, language) ?? wordsAt(words, start, language);
  if (plain === null) return null;
  const more = plain.fraction ? null : andPart(words, plain.to, language);
  // "2 and a half" is no fraction as inches are written.
  const whole = more ? { ...plain, value: plain.value + more.value, to: more.to } : plain;
  const negative = sign !== null || dash;
  return { ...whole, value: negative ? -whole.value : whole.value, from: at, negative };
}
