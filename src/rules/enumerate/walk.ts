import type { Masks } from '../masks.ts';
import { meet } from '../masks.ts';
import type { Space } from './space.ts';

export const impossiblePlace = -1;

export interface Walked {
  /** What is left of the bits, each pattern once. */
  readonly endings: readonly Uint32Array[];
  /** Ending at each place of the space, or `impossiblePlace`. */
  readonly endingAt: Int32Array;
  readonly possible: number;
}

/** Bit patterns after so many axes, numbered; steps from one axis to the next are worked out once. */
class Layer {
  readonly patterns: Uint32Array[] = [];
  readonly #numbers = new Map<string, number>();
  readonly steps: Int32Array[] = [];

  number(pattern: Uint32Array): number {
    const key = pattern.join();
    const known = this.#numbers.get(key);
    if (known !== undefined) return known;
    this.#numbers.set(key, this.patterns.length);
    return this.patterns.push(pattern) - 1;
  }
}

/**
 * Goes through the whole space. Few bit patterns occur, so that the walk is one over an automaton made on
 * the way, and a combination costs a look into an array and not a judgement of the rules.
 */
export function walk(space: Space, masks: Masks): Walked {
  const { axes, pairs } = space;
  const ofAxis = axes.map((axis) =>
    axis.values.map((value, index) => {
      let bits = masks.start;
      for (const [fact, one] of [
        [axis.fact, value] as const,
        ...[...axis.followers].map(([id, of]) => [id, of[index]] as const),
      ]) {
        const place = masks.facts.indexOf(fact);
        const mask = masks.ofValue[place]?.[masks.values[place]?.indexOf(one ?? '') ?? -1];
        if (mask === undefined) throw new Error(`"${one}" is not a value of ${fact}`);
        bits = meet(bits, mask);
      }
      return bits;
    }),
  );
  const layers = Array.from({ length: axes.length + 1 }, () => new Layer());
  const step = (depth: number, pattern: number, value: number): number => {
    const [here, after] = [layers[depth], layers[depth + 1]];
    const bits = here?.patterns[pattern];
    const mask = ofAxis[depth]?.[value];
    if (here === undefined || after === undefined || bits === undefined || mask === undefined)
      throw new Error('walked out of the space');
    here.steps[pattern] ??= new Int32Array(ofAxis[depth]?.length ?? 0).fill(-1);
    const known = here.steps[pattern][value] ?? -1;
    if (known >= 0) return known;
    const next = after.number(meet(bits, mask));
    here.steps[pattern][value] = next;
    return next;
  };

  const endingAt = new Int32Array(space.size).fill(impossiblePlace);
  const counts = axes.map((axis) => axis.values.length);
  const tied = axes.map((_, depth) =>
    pairs.flatMap((row, before) => {
      const table = before < depth ? row[depth] : null;
      return table == null ? [] : [{ before, table }];
    }),
  );
  const chosen = new Int32Array(axes.length);
  let possible = 0;
  const go = (depth: number, place: number, pattern: number): void => {
    if (depth === axes.length) {
      endingAt[place] = pattern;
      possible += 1;
      return;
    }
    const count = counts[depth] ?? 0;
    const ties = tied[depth] ?? [];
    for (let value = 0; value < count; value++) {
      if (ties.some(({ before, table }) => table[chosen[before] ?? 0]?.[value] === false)) continue;
      chosen[depth] = value;
      go(depth + 1, place * count + value, step(depth, pattern, value));
    }
  };
  go(0, 0, layers[0]?.number(masks.start) ?? 0);
  return { endings: layers.at(-1)?.patterns ?? [], endingAt, possible };
}
