import type { FactOrigin, FactValue } from './facts.ts';
import type { NonEmpty, Phrase, Term } from './phrase.ts';
import type { PictureWish } from './picture.ts';

/** Which of the three kinds of load a number is. They are never mixed; `plain` is for what is not a strength. */
export type Kind = 'mean' | 'characteristic' | 'design' | 'plain';

/** One requirement: what there is against what is needed. `ok` is derived from the two, never passed in. */
export interface Check {
  readonly id: string;
  readonly name: Phrase;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  readonly kind: Kind;
  /** The limit is a most and not a least. */
  readonly atMost?: boolean;
  readonly ok: boolean;
}

/** Where the number in a formula came from. `method`: worked out on the way, or a figure of the method itself. */
export type InputOrigin =
  | { readonly kind: 'fact'; readonly fact: string; readonly origin: FactOrigin }
  | { readonly kind: 'row'; readonly row: string }
  | { readonly kind: 'formula'; readonly id: string }
  | { readonly kind: 'method' };

export interface ComputedInput {
  readonly symbol: string;
  readonly value: number;
  readonly unit: string;
  /** The range in which the formula is valid. */
  readonly least: number;
  readonly most: number;
  readonly from: InputOrigin;
}

/** One computed number with its way: what `why` shows. */
export interface Computed {
  readonly id: string;
  /** The formula in symbols, "N = τ·π·d·h". */
  readonly symbols: string;
  readonly inputs: readonly ComputedInput[];
  readonly value: number;
  readonly unit: string;
  readonly kind: Kind;
  readonly source: string;
  readonly clause: string;
}

/** How bold the verdict is. A renderer may mark it, but the verdict's own words carry it. */
export type Stance = 'go' | 'limit' | 'stop' | 'tell';

export interface Rejected {
  readonly what: Term;
  /** Ids of the rules that reject it, the reason first. */
  readonly why: NonEmpty<string>;
}

export interface AdviceParts {
  readonly topic: string;
  readonly stance: Stance;
  readonly verdict: Phrase;
  /** What to do, in order, one line each. */
  readonly points: readonly Phrase[];
  /** What would help to see it; the words say it all without. */
  readonly pictures?: readonly PictureWish[];
  readonly recommend: Readonly<Record<string, FactValue | readonly FactValue[]>>;
  readonly reject: readonly Rejected[];
  readonly checks: readonly Check[];
  /** Facts without which there is no real answer: what a member has to tell first. */
  readonly lacking: readonly string[];
  readonly computed: readonly Computed[];
  /** Ids of facts that nobody told and that were taken as the worse case. */
  readonly assumed: readonly string[];
  /** What the advice was worked out from, assumed values included. */
  readonly facts: Readonly<Record<string, FactValue>>;
  readonly cautions: NonEmpty<string>;
  readonly sources: NonEmpty<string>;
  readonly rules: readonly string[];
  readonly ruleset: string;
}

declare const sealed: unique symbol;

/**
 * Advice that may be shown. Only `sealAdvice` (src/advice/seal.ts) makes one, and it refuses parts
 * without cautions or sources; the deferral is part of the type, so it can be neither left out nor false.
 */
export interface Advice extends AdviceParts {
  readonly id: string;
  readonly deferral: true;
  readonly [sealed]: true;
}
