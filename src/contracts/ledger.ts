/** What has come in from a platform and what is still to go out: each update counts once, each answer is kept until delivered. */
import type { Rendered } from './reply.ts';

/** Where an update came from and where its answer goes. */
export interface Posting {
  /** The platform's own id of the update ("telegram:<bot>:<update>"): an update that was taken in once is not taken in again. */
  readonly claim: string;
  readonly platform: string;
  /** The adapter's own note of where to send, opaque to all others. */
  readonly address: string;
}

export interface Parcel {
  readonly id: string;
  readonly address: string;
  readonly rendered: Rendered;
  /** It may have been delivered before the program was stopped: to be shown as a repeat. */
  readonly again: boolean;
}

export interface Ledger {
  seen(claim: string): Promise<boolean>;
  delivered(id: string): Promise<void>;
  undelivered(platform: string): Promise<readonly Parcel[]>;
  /** The bot is in this chat. True the first time ever; a chat that had been left goes on. */
  joined(chat: string, platform: string, at: string): Promise<boolean>;
  /** Blocked or removed: nothing is sent there until it is joined again. */
  left(chat: string): Promise<void>;
  isPaused(chat: string): Promise<boolean>;
  /** A group got another id: everything moves. */
  moved(from: string, to: string): Promise<void>;
  /** Keeps a greeting or another message that no update asked for. False: it was kept before. */
  post(posting: Posting, rendered: Rendered, at: string): Promise<boolean>;
  /** Claims older than this are forgotten: no platform sends an update again after a day. */
  forgetClaims(before: string): Promise<void>;
}
