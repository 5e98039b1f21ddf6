/** Brings a parcel to where it belongs, over the interaction or over the channel, and clears it from the outbox. */

import { setTimeout as sleep } from 'node:timers/promises';
import type { Logger } from 'pino';
import type { Parcel } from '../../contracts/ledger.ts';
import type { Rendered } from '../../contracts/reply.ts';
import type { Post } from '../post.ts';
import type { Acknowledgement } from './acknowledge.ts';
import { type Address, readAddress } from './address.ts';
import { type Calls, nonceOf } from './calls.ts';
import { isUnderAnswer, isValue } from './controls.ts';
import type { Counters } from './counters.ts';
import { isArchived, isClosed, isLate, isNoHistory, isUnclear } from './errors.ts';
import { line, repeated, type Screen, type ScreenWords, screens } from './screen.ts';
import { told } from './secrets.ts';

export interface DeliveryParts {
  readonly post: Post;
  readonly calls: Calls;
  readonly counters: Counters;
  readonly log: Logger;
  /** Waits between the tries of a message that could not be sent. */
  readonly retryMs: readonly number[];
}

const isQuestion = ({ reply }: Rendered): boolean => reply.choices.some(isValue);
const isMenu = ({ reply }: Rendered): boolean => reply.choices.some(({ id }) => id.startsWith('t:'));

/** Questions and advice are for all to see and learn from; help, settings and what was not understood are not. */
export const isPrivate = (rendered: Rendered): boolean =>
  rendered.reply.advice === null && !isQuestion(rendered);

/** The next step of a question takes its place; an answer is never written over and never takes a place. */
export const takesPlace = (rendered: Rendered, under: readonly string[]): boolean =>
  rendered.reply.advice === null && (isQuestion(rendered) || isMenu(rendered)) && !under.some(isUnderAnswer);

export interface Asked {
  readonly acknowledgement: Acknowledgement;
  /** Choices under the message whose button was pressed. */
  readonly under: readonly string[];
  /** A button, a menu, or a form opened by one: its message can be rewritten. */
  readonly pressed: boolean;
  /** That message, where its buttons can be taken away. */
  readonly question: { readonly channel: string; readonly id: string } | null;
  readonly direct: boolean;
}

export class Delivery {
  readonly #underWay = new Set<Promise<void>>();
  readonly #words = new Map<string, Promise<ScreenWords>>();
  #ended = false;

  constructor(private readonly parts: DeliveryParts) {}

  /** The same few sentences under every answer: read once a language. */
  words(locale: string | undefined): Promise<ScreenWords> {
    const language = (locale ?? '').split('-')[0] ?? '';
    const known = this.#words.get(language) ?? this.#readWords(locale);
    this.#words.set(language, known);
    return known;
  }

