import { clauses } from './conditions.ts';
import { type Definitions, domain } from './domains.ts';
import type { RuleEntry } from './schema.ts';

/**
 * The same conditions as bits. Every condition is split into alternatives, one bit each; a value of a fact
 * carries the bits of the alternatives that it does not contradict, and what is left after all facts fires.
 */
export interface Masks {
  readonly facts: readonly string[];
  readonly values: readonly (readonly string[])[];
  /** [fact][value] */
  readonly ofValue: readonly (readonly Uint32Array[])[];
  readonly ruleOfBit: readonly number[];
  readonly start: Uint32Array;
}

export function compileRules(
  definitions: Definitions,
  rules: readonly RuleEntry[],
  facts: readonly string[],
): Masks {
  const split = rules.flatMap((rule, index) =>
    clauses(definitions, rule.when).map((clause) => ({ clause, index })),
  );
  const words = Math.ceil(split.length / 32);
  const mask = (holds: (bit: number) => boolean) => {
    const bits = new Uint32Array(words);
    for (let bit = 0; bit < split.length; bit++)
      if (holds(bit)) bits[bit >>> 5] = (bits[bit >>> 5] ?? 0) | (1 << (bit & 31));
    return bits;
  };
  const values = facts.map((fact) => domain(definitions, fact));
  const ofValue = facts.map((fact, place) =>
    (values[place] ?? []).map((value) => mask((bit) => split[bit]?.clause.get(fact)?.has(value) ?? true)),
  );
  return { facts, values, ofValue, ruleOfBit: split.map(({ index }) => index), start: mask(() => true) };
}

export function meet(a: Uint32Array, b: Uint32Array): Uint32Array {
  const both = new Uint32Array(a.length);
  for (let word = 0; word < a.length; word++) both[word] = (a[word] ?? 0) & (b[word] ?? 0);
  return both;
}

/** Places of the rules that fire, in the order of the file. */
export function firedBy({ ruleOfBit }: Masks, bits: Uint32Array): readonly number[] {
  const fired: number[] = [];
  for (let bit = 0; bit < ruleOfBit.length; bit++) {
    const rule = ruleOfBit[bit];
    if (rule === undefined || ((bits[bit >>> 5] ?? 0) & (1 << (bit & 31))) === 0) continue;
    if (fired.at(-1) !== rule) fired.push(rule);
  }
  return fired;
}
