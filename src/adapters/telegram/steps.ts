/** A parcel as the calls that deliver it, in order. */
import { type Api, InputFile } from 'grammy';
import type { InlineKeyboardMarkup } from 'grammy/types';
import type { ReplyFile } from '../../contracts/message.ts';
import type { Rendered } from '../../contracts/reply.ts';
import { splitText } from '../../render/split.ts';
import { type Address, isGroup } from './address.ts';
import { clean, firstLineBold, plain } from './html.ts';
import { keyboard } from './keyboard.ts';
import type { CallSignal } from './time-limit.ts';

/** Below the platform's 4096, so that a repeat mark or the choice taken still fits. */
export const partLimit = 3900;
const captionLimit = 1024;

export type Step =
  | { readonly kind: 'text'; readonly html: string; readonly markup: InlineKeyboardMarkup | undefined }
  | { readonly kind: 'file'; readonly file: ReplyFile };

/** The words first, always: pictures only show what they say. Buttons stand under the last words. */
export function stepsOf({ reply, groups }: Rendered, owner: number | undefined): Step[] {
  const parts = splitText(groups, partLimit);
  const markup = owner === undefined ? undefined : keyboard(owner, reply.choices);
  return [
    ...parts.map(
      (part, index): Step => ({
        kind: 'text',
        html: index === 0 ? firstLineBold(part) : plain(part),
        markup: index === parts.length - 1 ? markup : undefined,
      }),
    ),
    ...reply.files.map((file): Step => ({ kind: 'file', file })),
  ];
}

/** The answer to a message that is gone goes without the link to it; other members' telephones stay quiet. */
const common = ({ chat, thread, replyTo }: Address) => ({
  ...(thread === undefined ? {} : { message_thread_id: thread }),
  ...(replyTo === undefined
    ? {}
    : { reply_parameters: { message_id: replyTo, allow_sending_without_reply: true } }),
  ...(isGroup(chat) ? { disable_notification: true } : {}),
});

export async function take(
  api: Api,
  to: Address,
  step: Step,
  mark: string | null,
  signal: CallSignal,
): Promise<void> {
  if (step.kind === 'text') {
    await api.sendMessage(
      to.chat,
      mark === null ? step.html : `${plain(mark)}\n\n${step.html}`,
      {
        parse_mode: 'HTML',
        link_preview_options: { is_disabled: true },
        ...common(to),
        ...(step.markup === undefined ? {} : { reply_markup: step.markup }),
      },
      signal,
    );
    return;
  }
  const { name, mime, base64, alt } = step.file;
  const file = new InputFile(Buffer.from(base64, 'base64'), name);
  const other = { caption: clean(alt).slice(0, captionLimit), ...common(to) };
  if (/^image\/(png|jpeg)$/.test(mime)) await api.sendPhoto(to.chat, file, other, signal);
  else await api.sendDocument(to.chat, file, other, signal);
}
