/** Inline mode: one answer to share in any chat, with its cautions and the deferral; a question sends to the private chat. */
import { createHash } from 'node:crypto';
import type { Context } from 'grammy';
import type { InlineQuery } from 'grammy/types';
import { splitText } from '../../render/split.ts';
import { chatKey } from './address.ts';
import { claimOf, type Desk } from './desk.ts';
import { isNoise } from './failure.ts';
import { clean, firstLineBold } from './html.ts';
import { partLimit } from './steps.ts';

const titleLimit = 120;

export async function inline(desk: Desk, context: Context, query: InlineQuery): Promise<void> {
  const { post, bot, log } = desk;
  const locale = query.from.language_code?.slice(0, 35);
  const id = claimOf(desk, context.update.update_id);
  const text = clean(query.query).trim();
  const user = chatKey(query.from.id);
  const rendered =
    text === ''
      ? null
      : await post.askOnce({
          id,
          chat: 'telegram:inline',
          user,
          text,
          ...(locale === undefined ? {} : { locale }),
        });
  const advice = rendered?.reply.advice ?? null;
  // The first part: verdict, cautions, deferral. What does not fit is in the private chat.
  const [words] = rendered === null || advice === null ? [] : splitText(rendered.groups, partLimit);
  const results =
    words === undefined || advice === null
      ? []
      : [
          {
            type: 'article' as const,
            id: createHash('sha256').update(words).digest('hex').slice(0, 32),
            title: clean(advice.verdict).slice(0, titleLimit),
            input_message_content: {
              message_text: firstLineBold(words),
              parse_mode: 'HTML' as const,
              link_preview_options: { is_disabled: true },
            },
          },
        ];
  try {
    await bot.api.answerInlineQuery(query.id, results, {
      cache_time: 10,
      is_personal: true,
      button: { text: await post.say(locale, { say: 'telegram-inline-private' }), start_parameter: 'inline' },
    });
  } catch (error) {
    if (!isNoise(error)) log.warn({ err: error }, 'an inline question could not be answered');
  }
}
