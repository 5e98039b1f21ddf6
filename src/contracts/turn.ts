import type { Advice } from './advice.ts';
import type { FactOrigin, FactValue } from './facts.ts';
import type { Phrase } from './phrase.ts';
import type { PictureWish } from './picture.ts';
import type { Recording } from './recording.ts';
import type { Units } from './session.ts';

export interface Question {
  readonly fact: string;
  /** Values to tap; empty where a number or a word is to be typed. "Don't know" is always added. */
  readonly values: readonly string[];
}

/** A file to go along, its description still without words. */
export interface FileToSend {
  readonly name: string;
  readonly mime: string;
  readonly base64: string;
  readonly alt: Phrase;
}

/** What one message led to, before any words. */
export type Outcome =
  | { readonly kind: 'advice'; readonly advice: Advice; readonly also: readonly Advice[] }
  | { readonly kind: 'why'; readonly advice: Advice; readonly origins: Readonly<Record<string, FactOrigin>> }
  | { readonly kind: 'question'; readonly question: Question; readonly whyAsked: boolean }
  | {
      readonly kind: 'notice';
      readonly lines: readonly Phrase[];
      readonly topics: readonly string[];
      /** The question that is still open, to be tapped. */
      readonly open: Question | null;
    }
  | {
      /** The club's own records: written down, shown, compared. */
      readonly kind: 'record';
      readonly lines: readonly Phrase[];
      readonly choices: readonly { readonly id: string; readonly say: Phrase }[];
      readonly open: Question | null;
      readonly advice: Advice | null;
      /** What belongs to every such answer; an advice brings its own. */
      readonly cautions: readonly string[];
      readonly files: readonly FileToSend[];
      readonly pictures: readonly PictureWish[];
      /** A load cell's file that was measured: said before the lines. */
      readonly recorded: { readonly name: string; readonly recording: Recording } | null;
    }
  | { readonly kind: 'silent' };

export interface Turn {
  readonly outcome: Outcome;
  /** The language to answer in. */
  readonly language: string;
  /** Which units stand first. */
  readonly units: Units;
  /** The talk was taken up again after a long time: what is still held is shown, with one tap to begin anew. */
  readonly resumed: boolean;
  /** Said before the answer: what a place on the map was read as. */
  readonly lead: readonly Phrase[];
  readonly topic: string;
  /** Facts told so far, and the assumed ones of an advice. */
  readonly facts: Readonly<Record<string, FactValue>>;
  /** What this message alone was read as: said back in one line, so that a wrong reading is seen. */
  readonly understood: readonly string[];
  readonly assumed: readonly string[];
  /** Facts still open, in the order in which they would be asked. */
  readonly missing: readonly string[];
  /** Assumed facts that a member may settle with one tap. */
  readonly settle: readonly Question[];
}
