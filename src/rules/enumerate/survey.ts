import { overriddenIn } from '../combine.ts';
import { compileRules, firedBy } from '../masks.ts';
import type { Decision, RuleSet } from '../ruleset.ts';
import { type Breach, breachesOf, noRank } from './breaches.ts';
import { gap, gatheredAtAll, type Question, questionsOf } from './questions.ts';
import { at, countPossible, type Space, spaceOf } from './space.ts';
import { impossiblePlace, walk } from './walk.ts';

type Values = Readonly<Record<string, string>>;

export interface Gap {
  readonly outcome: string;
  readonly count: number;
  /** The first few. */
  readonly situations: readonly Values[];
}

export interface Conflict {
  readonly outcome: string;
  readonly rules: readonly string[];
  readonly count: number;
  readonly situation: Values;
}

/** Everything that looking at all combinations of a decision's facts has found. */
export interface Survey {
  readonly decision: string;
  /** Possible combinations of all facts of the decision. */
  readonly combinations: number;
  /** Combinations gone through: each outcome only needs the facts of its own rules. */
  readonly examined: number;
  readonly gaps: readonly Gap[];
  readonly conflicts: readonly Conflict[];
  readonly unknownIsBold: readonly Breach[];
  readonly notMonotone: readonly Breach[];
  readonly neverFires: readonly string[];
  /** Without such a rule every value stays the same; it only adds a reason. */
  readonly shadowed: readonly string[];
  /** Facts that are read and make no difference. */
  readonly idle: readonly string[];
  /** "outcome value" that no combination gives. */
  readonly neverGiven: readonly string[];
  /** Questions that were not looked at because of the number of combinations. */
  readonly tooLarge: readonly { readonly outcome: string; readonly item?: string; readonly size: number }[];
}

const largest = 20_000_000;
const situationsShown = 5;

interface Findings {
  examined: number;
  readonly gaps: Gap[];
  readonly conflicts: Conflict[];
  readonly unknownIsBold: Breach[];
  readonly notMonotone: Breach[];
  readonly fires: Set<string>;
  readonly matters: Set<string>;
  readonly influence: Set<string>;
  readonly neverGiven: string[];
  readonly tooLarge: { outcome: string; item?: string; size: number }[];
}

function noteConflict(
  found: Findings,
  { outcome, rules }: Question,
  fired: readonly number[],
  count: number,
  situation: Values,
): void {
  const firing = fired.flatMap((place) => rules[place] ?? []);
  const out = overriddenIn(firing);
  const differing = firing.filter((rule) => !out.has(rule.id) && rule.gives[outcome] !== undefined);
  const ids = differing.map(({ id }) => id);
  const known = found.conflicts.findIndex(
    (one) => one.outcome === outcome && one.rules.join() === ids.join(),
  );
  const before = found.conflicts[known];
  if (before === undefined) found.conflicts.push({ outcome, rules: ids, count, situation });
  else found.conflicts[known] = { ...before, count: before.count + count };
}

interface Looked {
  readonly space: Space;
  readonly ranks: Int16Array;
}

/** Goes through one question; null when it is too large. */
function look(rules: RuleSet, decision: Decision, question: Question, found: Findings): Looked | null {
  const { outcome, item } = question;
  const space = spaceOf(rules, decision, [
    ...new Set(question.rules.flatMap((rule) => decision.factsOf.get(rule.id) ?? [])),
  ]);
  if (space.size > largest) {
    found.tooLarge.push({ outcome, ...(item === undefined ? {} : { item }), size: space.size });
    return null;
  }
  const facts = space.axes.flatMap((axis) => [axis.fact, ...axis.followers.keys()]);
  const masks = compileRules(rules, question.rules, facts);
  const { endings, endingAt, possible } = walk(space, masks);
  found.examined += possible;

  const answers = endings.map((bits) => {
    const fired = firedBy(masks, bits);
    const answer = question.answer(fired);
    for (const place of fired) {
      const id = question.rules[place]?.id ?? '';
      found.fires.add(id);
      // Once is enough: a rule that is decisive anywhere is not shadowed.
      if (!found.matters.has(id) && question.answer(fired, place) !== answer) found.matters.add(id);
    }
    return { fired, answer };
  });
  const ranks = new Int16Array(space.size).fill(noRank);
  const without = new Map<number, number[]>();
  for (let place = 0; place < space.size; place++) {
    const ending = endingAt[place] ?? impossiblePlace;
    const answer = answers[ending]?.answer;
    if (answer === undefined) continue;
    if (answer >= 0) ranks[place] = answer;
    else {
      const places = without.get(ending) ?? [];
      places.push(place);
      without.set(ending, places);
    }
  }
  const gapPlaces: number[] = [];
  for (const [ending, places] of without) {
    const { answer = gap, fired = [] } = answers[ending] ?? {};
    if (answer === gap) for (const place of places) gapPlaces.push(place);
    else noteConflict(found, question, fired, places.length, at(space, places[0] ?? 0));
  }
  if (gapPlaces.length > 0) {
    const situations = gapPlaces.slice(0, situationsShown).map((place) => at(space, place));
    found.gaps.push({ outcome, count: gapPlaces.length, situations });
  }
  return { space, ranks };
}

export function survey(rules: RuleSet, name: string): Survey {
  const decision = rules.decision(name);
  const found: Findings = {
    examined: 0,
    gaps: [],
    conflicts: [],
    unknownIsBold: [],
    notMonotone: [],
    fires: new Set(),
    matters: new Set(),
    influence: new Set(),
    neverGiven: [],
    tooLarge: [],
  };
  const always = new Set<string>();
  for (const question of questionsOf(decision)) {
    const looked = look(rules, decision, question, found);
    if (looked === null) continue;
    const breaches = breachesOf(rules, decision, question, looked.space, looked.ranks);
    found.unknownIsBold.push(...breaches.unknownIsBold);
    found.notMonotone.push(...breaches.notMonotone);
    for (const fact of breaches.influence) found.influence.add(fact);
    for (const { fact, followers } of looked.space.axes)
      if (breaches.influence.has(fact)) for (const one of followers.keys()) found.influence.add(one);
    const given = new Set(looked.ranks);
    if (question.item !== undefined && !given.has(1)) always.add(question.outcome);
    for (const [rank, value] of question.values.entries())
      if (!given.has(rank)) found.neverGiven.push(`${question.outcome} ${value}`);
  }
  for (const outcome of Object.keys(decision.outcomes)) {
    const question = always.has(outcome) ? null : gatheredAtAll(decision, outcome);
    if (question !== null) look(rules, decision, question, found);
  }
  const ids = decision.rules.map(({ id }) => id);
  const skipped = found.tooLarge.length > 0;
  return {
    decision: name,
    combinations: countPossible(spaceOf(rules, decision, decision.inputs)),
    examined: found.examined,
    gaps: found.gaps,
    conflicts: found.conflicts,
    unknownIsBold: found.unknownIsBold,
    notMonotone: found.notMonotone,
    neverFires: skipped ? [] : ids.filter((id) => !found.fires.has(id)),
    shadowed: skipped ? [] : ids.filter((id) => found.fires.has(id) && !found.matters.has(id)),
    idle: skipped ? [] : decision.inputs.filter((fact) => !found.influence.has(fact)),
    neverGiven: found.neverGiven,
    tooLarge: found.tooLarge,
  };
}
