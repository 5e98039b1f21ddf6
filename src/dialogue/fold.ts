/** A session is a list of what was told; facts are folded from it anew each turn, so taking back needs no code of its own. */
import type { Facts } from '../contracts/facts.ts';
import type { Entry, Session } from '../contracts/session.ts';
import { bandOf, type RuleSet, textCell } from '../rules/index.ts';

/** Facts in force: the last word counts; what hangs on another fact lapses when that one changes later. */
export function factsOf(rules: RuleSet, session: Session): Facts {
  const last = new Map<string, Entry>();
  for (const entry of session.entries) {
    const before = last.get(entry.fact);
    last.set(entry.fact, entry);
    if (before === undefined || before.value === entry.value) continue;
    for (const [fact, told] of last)
      if (told.turn < entry.turn && hangsOn(rules, fact) === entry.fact) last.delete(fact);
  }
  // While a question is open, what the message that led to it wanted still holds.
  const since = session.pending === null ? session.turn : session.turn - session.asked.length;
  const facts = Object.fromEntries(
    [...last.values()]
      .filter((entry) => entry.turn >= since || !lastsOneMessage(rules, entry.fact))
      .map(({ fact, value, from }) => [fact, { value, from }]),
  );
  return placedBySea(rules, facts);
}

/** Who tells only how far the sea is has told the place as well, as far as the sea goes: taken, and said aloud. */
function placedBySea(rules: RuleSet, facts: Facts): Facts {
  const distance = facts.sea_distance_m?.value;
  const band = rules.facts.get('sea_band');
  if (facts.environment !== undefined || typeof distance !== 'number' || band?.kind !== 'band') return facts;
  const step = bandOf(band, distance);
  const row = rules.table('places-by-distance').rows.find(({ id }) => id === step);
  if (row === undefined) return facts;
  return { ...facts, environment: { value: textCell(row, 'environment'), from: 'assumed' } };
}

function hangsOn(rules: RuleSet, fact: string): string | undefined {
  const definition = rules.facts.get(fact);
  return definition && 'of' in definition ? definition.of : undefined;
}

function lastsOneMessage(rules: RuleSet, fact: string): boolean {
  const definition = rules.facts.get(fact);
  return definition !== undefined && 'lasts' in definition && definition.lasts === 'message';
}

export const topicOf = (session: Session): string | undefined => session.topics.at(-1)?.topic;

/** Opens the next turn: what was told in this message, and the topic when it named one. */
export function told(
  session: Session,
  entries: readonly Omit<Entry, 'turn'>[],
  topic: string | undefined,
): Session {
  const turn = session.turn + 1;
  const changed = topic !== undefined && topic !== topicOf(session);
  return {
    ...session,
    turn,
    entries: [...session.entries, ...entries.map((entry) => ({ ...entry, turn }))],
    topics: topic === undefined ? session.topics : [...session.topics, { turn, topic }],
    asked: changed ? [] : session.asked,
  };
}

/** Takes back the last turn that told something. */
export function takeBack(session: Session): Session {
  const turns = [...session.entries, ...session.topics].map(({ turn }) => turn);
  if (turns.length === 0) return session;
  const last = Math.max(...turns);
  return {
    ...session,
    turn: session.turn + 1,
    entries: session.entries.filter(({ turn }) => turn < last),
    topics: session.topics.filter(({ turn }) => turn < last),
    pending: null,
    asked: session.asked.slice(0, -1),
    answered: null,
  };
}
