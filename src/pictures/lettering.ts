/** How wide a text will be and where it breaks, reckoned without a canvas so that a picture's description stays pure data. */
import { oneLine } from '../units/one-line.ts';

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Advance widths of DejaVu Sans in em, rounded up: a line may come out short, never too long (a test measures it). */
const advances: readonly (readonly [letters: RegExp, em: number])[] = [
  [/^[ijlI\s|']/u, 0.32],
  [/^[.,:;!·•]/u, 0.34],
  [/^[ftr()[\]/-]/u, 0.42],
  [/^[cksxyzEFLT]/u, 0.64],
  [/^[a-ln-vx-z0-9à-ÿ]/u, 0.64],
  [/^[ -~À-ɏ¡-¿]/u, 0.8],
];
const wide: readonly (readonly [letters: RegExp, em: number])[] = [
  [/^w/u, 0.83],
  [/^[mMW@%æœÆŒ]/u, 1.08],
];

const em = (letter: string): number => [...wide, ...advances].find(([kind]) => kind.test(letter))?.[1] ?? 1.4;

export function widthOf(text: string, size: number, bold = false): number {
  let sum = 0;
  for (const { segment } of letters.segment(text)) sum += em(segment);
  return sum * size * (bold ? 1.14 : 1);
}

/** The longest start of a word that fits, and the rest. */
function breakWord(word: string, fits: (text: string) => boolean): [string, string] {
  let head = '';
  for (const { segment } of letters.segment(word)) {
    if (head !== '' && !fits(head + segment)) break;
    head += segment;
  }
  return [head, word.slice(head.length)];
}

export interface Lettering {
  readonly width: number;
  readonly size: number;
  readonly bold?: boolean;
  /** So many lines at most; the last ends in an ellipsis where there was more. */
  readonly most?: number;
}

/** No text of a picture is longer, whatever a member typed. */
const longest = 400;

/** A figure stays with its unit. */
const bound = (text: string): string => text.replace(/(\d) (?=kN|MPa|mm|%|€)/g, '$1\u00a0');

/** Breaks between words, and within one that is wider than the line. */
export function wrap(text: string, { width, size, bold = false, most = 4 }: Lettering): string[] {
  const fits = (line: string): boolean => widthOf(line, size, bold) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of bound(oneLine(text, longest))
    .split(' ')
    .filter((one) => one !== '')) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (fits(joined)) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    let rest = word;
    while (!fits(rest) && lines.length <= most) {
      const [head, tail] = breakWord(rest, fits);
      if (tail === '') break;
      lines.push(head);
      rest = tail;
    }
    line = rest;
    if (lines.length > most) break;
  }
  if (line !== '') lines.push(line);
  if (lines.length <= most) return lines;
  const [last] = breakWord(lines[most - 1] ?? '', (part) => fits(`${part}…`));
  return [...lines.slice(0, most - 1), `${last.trimEnd()}…`];
}
