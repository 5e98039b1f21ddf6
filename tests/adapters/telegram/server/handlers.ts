/** What each call does to the world. */
import { randomBytes } from 'node:crypto';
import type { Message } from 'grammy/types';
import { parseHtml } from './html.ts';
import type { Method, Params } from './limits.ts';
import type { TelegramServer } from './server.ts';
import { bot, type Content, Refused, type Room } from './world.ts';

export interface Pressed {
  readonly id: string;
  answer: { readonly text?: string | undefined; readonly show_alert?: boolean | undefined } | null;
}

type Handlers = { readonly [M in Method]: (server: TelegramServer, params: Params<M>) => unknown };

function read(text: string, mode: unknown): Pick<Content, 'text' | 'entities'> {
  if (mode === undefined) return { text };
  const parsed = parseHtml(text);
  if (!parsed.ok) throw new Refused(400, `Bad Request: can't parse entities: ${parsed.why}`);
  return { text: parsed.text, entities: parsed.entities };
}

function send(
  server: TelegramServer,
  params: Omit<Params<'sendMessage'>, 'text' | 'parse_mode'>,
  content: Content,
): Message {
  const room = server.world.writable(params.chat_id);
  const message = server.world.post(room, bot, {
    ...content,
    markup: params.reply_markup,
    thread: params.message_thread_id,
    replyTo: params.reply_parameters,
  });
  server.onSent?.(params.chat_id);
  server.changed();
  return message;
}

function edit(server: TelegramServer, room: Room, id: number, next: Partial<Message>): Message {
  const old = server.world.own(room, id);
  const { reply_markup: _markup, text: _text, entities: _entities, ...rest } = old;
  const same = (key: 'text' | 'entities' | 'reply_markup') =>
    JSON.stringify(next[key]) === JSON.stringify(old[key]);
  if (same('text') && same('entities') && same('reply_markup'))
    throw new Refused(
      400,
      'Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
    );
  const message = { ...rest, ...next } as Message;
  room.messages.set(id, message);
  server.changed();
  return message;
}

/** Set once a scope and language, empty where it never was. */
const key = (params: { scope?: { type: string } | undefined; language_code?: string | undefined }): string =>
  `${params.scope?.type ?? 'default'}/${params.language_code ?? ''}`;

