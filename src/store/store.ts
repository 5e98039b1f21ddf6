import type { Ledger, Posting } from '../contracts/ledger.ts';
import type { Rendered } from '../contracts/reply.ts';
import type { ClubSettings, Session } from '../contracts/session.ts';

/** Whose talk: of one member in one room of one chat. */
export interface Talk {
  readonly chat: string;
  readonly room: string;
  readonly user: string;
}

/** All that one message changed; kept wholly or not at all. */
export interface Kept {
  readonly talk: Talk;
  readonly at: string;
  readonly session?: Session;
  readonly club?: ClubSettings;
  /** For a platform: the update that was taken in, and what is to be sent (null: nothing). */
  readonly posting?: Posting;
  readonly rendered?: Rendered | null;
}

/** What the program keeps. One interface for every database. */
export interface Store extends Ledger {
  loadSession(talk: Talk): Promise<Session | null>;
  loadClub(chat: string): Promise<ClubSettings>;
  /** False: the update had been taken in before, and nothing was changed. */
  keep(kept: Kept): Promise<boolean>;
  close(): Promise<void>;
}
