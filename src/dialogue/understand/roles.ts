/** Which fact a number belongs to: told by the words on either side of it, each used for one number only. */
import type { Language, RoleCue } from './compile.ts';
import type { Mention } from './mention.ts';
import type { Match, PhraseTree, Word } from './phrases.ts';
import type { Item } from './sizes.ts';

/** A cue further off than this says nothing. */
const FARTHEST = 4;
const UNTOLD = 7;
/** Words that are looked at on either side. */
const WIDEST = 12;
/** A number is only dropped for a word that stands right beside it. */
const NEAREST = 1.2;
const MEASURED = new Set(['size', 'hole_diameter_mm', 'unit_cost']);

interface Candidate {
  readonly role: string;
  /** Its place in the row of cues; a cue serves one number. */
  readonly cue: number;
  readonly cost: number;
}

export type Assigned = { readonly role: string; readonly cue: Match<RoleCue> } | null;

const span = (item: Item) => (item.kind === 'size' ? item.size : item.quantity);
const hasUnit = (item: Item): boolean =>
  item.kind === 'size' ||
  item.quantity.unit !== null ||
  item.quantity.fraction ||
  item.quantity.thread ||
  item.quantity.negative;

function stepsBetween(
  words: readonly Word[],
  from: number,
  to: number,
  language: Language,
  mentions: readonly Mention[],
): number {
  let steps = 0;
  for (let at = from; at < to; ) {
    // "20 stainless twin-leg bolts": what is said of the bolts does not part them from their number.
    const value = mentions.find((mention) => mention.from === at && mention.to <= to);
    const filler = value ?? language.fillers.longest(words, at);
    if (filler) steps += 0.25;
    else if (words[at]?.kind === 'mark')
      steps += words[at]?.text === ',' ? 2 : words[at]?.text === '-' ? 1.5 : 0.5;
    else steps += 1;
    at = filler?.to ?? at + 1;
  }
  return steps;
}

/** Cues in the gap before item `index`, as they serve the number on their left and on their right. */
function gaps(items: readonly Item[], words: readonly Word[], cues: readonly Match<RoleCue>[]) {
  return Array.from({ length: items.length + 1 }, (_, index) => {
    const left = items[index - 1];
    const right = items[index];
    const from = left ? span(left).to : 0;
    const to = right ? span(right).from : words.length;
    return cues.flatMap((cue, number) => (cue.from >= from && cue.to <= to ? [{ cue, number }] : []));
  });
}

const parted = (words: readonly Word[], from: number, to: number, by: PhraseTree<true>): boolean =>
  words.slice(from, to).some((_, at) => by.longest(words, from + at) !== null);

/** "7 euro and labour 10": what follows the "and" belongs to the next number. */
const joined = (words: readonly Word[], from: number, to: number, language: Language): number =>
  from < to && language.and.longest(words, from) !== null ? 1 : 0;

/** "20 goujons de 10", "30 broches à 12 €": what is counted is also measured or has a price. */
const measures = (choice: Candidate, before: Candidate | null | undefined, last: number): boolean =>
  MEASURED.has(choice.role) && before?.role === 'count' && choice.cue === last && before.cue === last;

export function assignRoles(
  items: readonly Item[],
  words: readonly Word[],
  language: Language,
  cues: readonly Match<RoleCue>[],
  mentions: readonly Mention[],
  /** null: cannot be; otherwise what doubt it adds. */
  doubtOf: (role: string, item: Item) => number | null,
): Assigned[] {
  const gap = gaps(items, words, cues);
  const sentenceOf = (at: number): number => words[at]?.sentence ?? -1;

  const candidates = (index: number, side: 'before' | 'after'): Candidate[] => {
    const item = items[index];
    if (!item) return [];
    const { from, to } = span(item);
    const found: Candidate[] = [];
    for (const { cue, number } of gap[side === 'before' ? index : index + 1] ?? []) {
      const apart = side === 'before' ? from - cue.to : cue.from - to;
      if (apart > WIDEST || sentenceOf(cue.from) !== sentenceOf(from)) continue;
      if (side === 'before' && parted(words, cue.to, from, language.breaks)) continue;
      const steps =
        side === 'before'
          ? 0.2 + 0.9 * stepsBetween(words, cue.to, from, language, mentions)
          : stepsBetween(words, to, cue.from, language, mentions) + joined(words, to, cue.from, language);
      for (const { role, side: asked, doubt } of cue.said) {
        // "12, holes of 14" counts no holes.
        const apartFrom = parted(words, to, cue.from, language.parting) || words[to]?.text === ',';
        if (role === 'count' && side === 'after' && apartFrom) continue;
        const right = asked === side || (asked === `${side}Unit` && hasUnit(item));
        const farthest = role === 'ignore' ? NEAREST : FARTHEST;
        const more = right ? doubtOf(role, item) : null;
        if (more === null || steps + more > farthest) continue;
        found.push({ role, cue: number, cost: steps + doubt + more });
      }
    }
    return found.sort((a, b) => a.cost - b.cost).slice(0, 6);
  };

  // Left to right; the only thing that a number's choice bars is the cue that it took on its right.
  interface State {
    readonly cost: number;
    readonly last: number;
    readonly chosen: readonly (Candidate | null)[];
  }
  let states: State[] = [{ cost: 0, last: -1, chosen: [] }];
  items.forEach((_, index) => {
    const choices: (Candidate | null)[] = [
      null,
      ...candidates(index, 'before'),
      ...candidates(index, 'after'),
    ];
    const next = new Map<number, State>();
    for (const state of states)
      for (const choice of choices) {
        if (choice && choice.cue <= state.last && !measures(choice, state.chosen.at(-1), state.last))
          continue;
        const cost = state.cost + (choice?.cost ?? UNTOLD);
        const last = Math.max(state.last, choice?.cue ?? -1);
        if (cost < (next.get(last)?.cost ?? Number.POSITIVE_INFINITY))
          next.set(last, { cost, last, chosen: [...state.chosen, choice] });
      }
    states = [...next.values()];
  });
  const best = states.reduce((a, b) => (b.cost < a.cost ? b : a));
  return best.chosen.map((choice) => {
    const cue = choice && cues[choice.cue];
    return choice && cue ? { role: choice.role, cue } : null;
  });
}
