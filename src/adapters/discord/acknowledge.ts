/**
 * One owner of each interaction. It is acknowledged once: by the answer itself, or, where the answer takes longer, by
 * "thinking" in good time. What the platform says against it is counted and never fatal.
 */
import type { APIModalInteractionResponseCallbackData } from 'discord.js';
import type { Calls, InteractionKey } from './calls.ts';
import type { Counters } from './counters.ts';
import { isLate, isTaken, isUnclear, isUnknownInteraction } from './errors.ts';
import { repeated, type Screen, type ScreenWords } from './screen.ts';

/** The platform waits 3 seconds. */
export const deferAfterMs = 1500;

export interface AcknowledgeOptions {
  readonly key: InteractionKey;
  /** A button or menu was used: its message can be rewritten. */
  readonly pressed: boolean;
  /** "Thinking" can only be seen by the asker; decided before the answer is known. */
  readonly hidden: boolean;
  readonly calls: Calls;
  readonly counters: Counters;
}

export interface Showing {
  /** Rewrites the message whose button was pressed. */
  readonly inPlace: boolean;
  readonly hidden: boolean;
  readonly words: ScreenWords;
}

/** done; taken: acknowledged before, by a retry or another process, or it is not known; late: no answer is taken. */
type Outcome = 'done' | 'taken' | 'late';

export class Acknowledgement {
  state: 'new' | 'deferred' | 'answered' = 'new';
  readonly #options: AcknowledgeOptions;
  readonly #timer: NodeJS.Timeout;
  #deferred: Promise<Outcome> = Promise.resolve('done');

  constructor(options: AcknowledgeOptions, afterMs = deferAfterMs) {
    this.#options = options;
    this.#timer = setTimeout(() => this.#defer(), afterMs);
  }

  get key(): InteractionKey {
    return this.#options.key;
  }

  #defer(): void {
    if (this.state !== 'new') return;
    const { calls, counters, key, pressed, hidden } = this.#options;
    this.state = 'deferred';
    counters.deferred += 1;
    this.#deferred = this.#acknowledge(() => calls.defer(key, pressed, hidden)).catch(() => 'late');
  }

  /** Takes the first answer for itself; whoever comes second is told what there is. */
  #claim(): 'new' | 'deferred' | 'answered' {
    const before = this.state;
    clearTimeout(this.#timer);
    this.state = 'answered';
    return before;
  }

  async #acknowledge(call: () => Promise<void>): Promise<Outcome> {
    const { counters } = this.#options;
    for (let attempt = 0; ; attempt += 1) {
      try {
        await call();
        return 'done';
      } catch (error) {
        if (isTaken(error)) {
          counters.alreadyAcknowledged += 1;
          return 'taken';
        }
        if (isLate(error)) {
          if (isUnknownInteraction(error)) counters.unknownInteractions += 1;
          return 'late';
        }
        if (!isUnclear(error)) throw error;
        if (attempt === 1) return 'taken';
      }
    }
  }

  /** False: the platform takes no answer to this interaction any more; nothing of it was shown. */
  async show(all: readonly Screen[], showing: Showing): Promise<boolean> {
    const [first, ...rest] = all;
    if (first === undefined) return true;
    if (!(await this.#first(first, showing))) return false;
    for (const screen of rest) await this.#followUp(screen, showing);
    return true;
  }

  async #first(screen: Screen, showing: Showing): Promise<boolean> {
    const { calls, key, pressed } = this.#options;
    const before = this.#claim();
    if (before === 'answered') throw new Error('an interaction is answered once');
    if (before === 'new') {
      const outcome = await this.#acknowledge(() =>
        showing.inPlace ? calls.update(key, screen) : calls.answer(key, screen, showing.hidden),
      );
      if (outcome === 'done') return true;
      return outcome === 'taken' && this.#write(screen);
    }
    if ((await this.#deferred) === 'late') return false;
    if (!pressed || showing.inPlace) return this.#write(screen);
    await this.#followUp(screen, showing);
    return true;
  }

  /** The first answer, once more: writing it twice does no harm. */
  async #write(screen: Screen): Promise<boolean> {
    const { calls, key } = this.#options;
    for (let attempt = 0; ; attempt += 1) {
      try {
        await calls.editOriginal(key, screen);
        return true;
      } catch (error) {
        if (isLate(error)) return false;
        if (!isUnclear(error) || attempt === 2) throw error;
      }
    }
  }

  /** A follow-up has no number by which the platform knows it again: sent twice, it says so. */
  async #followUp(screen: Screen, { hidden, words }: Showing): Promise<void> {
    const { calls, key } = this.#options;
    try {
      await calls.followUp(key, screen, hidden);
    } catch (error) {
      if (!isUnclear(error)) throw error;
      await calls.followUp(key, repeated(screen, words), hidden);
    }
  }

  /** A form can only be the first answer. */
  async form(form: APIModalInteractionResponseCallbackData): Promise<void> {
    const { calls, key } = this.#options;
    if (this.#claim() === 'new') await this.#acknowledge(() => calls.form(key, form));
  }

  async choices(lines: readonly string[]): Promise<void> {
    const { calls, key } = this.#options;
    if (this.#claim() === 'new') await this.#acknowledge(() => calls.choices(key, lines));
  }

  /** Nothing will be shown. */
  drop(): void {
    clearTimeout(this.#timer);
  }
}
