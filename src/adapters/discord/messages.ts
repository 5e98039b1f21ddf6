/** Plain messages: only direct ones, those that mention the bot, and replies to it. All others are none of its business. */
import { type Message as DiscordMessage, MessageType, PermissionFlagsBits } from 'discord.js';
import type { Message } from '../../contracts/message.ts';
import { type Address, writeAddress } from './address.ts';
import { fetchFile, mostBytes } from './attachments.ts';
import { nonceOf } from './calls.ts';
import type { Context } from './context.ts';
import { placeOf, rooms } from './places.ts';
import { line } from './screen.ts';
import { told } from './secrets.ts';

const plainTypes = [MessageType.Default, MessageType.Reply];

/** The mention itself is not part of the question, nor are those of others. */
const withoutMentions = (content: string): string =>
  content
    .replace(/<@[!&]?\d+>/g, ' ')
    .replace(/[^\S\n]+/g, ' ')
    .trim();

export class Messages {
  constructor(private readonly context: Context) {}

  #isForUs({ author, webhookId, type, client, guildId, mentions }: DiscordMessage): boolean {
    if (author.bot || webhookId !== null || !plainTypes.includes(type)) return false;
    if (guildId === null) return true;
    const { id } = client.user ?? {};
    // A reply counts where its ping is on: without it the platform sends no content.
    return id !== undefined && (mentions.users.has(id) || mentions.repliedUser?.id === id);
  }

  async handle(message: DiscordMessage): Promise<void> {
    // The rights of the author are read now: the member is not remembered beyond this event.
    const admin =
      message.guildId === null || message.member?.permissions.has(PermissionFlagsBits.ManageGuild) === true;
    if (!this.#isForUs(message) || this.context.stopping) return;
    const text = withoutMentions(message.content);
    const files = [...message.attachments.values()];
    if (text === '' && files.length === 0 && message.content === '') return;
    const { post, counters, delivery } = this.context;
    counters.messages += 1;
    const place = placeOf(message.guildId, message.channelId);
    if (!place.direct && !(await this.#allowed(message, place.chat))) return;
    const locale = this.context.locales.of(message.author.id);
    const parent = message.channel.isThread() ? message.channel.parentId : null;
    const address: Address = {
      channel: message.channelId,
      chat: place.chat,
      replyTo: message.id,
      ...(locale === undefined ? {} : { locale }),
      ...(parent === null ? {} : { parent }),
      hidden: false,
    };
    const said = await this.#read(message, text);
    if ('refused' in said) return this.#refuse(message, said.refused);
    const incoming: Message = {
      id: message.id,
      chat: place.chat,
      user: message.author.id,
      ...(place.room === undefined ? {} : { room: place.room }),
      admin,
      ...(locale === undefined ? {} : { locale }),
      ...said,
    };
    const parcel = await post.take({
      message: incoming,
      claim: `discord:${message.id}`,
      address: writeAddress(address),
    });
    if (parcel !== null) await delivery.message(parcel);
  }

  async #allowed(message: DiscordMessage, chat: string): Promise<boolean> {
    for (const room of rooms(message.channelId, message.channel))
      if (await this.context.post.allowedRoom(chat, room)) return true;
    return false;
  }

  /** A bare mention is a greeting: the dialogue answers it with help. */
  async #read(
    message: DiscordMessage,
    text: string,
  ): Promise<Pick<Message, 'text' | 'file'> | { readonly refused: string }> {
    const files = [...message.attachments.values()];
    const [file] = files;
    if (file === undefined) return { text: text === '' ? '/help' : text };
    if (files.length > 1) return { refused: 'discord-file-one' };
    const { calls, log, apiRoot, fetchLimits } = this.context;
    // A recording takes a moment.
    calls.typing(message.channelId).catch((error: unknown) => log.debug({ fault: told(error) }, 'no typing'));
    const fetched = await fetchFile(file, apiRoot, fetchLimits);
    return 'refused' in fetched ? fetched : { ...(text === '' ? {} : { text }), file: fetched.file };
  }

  async #refuse(message: DiscordMessage, id: string): Promise<void> {
    const { post, calls } = this.context;
    const most = Math.floor((this.context.fetchLimits?.bytes ?? mostBytes) / 1024 / 1024);
    const text = await post.say(this.context.locales.of(message.author.id), { say: id, with: { most } });
    await calls.send(message.channelId, line(text), nonceOf(message.id, 0), message.id);
  }
}
