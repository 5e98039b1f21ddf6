/** The menus of commands and what the bot says of itself: written only where they differ from what stands there. */
import type { Api } from 'grammy';
import type { BotCommand, BotCommandScope, LanguageCode } from 'grammy/types';
import type { Logger } from 'pino';
import type { CommandText, Post } from '../post.ts';
import { type CallSignal, callSignal } from './time-limit.ts';

/** Members of a group see what they may use; whoever looks after it, and everybody in private, sees all. */
const scopes: readonly { readonly scope: BotCommandScope; readonly all: boolean }[] = [
  { scope: { type: 'all_private_chats' }, all: true },
  { scope: { type: 'all_group_chats' }, all: false },
  { scope: { type: 'all_chat_administrators' }, all: true },
];

const menuOf = (commands: readonly CommandText[], all: boolean): BotCommand[] =>
  commands
    .filter(({ admin }) => all || !admin)
    .map(({ name, description }) => ({ command: name, description: description.slice(0, 256) }));

const same = (a: readonly BotCommand[], b: readonly BotCommand[]): boolean =>
  a.length === b.length &&
  a.every(({ command, description }, at) => b[at]?.command === command && b[at]?.description === description);

/** Each language, and the first one for members of all others. */
function languagesOf(
  post: Post,
): { readonly language: string; readonly code: { language_code?: LanguageCode } }[] {
  const named = post.languages.map((language) => ({
    language,
    code: { language_code: language as LanguageCode },
  }));
  return [{ language: post.languages[0] ?? 'en', code: {} }, ...named];
}

async function writeMenus(api: Api, post: Post, signal: CallSignal): Promise<number> {
  let written = 0;
  for (const { language, code } of languagesOf(post)) {
    const commands = await post.commands(language);
    for (const { scope, all } of scopes) {
      const menu = menuOf(commands, all);
      if (same(menu, await api.getMyCommands({ scope, ...code }, signal))) continue;
      await api.setMyCommands(menu, { scope, ...code }, signal);
      written += 1;
    }
  }
  return written;
}

async function writeDescriptions(api: Api, post: Post, signal: CallSignal): Promise<void> {
  for (const { language, code } of languagesOf(post)) {
    const long = await post.say(language, { say: 'telegram-description' });
    const short = await post.say(language, { say: 'telegram-short-description' });
    if ((await api.getMyDescription(code, signal)).description !== long)
      await api.setMyDescription(long, code, signal);
    if ((await api.getMyShortDescription(code, signal)).short_description !== short)
      await api.setMyShortDescription(short, code, signal);
  }
}

/** The bot works without its menus: what fails here is said and tried again at the next start. */
export async function presentSelf(api: Api, post: Post, log: Logger, stop: AbortSignal): Promise<void> {
  try {
    const written = await writeMenus(api, post, callSignal(stop));
    await writeDescriptions(api, post, callSignal(stop));
    log.info({ written }, 'menus of commands are as they should be');
  } catch (error) {
    if (!stop.aborted) log.warn({ err: error }, 'menus of commands could not be written');
  }
}
