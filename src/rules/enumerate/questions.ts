import { overriddenIn, resolve } from '../combine.ts';
import type { Decision } from '../ruleset.ts';
import type { RuleEntry } from '../schema.ts';

/** No single value: a gap, or a conflict. */
export type Answer =
  | { readonly kind: 'rank'; readonly rank: number }
  | { readonly kind: 'gap' }
  | { readonly kind: 'conflict'; readonly rules: readonly string[] };

/**
 * The smallest part of a decision that can be looked at alone: one outcome, or one thing of those that an
 * outcome gathers. Only its own rules and their exceptions matter, so only their facts need be combined.
 */
export interface Question {
  readonly outcome: string;
  readonly item?: string;
  /** In the order of the file. */
  readonly rules: readonly RuleEntry[];
  /** Rank 0 is the worst value; a thing that is gathered counts as worse than one that is not. */
  readonly answer: (fired: readonly RuleEntry[]) => Answer;
  /** Values by rank; of a gathered thing only its presence counts. */
  readonly values: readonly string[];
  /** A rank in words. */
  readonly shown: (rank: number) => string;
}

function withExceptions(decision: Decision, speaks: (rule: RuleEntry) => boolean): readonly RuleEntry[] {
  const speaking = new Set(decision.rules.filter(speaks).map(({ id }) => id));
  return decision.rules.filter(
    ({ id, overrides }) => speaking.has(id) || overrides?.some((other) => speaking.has(other)),
  );
}

const gives = (rule: RuleEntry, outcome: string, item: string) => {
  const value = rule.gives[outcome];
  return value === item || (Array.isArray(value) && value.includes(item));
};

const counting = (fired: readonly RuleEntry[]) => {
  const out = overriddenIn(fired);
  return fired.filter(({ id }) => !out.has(id));
};

function whole(decision: Decision, outcome: string, spec: Decision['outcomes'][string]): Question {
  return {
    outcome,
    rules: withExceptions(decision, (rule) => rule.gives[outcome] !== undefined),
    answer: (fired) => {
      const resolved = resolve(outcome, spec, counting(fired));
      if (resolved.kind === 'gap') return { kind: 'gap' };
      if (resolved.kind === 'conflict')
        return { kind: 'conflict', rules: resolved.because.map(({ id }) => id) };
      const { value } = resolved;
      return { kind: 'rank', rank: typeof value === 'string' ? spec.values.indexOf(value) : 0 };
    },
    values: spec.values,
    shown: (rank) => spec.values[rank] ?? '',
  };
}

const one = (decision: Decision, outcome: string, item: string): Question => ({
  outcome,
  item,
  rules: withExceptions(decision, (rule) => gives(rule, outcome, item)),
  answer: (fired) => ({
    kind: 'rank',
    rank: counting(fired).some((rule) => gives(rule, outcome, item)) ? 0 : 1,
  }),
  values: [item],
  shown: (rank) => (rank === 0 ? 'there' : 'not there'),
});

/** Questions whose ranks can be compared. */
export const questionsOf = (decision: Decision): readonly Question[] =>
  Object.entries(decision.outcomes).flatMap(([outcome, spec]) =>
    spec.combine === 'all'
      ? spec.values.map((item) => one(decision, outcome, item))
      : [whole(decision, outcome, spec)],
  );

/** Whether anything is gathered at all. */
export const gatheredAtAll = (decision: Decision, outcome: string): Question | null => {
  const spec = decision.outcomes[outcome];
  if (spec === undefined || spec.combine !== 'all' || spec.mayBeEmpty === true) return null;
  return whole(decision, outcome, spec);
};
