import type { Decision } from '../ruleset.ts';
import type { RuleEntry } from '../schema.ts';

/** An answer is a rank, 0 being the worst; or one of these two, when there is no single value. */
export const gap = -1;
export const conflict = -2;

/**
 * The smallest part of a decision that can be looked at alone: one outcome, or one thing of those that an
 * outcome gathers. Only its own rules and their exceptions matter, so only their facts need be combined.
 */
export interface Question {
  readonly outcome: string;
  readonly item?: string;
  /** In the order of the file. */
  readonly rules: readonly RuleEntry[];
  /** Values by rank. A thing that is gathered counts as worse (0) than one that is not (1). */
  readonly values: readonly string[];
  /** The answer when these rules fire, given by their places in `rules`; one of them may be left out. */
  readonly answer: (fired: readonly number[], leftOut?: number) => number;
  /** A rank in words. */
  readonly shown: (rank: number) => string;
}

const listed = (value: string | readonly string[] | undefined): readonly string[] =>
  value === undefined ? [] : typeof value === 'string' ? [value] : value;

/** `rankOf` tells what a rule speaks for, or null. `nothing` is the answer when no rule speaks. */
function makeAnswer(
  rules: readonly RuleEntry[],
  rankOf: (rule: RuleEntry) => number | null,
  nothing: number,
  mustAgree: boolean,
): Question['answer'] {
  const ranks = rules.map(rankOf);
  const places = new Map(rules.map((rule, place) => [rule.id, place]));
  const out = rules.map((rule) => (rule.overrides ?? []).flatMap((id) => places.get(id) ?? []));
  const exceptions = out.flatMap((_, place) => (out[place]?.length === 0 ? [] : [place]));
  return (fired, leftOut) => {
    let worst: number | null = null;
    for (const place of fired) {
      const rank = ranks[place];
      if (rank === undefined || rank === null || place === leftOut) continue;
      if (worst === rank || (worst !== null && worst < rank && !mustAgree)) continue;
      const isOut = exceptions.some(
        (other) => other !== leftOut && out[other]?.includes(place) && fired.includes(other),
      );
      if (isOut) continue;
      if (mustAgree && worst !== null) return conflict;
      worst = rank;
    }
    return worst ?? nothing;
  };
}

function question(
  decision: Decision,
  about: { outcome: string; item?: string },
  rankOf: (rule: RuleEntry) => number | null,
  nothing: number,
): Question {
  const spec = decision.outcomes[about.outcome];
  const speaking = new Set(decision.rules.filter((rule) => rankOf(rule) !== null).map(({ id }) => id));
  const rules = decision.rules.filter(
    ({ id, overrides }) => speaking.has(id) || overrides?.some((other) => speaking.has(other)),
  );
  const values = about.item === undefined ? (spec?.values ?? []) : [about.item];
  return {
    ...about,
    rules,
    values,
    answer: makeAnswer(rules, rankOf, nothing, spec?.combine === 'exactly-one'),
    shown: (rank) => (about.item === undefined ? (values[rank] ?? '') : rank === 0 ? 'there' : 'not there'),
  };
}

/** Questions whose ranks can be compared. */
export const questionsOf = (decision: Decision): readonly Question[] =>
  Object.entries(decision.outcomes).flatMap(([outcome, spec]) => {
    const given = (rule: RuleEntry) => listed(rule.gives[outcome]);
    if (spec.combine === 'all')
      return spec.values.map((item) =>
        question(decision, { outcome, item }, (rule) => (given(rule).includes(item) ? 0 : null), 1),
      );
    const rankOf = (rule: RuleEntry) => {
      const [value] = given(rule);
      return value === undefined ? null : spec.values.indexOf(value);
    };
    return [question(decision, { outcome }, rankOf, gap)];
  });

/** Whether anything is gathered at all, where nothing would be no answer. */
export function gatheredAtAll(decision: Decision, outcome: string): Question | null {
  const spec = decision.outcomes[outcome];
  if (spec === undefined || spec.combine !== 'all' || spec.mayBeEmpty === true) return null;
  return question(decision, { outcome }, (rule) => (rule.gives[outcome] === undefined ? null : 0), gap);
}
