/**
 * Reads the HTML style as the Bot API describes it (core.telegram.org/bots/api#html-style): only the listed tags,
 * every `<`, `>` and `&` of plain text written as an entity, four named entities and all numeric ones.
 */
import type { MessageEntity } from 'grammy/types';

const tags: Readonly<Record<string, MessageEntity['type']>> = {
  b: 'bold',
  strong: 'bold',
  i: 'italic',
  em: 'italic',
  u: 'underline',
  ins: 'underline',
  s: 'strikethrough',
  strike: 'strikethrough',
  del: 'strikethrough',
  code: 'code',
  pre: 'pre',
  blockquote: 'blockquote',
  'tg-spoiler': 'spoiler',
};
const named: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"' };

export type Parsed =
  | { readonly ok: true; readonly text: string; readonly entities: MessageEntity[] }
  | { readonly ok: false; readonly why: string };

const token = /<(\/?)([a-z-]*)([^>]*)>|&(#\d+|#x[0-9a-f]+|[a-z]+);|[<>&]|[^<>&]+/gi;

function decoded(entity: string): string | undefined {
  if (entity.startsWith('#x')) return String.fromCodePoint(Number.parseInt(entity.slice(2), 16));
  if (entity.startsWith('#')) return String.fromCodePoint(Number(entity.slice(1)));
  return named[entity];
}

export function parseHtml(html: string): Parsed {
  const entities: MessageEntity[] = [];
  const open: { tag: string; offset: number }[] = [];
  let text = '';
  for (const [whole, slash, tag = '', rest = '', entity] of html.matchAll(token)) {
    if (entity !== undefined) {
      const sign = decoded(entity);
      if (sign === undefined) return { ok: false, why: `unknown entity "&${entity};"` };
      text += sign;
    } else if (whole === '<' || whole === '>' || whole === '&') {
      return { ok: false, why: `bare "${whole}" at ${text.length}` };
    } else if (slash === undefined) {
      text += whole;
    } else if (tags[tag] === undefined || rest !== '') {
      return { ok: false, why: `Unsupported start tag "${tag}${rest}"` };
    } else if (slash === '') {
      open.push({ tag, offset: text.length });
    } else {
      const last = open.pop();
      if (last?.tag !== tag) return { ok: false, why: `Unmatched end tag "${tag}"` };
      const length = text.length - last.offset;
      const type = tags[tag] as 'bold';
      if (length > 0) entities.push({ type, offset: last.offset, length });
    }
  }
  if (open.length > 0) return { ok: false, why: `Can't find end tag of "${open.at(-1)?.tag}"` };
  return { ok: true, text, entities };
}
