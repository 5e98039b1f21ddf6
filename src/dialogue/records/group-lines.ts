/** A group of pulls in words: what it is, every load, mean and 5 % value, and what gave way. */
import type { Advice } from '../../contracts/advice.ts';
import type { FactValue } from '../../contracts/facts.ts';
import type { Phrase, PhraseArg } from '../../contracts/phrase.ts';
import { failedKn, type Group, modesOf, stoppedKn, type Wanted } from '../../field/groups.ts';
import { valueShown } from '../../field/index.ts';
import type { RuleSet } from '../../rules/index.ts';

/** More loads than this fill a phone. */
const mostLoads = 30;

/** "a, b, c" of any things that can be said. */
export function listed(all: readonly PhraseArg[]): PhraseArg {
  const [first, ...rest] = all;
  if (first === undefined) return '';
  return rest.length === 0 ? first : { say: 'ours-list', with: { first, rest: listed(rest) } };
}

const mm = (value: FactValue | undefined): PhraseArg | undefined =>
  typeof value === 'number' ? { value, unit: 'mm', exact: true, metric: true } : undefined;

const named = ['anchor', 'shank', 'adhesive', 'rock', 'hole_moisture', 'load_direction'] as const;

export function nameOf(facts: Readonly<Record<string, FactValue>>): Phrase {
  const [diameter, depth] = [mm(facts.diameter_mm), mm(facts.embedment_mm ?? facts.length_mm)];
  const size: PhraseArg[] =
    diameter === undefined
      ? []
      : [depth === undefined ? diameter : { say: 'ours-size', with: { diameter, depth } }];
  const terms = named.flatMap((fact): PhraseArg[] => {
    const value = facts[fact];
    return typeof value === 'string' ? [{ fact, value }] : [];
  });
  const all = [...size, ...terms];
  return { say: 'line', with: { text: all.length === 0 ? { say: 'ours-mixed' } : listed(all) } };
}

export function nameOfWanted(rules: RuleSet, wanted: readonly Wanted[]): Phrase {
  const all = wanted.map(({ fact, value, family }): PhraseArg => {
    const derived = rules.facts.get(`${fact}_family`);
    if (!family || derived?.kind !== 'derived' || derived.from !== fact || typeof value !== 'string')
      return valueShown(rules, fact, value);
    const cell = rules.facts.get(fact);
    const table = cell?.kind === 'choice' ? cell.table : undefined;
    const own = table === undefined ? undefined : rules.row(table, value).is[derived.column];
    return typeof own === 'string' ? { fact: derived.id, value: own } : { fact, value };
  });
  return { say: 'line', with: { text: all.length === 0 ? { say: 'ours-mixed' } : listed(all) } };
}

const loads = (all: readonly number[]): PhraseArg => ({
  numbers: all.toSorted((a, b) => b - a).slice(0, mostLoads),
  in: 'kN',
});

function loadLine(failed: readonly number[], stopped: readonly number[]): Phrase {
  const both = { failed: failed.length, pulls: loads(failed), stopped: stopped.length, held: loads(stopped) };
  if (failed.length === 0)
    return { say: 'ours-loads-stopped', with: { stopped: both.stopped, held: both.held } };
  if (stopped.length === 0)
    return { say: 'ours-loads-failed', with: { failed: both.failed, pulls: both.pulls } };
  return { say: 'ours-loads-both', with: both };
}

/** Mean or middle, and 5 % value, by the same reckoning as the answer on results: its own checks, unrounded. */
export function figuresOf(advice: Advice | null): { middle: number; fitted: boolean; low: number } | null {
  const middle = advice?.checks.find(({ kind }) => kind === 'mean' || kind === 'plain');
  const low = advice?.checks.find(({ kind }) => kind === 'characteristic');
  if (middle === undefined || low === undefined) return null;
  return { middle: middle.value, fitted: middle.kind === 'plain', low: low.value };
}

function figureLine(advice: Advice | null): Phrase {
  const found = figuresOf(advice);
  if (found === null) return { say: 'ours-no-figures' };
  const { middle, low, fitted } = found;
  return {
    say: fitted ? 'ours-figures-fitted' : 'ours-figures',
    with: { mean: { value: middle, unit: 'kN' }, low: { value: low, unit: 'kN' } },
  };
}

export function groupLines(rules: RuleSet, group: Group, advice: Advice | null, withName = true): Phrase[] {
  const modes = modesOf(group).map(
    ([mode, count]): PhraseArg => ({
      say: 'ours-mode',
      with: { mode: valueShown(rules, 'failure_mode', mode), count },
    }),
  );
  return [
    ...(withName ? [{ say: 'ours-group', with: { what: nameOf(group.facts) } }] : []),
    loadLine(failedKn(group), stoppedKn(group)),
    figureLine(advice),
    { say: 'ours-modes', with: { list: listed(modes) } },
  ];
}
