/** Commands, buttons, menus, forms and autocomplete: each becomes one message to the post and one answer. */
import {
  type AutocompleteInteraction,
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  type Interaction,
  type MessageContextMenuCommandInteraction,
  type ModalSubmitInteraction,
  PermissionFlagsBits,
  type StringSelectMenuInteraction,
} from 'discord.js';
import type { Message } from '../../contracts/message.ts';
import { Acknowledgement } from './acknowledge.ts';
import { type Address, writeAddress } from './address.ts';
import { fetchFile, mostBytes } from './attachments.ts';
import { isHidden } from './client.ts';
import { questionOption } from './commands.ts';
import type { Context } from './context.ts';
import { carry, menuId, readCarried, typeId } from './controls.ts';
import type { Asked } from './deliver.ts';
import { answerField, form } from './form.ts';
import { placeOf, rooms } from './places.ts';
import { line } from './screen.ts';
import { choicesUnder } from './under.ts';

type Answerable =
  | ChatInputCommandInteraction
  | MessageContextMenuCommandInteraction
  | ButtonInteraction
  | StringSelectMenuInteraction
  | ModalSubmitInteraction;

/** Answers that are only for whoever asked. */
const privateCommands = new Set(['help', 'forget', 'privacy', 'language', 'restart', 'back']);

type Said = Pick<Message, 'text' | 'press' | 'file'>;

export class Interactions {
  constructor(private readonly context: Context) {}

  async handle(interaction: Interaction): Promise<void> {
    this.context.counters.interactions += 1;
    if (interaction.isAutocomplete()) return this.#complete(interaction);
    if (
      interaction.isChatInputCommand() ||
      interaction.isMessageContextMenuCommand() ||
      interaction.isButton() ||
      interaction.isStringSelectMenu() ||
      interaction.isModalSubmit()
    )
      return this.#answer(interaction);
  }

