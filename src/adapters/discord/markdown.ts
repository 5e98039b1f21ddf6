/** Plain text as it is, whatever is in it: Discord reads Markdown, mentions and links in every message. */

/** Marks that turn the direction of writing, and letters without a width, with which one text can pose as another. */
const hidden =
  /[\u00ad\u061c\u180e\u200b\u200e\u200f\u202a-\u202e\u2060-\u2064\u2066-\u206f\ufeff\ufff9-\ufffb]/g;
const control = /(?![\n\t])\p{Cc}/gu;
/** More than a few marks on one letter cover the lines around it. */
const piled = /(\p{M}{4})\p{M}+/gu;

export const harmless = (text: string): string =>
  text.replace(/\r\n?/g, '\n').replace(hidden, '').replace(control, '').replace(piled, '$1');

/** A backslash before a sign makes it a plain sign; letters and digits are never marked so. */
const escapeLine = (line: string): string =>
  line
    .replace(/[\\*_~`|<[\]]/g, '\\$&')
    // A link is one only if nothing stands between the colon and the slashes, or between a name and its slash.
    .replace(/:\/\//g, '\\:\\/\\/')
    .replace(/(\.\p{L}{2,})\//gu, '$1\\/')
    // Never a mention, even where mentions were allowed.
    .replace(/@(?=\S)/g, '@\u200b')
    // At the beginning of a line: headings, quotes, lists, small print.
    .replace(/^(\s*)([-+#>])/, '$1\\$2')
    .replace(/^(\s*\d+)([.)])(?=\s)/, '$1\\$2');

export const escapeMarkdown = (text: string): string => harmless(text).split('\n').map(escapeLine).join('\n');

/** The first line says what the whole is about: it is bold. */
export function boldFirst(text: string): string {
  const [first = '', ...rest] = escapeMarkdown(text).split('\n');
  const line = first.trim();
  return [line === '' ? '' : `**${line}**`, ...rest].join('\n');
}

/** Cut to a length without splitting a letter beyond the basic plane. */
export function clip(text: string, most: number): string {
  if (text.length <= most) return text;
  const cut = text.slice(0, most - 1).replace(/[\uD800-\uDBFF]$/, '');
  return `${cut.trimEnd()}…`;
}
