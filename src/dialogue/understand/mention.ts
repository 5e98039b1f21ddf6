/** One place where a message says something about a fact. */
export interface Mention {
  readonly fact: string;
  readonly value: string | number;
  readonly from: number;
  readonly to: number;
  readonly unit?: string;
  /** Denied: "not stainless". */
  readonly denied?: true;
  /** Only perhaps: "maybe granite". */
  readonly hedged?: true;
  /** The word leaves the kind open; these are the kinds. */
  readonly family?: readonly string[];
  /** Weaker than another mention of the same fact: "air" against "rock" for the temperature. */
  readonly weak?: true;
}
