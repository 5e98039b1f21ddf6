/**
 * What the Bot API reference allows in each call (core.telegram.org/bots/api, as carried in the comments of
 * @grammyjs/types 5.0.0). Strict: a parameter that is not listed is a breach, though the platform would pass over it.
 */
import { z } from 'zod';
import { parseHtml } from './html.ts';

const bytes = (text: string): number => Buffer.byteLength(text, 'utf8');
const chatId = z.number().int();
const messageId = z.number().int().positive();
const html = z.literal('HTML').optional();

/** Counted after parsing, in UTF-16 units. */
function parsed(
  least: number,
  most: number,
): (value: { text: string; parse_mode?: unknown }) => string | null {
  return ({ text, parse_mode }) => {
    const read = parse_mode === undefined ? { ok: true as const, text } : parseHtml(text);
    if (!read.ok) return `can't parse entities: ${read.why}`;
    const { length } = read.text.trim();
    return length < least || length > most ? `${length} units of text, ${least}–${most} allowed` : null;
  };
}

/** Rows of at most 8 and at most 100 buttons show well: common practice, no source. The rest is published. */
const keyboard = z.strictObject({
  inline_keyboard: z
    .array(
      z
        .array(
          z.strictObject({
            text: z.string().min(1),
            callback_data: z
              .string()
              .refine((data) => bytes(data) >= 1 && bytes(data) <= 64, 'callback_data is 1–64 bytes'),
          }),
        )
        .min(1)
        .max(8),
    )
    .refine((rows) => rows.flat().length <= 100, 'at most 100 buttons'),
});
const linkPreview = z.strictObject({ is_disabled: z.boolean() }).optional();
const replyTo = z
  .strictObject({ message_id: messageId, allow_sending_without_reply: z.boolean().optional() })
  .optional();
const where = {
  chat_id: chatId,
  message_thread_id: messageId.optional(),
  disable_notification: z.boolean().optional(),
  reply_parameters: replyTo,
  reply_markup: keyboard.optional(),
};
const withText = <S extends z.ZodType<{ text: string; parse_mode?: unknown }>>(shape: S): S =>
  shape.superRefine((value, context) => {
    const why = parsed(1, 4096)(value);
    if (why !== null) context.addIssue({ code: 'custom', path: ['text'], message: why });
  });
const caption = z
  .string()
  .refine((text) => parsed(0, 1024)({ text }) === null, 'caption is at most 1024 units')
  .optional();
const upload = (most: number) =>
  z
    .strictObject({ name: z.string().min(1), bytes: z.instanceof(Buffer) })
    .refine((file) => file.bytes.length > 0 && file.bytes.length <= most * 2 ** 20, `at most ${most} MB`);
const scope = z
  .strictObject({
    type: z.enum(['default', 'all_private_chats', 'all_group_chats', 'all_chat_administrators']),
  })
  .optional();
const language = z
  .string()
  .regex(/^([a-z]{2})?$/)
  .optional();
const allowedUpdates = z.array(z.string()).optional();
const inlineResult = z.strictObject({
  type: z.literal('article'),
  id: z.string().refine((id) => bytes(id) >= 1 && bytes(id) <= 64, 'id is 1–64 bytes'),
  title: z.string().min(1),
  description: z.string().optional(),
  input_message_content: withText(
    z
      .strictObject({ message_text: z.string(), parse_mode: html, link_preview_options: linkPreview })
      .transform(({ message_text, ...rest }) => ({ text: message_text, ...rest })),
  ),
});

export const methods = {
  getMe: z.strictObject({}),
  getUpdates: z.strictObject({
    offset: z.number().int().optional(),
    limit: z.number().int().min(1).max(100).optional(),
    timeout: z.number().int().min(0).optional(),
    allowed_updates: allowedUpdates,
  }),
  setWebhook: z.strictObject({
    url: z.string(),
    secret_token: z
      .string()
      .regex(/^[A-Za-z0-9_-]{1,256}$/)
      .optional(),
    max_connections: z.number().int().min(1).max(100).optional(),
    allowed_updates: allowedUpdates,
    drop_pending_updates: z.boolean().optional(),
  }),
  deleteWebhook: z.strictObject({ drop_pending_updates: z.boolean().optional() }),
  getWebhookInfo: z.strictObject({}),
  sendMessage: withText(
    z.strictObject({ ...where, text: z.string(), parse_mode: html, link_preview_options: linkPreview }),
  ),
  editMessageText: withText(
    z.strictObject({
      chat_id: chatId,
      message_id: messageId,
      text: z.string(),
      parse_mode: html,
      link_preview_options: linkPreview,
      reply_markup: keyboard.optional(),
    }),
  ),
  editMessageReplyMarkup: z.strictObject({
    chat_id: chatId,
    message_id: messageId,
    reply_markup: keyboard.optional(),
  }),
  answerCallbackQuery: z.strictObject({
    callback_query_id: z.string(),
    text: z.string().max(200).optional(),
    show_alert: z.boolean().optional(),
    cache_time: z.number().int().min(0).optional(),
  }),
  sendPhoto: z.strictObject({ ...where, photo: upload(10), caption }),
  sendDocument: z.strictObject({ ...where, document: upload(50), caption }),
  sendChatAction: z.strictObject({
    chat_id: chatId,
    message_thread_id: messageId.optional(),
    action: z.enum(['typing', 'upload_photo', 'upload_document', 'find_location']),
  }),
  getFile: z.strictObject({ file_id: z.string() }),
  setMyCommands: z.strictObject({
    commands: z
      .array(
        z.strictObject({
          command: z.string().regex(/^[a-z0-9_]{1,32}$/),
          description: z.string().min(1).max(256),
        }),
      )
      .max(100),
    scope,
    language_code: language,
  }),
  getMyCommands: z.strictObject({ scope, language_code: language }),
  deleteMyCommands: z.strictObject({ scope, language_code: language }),
  setMyDescription: z.strictObject({ description: z.string().max(512).optional(), language_code: language }),
  getMyDescription: z.strictObject({ language_code: language }),
  setMyShortDescription: z.strictObject({
    short_description: z.string().max(120).optional(),
    language_code: language,
  }),
  getMyShortDescription: z.strictObject({ language_code: language }),
  answerInlineQuery: z.strictObject({
    inline_query_id: z.string(),
    results: z.array(inlineResult).max(50),
    cache_time: z.number().int().min(0).optional(),
    is_personal: z.boolean().optional(),
    button: z
      .strictObject({ text: z.string().min(1), start_parameter: z.string().regex(/^[A-Za-z0-9_-]{1,64}$/) })
      .optional(),
  }),
  getChatMember: z.strictObject({ chat_id: chatId, user_id: z.number().int() }),
  getChatAdministrators: z.strictObject({ chat_id: chatId }),
} as const;

export type Method = keyof typeof methods;
export type Params<M extends Method> = z.output<(typeof methods)[M]>;
export const isMethod = (name: string): name is Method => Object.hasOwn(methods, name);