  async #complete(interaction: AutocompleteInteraction): Promise<void> {
    const acknowledgement = this.#own(interaction, false, false);
    // Nothing may be deferred here: what is not there in time is not shown.
    acknowledgement.drop();
    const lines = await this.context.post.suggest(interaction.options.getFocused(), interaction.locale);
    await acknowledgement.choices(lines);
  }

  #own(interaction: Interaction, pressed: boolean, hidden: boolean): Acknowledgement {
    const { calls, counters, deferAfterMs } = this.context;
    const { id, token, applicationId: application } = interaction;
    return new Acknowledgement(
      { key: { id, token, application }, pressed, hidden, calls, counters },
      deferAfterMs,
    );
  }

  async #answer(interaction: Answerable): Promise<void> {
    const command = interaction.isChatInputCommand() ? interaction.commandName : '';
    const { adminCommands } = this.context;
    if (interaction.isCommand() && interaction.commandGuildId !== null)
      this.context.strayCommands(interaction.commandGuildId);
    const hidden = adminCommands.has(command) || privateCommands.has(command);
    const source =
      interaction.isMessageComponent() || interaction.isModalSubmit() ? interaction.message : null;
    const acknowledgement = this.#own(interaction, source !== null, hidden && interaction.guildId !== null);
    try {
      await this.#answerOwned(interaction, acknowledgement, hidden);
    } catch (error) {
      if (acknowledgement.state !== 'answered')
        await this.#say(interaction, acknowledgement, 'failed').catch(() => undefined);
      throw error;
    } finally {
      acknowledgement.drop();
    }
  }

  /** A line of the program's own, for the asker alone. */
  async #say(
    interaction: Answerable,
    acknowledgement: Acknowledgement,
    id: string,
    facts?: Readonly<Record<string, string | number>>,
  ): Promise<void> {
    const { post, delivery } = this.context;
    const text = await post.say(interaction.locale, { say: id, ...(facts ? { with: facts } : {}) });
    const words = await delivery.words(interaction.locale);
    const hidden = interaction.guildId !== null;
    await acknowledgement.show([line(text)], { inPlace: false, hidden, words });
  }

  async #answerOwned(
    interaction: Answerable,
    acknowledgement: Acknowledgement,
    hidden: boolean,
  ): Promise<void> {
    const { post, adminCommands, stopping } = this.context;
    const say = (id: string, facts?: Readonly<Record<string, string | number>>): Promise<void> =>
      this.#say(interaction, acknowledgement, id, facts);
    if (stopping) return say('discord-stopping');
    const { user, guildId, channelId, locale, id } = interaction;
    this.context.locales.note(user.id, locale);
    if (channelId === null) return say('failed');
    const admin =
      guildId === null || interaction.memberPermissions?.has(PermissionFlagsBits.ManageGuild) === true;
    const isAdminCommand = interaction.isChatInputCommand() && adminCommands.has(interaction.commandName);
    if (isAdminCommand && !admin) return say('settings-admins-only');
    const place = placeOf(guildId, channelId);
    if (!isAdminCommand && !hidden && !(await this.#allowed(interaction, place.chat)))
      return say('discord-not-here');

    const said = await this.#read(interaction, acknowledgement);
    if (said === null) return;
    if ('refused' in said) return say(said.refused, { most: Math.floor(mostBytes / 1024 / 1024) });
    const source =
      interaction.isMessageComponent() || interaction.isModalSubmit() ? interaction.message : null;
    const address: Address = {
      channel: channelId,
      chat: place.chat,
      locale,
      hidden: hidden && !place.direct,
      hook: { application: interaction.applicationId, token: interaction.token, pressed: source !== null },
    };
    const message: Message = {
      id,
      chat: place.chat,
      user: user.id,
      ...(place.room === undefined ? {} : { room: place.room }),
      admin,
      locale,
      ...said,
    };
    const parcel = await post.take({ message, claim: `discord:${id}`, address: writeAddress(address) });
    // Seen before, or over the limit: the platform still wants an answer.
    if (parcel === null) return say('discord-nothing');
    const asked: Asked = {
      acknowledgement,
      under: source === null ? [] : choicesUnder(source),
      question:
        source === null || isHidden(source.flags.bitfield) ? null : { channel: channelId, id: source.id },
      pressed: source !== null,
      direct: place.direct,
    };
    await this.context.delivery.answer(parcel, asked);
  }

  async #allowed(interaction: Answerable, chat: string): Promise<boolean> {
    if (interaction.guildId === null) return true;
    for (const room of rooms(interaction.channelId, interaction.channel))
      if (await this.context.post.allowedRoom(chat, room)) return true;
    return false;
  }

  /** Null: answered already. */
  async #read(
    interaction: Answerable,
    acknowledgement: Acknowledgement,
  ): Promise<Said | { readonly refused: string } | null> {
    if (interaction.isChatInputCommand()) {
      const words = interaction.options.getString(questionOption) ?? '';
      return { text: `/${interaction.commandName} ${words}`.trim() };
    }
    if (interaction.isMessageContextMenuCommand()) return this.#readTarget(interaction);
    const carried = readCarried(interaction.customId);
    if (carried === 'old') return { refused: 'button-old' };
    if (carried.user !== interaction.user.id) return { refused: 'press-for-another' };
    if (interaction.isModalSubmit()) return { text: interaction.fields.getTextInputValue(answerField) };
    if (interaction.isStringSelectMenu()) {
      const [choice] = interaction.values;
      return carried.choice === menuId && choice !== undefined
        ? { press: choice }
        : { refused: 'button-old' };
    }
    if (carried.choice !== typeId) return { press: carried.choice };
    const { post } = this.context;
    const [title, label] = await Promise.all([
      post.say(interaction.locale, { say: 'discord-type-title' }),
      post.say(interaction.locale, { say: 'discord-type-label' }),
    ]);
    const question = interaction.message.content;
    await acknowledgement.form(form(carry(interaction.user.id, typeId), { title, label, question }));
    return null;
  }

  async #readTarget({
    targetMessage,
  }: MessageContextMenuCommandInteraction): Promise<Said | { readonly refused: string }> {
    const text = targetMessage.content.trim();
    const files = [...targetMessage.attachments.values()];
    const [file] = files;
    if (file === undefined) return text === '' ? { refused: 'discord-empty' } : { text };
    if (files.length > 1) return { refused: 'discord-file-one' };
    const fetched = await fetchFile(file, this.context.apiRoot, this.context.fetchLimits);
    return 'refused' in fetched ? fetched : { ...(text === '' ? {} : { text }), file: fetched.file };
  }
}
