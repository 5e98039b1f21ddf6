import type { Ledger, Posting } from '../contracts/ledger.ts';
import type { RecordChange, Records } from '../contracts/record.ts';
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
  /** Records added, corrected, withdrawn by this member. */
  readonly changes?: readonly RecordChange[];
  /** For a platform: the update that was taken in, and what is to be sent (null: nothing). */
  readonly posting?: Posting;
  readonly rendered?: Rendered | null;
}

/** What the program keeps. One interface for every database. */
export interface Store extends Ledger {
  readonly records: Records;
  loadSession(talk: Talk): Promise<Session | null>;
  loadClub(chat: string): Promise<ClubSettings>;
  /**
   * False: the update had been taken in before, and nothing was changed. A `RecordConflict` where a record was
   * changed by somebody else in the meantime; then nothing is changed either.
   */
  keep(kept: Kept): Promise<boolean>;
  close(): Promise<void>;
}

/** Somebody else was faster: the record is no longer what the member saw. */
export class RecordConflict extends Error {
  override readonly name = 'RecordConflict';
}
