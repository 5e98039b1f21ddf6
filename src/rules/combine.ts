import type { DecisionFile, RuleEntry } from './schema.ts';
import type { Situation } from './situation.ts';

export interface Outcome {
  readonly decision: string;
  /** The value of the decision's `each` fact that it was taken for. */
  readonly candidate?: string;
  readonly values: Readonly<Record<string, string | readonly string[]>>;
  /** For each outcome, the rules that give its value, in the order of the file. */
  readonly because: Readonly<Record<string, readonly string[]>>;
  readonly fired: readonly string[];
  readonly overridden: readonly string[];
  readonly sources: readonly string[];
}

type OutcomeSpec = DecisionFile['outcomes'][string];

/** No rule gives an answer. Never to be turned into a default: the caller must refuse. */
export class RuleGap extends Error {
  override readonly name = 'RuleGap';
  constructor(
    readonly decision: string,
    readonly outcome: string,
    readonly situation: Situation,
    readonly rules: readonly string[],
  ) {
    super(`decision ${decision}: no rule gives ${outcome} when ${told(situation)}`);
  }
}

export class RuleConflict extends Error {
  override readonly name = 'RuleConflict';
  constructor(
    readonly decision: string,
    readonly outcome: string,
    readonly situation: Situation,
    readonly rules: readonly string[],
  ) {
    super(`decision ${decision}: ${rules.join(' and ')} differ on ${outcome} when ${told(situation)}`);
  }
}

const told = (situation: Situation) =>
  Object.entries(situation)
    .map(([fact, value]) => `${fact}=${value}`)
    .join(', ');

const given = (rule: RuleEntry, outcome: string): readonly string[] => {
  const value = rule.gives[outcome];
  if (value === undefined) return [];
  return typeof value === 'string' ? [value] : value;
};

/** Ids that a rule which fired puts out of force, whether or not that rule is itself put out of force. */
export const overriddenIn = (fired: readonly RuleEntry[]): ReadonlySet<string> =>
  new Set(fired.flatMap((rule) => rule.overrides ?? []));

export type Resolved =
  | { readonly kind: 'value'; readonly value: string | readonly string[]; readonly because: RuleEntry[] }
  | { readonly kind: 'gap' }
  | { readonly kind: 'conflict'; readonly because: RuleEntry[] };

/** One outcome from the rules that count. */
export function resolve(name: string, spec: OutcomeSpec, counting: readonly RuleEntry[]): Resolved {
  const speaking = counting.filter((rule) => rule.gives[name] !== undefined);
  const found = spec.values.filter((value) => speaking.some((rule) => given(rule, name).includes(value)));
  const worst = found[0];
  if (spec.combine === 'all') {
    if (worst === undefined && spec.mayBeEmpty !== true) return { kind: 'gap' };
    return { kind: 'value', value: found, because: speaking };
  }
  if (worst === undefined) return { kind: 'gap' };
  if (spec.combine === 'exactly-one' && found.length > 1) return { kind: 'conflict', because: speaking };
  return {
    kind: 'value',
    value: worst,
    because: speaking.filter((rule) => given(rule, name).includes(worst)),
  };
}

/** What both evaluators share: from the rules that fired, in the order of the file, to the outcome. */
export function combine(
  decision: DecisionFile,
  fired: readonly RuleEntry[],
  situation: Situation,
  candidate: string | undefined,
): Outcome {
  const out = overriddenIn(fired);
  const counting = fired.filter((rule) => !out.has(rule.id));
  const values: Record<string, string | readonly string[]> = {};
  const because: Record<string, readonly string[]> = {};
  const sources = new Set<string>();
  for (const [name, spec] of Object.entries(decision.outcomes)) {
    const resolved = resolve(name, spec, counting);
    if (resolved.kind === 'gap') throw new RuleGap(decision.decision, name, situation, fired.map(idOf));
    if (resolved.kind === 'conflict')
      throw new RuleConflict(decision.decision, name, situation, resolved.because.map(idOf));
    values[name] = resolved.value;
    because[name] = resolved.because.map(idOf);
    for (const rule of resolved.because) for (const source of rule.sources) sources.add(source);
  }
  return {
    decision: decision.decision,
    ...(candidate === undefined ? {} : { candidate }),
    values,
    because,
    fired: fired.map(idOf),
    overridden: fired.map(idOf).filter((id) => out.has(id)),
    sources: [...sources],
  };
}

const idOf = (rule: RuleEntry) => rule.id;
