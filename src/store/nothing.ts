import { noRecords } from '../contracts/record.ts';
import { emptyClub } from '../contracts/session.ts';
import type { Store } from './store.ts';

/** For one question without a tomorrow (`chough ask`): nothing is kept. */
export const keepNothing: Store = {
  records: noRecords,
  loadSession: () => Promise.resolve(null),
  loadClub: () => Promise.resolve(emptyClub),
  keep: () => Promise.resolve(true),
  seen: () => Promise.resolve(false),
  delivered: () => Promise.resolve(),
  undelivered: () => Promise.resolve([]),
  joined: () => Promise.resolve(false),
  left: () => Promise.resolve(),
  isPaused: () => Promise.resolve(false),
  moved: () => Promise.resolve(),
  post: () => Promise.resolve(true),
  forgetClaims: () => Promise.resolve(),
  close: () => Promise.resolve(),
};
