import { type FactsView, valuesOf } from './facts-view.ts';
import type { Mention } from './mention.ts';

/** Numbers of which the lower one is taken when a message names two: the cold end. */
const LOWEST = new Set(['temperature_c']);
/** What a place or a bolt is like: of two, the worse counts. A choice that is asked about has no worse. */
const WORSE_COUNTS = new Set(['environment', 'hole_moisture', 'rock_condition', 'signs']);

/** Of several values of one fact the worst, or null where no order is known. */
export function worstOf(fact: string, values: readonly Mention[], facts: FactsView): Mention | null {
  const strong = values.filter(({ weak }) => weak !== true);
  if (strong.length === 1) return strong[0] ?? null;
  const [first] = strong;
  // Now the rock and now the glue is a mixed row, which counts for less than either.
  if (fact === 'gave_way' && first) return { ...first, value: 'mixed' };
  if (LOWEST.has(fact)) return values.reduce((a, b) => (b.value < a.value ? b : a));
  const definition = facts.facts.get(fact);
  if (definition?.kind !== 'choice') return null;
  if (definition.ordered === true || fact === 'signs') {
    const order = valuesOf(facts, fact);
    const rank = ({ value }: Mention): number => order.indexOf(String(value));
    return values.reduce((a, b) => (rank(b) < rank(a) ? b : a));
  }
  if (!WORSE_COUNTS.has(fact)) return null;
  const milder = (value: string, seen = new Set<string>()): Set<string> => {
    const rows = facts.tables.get(definition.table ?? '')?.rows ?? [];
    for (const next of rows.find(({ id }) => id === value)?.worseThan ?? [])
      if (!seen.has(next)) milder(next, seen.add(next));
    return seen;
  };
  const worst = values.find(({ value }) => {
    const below = milder(String(value));
    return values.every((other) => other.value === value || below.has(String(other.value)));
  });
  return worst ?? null;
}
