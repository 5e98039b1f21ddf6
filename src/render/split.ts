/** Long answers in parts: the first part of each advice holds its verdict, cautions and deferral, and nothing is dropped. */
import type { Paragraph } from '../contracts/reply.ts';

const gap = '\n\n';

/** Cuts a text that is longer than a part, at the last line, sentence or blank before the limit. */
function pieces(text: string, limit: number): string[] {
  const cut: string[] = [];
  let rest = text;
  while (rest.length > limit) {
    const head = rest.slice(0, limit + 1);
    const at = [head.lastIndexOf('\n'), head.lastIndexOf('. ') + 1, head.lastIndexOf(' ')].find(
      (place) => place > limit / 2,
    );
    // Between the halves of a letter beyond the basic plane nothing is cut.
    const hard = /[\uD800-\uDBFF]/.test(head.charAt(limit - 1)) ? limit - 1 : limit;
    const end = at ?? hard;
    cut.push(rest.slice(0, end).trimEnd());
    rest = rest.slice(end).trimStart();
  }
  return [...cut, rest].filter((piece) => piece !== '');
}

/** Fills parts in order. */
function fill(texts: readonly string[], limit: number): string[] {
  const parts: string[] = [];
  for (const text of texts.flatMap((one) => pieces(one, limit))) {
    const last = parts.at(-1);
    if (last !== undefined && last.length + gap.length + text.length <= limit)
      parts[parts.length - 1] = last + gap + text;
    else parts.push(text);
  }
  return parts;
}

function splitGroup(group: readonly Paragraph[], limit: number): string[] {
  const whole = group.map(({ text }) => text).join(gap);
  if (whole.length <= limit) return [whole];
  // What must come first, and of the rest what still fits, in the order of reading.
  let room =
    limit - group.filter(({ first }) => first).reduce((sum, { text }) => sum + text.length + gap.length, 0);
  const early = group.filter(({ first, text }) => {
    if (first) return true;
    room -= text.length + gap.length;
    return room >= 0;
  });
  return fill(
    [...early, ...group.filter((one) => !early.includes(one))].map(({ text }) => text),
    limit,
  );
}

/** `limit` in UTF-16 units, as the platforms count. */
export function splitText(groups: readonly (readonly Paragraph[])[], limit: number): string[] {
  const parts = groups.flatMap((group) => splitGroup(group, limit));
  return fill(parts, limit);
}
