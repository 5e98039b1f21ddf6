/**
 * Everything that is sent. One lane a chat, so that answers keep their order; answers before repeats and edits; at
 * the pace that the platform allows. A parcel is only then marked delivered when its last call was answered.
 */
import { setMaxListeners } from 'node:events';
import type { Api } from 'grammy';
import type { Logger } from 'pino';
import type { Parcel } from '../../contracts/ledger.ts';
import type { Post } from '../post.ts';
import { type Address, chatKey, readAddress } from './address.ts';
import { failureOf, isNoise } from './failure.ts';
import { firstLineBold } from './html.ts';
import { Lane } from './lane.ts';
import { type Pace, Window } from './pace.ts';
import { type Step, stepsOf, take } from './steps.ts';
import { callSignal } from './time-limit.ts';

export interface OutgoingOptions {
  readonly pace: Pace | null;
  /** The first wait after a failure; doubled each time. */
  readonly retryMilliseconds: number;
}

/** About an hour of failures; then a parcel waits for the next start. */
const mostTries = 65;
const longestWait = 60_000;

type Call = { readonly kind: 'call'; readonly call: (api: Api, chat: number) => Promise<unknown> };

export interface Job {
  /** The parcel in the outbox; null for what is not kept. */
  readonly id: string | null;
  readonly rank: 0 | 1;
  to: Address;
  readonly steps: readonly (Step | Call)[];
  done: number;
  again: boolean;
  tries: number;
}

export class Outgoing {
  readonly #lanes = new Map<number, Lane>();
  readonly #all: Window | null;
  readonly #stop = new AbortController();
  readonly #api: Api;
  readonly #post: Post;
  readonly #log: Logger;
  readonly #options: OutgoingOptions;
  #timer: NodeJS.Timeout | undefined;
  #size = 0;
  #running = 0;
  #onSettled: (() => void)[] = [];

  constructor(api: Api, post: Post, log: Logger, options: OutgoingOptions) {
    this.#api = api;
    this.#post = post;
    this.#log = log;
    this.#options = options;
    // Every call that is under way listens to it.
    setMaxListeners(0, this.#stop.signal);
    this.#all = options.pace === null ? null : new Window(options.pace.all);
  }

  /** Resolves when fewer than so many wait: whoever takes in more waits with them. */
  async room(most: number): Promise<void> {
    while (this.#size >= most && !this.#stop.signal.aborted)
      await new Promise((resolve) => setTimeout(resolve, 50));
  }

  /** An answer that the outbox holds. */
  async parcel(parcel: Parcel, rank: 0 | 1 = 0): Promise<void> {
    const to = readAddress(parcel.address);
    if (to === null) {
      this.#log.error({ parcel: parcel.id }, 'an answer has an address that cannot be read; dropped');
      await this.#post.delivered(parcel.id);
      return;
    }
    const steps = stepsOf(parcel.rendered, to.owner);
    this.#add({ id: parcel.id, rank, to, steps, done: 0, again: parcel.again, tries: 0 });
  }

  /** A fixed sentence; lost if the program stops before. */
  notice(to: Address, text: string): void {
    const step: Step = { kind: 'text', html: firstLineBold(text), markup: undefined };
    this.#add({ id: null, rank: 0, to, steps: [step], done: 0, again: false, tries: 0 });
  }

  /** Something else in its turn, an edit: after the answers, and never tried twice. */
  call(chat: number, call: Call['call']): void {
    this.#add({
      id: null,
      rank: 1,
      to: { chat },
      steps: [{ kind: 'call', call }],
      done: 0,
      again: false,
      tries: 0,
    });
  }

