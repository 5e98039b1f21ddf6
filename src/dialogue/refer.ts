/** "And the other one?", "what about the shady side?": what such words point at in the last answer. */
import type { Advice } from '../contracts/advice.ts';
import type { Facts } from '../contracts/facts.ts';
import type { Entry, Session } from '../contracts/session.ts';

/** What an answer may recommend two of. */
const choices = ['metal', 'adhesive', 'anchor'] as const;

export type Other =
  | { readonly kind: 'one'; readonly fact: string; readonly value: string }
  /** Two are in question and neither has been answered: to be tapped. */
  | { readonly kind: 'which'; readonly fact: string; readonly values: readonly string[] }
  | { readonly kind: 'none' };

function notThis(values: readonly string[], fact: string, one: string): Other | undefined {
  const [first, second] = values;
  if (values.length !== 2 || first === undefined || second === undefined) return undefined;
  if (one === first) return { kind: 'one', fact, value: second };
  return one === second ? { kind: 'one', fact, value: first } : undefined;
}

/** The other of two that the member weighed, or of two that were recommended. */
export function otherOne(session: Session, advice: Advice | null, facts: Facts): Other {
  const { either } = session;
  if (either !== null) {
    const told = facts[either.fact]?.value;
    const recommended = advice?.recommend[either.fact];
    const liked = Array.isArray(recommended)
      ? either.values.filter((value) => (recommended as readonly unknown[]).includes(value))
      : [];
    const [only] = liked.length === 1 ? liked : [];
    const one = typeof told === 'string' && either.values.includes(told) ? told : only;
    const other = one === undefined ? undefined : notThis(either.values, either.fact, one);
    return other ?? { kind: 'which', ...either };
  }
  for (const fact of choices) {
    const list = advice?.recommend[fact];
    if (!Array.isArray(list)) continue;
    const values = (list as readonly unknown[]).filter((value) => typeof value === 'string');
    const [first] = values;
    const told = facts[fact]?.value;
    const now = typeof told === 'string' && values.includes(told) ? told : first;
    const other = now === undefined ? undefined : notThis(values, fact, now);
    if (other !== undefined) return other;
  }
  return { kind: 'none' };
}

/** On the other side of a crag the warmth and the damp of the rock are others: what was told of them no longer holds. */
const sideFacts = ['temperature_c', 'surface_temperature_c', 'humidity_pct', 'hole_moisture'];

export function onAnotherSide(session: Session): Session {
  const stays = ({ fact }: Entry): boolean => !sideFacts.includes(fact);
  return {
    ...session,
    entries: session.entries.filter(stays),
    asked: session.asked.filter((fact) => !sideFacts.includes(fact)),
  };
}
