/** The club's own facts: they stand below everything that a member tells, and are kept apart from the talk. */
import type { ClubFacts, Entry, Session } from '../contracts/session.ts';
import type { RuleSet } from '../rules/index.ts';

/** Lays the club's facts under a talk: older than its first turn, so that any message overrides them. */
export function withClub(session: Session, club: ClubFacts): Session {
  const entries = Object.entries(club).map(
    ([fact, value]): Entry => ({ turn: 0, fact, value, from: 'club' }),
  );
  return entries.length === 0 ? session : { ...session, entries: [...entries, ...session.entries] };
}

export function withoutClub(session: Session): Session {
  const entries = session.entries.filter(({ from }) => from !== 'club');
  return entries.length === session.entries.length ? session : { ...session, entries };
}

/** What may hold for a club: facts of its crags and habits, not of one message or one anchor's measures. */
export function clubFacts(rules: RuleSet, told: readonly Omit<Entry, 'turn'>[]): ClubFacts {
  return Object.fromEntries(
    told.flatMap(({ fact, value }) => {
      const definition = rules.facts.get(fact);
      const lasting = definition?.kind === 'choice' && definition.lasts === undefined && fact !== 'topic';
      return lasting && value !== 'unknown' ? [[fact, value]] : [];
    }),
  );
}
