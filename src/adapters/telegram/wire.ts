/** Joins the kinds of updates to what is done about them. Whatever breaks, the member is told, and the others go on. */
import { sequentialize } from '@grammyjs/runner';
import type { Context } from 'grammy';
import type { Desk } from './desk.ts';
import { addressOf, Inbox } from './incoming.ts';
import { inline } from './inline.ts';
import { membership, migration } from './membership.ts';
import { press } from './press.ts';

/** The same lane as the store's: a member in a chat. */
const laneOf = (context: Context): string | undefined =>
  context.from === undefined ? undefined : `${context.chat?.id ?? 'inline'}:${context.from.id}`;

async function sayFailed(desk: Desk, context: Context): Promise<void> {
  const sent = context.message ?? context.callbackQuery?.message;
  if (sent === undefined) return;
  const to = sent.date === 0 ? { chat: sent.chat.id } : addressOf(sent as NonNullable<Context['message']>);
  desk.outgoing.notice(to, await desk.post.say(context.from?.language_code, { say: 'failed' }));
}

export function wire(desk: Desk): void {
  const { bot, log } = desk;
  const inbox = new Inbox(desk);
  bot.use(sequentialize(laneOf));
  bot.use(async (context, next) => {
    try {
      await next();
    } catch (error) {
      log.error({ err: error, update: context.update.update_id }, 'an update failed');
      await sayFailed(desk, context).catch((worse) => log.error({ err: worse }, 'nor could it be told'));
    }
  });
  bot.on('message', async (context) => {
    if (!(await migration(desk, context.message))) await inbox.message(context, context.message);
  });
  bot.on('edited_message', (context) => inbox.edited(context, context.editedMessage));
  bot.on('callback_query', (context) => press(desk, context, context.callbackQuery));
  bot.on('inline_query', (context) => inline(desk, context, context.inlineQuery));
  bot.on('my_chat_member', (context) => membership(desk, context.myChatMember));
}
