import type { Rejected } from '../contracts/advice.ts';
import type { Phrase, Term } from '../contracts/phrase.ts';
import type { Outcome } from '../rules/index.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

export interface Judged {
  readonly candidate: string;
  readonly outcome: Outcome;
}

function reasons(outcome: Outcome): [string, ...string[]] {
  const [first, ...rest] = outcome.because.suitability ?? [];
  if (first === undefined) throw new Error(`decision ${outcome.decision} gave no reason`);
  return [first, ...rest];
}

const stances = { suitable: 'go', limited: 'limit', unsuitable: 'stop' } as const;

/**
 * Who names a metal, an adhesive or a kind of anchor wants to hear of that one first ("is 316 ok here?"); what
 * is best among all then stands below.
 */
export function answerAsked(sheet: Worksheet, fact: string, judged: readonly Judged[], draft: Draft): Draft {
  const asked = judged.find(({ candidate }) => candidate === sheet.told(fact));
  if (asked === undefined) return draft;
  sheet.choice(fact);
  const suitability = asked.outcome.values.suitability as keyof typeof stances;
  return {
    ...draft,
    stance: stances[suitability],
    verdict: {
      say: `asked-${suitability}`,
      with: { what: { fact, value: asked.candidate }, why: { rule: reasons(asked.outcome)[0] } },
    },
    points: [draft.verdict, ...draft.points],
    recommend: { ...draft.recommend, asked: asked.candidate, suitability },
  };
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
