/** A value of a fact, to be named in the reader's language: `{fact: 'metal', value: 'titanium-grade-2'}`. */
export interface Term {
  readonly fact: string;
  readonly value: string;
}

/** A number with its unit, to be shown metric and imperial side by side by the renderer. */
export interface Measure {
  readonly value: number;
  readonly unit: string;
  /** As a member said it or a standard prints it: not rounded. */
  readonly exact?: boolean;
  /** Without the imperial value: for a table whose title gives the conversion. */
  readonly metric?: boolean;
}

/** The plain words of a rule, to be quoted as a reason. */
export interface Reason {
  readonly rule: string;
}

/** Anything else that has a name in the rule files: a fact, a row of a table, a relation, a quantity of a formula. */
export interface Named {
  readonly of: 'fact' | 'relation' | 'quantity' | 'row';
  /** For a row: "steps/blow". */
  readonly id: string;
}

/** Several values that hold together, parted by points: "granite · inland". A plain list of terms is joined by "or". */
export interface Together {
  readonly together: readonly Term[];
}

/** Several numbers with their unit once: "24.1, 27.3, 26 kN". */
export interface Numbers {
  readonly numbers: readonly number[];
  readonly in: string;
}

export type PhraseArg =
  | string
  | number
  | Term
  | Measure
  | Reason
  | Named
  | Together
  | Numbers
  | Phrase
  | readonly Term[];

/**
 * Something to say, without the words: `say` is the id of a text in rules/words/<language>.ftl.
 * Only the renderer turns it into language, so that engineering and dialogue stay free of prose.
 */
export interface Phrase {
  readonly say: string;
  readonly with?: Readonly<Record<string, PhraseArg>>;
}

export type NonEmpty<T> = readonly [T, ...T[]];
