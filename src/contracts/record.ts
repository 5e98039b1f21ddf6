import type { FactValue } from './facts.ts';

/** What a club writes down: a pull test, an anchor in its register, a look at an anchor. */
export type RecordKind = 'test' | 'anchor' | 'inspection';

/** Told facts by id, and what is only words (crag, route, batch, note). Never certifying anything. */
export interface RecordBody {
  readonly facts: Readonly<Record<string, FactValue>>;
  readonly texts: Readonly<Record<string, string>>;
}

export interface ClubRecord {
  /** Short, to be typed: "t7k3f". Unique in its chat. */
  readonly id: string;
  readonly chat: string;
  readonly kind: RecordKind;
  /** Null after the author asked to be forgotten. */
  readonly author: string | null;
  readonly at: string;
  /** 1 for the first; each correction adds one, and all are kept. */
  readonly version: number;
  readonly withdrawn: boolean;
  readonly body: RecordBody;
}

/** What was changed, by whom and when: nothing is ever changed silently. */
export interface RecordStep {
  readonly id: string;
  readonly version: number;
  readonly did: 'added' | 'corrected' | 'withdrawn';
  readonly by: string | null;
  readonly at: string;
  readonly body: RecordBody;
}

export type RecordChange =
  | { readonly do: 'add'; readonly id: string; readonly kind: RecordKind; readonly body: RecordBody }
  /** `version` is the one that the member saw: if somebody was faster, nothing is changed. */
  | { readonly do: 'correct'; readonly id: string; readonly version: number; readonly body: RecordBody }
  | { readonly do: 'withdraw'; readonly id: string; readonly version: number };

/** What a member is about to keep, change or withdraw: nothing counts before it has been shown and confirmed. */
export type Draft =
  | { readonly do: 'add'; readonly kind: RecordKind; readonly body: RecordBody }
  | {
      readonly do: 'correct';
      readonly kind: RecordKind;
      readonly id: string;
      /** The version that the member saw. */
      readonly version: number;
      readonly before: RecordBody;
      readonly body: RecordBody;
    }
  | {
      readonly do: 'withdraw';
      readonly kind: RecordKind;
      readonly id: string;
      readonly version: number;
      readonly body: RecordBody;
    }
  | { readonly do: 'import'; readonly kind: RecordKind; readonly bodies: readonly RecordBody[] };

/** The records of one chat, to be read. */
export interface Records {
  /** Those that stand, the oldest first. */
  list(chat: string, kind: RecordKind): Promise<readonly ClubRecord[]>;
  /** Also a withdrawn one. */
  find(chat: string, id: string): Promise<ClubRecord | null>;
  history(chat: string, id: string): Promise<readonly RecordStep[]>;
}

export const noRecords: Records = {
  list: () => Promise.resolve([]),
  find: () => Promise.resolve(null),
  history: () => Promise.resolve([]),
};
