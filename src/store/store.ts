import type { ClubFacts, Session } from '../contracts/session.ts';

/** What the program keeps. One interface for every database. */
export interface Store {
  loadSession(chat: string, user: string): Promise<Session | null>;
  saveSession(chat: string, user: string, session: Session, at: string): Promise<void>;
  loadClub(chat: string): Promise<ClubFacts>;
  saveClub(chat: string, facts: ClubFacts): Promise<void>;
  close(): Promise<void>;
}

/** For one question without a tomorrow (`chough ask`): nothing is kept. */
export const keepNothing: Store = {
  loadSession: () => Promise.resolve(null),
  saveSession: () => Promise.resolve(),
  loadClub: () => Promise.resolve({}),
  saveClub: () => Promise.resolve(),
  close: () => Promise.resolve(),
};
