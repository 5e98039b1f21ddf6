/** What waits for one chat, one call at a time. */
import { isGroup } from './address.ts';
import type { Job } from './outgoing.ts';
import { type Pace, Window } from './pace.ts';

export class Lane {
  busy = false;
  readonly chat: number;
  readonly #windows: readonly Window[];
  readonly #jobs: [Job[], Job[]] = [[], []];
  #pausedUntil = 0;

  constructor(chat: number, pace: Pace | null) {
    this.chat = chat;
    const limits = pace === null ? [] : isGroup(chat) ? [pace.chat, pace.group] : [pace.chat];
    this.#windows = limits.map((limit) => new Window(limit));
  }

  get empty(): boolean {
    return this.#jobs.every((jobs) => jobs.length === 0);
  }

  /** An answer of several parts is finished before the next is begun. */
  get head(): Job | undefined {
    const [answers, others] = this.#jobs;
    const begun = others[0];
    return begun !== undefined && begun.done > 0 ? begun : (answers[0] ?? begun);
  }

  add(job: Job): void {
    this.#jobs[job.rank].push(job);
  }

  remove(job: Job): void {
    const jobs = this.#jobs[job.rank];
    const at = jobs.indexOf(job);
    if (at >= 0) jobs.splice(at, 1);
  }

  all(): Job[] {
    return this.#jobs.flat();
  }

  pause(milliseconds: number): void {
    this.#pausedUntil = performance.now() + milliseconds;
  }

  wait(now: number): number {
    return Math.max(this.#pausedUntil - now, 0, ...this.#windows.map((window) => window.wait(now)));
  }

  count(now: number): void {
    for (const window of this.#windows) window.count(now);
  }

  /** May be forgotten: nothing that was sent counts any more. */
  idle(now: number): boolean {
    return this.#windows.every((window) => window.idle(now));
  }
}