  async #readWords(locale: string | undefined): Promise<ScreenWords> {
    const { post } = this.parts;
    const say = (id: string): Promise<string> => post.say(locale, { say: id });
    const [typeIt, pick, more, again] = await Promise.all([
      say('discord-type-it'),
      say('discord-pick'),
      say('discord-more'),
      say('sent-again'),
    ]);
    return { typeIt, pick, more, again };
  }

  /** The answer to an interaction; where the platform gave up on it, a message in the channel. */
  async answer(parcel: Parcel, asked: Asked): Promise<void> {
    const { post, counters } = this.parts;
    const address = readAddress(parcel.address);
    if (address === null) return post.delivered(parcel.id);
    const words = await this.words(parcel.rendered.language ?? address.locale);
    const all = screens(parcel.rendered, words);
    const inPlace = asked.pressed && takesPlace(parcel.rendered, asked.under);
    const hidden = address.hidden || (!asked.direct && isPrivate(parcel.rendered));
    counters.parcels += 1;
    const shown = await asked.acknowledgement.show(all, { inPlace, hidden, words });
    if (!shown && !hidden) return this.post(parcel, address, all);
    await post.delivered(parcel.id);
    if (parcel.rendered.reply.advice !== null) await this.#close(asked);
  }

  async #close({ question, under }: Asked): Promise<void> {
    if (question === null || under.some(isUnderAnswer)) return;
    try {
      await this.parts.calls.withoutButtons(question.channel, question.id);
    } catch (error) {
      // Deleted meanwhile, or only the asker saw it: the buttons do no harm.
      this.parts.log.debug({ fault: told(error) }, 'the buttons of an answered question stay');
    }
  }

  /** A message in a channel; one that fails is tried again in the background, under the same number. */
  async message(parcel: Parcel): Promise<void> {
    const { post, counters } = this.parts;
    const address = readAddress(parcel.address);
    if (address === null) return post.delivered(parcel.id);
    counters.parcels += 1;
    const words = await this.words(parcel.rendered.language ?? address.locale);
    const all = screens(parcel.rendered, words);
    await this.post(parcel, address, all);
  }

  /** What was left over from before the program stopped. */
  async again(parcel: Parcel): Promise<void> {
    const { post, calls } = this.parts;
    const address = readAddress(parcel.address);
    if (address === null) return post.delivered(parcel.id);
    const words = await this.words(parcel.rendered.language ?? address.locale);
    const [first, ...rest] = screens(parcel.rendered, words);
    if (first === undefined) return post.delivered(parcel.id);
    const { hook } = address;
    if (hook !== undefined && !hook.pressed) {
      try {
        await calls.editOriginal(hook, repeated(first, words));
        for (const screen of rest) await calls.followUp(hook, repeated(screen, words), address.hidden);
        return post.delivered(parcel.id);
      } catch (error) {
        if (!isLate(error)) throw error;
      }
    }
    // What one member alone should see is not shown to all because of a crash.
    if (address.hidden) return post.delivered(parcel.id);
    await this.post(parcel, address, [repeated(first, words), ...rest]);
  }

  private async post(parcel: Parcel, address: Address, all: readonly Screen[]): Promise<void> {
    try {
      await this.#try(parcel, address, all);
    } catch (error) {
      if (!isUnclear(error)) throw error;
      this.parts.log.warn({ parcel: parcel.id, fault: told(error) }, 'an answer waits to be sent again');
      this.#later(this.#keepTrying(parcel, address, all));
    }
  }

  #later(work: Promise<void>): void {
    const done = work.finally(() => this.#underWay.delete(done));
    this.#underWay.add(done);
  }

  async #keepTrying(parcel: Parcel, address: Address, all: readonly Screen[]): Promise<void> {
    const { retryMs, log, counters } = this.parts;
    for (const wait of retryMs) {
      await sleep(wait, undefined, { ref: false });
      if (this.#ended) return;
      try {
        return await this.#try(parcel, address, all);
      } catch (error) {
        log.warn({ parcel: parcel.id, fault: told(error) }, 'an answer could not be sent');
      }
    }
    // It stays in the outbox: the next start sends it, marked as a repeat.
    counters.failures += 1;
    log.error({ parcel: parcel.id }, 'an answer is given up until the next start');
  }

  async #try(parcel: Parcel, address: Address, all: readonly Screen[]): Promise<void> {
    const { post, counters, log } = this.parts;
    try {
      for (const [index, screen] of all.entries()) await this.#part(parcel, address, screen, index);
    } catch (error) {
      if (!isClosed(error)) throw error;
      counters.closedTargets += 1;
      log.info({ parcel: parcel.id, fault: told(error) }, 'nothing can be posted there any more');
      await post.left(address.chat);
    }
    await post.delivered(parcel.id);
  }

  async #part(parcel: Parcel, address: Address, screen: Screen, index: number): Promise<void> {
    const { calls, post } = this.parts;
    const { channel, parent, locale } = address;
    const replyTo = index === 0 ? address.replyTo : undefined;
    const nonce = nonceOf(parcel.id, index);
    try {
      await calls.send(channel, screen, nonce, replyTo);
    } catch (error) {
      if (isNoHistory(error)) return calls.send(channel, screen, nonce);
      if (!isArchived(error) || parent === undefined) throw error;
      const said = line(await post.say(locale, { say: 'discord-thread-closed' }));
      const content = index === 0 ? `${said.content}\n${screen.content}` : screen.content;
      await calls.send(parent, { ...screen, content }, nonce);
    }
  }

  /** Waits for what is being sent. */
  async end(): Promise<void> {
    this.#ended = true;
    await Promise.allSettled(this.#underWay);
  }
}
