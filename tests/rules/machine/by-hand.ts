import { decideNow, isOrdered, knownValues, RuleGap, type RuleSet } from '../../../src/rules/index.ts';
import { everySituation } from './same.ts';

type Values = Readonly<Record<string, string>>;

/** The same search as src/rules/enumerate, slow and without any of its ideas, to hold against it. */
export interface ByHand {
  readonly combinations: number;
  readonly gaps: number;
  /** "outcome fact harsher milder" of every pair of neighbours where the harsher one is better off. */
  readonly broken: ReadonlySet<string>;
  /** "outcome fact" of every situation where unknown is better than the worst known value. */
  readonly bold: ReadonlySet<string>;
  readonly neverFires: readonly string[];
}

const key = (values: Values) => JSON.stringify(values);

/** A derived fact has the value of its row, an implied one is not unknown, and no row forbids a value. */
function possible(rules: RuleSet, values: Values): boolean {
  for (const [id, value] of Object.entries(values)) {
    const fact = rules.facts.get(id);
    if (fact?.kind === 'derived') {
      const base = values[fact.from];
      const from = rules.facts.get(fact.from);
      if (base === undefined || from?.kind !== 'choice' || from.table === undefined) continue;
      const cell = base === 'unknown' ? 'unknown' : rules.row(from.table, base).is[fact.column];
      if (cell !== value) return false;
    }
    if (fact?.kind !== 'choice' || fact.table === undefined || value === 'unknown') continue;
    const row = rules.row(fact.table, value);
    for (const [other, allowed] of Object.entries(row.allows ?? {})) {
      const its = values[other];
      if (its !== undefined && its !== 'unknown' && !allowed.includes(its)) return false;
    }
    for (const other of Object.keys(row.implies ?? {})) if (values[other] === 'unknown') return false;
  }
  return true;
}

/** With another value for one fact; derived facts follow. */
function moved(rules: RuleSet, values: Values, fact: string, value: string): Values {
  const after: Record<string, string> = { ...values, [fact]: value };
  for (const id of Object.keys(values)) {
    const derived = rules.facts.get(id);
    const from = rules.facts.get(fact);
    if (derived?.kind !== 'derived' || derived.from !== fact) continue;
    if (from?.kind !== 'choice' || from.table === undefined) continue;
    after[id] =
      value === 'unknown' ? value : String(rules.row(from.table, value).is[derived.column] ?? 'unknown');
  }
  return after;
}

export function byHand(rules: RuleSet, name: string): ByHand {
  const decision = rules.decision(name);
  const answers = new Map<string, { values: Values; ranks: Map<string, number> | null }>();
  const fired = new Set<string>();
  let gaps = 0;
  for (const situation of everySituation(rules, name)) {
    const values = { ...situation };
    if (!possible(rules, values)) continue;
    try {
      const outcome = decideNow(rules, name, situation);
      for (const id of outcome.fired) fired.add(id);
      const ranks = new Map<string, number>();
      for (const [outcomeName, spec] of Object.entries(decision.outcomes)) {
        const got = outcome.values[outcomeName] ?? [];
        if (typeof got === 'string') ranks.set(outcomeName, spec.values.indexOf(got));
        else for (const item of spec.values) ranks.set(`${outcomeName} ${item}`, got.includes(item) ? 0 : 1);
      }
      answers.set(key(values), { values, ranks });
    } catch (error) {
      if (!(error instanceof RuleGap)) throw error;
      gaps += 1;
      answers.set(key(values), { values, ranks: null });
    }
  }
  const broken = new Set<string>();
  const bold = new Set<string>();
  for (const { values, ranks } of answers.values()) {
    if (ranks === null) continue;
    for (const id of decision.inputs) {
      const fact = rules.facts.get(id);
      if (fact === undefined || decision.notOrdered?.[id] !== undefined) continue;
      if (fact.kind === 'derived' && decision.inputs.includes(fact.from)) continue;
      const known = knownValues(rules, fact);
      const here = values[id] ?? '';
      const others = known.flatMap((value) => {
        const found = answers.get(key(moved(rules, values, id, value)))?.ranks;
        return found ? [{ value, ranks: found }] : [];
      });
      for (const [outcome, rank] of ranks) {
        if (here === 'unknown') {
          const least = Math.min(...others.map((other) => other.ranks.get(outcome) ?? rank), rank);
          if (least < rank) bold.add(`${outcome} ${id}`);
          continue;
        }
        for (const other of others) {
          const isMilder = isOrdered(fact)
            ? known.indexOf(other.value) > known.indexOf(here)
            : fact.kind === 'choice' &&
              fact.table !== undefined &&
              rules.row(fact.table, here).worseThan?.includes(other.value);
          if (isMilder && rank > (other.ranks.get(outcome) ?? rank))
            broken.add(`${outcome} ${id} ${here} ${other.value}`);
        }
      }
    }
  }
  return {
    combinations: answers.size,
    gaps,
    broken,
    bold,
    neverFires: decision.rules.map(({ id }) => id).filter((id) => !fired.has(id)),
  };
}
