/** A pressed button: answered at once, taken for whom it was meant, and shown under its question as taken. */
import type { Context } from 'grammy';
import type { CallbackQuery, Message as Sent } from 'grammy/types';
import { type Address, chatKey, writeAddress } from './address.ts';
import { anonymousAdmin } from './admin.ts';
import { claimOf, type Desk } from './desk.ts';
import { isNoise } from './failure.ts';
import { clean, firstLineBold, plain } from './html.ts';
import { addressOf } from './incoming.ts';
import { readPress } from './keyboard.ts';

const alertLimit = 200;
const textLimit = 4096;

/** Answers a press; when it is too late for that, nothing is lost. */
async function acknowledge(desk: Desk, query: CallbackQuery, alert?: string): Promise<void> {
  try {
    await desk.bot.api.answerCallbackQuery(
      query.id,
      alert === undefined ? {} : { text: clean(alert).slice(0, alertLimit), show_alert: true },
    );
  } catch (error) {
    if (!isNoise(error)) desk.log.warn({ err: error }, 'a press could not be answered');
  }
}

/** The choice of an answer to a question; commands ("why") may be pressed again. */
const settles = (choice: string): boolean => choice.startsWith('f:') || choice.startsWith('t:');

function showTaken(desk: Desk, sent: Sent, data: string): void {
  const label = sent.reply_markup?.inline_keyboard
    .flat()
    .find((button) => 'callback_data' in button && button.callback_data === data)?.text;
  if (sent.text === undefined || label === undefined) return;
  const text = `${sent.text}\n\n✓ ${label}`;
  // The last part of a long answer has no bold line.
  const bold = sent.entities?.some(({ type, offset }) => type === 'bold' && offset === 0) === true;
  desk.outgoing.call(sent.chat.id, (api, chat) =>
    text.length > textLimit
      ? api.editMessageReplyMarkup(chat, sent.message_id)
      : api.editMessageText(chat, sent.message_id, bold ? firstLineBold(text) : plain(text), {
          parse_mode: 'HTML',
          link_preview_options: { is_disabled: true },
        }),
  );
}

export async function press(desk: Desk, context: Context, query: CallbackQuery): Promise<void> {
  const { post, admins } = desk;
  const { message: sent, from, data = '' } = query;
  const locale = from.language_code?.slice(0, 35);
  const read = readPress(data);
  if (read === 'unknown' || sent === undefined)
    return acknowledge(desk, query, await post.say(locale, { say: 'telegram-old-button' }));
  const inGroup = sent.chat.type !== 'private';
  const admin = !inGroup || (await admins.isAdmin(sent.chat.id, from.id));
  const forGroup = read.owner === anonymousAdmin;
  if (forGroup ? !admin : read.owner !== from.id)
    return acknowledge(desk, query, await post.say(locale, { say: 'press-for-another' }));
  const answered = acknowledge(desk, query);
  // A message that is too old, or deleted while it was pressed, comes without its content.
  const shown = sent.date === 0 ? null : (sent as Sent);
  const to: Address = {
    ...(shown === null ? { chat: sent.chat.id } : addressOf(shown)),
    owner: read.owner,
    ...(locale === undefined ? {} : { locale }),
  };
  const claim = claimOf(desk, context.update.update_id);
  try {
    const parcel = await post.take({
      message: {
        id: claim,
        chat: chatKey(to.chat),
        user: chatKey(forGroup ? to.chat : from.id),
        ...(to.thread === undefined ? {} : { room: String(to.thread) }),
        admin,
        ...(locale === undefined ? {} : { locale }),
        at: new Date().toISOString(),
        press: read.choice,
      },
      claim,
      address: writeAddress(to),
    });
    if (parcel === null) return;
    await desk.outgoing.parcel(parcel);
    if (shown !== null && settles(read.choice)) showTaken(desk, shown, data);
  } finally {
    await answered;
  }
}
