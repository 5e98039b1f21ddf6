import { unknown } from '../domains.ts';
import type { Decision, RuleSet } from '../ruleset.ts';
import { harsherPairs } from './order.ts';
import type { Question } from './questions.ts';
import { at, type Space } from './space.ts';

/** A place without a rank: impossible, or without a single value. */
export const noRank = -1;

/** Two situations that differ in one fact, where the one that should be no better is. */
export interface Breach {
  readonly outcome: string;
  /** For an outcome that is gathered: the thing that is lost. */
  readonly item?: string;
  readonly fact: string;
  /** The harsher value, or 'unknown', and what it gives. */
  readonly value: string;
  readonly gives: string;
  /** The milder value, or the worst known one, and what it gives. */
  readonly than: string;
  readonly insteadOf: string;
  /** All facts that matter, at the harsher value. */
  readonly situation: Readonly<Record<string, string>>;
  /** How many pairs of situations do this. */
  readonly count: number;
}

export interface Breaches {
  readonly unknownIsBold: readonly Breach[];
  readonly notMonotone: readonly Breach[];
  /** Facts whose value makes a difference somewhere. */
  readonly influence: ReadonlySet<string>;
}

export function breachesOf(
  rules: RuleSet,
  decision: Decision,
  question: Question,
  space: Space,
  ranks: Int16Array,
): Breaches {
  const bold: Breach[] = [];
  const broken: Breach[] = [];
  const influence = new Set<string>();
  let stride = space.size;
  for (const axis of space.axes) {
    const count = axis.values.length;
    stride /= count;
    const rankAt = (start: number, value: number) => ranks[start + value * stride] ?? noRank;
    /** First place on each line along the axis. */
    const lines = function* () {
      for (let block = 0; block < space.size; block += stride * count)
        for (let start = block; start < block + stride; start++) yield start;
    };
    if (varies(lines(), count, rankAt)) influence.add(axis.fact);
    if (decision.notOrdered?.[axis.fact] !== undefined) continue;

    const tally = new Map<string, { start: number; one: number; other: number; count: number }>();
    const note = (start: number, one: number, other: number) => {
      const key = `${one},${other}`;
      const known = tally.get(key);
      if (known === undefined) tally.set(key, { start, one, other, count: 1 });
      else known.count += 1;
    };
    const report = (into: Breach[]) => {
      for (const found of tally.values())
        into.push({
          outcome: question.outcome,
          ...(question.item === undefined ? {} : { item: question.item }),
          fact: axis.fact,
          value: axis.values[found.one] ?? '',
          gives: question.shown(rankAt(found.start, found.one)),
          than: axis.values[found.other] ?? '',
          insteadOf: question.shown(rankAt(found.start, found.other)),
          situation: at(space, found.start + found.one * stride),
          count: found.count,
        });
      tally.clear();
    };

    const pairs = harsherPairs(rules, axis.fact).map((pair) =>
      pair.map((value) => axis.values.indexOf(value)),
    );
    for (const start of lines())
      for (const [harsher = 0, milder = 0] of pairs) {
        const rank = rankAt(start, milder);
        if (rank !== noRank && rankAt(start, harsher) > rank) note(start, harsher, milder);
      }
    report(broken);

    const open = axis.values.indexOf(unknown);
    if (open < 0) continue;
    for (const start of lines()) {
      const rank = rankAt(start, open);
      let worst = open;
      for (let value = 0; value < count; value++) {
        const other = rankAt(start, value);
        if (other !== noRank && other < rankAt(start, worst)) worst = value;
      }
      if (rank !== noRank && worst !== open) note(start, open, worst);
    }
    report(bold);
  }
  return { unknownIsBold: bold, notMonotone: broken, influence };
}

function varies(
  lines: Iterable<number>,
  count: number,
  rankAt: (start: number, value: number) => number,
): boolean {
  for (const start of lines) {
    let before = noRank;
    for (let value = 0; value < count; value++) {
      const rank = rankAt(start, value);
      if (rank === noRank) continue;
      if (before !== noRank && rank !== before) return true;
      before = rank;
    }
  }
  return false;
}