  /** Resolves when nothing waits any more, or at the latest after so many milliseconds; what is left stays in the outbox. */
  async close(milliseconds: number): Promise<void> {
    const settled =
      this.#size === 0 ? Promise.resolve() : new Promise<void>((go) => this.#onSettled.push(go));
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<void>((resolve) => {
      timer = setTimeout(resolve, milliseconds);
    });
    await Promise.race([settled, late]);
    clearTimeout(timer);
    clearTimeout(this.#timer);
    this.#stop.abort();
    // Calls that were cut off end at once, and the store is not closed under them.
    for (let waited = 0; this.#running > 0 && waited < 50; waited += 1)
      await new Promise((resolve) => setTimeout(resolve, 10));
  }

  #add(job: Job): void {
    this.#size += 1;
    this.#laneOf(job.to.chat).add(job);
    this.#pump();
  }

  #laneOf(chat: number): Lane {
    const found = this.#lanes.get(chat);
    if (found !== undefined) return found;
    const lane = new Lane(chat, this.#options.pace);
    this.#lanes.set(chat, lane);
    return lane;
  }

  /** Starts whatever may start now, answers first, and comes back when the next may. */
  #pump(): void {
    if (this.#stop.signal.aborted) return;
    clearTimeout(this.#timer);
    const now = performance.now();
    let next = Number.POSITIVE_INFINITY;
    for (const rank of [0, 1]) {
      for (const [chat, lane] of this.#lanes) {
        if (lane.empty) {
          if (!lane.busy && lane.idle(now)) this.#lanes.delete(chat);
          continue;
        }
        if (lane.busy || lane.head?.rank !== rank) continue;
        const wait = Math.max(lane.wait(now), this.#all?.wait(now) ?? 0);
        if (wait > 0) next = Math.min(next, wait);
        else this.#start(lane, now);
      }
    }
    if (next < Number.POSITIVE_INFINITY) this.#timer = setTimeout(() => this.#pump(), Math.ceil(next));
  }

  #start(lane: Lane, now: number): void {
    lane.count(now);
    this.#all?.count(now);
    lane.busy = true;
    this.#running += 1;
    void this.#step(lane).finally(() => {
      this.#running -= 1;
      lane.busy = false;
      this.#pump();
    });
  }

  async #step(lane: Lane): Promise<void> {
    const job = lane.head;
    const step = job?.steps[job.done];
    if (job === undefined) return;
    try {
      if (step?.kind === 'call') await step.call(this.#api, job.to.chat);
      else if (step !== undefined)
        await take(this.#api, job.to, step, await this.#mark(job), callSignal(this.#stop.signal));
      job.done += 1;
      job.again = false;
      job.tries = 0;
      if (job.done >= job.steps.length) await this.#finish(lane, job);
    } catch (error) {
      if (this.#stop.signal.aborted) return;
      await this.#failed(lane, job, error).catch((worse) =>
        this.#log.error({ err: worse }, 'a failure could not be dealt with'),
      );
    }
  }

  async #mark(job: Job): Promise<string | null> {
    return job.again ? this.#post.say(job.to.locale, { say: 'sent-again' }) : null;
  }

  async #finish(lane: Lane, job: Job): Promise<void> {
    if (job.id !== null) await this.#post.delivered(job.id);
    this.#drop(lane, job);
  }

  /** No longer waits here; the outbox may hold it still. */
  #drop(lane: Lane, job: Job): void {
    lane.remove(job);
    this.#size -= 1;
    if (this.#size === 0) for (const go of this.#onSettled.splice(0)) go();
  }

  async #failed(lane: Lane, job: Job, error: unknown): Promise<void> {
    const failure = failureOf(error);
    const step = job.steps[job.done];
    if (failure.kind === 'moved') return this.#move(lane, failure.to);
    if (failure.kind === 'gone') return this.#gone(lane);
    if (failure.kind === 'wait') return lane.pause(failure.milliseconds);
    if (step?.kind === 'call' || failure.kind === 'refused') {
      if (!isNoise(error)) this.#log.error({ err: error, parcel: job.id }, 'a call was refused; passed over');
      job.done += 1;
      if (job.done >= job.steps.length || step?.kind === 'text') await this.#finish(lane, job);
      return;
    }
    job.tries += 1;
    job.again ||= failure.kind === 'unsure';
    this.#log.warn({ err: error, parcel: job.id, tries: job.tries }, 'an answer could not be sent');
    if (job.tries < mostTries) {
      lane.pause(Math.min(longestWait, this.#options.retryMilliseconds * 2 ** (job.tries - 1)));
      return;
    }
    this.#log.error({ parcel: job.id }, 'given up for now: it is sent at the next start');
    this.#drop(lane, job);
  }

  async #gone(lane: Lane): Promise<void> {
    this.#log.info('a chat is closed to the bot; it is left alone');
    await this.#post.left(chatKey(lane.chat));
    for (const job of lane.all()) await this.#finish(lane, job);
  }

  /** Everything that waits goes to the new id. A topic or a message that is answered is not the same there. */
  async #move(lane: Lane, to: number): Promise<void> {
    await this.#post.moved(chatKey(lane.chat), chatKey(to));
    const next = this.#laneOf(to);
    for (const job of lane.all()) {
      lane.remove(job);
      const { thread: _thread, replyTo: _replyTo, ...rest } = job.to;
      job.to = { ...rest, chat: to };
      next.add(job);
    }
  }
}
