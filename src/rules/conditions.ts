import { type Definitions, definition, domainOf, knownValues, unknown } from './domains.ts';
import type { Condition, Leaf } from './schema.ts';

export interface PlacedLeaf {
  readonly leaf: Leaf;
  readonly path: string;
}

/** Every single test in a condition, with its path in the file. */
export function leaves(condition: Condition, path = 'when'): readonly PlacedLeaf[] {
  if ('all' in condition)
    return condition.all.flatMap((part, index) => leaves(part, `${path}.all[${index}]`));
  if ('any' in condition)
    return condition.any.flatMap((part, index) => leaves(part, `${path}.any[${index}]`));
  return [{ leaf: condition, path }];
}

export const factsIn = (condition: Condition): readonly string[] => [
  ...new Set(leaves(condition).map(({ leaf }) => leaf.fact)),
];

/**
 * The values of the fact for which the test holds. Going along an order, what is unknown counts as worse
 * and never as better.
 */
export function accepted(definitions: Definitions, leaf: Leaf): readonly string[] {
  if (leaf.operator === 'equal') return [leaf.value];
  if (leaf.operator === 'in') return leaf.value;
  const fact = definition(definitions, leaf.fact);
  const values = knownValues(definitions, fact);
  const place = values.indexOf(leaf.value);
  if (place < 0) throw new Error(`"${leaf.value}" is not in the order of ${leaf.fact}`);
  if (leaf.operator === 'orBetter') return values.slice(place);
  const worse = values.slice(0, place + 1);
  return domainOf(definitions, fact).includes(unknown) ? [...worse, unknown] : worse;
}

/** A conjunction: for each fact that it tests, the values that pass. */
export type Clause = ReadonlyMap<string, ReadonlySet<string>>;

const mostClauses = 5000;

function both(a: Clause, b: Clause): Clause | null {
  const joined = new Map(a);
  for (const [fact, values] of b) {
    const had = joined.get(fact);
    const left = had === undefined ? values : new Set([...had].filter((value) => values.has(value)));
    if (left.size === 0) return null;
    joined.set(fact, left);
  }
  return joined;
}

/** Alternatives that test one and the same fact become one clause, which keeps products small. */
function merged(clauses: readonly Clause[]): readonly Clause[] {
  const single = new Map<string, Set<string>>();
  const rest: Clause[] = [];
  for (const clause of clauses) {
    const [first] = clause;
    if (first === undefined || clause.size !== 1) {
      rest.push(clause);
      continue;
    }
    const [fact, values] = first;
    single.set(fact, new Set([...(single.get(fact) ?? []), ...values]));
  }
  return [...[...single].map(([fact, values]) => new Map([[fact, values]])), ...rest];
}

/** The condition as alternatives of conjunctions; it holds when one of them does. */
export function clauses(definitions: Definitions, condition: Condition): readonly Clause[] {
  if ('any' in condition) return merged(condition.any.flatMap((part) => clauses(definitions, part)));
  if (!('all' in condition)) return [new Map([[condition.fact, new Set(accepted(definitions, condition))]])];
  let product: readonly Clause[] = [new Map()];
  for (const part of condition.all) {
    const alternatives = clauses(definitions, part);
    product = product.flatMap((done) =>
      alternatives.map((alternative) => both(done, alternative)).filter((clause) => clause !== null),
    );
    if (product.length > mostClauses)
      throw new Error(`a condition falls apart into more than ${mostClauses} alternatives`);
  }
  return merged(product);
}