export const handlers: Handlers = {
  getMe: (server) => server.me(),
  getUpdates: () => {
    throw new Error('served by the server itself');
  },
  setWebhook: (server, { url, secret_token, allowed_updates }) => {
    server.updates.allow(allowed_updates);
    server.webhook.set(url, secret_token);
    return true;
  },
  deleteWebhook: (server) => {
    server.webhook.set('', undefined);
    return true;
  },
  getWebhookInfo: (server) => ({
    url: server.webhook.url,
    has_custom_certificate: false,
    pending_update_count: server.updates.waiting.length,
    ...(server.webhook.lastError === null ? {} : { last_error_message: server.webhook.lastError }),
  }),
  sendMessage: (server, { text, parse_mode, ...params }) => send(server, params, read(text, parse_mode)),
  sendPhoto: (server, { photo, caption, ...params }) =>
    send(server, params, {
      ...(caption === undefined ? {} : { caption }),
      media: { photo: [{ ...server.files.keep(photo.name, photo.bytes), width: 90, height: 90 }] },
    }),
  sendDocument: (server, { document, caption, ...params }) =>
    send(server, params, {
      ...(caption === undefined ? {} : { caption }),
      media: { document: { ...server.files.keep(document.name, document.bytes), file_name: document.name } },
    }),
  editMessageText: (server, { chat_id, message_id, text, parse_mode, reply_markup }) => {
    const { entities, ...parsed } = read(text, parse_mode);
    return edit(server, server.world.writable(chat_id), message_id, {
      ...parsed,
      ...(entities === undefined || entities.length === 0 ? {} : { entities }),
      ...(reply_markup === undefined ? {} : { reply_markup }),
    } as Partial<Message>);
  },
  editMessageReplyMarkup: (server, { chat_id, message_id, reply_markup }) => {
    const room = server.world.writable(chat_id);
    const { text, entities } = server.world.own(room, message_id);
    return edit(server, room, message_id, { text, entities, reply_markup } as Partial<Message>);
  },
  answerCallbackQuery: (server, { callback_query_id, ...answer }) => {
    const pressed = server.pressed.get(callback_query_id);
    if (pressed === undefined || pressed.answer !== null)
      throw new Refused(
        400,
        'Bad Request: query is too old and response timeout expired or query ID is invalid',
      );
    pressed.answer = answer;
    server.changed();
    return true;
  },
  sendChatAction: (server, { chat_id }) => server.world.writable(chat_id) !== undefined,
  getFile: (server, { file_id }) => server.files.find(file_id),
  setMyCommands: (server, { commands, ...params }) => {
    server.commands.set(key(params), commands);
    return true;
  },
  getMyCommands: (server, params) => server.commands.get(key(params)) ?? [],
  deleteMyCommands: (server, params) => {
    server.commands.delete(key(params));
    return true;
  },
  setMyDescription: (server, { description, language_code }) => {
    server.descriptions.set(`long/${language_code ?? ''}`, description ?? '');
    return true;
  },
  getMyDescription: (server, { language_code }) => ({
    description: server.descriptions.get(`long/${language_code ?? ''}`) ?? '',
  }),
  setMyShortDescription: (server, { short_description, language_code }) => {
    server.descriptions.set(`short/${language_code ?? ''}`, short_description ?? '');
    return true;
  },
  getMyShortDescription: (server, { language_code }) => ({
    short_description: server.descriptions.get(`short/${language_code ?? ''}`) ?? '',
  }),
  answerInlineQuery: (server, { inline_query_id, ...answer }) => {
    for (const { input_message_content } of answer.results)
      read(input_message_content.text, input_message_content.parse_mode);
    server.inlineAnswers.set(inline_query_id, answer);
    server.changed();
    return true;
  },
  getChatMember: (server, { chat_id, user_id }) => {
    const status = server.world.writable(chat_id).standings.get(user_id);
    if (status === undefined) throw new Refused(400, 'Bad Request: user not found');
    return { status, user: { id: user_id, is_bot: false, first_name: 'Somebody' } };
  },
  getChatAdministrators: (server, { chat_id }) =>
    [...server.world.writable(chat_id).standings]
      .filter(([, status]) => status === 'creator' || status === 'administrator')
      .map(([id, status]) => ({ status, user: { id, is_bot: false, first_name: 'Somebody' } })),
};

/** Files that members or the bot sent. */
export class Files {
  readonly #files = new Map<string, { name: string; bytes: Buffer; path: string }>();

  /** `claimed`: the size that is told, where it is not that of the bytes. */
  keep(name: string, bytes: Buffer): { file_id: string; file_unique_id: string; file_size: number } {
    const id = randomBytes(12).toString('hex');
    this.#files.set(id, { name, bytes, path: `documents/file_${this.#files.size}` });
    return { file_id: id, file_unique_id: id.slice(0, 8), file_size: bytes.length };
  }

  find(id: string): { file_id: string; file_unique_id: string; file_size: number; file_path: string } {
    const file = this.#files.get(id);
    if (file === undefined) throw new Refused(400, 'Bad Request: invalid file_id');
    // "Maximum file size to download is 20 MB": reference, getFile.
    if (file.bytes.length > 20 * 2 ** 20) throw new Refused(400, 'Bad Request: file is too big');
    return {
      file_id: id,
      file_unique_id: id.slice(0, 8),
      file_size: file.bytes.length,
      file_path: file.path,
    };
  }

  at(path: string): Buffer | undefined {
    return [...this.#files.values()].find((file) => file.path === path)?.bytes;
  }
}
