/** What an operator wants to see going up, or better not. */
export interface Counters {
  interactions: number;
  messages: number;
  parcels: number;
  deferred: number;
  /** 10062: the platform had given up on the interaction. */
  unknownInteractions: number;
  /** 40060: acknowledged before, by a retry or by a second process. */
  alreadyAcknowledged: number;
  rateLimited: number;
  resumes: number;
  reconnects: number;
  closedTargets: number;
  failures: number;
  /** Identifies left today; -1 before it was asked. */
  identifiesLeft: number;
}

export const noCounts = (): Counters => ({
  interactions: 0,
  messages: 0,
  parcels: 0,
  deferred: 0,
  unknownInteractions: 0,
  alreadyAcknowledged: 0,
  rateLimited: 0,
  resumes: 0,
  reconnects: 0,
  closedTargets: 0,
  failures: 0,
  identifiesLeft: -1,
});
