/** A member at the keyboard: types, runs commands, presses, selects, fills in forms; and sees what came back. */
import { PermissionFlagsBits } from 'discord.js';
import { snowflake } from './ids.ts';
import { deadlineMs, type Interaction } from './interaction.ts';
import type { Posted } from './messages.ts';
import type { DiscordServer } from './server.ts';
import { memberObject, type Person, userObject } from './world.ts';

export interface Upload {
  readonly name: string;
  readonly bytes: Buffer;
  readonly url?: string;
  readonly size?: number;
  readonly delayMs?: number;
}

export interface Typing {
  readonly mention?: boolean;
  readonly replyTo?: Posted;
  /** The ping of a reply can be switched off. */
  readonly ping?: boolean;
  readonly files?: readonly Upload[];
  readonly admin?: boolean;
}

export class Member {
  constructor(
    readonly server: DiscordServer,
    readonly person: Person,
    readonly channel: string,
    readonly locale = 'en-GB',
    readonly admin = false,
  ) {}

  private get guild(): string | undefined {
    return this.server.guildOf(this.channel);
  }

  private get roles(): string[] {
    const guild = this.server.guilds.find(({ id }) => id === this.guild);
    return this.admin && guild ? [guild.adminRole] : [];
  }

  private attach({ name, bytes, url, size, delayMs }: Upload): object {
    const id = snowflake();
    const path = `/attachments/${this.channel}/${id}/${name}`;
    this.server.downloads.set(path, { bytes, ...(delayMs ? { delayMs } : {}) });
    const link = url ?? `${this.server.api.replace(/\/api$/, '')}${encodeURI(path)}?ex=1&is=2&hm=3`;
    return { id, filename: name, size: size ?? bytes.length, url: link, proxy_url: link };
  }

  /** A plain message. Its content is kept from the bot unless it is for it, as without the privileged intent. */
  types(text: string, { mention = false, replyTo, ping = true, files = [] }: Typing = {}): Posted {
    const content = mention ? `<@${this.server.bot.id}> ${text}` : text;
    const posted = this.server.messages.post({ content, allowed_mentions: { parse: [] } }, [], {
      channel: this.channel,
      author: this.person.id,
      byBot: false,
      private: false,
      via: 'person',
    });
    const event = this.messageEvent(posted, { mention, ...(replyTo ? { replyTo } : {}), ping, files });
    this.server.gateway.dispatch('MESSAGE_CREATE', event, this.guild);
    return posted;
  }

  messageEvent(posted: Posted, { mention = false, replyTo, ping = true, files = [] }: Typing = {}): object {
    const mentioned = mention || (replyTo?.byBot === true && ping);
    const seen = mentioned || this.guild === undefined;
    return {
      ...this.server.messageObject(posted),
      author: userObject(this.person),
      ...(this.guild ? { member: memberObject(this.roles) } : {}),
      content: seen ? posted.content : '',
      attachments: seen ? files.map((file) => this.attach(file)) : [],
      mentions: mentioned ? [{ ...userObject(this.server.bot, true), member: memberObject() }] : [],
      ...(replyTo
        ? {
            type: 19,
            message_reference: {
              type: 0,
              message_id: replyTo.id,
              channel_id: replyTo.channel,
              guild_id: this.guild,
            },
            referenced_message: this.server.messageObject(replyTo),
          }
        : {}),
    };
  }

  interactionEvent(
    type: Interaction['type'],
    data: object,
    source: Posted | null = null,
  ): [Interaction, object] {
    const one: Interaction = {
      id: snowflake(),
      token: `interaction-token-${snowflake()}-${'y'.repeat(24)}`,
      type,
      channel: this.channel,
      user: this.person.id,
      source,
      created: Date.now(),
      state: 'new',
      private: false,
      acknowledgements: 0,
      acknowledgedAfter: null,
      original: null,
      followUps: [],
      modal: null,
      choices: null,
      timer: null,
    };
    one.timer = setTimeout(() => {
      if (one.state !== 'new') return;
      one.state = 'expired';
      this.server.breaches.push(`interaction of type ${type}: not acknowledged within ${deadlineMs} ms`);
    }, deadlineMs);
    this.server.interactions.set(one.token, one);
    const permissions = this.admin ? PermissionFlagsBits.ManageGuild : PermissionFlagsBits.SendMessages;
    const user = userObject(this.person);
    const event = {
      id: one.id,
      token: one.token,
      type,
      version: 1,
      application_id: this.server.application,
      channel_id: this.channel,
      channel: this.server.channelObject(this.channel),
      app_permissions: String((1n << 40n) - 1n),
      locale: this.locale,
      entitlements: [],
      authorizing_integration_owners: {},
      attachment_size_limit: 10_485_760,
      ...(this.guild
        ? {
            guild_id: this.guild,
            guild_locale: 'en-US',
            context: 0,
            member: { ...memberObject(this.roles), user, permissions: String(permissions) },
          }
        : { context: 1, user }),
      ...(source
        ? { message: { ...this.server.messageObject(source), author: userObject(this.server.bot, true) } }
        : {}),
      data,
    };
    return [one, event];
  }

  send([one, event]: [Interaction, object]): Interaction {
    this.server.gateway.dispatch('INTERACTION_CREATE', event, this.guild);
    return one;
  }

  runs(name: string, question?: string): Interaction {
    return this.send(this.interactionEvent(2, this.commandData(name, question)));
  }

  commandData(name: string, question?: string): object {
    const options =
      question === undefined ? [] : [{ name: 'question', type: 3, value: question, focused: false }];
    return { id: snowflake(), name, type: 1, options };
  }

  asksAbout(command: string, target: Posted, more: Typing = {}): Interaction {
    const message = { ...this.messageEvent(target, { ...more, mention: true }), content: target.content };
    return this.send(
      this.interactionEvent(2, {
        id: snowflake(),
        name: command,
        type: 3,
        target_id: target.id,
        resolved: { messages: { [target.id]: message } },
      }),
    );
  }

  completes(name: string, typed: string): Interaction {
    const options = [{ name: 'question', type: 3, value: typed, focused: true }];
    return this.send(this.interactionEvent(4, { id: snowflake(), name, type: 1, options }));
  }

  pressesId(message: Posted, custom_id: string): Interaction {
    return this.send(this.interactionEvent(3, { custom_id, component_type: 2 }, message));
  }

  /** Presses a button, or chooses in a menu, by what is written on it. */
  presses(message: Posted, label: string): Interaction {
    for (const { components } of message.components)
      for (const part of components) {
        if ('label' in part && part.label === label) return this.pressesId(message, part.custom_id);
        const option = 'options' in part ? part.options.find((one) => one.label === label) : undefined;
        if (option)
          return this.send(
            this.interactionEvent(
              3,
              { custom_id: part.custom_id, component_type: 3, values: [option.value] },
              message,
            ),
          );
      }
    throw new Error(`nothing is labelled ${label}`);
  }

  fillsIn(opened: Interaction, text: string): Interaction {
    const modal = opened.modal;
    if (modal === null) throw new Error('no form was opened');
    const components = modal.components.map(({ component }) => ({
      type: 18,
      component: { type: 4, custom_id: component.custom_id, value: text },
    }));
    return this.send(this.interactionEvent(5, { custom_id: modal.custom_id, components }, opened.source));
  }
}
