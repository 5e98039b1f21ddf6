/** Stretches of a message that are somebody else's words: quoted lines, and text between quotation marks. */
type Span = readonly [number, number];

const isWordChar = (char: string): boolean => /[\p{L}\p{N}]/u.test(char);
const opensAfter = (char: string): boolean => char === '' || /[\s([{:,-]/u.test(char);
const LONGEST = { '"': 300, "'": 60 } as const;

function quotedLines(text: string): Span[] {
  const spans: Span[] = [];
  for (const line of text.matchAll(/^[^\S\n]*>[^\n]*/gmu))
    spans.push([line.index, line.index + line[0].length]);
  return spans;
}

function between(text: string, mark: '"' | "'"): Span[] {
  const spans: Span[] = [];
  let open = -1;
  for (let at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + 1)) {
    const before = text.charAt(at - 1);
    const after = text.charAt(at + 1);
    if (open >= 0 && at - open > LONGEST[mark]) open = -1;
    // 3 1/2" is inches and 6' is feet, unless a quotation is open.
    if (open < 0 && opensAfter(before) && isWordChar(after)) open = at;
    else if (open >= 0 && !/\s/u.test(before) && !isWordChar(after)) {
      spans.push([open, at + 1]);
      open = -1;
    }
  }
  return spans;
}

/** In order and without overlap. A message that is one quotation as a whole is the member's own. */
export function ignoredSpans(text: string): Span[] {
  const lines = quotedLines(text);
  const quoted = [...between(text, '"'), ...between(text, "'")];
  const rest = blank(text, [...lines, ...quoted]);
  const spans = isWordChar(rest) ? [...lines, ...quoted] : lines;
  spans.sort((a, b) => a[0] - b[0]);
  const merged: Span[] = [];
  for (const span of spans) {
    const last = merged.at(-1);
    if (last && span[0] < last[1]) merged[merged.length - 1] = [last[0], Math.max(last[1], span[1])];
    else merged.push(span);
  }
  return merged;
}

function blank(text: string, spans: readonly Span[]): string {
  let kept = text;
  for (const [from, to] of spans) kept = kept.slice(0, from) + ' '.repeat(to - from) + kept.slice(to);
  return kept;
}
