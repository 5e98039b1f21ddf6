/** The club's own facts and settings: they stand below everything that a member tells, and are kept apart from the talk. */
import type { Phrase } from '../contracts/phrase.ts';
import {
  type ClubFacts,
  type ClubSettings,
  type Entry,
  emptyClub,
  type Session,
} from '../contracts/session.ts';
import { foldedName } from '../field/index.ts';
import type { RuleSet } from '../rules/index.ts';
import type { SensitiveAsked, SettingsAsked } from './expressions.ts';

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

/** What an admin asked to be set; `clear` sets all back. */
export interface ClubWish {
  readonly asked: SettingsAsked;
  readonly entries: readonly Omit<Entry, 'turn'>[];
  readonly clear: boolean;
  /** A crag to be kept to its name, or no longer. */
  readonly sensitive?: SensitiveAsked | undefined;
}

export const wishesNothing = ({ asked, entries, clear, sensitive }: ClubWish): boolean =>
  !clear &&
  sensitive === undefined &&
  entries.length === 0 &&
  asked.language === undefined &&
  asked.units === undefined &&
  asked.rooms === undefined;

export function changedClub(
  rules: RuleSet,
  club: ClubSettings,
  { asked, entries, clear, sensitive }: ClubWish,
  room: string | undefined,
): ClubSettings {
  // What protects a place is not lifted by the way.
  if (clear) return { ...emptyClub, sensitive: club.sensitive };
  const here = room === undefined ? [] : [room];
  return {
    facts: { ...club.facts, ...clubFacts(rules, entries) },
    language: asked.language ?? club.language,
    units: asked.units ?? club.units,
    rooms:
      asked.rooms === undefined
        ? club.rooms
        : asked.rooms === 'everywhere'
          ? []
          : [...new Set([...club.rooms, ...here])],
    sensitive: sensitiveAfter(club.sensitive, sensitive),
  };
}

const mostSensitive = 200;

function sensitiveAfter(before: readonly string[], asked: SensitiveAsked | undefined): readonly string[] {
  if (asked === undefined) return before;
  const others = before.filter((one) => foldedName(one) !== foldedName(asked.name));
  return asked.on ? [...others, asked.name].slice(-mostSensitive) : others;
}

/** What is set, in words. */
export function clubLines(club: ClubSettings): readonly Phrase[] {
  const list = Object.entries(club.facts).map(([fact, value]) => ({ fact, value: String(value) }));
  const lines: Phrase[] = [
    list.length === 0
      ? { say: 'settings-none' }
      : { say: 'settings-are', with: { list: { together: list } } },
  ];
  if (club.language !== null)
    lines.push({ say: 'settings-language', with: { name: { say: `language-${club.language}` } } });
  if (club.units !== null) lines.push({ say: `settings-units-${club.units}` });
  if (club.rooms.length > 0) lines.push({ say: 'settings-rooms', with: { count: club.rooms.length } });
  if (club.sensitive.length > 0)
    lines.push({ say: 'register-sensitive', with: { names: club.sensitive.join(', ') } });
  return [...lines, { say: 'settings-how' }];
}
