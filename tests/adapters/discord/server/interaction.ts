/** An interaction as the server keeps it: one acknowledgement within 3 seconds, a token for 15 minutes (documentation, Receiving and Responding). */
import type { SentModal } from './limits.ts';
import type { Posted } from './messages.ts';

export type State =
  | 'new'
  | 'thinking'
  | 'update-deferred'
  | 'answered'
  | 'updated'
  | 'modal'
  | 'choices'
  | 'expired';

export interface Interaction {
  readonly id: string;
  readonly token: string;
  readonly type: 2 | 3 | 4 | 5;
  readonly channel: string;
  readonly user: string;
  /** The message whose button was pressed. */
  readonly source: Posted | null;
  readonly created: number;
  state: State;
  private: boolean;
  acknowledgements: number;
  /** Milliseconds from the event to the first acknowledgement. */
  acknowledgedAfter: number | null;
  original: Posted | null;
  followUps: Posted[];
  modal: SentModal | null;
  choices: readonly { readonly name: string; readonly value: string }[] | null;
  timer: NodeJS.Timeout | null;
}

export const deadlineMs = 3000;
export const tokenMs = 15 * 60_000;
