/** Telegram's HTML, built from plain text only: nothing that anybody typed is ever read as markup. */

// Marks that turn the direction of reading, and control characters but for the line feed and the tab.
const unseen = /[\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069]|(?![\n\t])\p{Cc}/gu;

export const clean = (text: string): string => text.replace(unseen, '');

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

export const plain = (text: string): string => escaped(clean(text));

/** The first line is the verdict or the question: it is what must be seen at a glance. */
export function firstLineBold(text: string): string {
  const [first = '', ...rest] = clean(text).trim().split('\n');
  return [`<b>${escaped(first)}</b>`, ...rest.map(escaped)].join('\n');
}
