/** What the handlers of events share. */
import type { Logger } from 'pino';
import type { Post } from '../post.ts';
import type { FetchLimits } from './attachments.ts';
import type { Calls } from './calls.ts';
import type { Counters } from './counters.ts';
import type { Delivery } from './deliver.ts';
import type { LastLocales } from './recent.ts';

export interface Context {
  readonly post: Post;
  readonly calls: Calls;
  readonly delivery: Delivery;
  readonly counters: Counters;
  readonly log: Logger;
  /** Commands for those who look after a server. */
  readonly adminCommands: ReadonlySet<string>;
  readonly apiRoot: string | undefined;
  readonly fetchLimits: FetchLimits | undefined;
  readonly deferAfterMs: number;
  readonly locales: LastLocales;
  /** A server has commands of its own beside the global ones: members see each twice. */
  strayCommands(guild: string): void;
  /** Being stopped: what still comes in is answered with one line. */
  stopping: boolean;
}

export interface Place {
  readonly chat: string;
  readonly room?: string;
  readonly direct: boolean;
}
