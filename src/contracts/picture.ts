import type { Phrase } from './phrase.ts';
import type { Recording } from './recording.ts';

/** One pull. A stopped one held at least this. */
export interface PulledValue {
  readonly value: number;
  readonly stopped: boolean;
}

export interface GroupsShown {
  readonly groups: readonly {
    readonly name: Phrase;
    /** In kN. */
    readonly tests: readonly PulledValue[];
    readonly mean_kn?: number;
    readonly characteristic_kn?: number;
  }[];
}

/** All in MPa. */
export interface BondShown {
  readonly published: { readonly low: number; readonly high: number };
  readonly tests: readonly PulledValue[];
  readonly used: number;
}

/** A picture that would help, as plain data: whoever can draw it does, and nothing is lost where nobody can. */
export type PictureWish =
  | {
      /** Over time, and over displacement where that was recorded. */
      readonly kind: 'recording';
      readonly data: { readonly name: string; readonly recording: Recording };
    }
  | { readonly kind: 'groups'; readonly data: GroupsShown }
  | { readonly kind: 'bond'; readonly data: BondShown }
  | {
      readonly kind: 'plan';
      readonly data: { readonly steps: readonly { readonly kn: number; readonly seconds: number }[] };
    };
