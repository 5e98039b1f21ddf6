import type { Kind } from './advice.ts';
import type { FactValue } from './facts.ts';
import type { Choice, ReplyFile } from './message.ts';

/** Advice as the pipe protocol shows it: ids for machines, words already in the member's language. */
export interface AdviceInReply {
  readonly id: string;
  readonly verdict: string;
  readonly recommend: Readonly<Record<string, FactValue | readonly FactValue[]>>;
  readonly reject: readonly { readonly what: string; readonly why: string }[];
  readonly checks: readonly {
    readonly name: string;
    readonly value: number;
    readonly unit: string;
    readonly limit: number;
    readonly kind: Kind;
    readonly ok: boolean;
  }[];
  readonly cautions: readonly string[];
  readonly deferral: true;
  readonly sources: readonly string[];
  readonly rules: readonly string[];
  readonly ruleset: string;
}

export interface Reply {
  readonly inReplyTo: string;
  readonly chat: string;
  readonly user: string;
  readonly text: string;
  readonly choices: readonly Choice[];
  readonly files: readonly ReplyFile[];
  readonly topic: string;
  readonly facts: Readonly<Record<string, FactValue>>;
  readonly assumed: readonly string[];
  readonly missing: readonly string[];
  readonly advice: AdviceInReply | null;
}

export interface Silence {
  readonly inReplyTo: string;
  readonly silent: true;
}

/** A paragraph of a reply. `first`: verdict, cautions, deferral, which must stand in the first part when it is split. */
export interface Paragraph {
  readonly text: string;
  readonly first: boolean;
}

/** A reply with its paragraphs: one group for each advice, so that each keeps its cautions with its verdict. */
export interface Rendered {
  readonly reply: Reply;
  /** The language of the reply, so that what an adapter adds (a button, a mark) is in it too. */
  readonly language?: string;
  readonly groups: readonly (readonly Paragraph[])[];
}
