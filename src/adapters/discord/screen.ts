/** A reply as messages: text first, split so that cautions stand with their verdict; files with words for those who do not see them. */
import { MessageFlags, type RawFile } from 'discord.js';
import type { ReplyFile } from '../../contracts/message.ts';
import type { Rendered } from '../../contracts/reply.ts';
import { splitText } from '../../render/split.ts';
import { type ControlWords, controls, type Row } from './controls.ts';
import { boldFirst, clip, escapeMarkdown } from './markdown.ts';

/** Characters of one message. */
const most = 2000;

/** Nobody is called by what we send, whatever stands in it. Every message and every edit carries this. */
export const noMentions = { parse: [], replied_user: false };

export interface Screen {
  readonly content: string;
  readonly components: Row[];
  readonly attachments: { id: number; filename: string; description: string }[];
  readonly files: RawFile[];
}

export interface ScreenWords extends ControlWords {
  readonly more: string;
  readonly again: string;
}

export const line = (text: string): Screen => ({
  content: clip(escapeMarkdown(text), most),
  components: [],
  attachments: [],
  files: [],
});

const extra = 20;

/** Escaping makes text longer; parts are cut shorter until each fits with all its marks. */
function parts(groups: Rendered['groups'], room: number): string[] {
  for (let limit = room; ; limit = Math.floor(limit * 0.9)) {
    const split = splitText(groups, limit);
    const shown = split.map((part, index) => (index === 0 ? boldFirst(part) : escapeMarkdown(part)));
    if (limit < 200 || shown.every(({ length }) => length <= room)) return shown;
  }
}

const attached = (files: readonly ReplyFile[]): Pick<Screen, 'attachments' | 'files'> => ({
  attachments: files.map(({ name, alt }, id) => ({ id, filename: name, description: clip(alt, 1024) })),
  files: files.map(({ name, mime, base64 }) => ({
    name,
    contentType: mime,
    data: Buffer.from(base64, 'base64'),
  })),
});

/** The first message holds verdict, cautions and files; buttons stand under the last. */
export function screens({ reply, groups }: Rendered, words: ScreenWords): readonly Screen[] {
  const { rows, cut } = controls(reply.user, reply.choices, words);
  const all = cut ? [...groups, [{ text: words.more, first: false }]] : groups;
  const texts = parts(all, most - words.again.length - extra);
  return texts.map((content, index) => ({
    content,
    components: index === texts.length - 1 ? rows : [],
    ...attached(index === 0 ? reply.files : []),
  }));
}

/** It may have been seen before: it says so. */
export const repeated = (screen: Screen, words: ScreenWords): Screen => ({
  ...screen,
  content: `${escapeMarkdown(words.again)}\n${screen.content}`,
});

export interface MessageBody {
  content: string;
  components: Row[];
  attachments?: Screen['attachments'];
  allowed_mentions: { parse: never[]; replied_user: boolean };
  flags?: number;
}

/** Links in what a member wrote are not unfolded. */
export function bodyOf({ content, components, attachments }: Screen, hidden: boolean): MessageBody {
  return {
    content,
    components,
    ...(attachments.length > 0 ? { attachments } : {}),
    allowed_mentions: { parse: [], replied_user: false },
    flags: MessageFlags.SuppressEmbeds | (hidden ? MessageFlags.Ephemeral : 0),
  };
}
