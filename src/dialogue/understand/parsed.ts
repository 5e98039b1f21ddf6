import type { FactValue } from '../../contracts/facts.ts';

/** What a message says, in the ids and units of rules/facts.json. */
export interface Found {
  readonly fact: string;
  /** Several numbers where the fact may have many, in the order said. */
  readonly value: FactValue;
  /** The words it came from. */
  readonly text: string;
  /** The unit that was said; the value is already in the fact's own unit. */
  readonly unit?: string;
}

export type Act =
  | 'ask'
  | 'why'
  | 'why-all'
  | 'back'
  | 'restart'
  | 'forget'
  | 'help'
  | 'dont-know'
  | 'yes'
  | 'no'
  | 'thanks'
  | 'greeting'
  | 'correction';

/**
 * `ambiguous` with a `value`: what was said names a family ("glue-in") or was hedged ("maybe granite"); the
 * value is the careful choice. It is never also in `found`.
 */
export interface Problem {
  readonly kind: 'impossible' | 'unit-mismatch' | 'ambiguous' | 'conflict' | 'not-a-number';
  readonly fact?: string;
  readonly value?: string | number;
  readonly text: string;
  readonly detail?: Readonly<Record<string, string | number>>;
}

export interface Parsed {
  readonly act: Act;
  /** null: nothing names a topic, the current one goes on. 'unknown': nothing at all was understood. */
  readonly topic: string | null;
  readonly topicSure: boolean;
  /** Every topic asked about, in the order asked; the first is `topic`. */
  readonly topics: readonly string[];
  readonly found: readonly Found[];
  /** "not stainless", "no sea nearby". */
  readonly ruledOut: readonly Found[];
  /** "don't know the rock". */
  readonly unknownFacts: readonly string[];
  /** One list for each either-or: "316 or titanium?". */
  readonly alternatives: readonly (readonly Found[])[];
  readonly problems: readonly Problem[];
  readonly unknownWords: readonly string[];
}

export interface UnderstandContext {
  /** The fact that was asked for last. */
  readonly pending?: string;
  readonly topic?: string;
  readonly language?: string;
  /** The member's clock with its offset, "2027-05-02T09:00:00+02:00": for "since yesterday evening". */
  readonly now?: string;
}
