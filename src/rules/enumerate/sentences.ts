import type { Breach } from './breaches.ts';
import type { Survey } from './survey.ts';

const told = (situation: Readonly<Record<string, string>>) =>
  Object.entries(situation)
    .map(([fact, value]) => `${fact}=${value}`)
    .join(', ');

const what = ({ outcome, item }: { outcome: string; item?: string }) =>
  item === undefined ? outcome : `${outcome} "${item}"`;

const breach = (one: Breach) =>
  `${one.fact}=${one.value} gives ${what(one)} ${one.gives}, but ${one.than} gives ${one.insteadOf} ` +
  `(${one.count} times; first: ${told(one.situation)})`;

/** Findings that make an answer missing, doubtful or too bold: no rule set may have one. */
export const faults = (survey: Survey): readonly string[] =>
  [
    ...survey.gaps.map(
      (gap) =>
        `gap: no rule gives ${gap.outcome} in ${gap.count} combinations, such as ${gap.situations.map(told).join(' | ')}`,
    ),
    ...survey.conflicts.map(
      (conflict) =>
        `conflict: ${conflict.rules.join(' and ')} differ on ${conflict.outcome} in ${conflict.count} combinations, ` +
        `such as ${told(conflict.situation)}`,
    ),
    ...survey.unknownIsBold.map((one) => `bold unknown: ${breach(one)}`),
    ...survey.notMonotone.map((one) => `broken order: ${breach(one)}`),
    ...survey.tooLarge.map((one) => `too large to look at: ${what(one)}, ${one.size} combinations`),
  ].map((line) => `${survey.decision}: ${line}`);

/** Findings that cost nothing but clearness. */
export const remarks = (survey: Survey): readonly string[] =>
  [
    ...survey.neverFires.map((rule) => `rule ${rule} never fires`),
    ...survey.shadowed.map((rule) => `rule ${rule} changes no value, it only adds a reason`),
    ...survey.neverGiven.map((value) => `${value} is never given`),
    ...survey.idle.map((fact) => `${fact} is read and makes no difference`),
  ].map((line) => `${survey.decision}: ${line}`);
