import type { FactOrigin, Facts, FactValue } from './facts.ts';
import type { Draft } from './record.ts';

/** One thing a member told. The facts of a conversation are folded from these, so that one can be taken back. */
export interface Entry {
  readonly turn: number;
  readonly fact: string;
  readonly value: FactValue;
  readonly from: FactOrigin;
}

export type Units = 'metric' | 'imperial';

/** What a conversation of one member in one chat is. No stored position in a flow: that is worked out anew each turn. */
export interface Session {
  readonly turn: number;
  readonly entries: readonly Entry[];
  readonly topics: readonly { readonly turn: number; readonly topic: string }[];
  /** The fact that was asked for last. */
  readonly pending: string | null;
  /** Facts asked for since the topic was opened. */
  readonly asked: readonly string[];
  /** The language that the member asked for or last wrote in; null: that of the platform. */
  readonly language: string | null;
  /** Which units the member wants first; null: as the club has it. Both are always shown. */
  readonly units: Units | null;
  /** Two or more that the member weighed against each other, for "and the other one?". */
  readonly either: { readonly fact: string; readonly values: readonly string[] } | null;
  /** When the last message came, to tell a talk that goes on from one taken up after days. */
  readonly at: string | null;
  /** What the last advice was worked out from: `why` shows it again. */
  readonly answered: { readonly topic: string; readonly facts: Facts } | null;
  /** A record that is being written down, corrected or withdrawn, and is not yet confirmed. */
  readonly draft: Draft | null;
}

export const emptySession: Session = {
  turn: 0,
  entries: [],
  topics: [],
  pending: null,
  asked: [],
  language: null,
  units: null,
  either: null,
  at: null,
  answered: null,
  draft: null,
};

/** Facts that hold for a whole chat unless a message says otherwise: the club's rock, its coast, its habits. */
export type ClubFacts = Readonly<Record<string, FactValue>>;

export interface ClubSettings {
  readonly facts: ClubFacts;
  readonly language: string | null;
  readonly units: Units | null;
  /** Rooms (topics, channels) that are answered in; empty: all. */
  readonly rooms: readonly string[];
  /** Crags of which only the name is kept and shown. */
  readonly sensitive: readonly string[];
}

export const emptyClub: ClubSettings = { facts: {}, language: null, units: null, rooms: [], sensitive: [] };
