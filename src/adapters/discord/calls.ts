/** The REST calls the adapter makes, each with the body that the platform documents. */
import { createHash } from 'node:crypto';
import {
  type APIModalInteractionResponseCallbackData,
  InteractionResponseType,
  type REST,
  Routes,
} from 'discord.js';
import { bodyOf, type MessageBody, noMentions, type Screen } from './screen.ts';

export interface InteractionKey {
  readonly id: string;
  readonly token: string;
  readonly application: string;
}

/** An acknowledgement that takes longer than this comes too late anyhow. */
const callbackMs = 2500;

/** The same for every try of the same part: the platform then answers with the message it has already. */
export const nonceOf = (parcel: string, part: number): string =>
  `${createHash('sha256').update(parcel).digest('base64url').slice(0, 20)}.${part.toString(36)}`;

export class Calls {
  constructor(
    private readonly rest: REST,
    /** Messages after the first answer: outside of the global limit, and never repeated blindly. */
    private readonly hooks: REST,
  ) {}

  private async callback(
    { id, token }: InteractionKey,
    type: InteractionResponseType,
    data?: object,
    files: Screen['files'] = [],
  ): Promise<void> {
    await this.rest.post(Routes.interactionCallback(id, token), {
      body: { type, ...(data === undefined ? {} : { data }) },
      files,
      auth: false,
      signal: AbortSignal.timeout(callbackMs),
    });
  }

  answer(key: InteractionKey, screen: Screen, hidden: boolean): Promise<void> {
    const data = bodyOf(screen, hidden);
    return this.callback(key, InteractionResponseType.ChannelMessageWithSource, data, screen.files);
  }

  update(key: InteractionKey, screen: Screen): Promise<void> {
    return this.callback(key, InteractionResponseType.UpdateMessage, edited(screen), screen.files);
  }

  defer(key: InteractionKey, pressed: boolean, hidden: boolean): Promise<void> {
    return pressed
      ? this.callback(key, InteractionResponseType.DeferredMessageUpdate)
      : this.callback(key, InteractionResponseType.DeferredChannelMessageWithSource, {
          flags: hidden ? 64 : 0,
        });
  }

  form(key: InteractionKey, form: APIModalInteractionResponseCallbackData): Promise<void> {
    return this.callback(key, InteractionResponseType.Modal, form);
  }

  choices(key: InteractionKey, lines: readonly string[]): Promise<void> {
    const choices = lines.map((line) => ({ name: line, value: line }));
    return this.callback(key, InteractionResponseType.ApplicationCommandAutocompleteResult, { choices });
  }

  async editOriginal({ application, token }: Omit<InteractionKey, 'id'>, screen: Screen): Promise<void> {
    const route = Routes.webhookMessage(application, token, '@original');
    await this.hooks.patch(route, { body: edited(screen), files: screen.files, auth: false });
  }

  async followUp(
    { application, token }: Omit<InteractionKey, 'id'>,
    screen: Screen,
    hidden: boolean,
  ): Promise<void> {
    const route = Routes.webhook(application, token);
    await this.hooks.post(route, { body: bodyOf(screen, hidden), files: screen.files, auth: false });
  }

  async send(channel: string, screen: Screen, nonce: string, replyTo?: string): Promise<void> {
    await this.rest.post(Routes.channelMessages(channel), {
      body: {
        ...bodyOf(screen, false),
        nonce,
        enforce_nonce: true,
        ...(replyTo === undefined
          ? {}
          : { message_reference: { message_id: replyTo, fail_if_not_exists: false } }),
      },
      files: screen.files,
    });
  }

  /** An answered question keeps its words and loses its buttons. */
  async withoutButtons(channel: string, message: string): Promise<void> {
    await this.rest.patch(Routes.channelMessage(channel, message), {
      body: { components: [], allowed_mentions: noMentions },
    });
  }

  async typing(channel: string): Promise<void> {
    await this.rest.post(Routes.channelTyping(channel));
  }
}

/** Flags cannot be changed by an edit. */
function edited(screen: Screen): Omit<MessageBody, 'flags'> {
  const { flags: _, ...body } = bodyOf(screen, false);
  return body;
}
