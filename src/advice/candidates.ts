import type { Rejected } from '../contracts/advice.ts';
import type { Phrase, Term } from '../contracts/phrase.ts';
import type { Outcome } from '../rules/index.ts';

export interface Judged {
  readonly candidate: string;
  readonly outcome: Outcome;
}

/** Sorts candidates (metals, adhesives, kinds of anchor) by what the decision says of each. */
export function sortCandidates(
  fact: string,
  judged: readonly Judged[],
): {
  readonly suitable: readonly Term[];
  readonly limited: readonly { readonly what: Term; readonly why: string }[];
  readonly reject: readonly Rejected[];
} {
  const of = (value: string): readonly Judged[] =>
    judged.filter(({ outcome }) => outcome.values.suitability === value);
  const reasons = (outcome: Outcome): [string, ...string[]] => {
    const [first, ...rest] = outcome.because.suitability ?? [];
    if (first === undefined) throw new Error(`decision ${outcome.decision} gave no reason`);
    return [first, ...rest];
  };
  return {
    suitable: of('suitable').map(({ candidate }) => ({ fact, value: candidate })),
    limited: of('limited').map(({ candidate, outcome }) => ({
      what: { fact, value: candidate },
      why: reasons(outcome)[0],
    })),
    reject: of('unsuitable').map(({ candidate, outcome }) => ({
      what: { fact, value: candidate },
      why: reasons(outcome),
    })),
  };
}

export const limitedLines = (
  limited: readonly { readonly what: Term; readonly why: string }[],
): readonly Phrase[] =>
  limited.map(({ what, why }) => ({ say: 'limited', with: { what, why: { rule: why } } }));

export const ids = (terms: readonly Term[]): readonly string[] => terms.map(({ value }) => value);
