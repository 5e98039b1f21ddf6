/** From a message to what it tells: cleaned, understood, and checked before anything of it counts. */
import type { FactValue } from '../contracts/facts.ts';
import type { Message } from '../contracts/message.ts';
import type { Phrase } from '../contracts/phrase.ts';
import type { Entry, Session, Units } from '../contracts/session.ts';
import type { Places } from '../places/seas.ts';
import { contradictions, domain, impossible, type RuleSet } from '../rules/index.ts';
import type { ClubWish } from './club.ts';
import { type Refers, referring, sensitiveAsked, settingsIn, unitsAsked } from './expressions.ts';
import { factsOf, told, topicOf } from './fold.ts';
import { type Ears, type Heard, hear, languageAsked } from './hear.ts';
import { readPlace } from './place.ts';
import type { Found, Parsed, Problem } from './understand/index.ts';

export type NewEntry = Omit<Entry, 'turn'>;

export type Read =
  | { readonly kind: 'notice'; readonly lines: readonly Phrase[]; readonly offer: boolean }
  | { readonly kind: 'language'; readonly language: string }
  | { readonly kind: 'restart' }
  | { readonly kind: 'why' }
  | { readonly kind: 'back' }
  | {
      readonly kind: 'told';
      readonly entries: readonly NewEntry[];
      readonly topics: readonly string[];
      readonly understood: readonly string[];
      /** "316 or titanium": what is weighed against each other. */
      readonly either?: Session['either'];
      readonly refers?: Refers;
      /** Said before the answer. */
      readonly lines?: readonly Phrase[];
    }
  | { readonly kind: 'units'; readonly units: Units }
  | { readonly kind: 'club'; readonly wish: ClubWish };

/** Longer than any question a person types; what is longer is a paste, and is not read at all. */
const longest = 10_000;

const notice = (say: string, args: Phrase['with'] = {}, offer = false): Read => ({
  kind: 'notice',
  lines: [{ say, with: args }],
  offer,
});

/** What a message says, and in which language it is to be answered. */
export interface ReadIn {
  readonly read: Read;
  readonly language: string;
  /** The words as they were understood, where it had words. */
  readonly parsed?: Parsed;
}

export async function readMessage(
  rules: RuleSet,
  ears: Ears,
  session: Session,
  message: Message,
  own: string,
  places: Places | null = null,
): Promise<ReadIn> {
  const inOwn = (read: Read): ReadIn => ({ read, language: own });
  if (message.press !== undefined) return inOwn(readPress(rules, session, message.press));
  if (message.place !== undefined) return inOwn(await placeTold(rules, session, message.place, places));
  if (message.text === undefined) return inOwn(notice('file-not-yet'));
  if (message.text.length > longest) return inOwn(notice('too-long', { most: String(longest) }));
  const asked = languageAsked(ears, message.text);
  if (asked !== undefined) return { read: { kind: 'language', language: asked }, language: asked };
  const units = unitsAsked(ears.expressions, message.text);
  if (units !== undefined) return inOwn({ kind: 'units', units });
  const [, command, rest] = /^\s*\/(help|settings|club)(?:@\w+)?(?:\s+(\S.*))?$/is.exec(message.text) ?? [];
  if (command !== undefined && command.toLowerCase() !== 'help')
    return inOwn(await settings(rules, ears, session, own, rest ?? ''));
  if (rest !== undefined) return inOwn(helpOn(rest.trim(), (await hear(ears, rest, own, {})).parsed.topic));
  const topic = topicOf(session);
  const points = referring(ears.expressions, message.text);
  // Words that point back are no answer to the open question.
  const pending = points === undefined ? (session.pending ?? undefined) : undefined;
  const { parsed, language }: Heard = await hear(ears, points?.rest ?? message.text, own, {
    ...(pending === undefined ? {} : { pending }),
    ...(topic === undefined ? {} : { topic }),
    now: message.at ?? localNow(),
  });
  const read = readParsed(rules, session, parsed, points?.refers);
  return { read, language: points === undefined ? language : own, parsed };
}

/** Settings, help, languages and units are never part of a record. */
export const settledElsewhere = (ears: Ears, text: string): boolean =>
  text.length > longest ||
  /^\s*\/(help|settings|club|language|units)(?![\p{L}])/iu.test(text) ||
  languageAsked(ears, text) !== undefined ||
  unitsAsked(ears.expressions, text) !== undefined;

async function placeTold(
  rules: RuleSet,
  session: Session,
  place: NonNullable<Message['place']>,
  places: Places | null,
): Promise<Read> {
  if (places === null) return notice('place-not-yet');
  const told = await readPlace(rules, places, place);
  if (told.kind === 'no') return notice(told.say);
  const read = checked(rules, session, { entries: told.entries, topics: [] });
  return read.kind === 'told' ? { ...read, lines: told.lines } : read;
}

/** The member's clock as far as it is known: that of this machine, with its offset. */
export function localNow(): string {
  const now = new Date();
  const offset = -now.getTimezoneOffset();
  const two = (value: number): string => String(Math.floor(Math.abs(value))).padStart(2, '0');
  const wall = new Date(now.getTime() + offset * 60_000).toISOString().slice(0, 19);
  return `${wall}${offset < 0 ? '-' : '+'}${two(offset / 60)}:${two(offset % 60)}`;
}

/** A tap: `f:<fact>:<value>` or `f:<fact>:?`, `t:<topic>`, `c:<command>`. One from an older program may name what is gone. */
function readPress(rules: RuleSet, session: Session, press: string): Read {
  const [kind, name = '', value = ''] = press.split(':');
  if (kind === 'c' && (name === 'why' || name === 'back' || name === 'restart')) return { kind: name };
  if (kind === 't' && domain(rules, 'topic').includes(name))
    return { kind: 'told', entries: [], topics: [name], understood: [] };
  if (kind === 'f' && rules.facts.has(name)) {
    const unknown = value === '?';
    if (unknown || domain(rules, name).includes(value))
      return checked(rules, session, {
        entries: [{ fact: name, value: unknown ? 'unknown' : value, from: 'said' }],
        topics: [],
      });
  }
  return notice('button-old', {}, true);
}

/** Topics with a help of their own, `help-<topic>`. */
export const helped = [
  'material',
  'anchor',
  'embedment',
  'adhesive',
  'adhesive-amount',
  'cure',
  'hole',
  'spacing',
  'coating-life',
  'load',
  'inspect',
  'cost',
  'pulltest-plan',
  'pulltest-result',
  'compare',
  'cautions',
];

/** `/club granite, inches, only here`: what it sets, whatever else the words might ask; "clear" or "forget" clears. */
async function settings(
  rules: RuleSet,
  ears: Ears,
  session: Session,
  own: string,
  text: string,
): Promise<Read> {
  const sensitive = sensitiveAsked(ears.expressions, text);
  if (sensitive !== undefined)
    return { kind: 'club', wish: { asked: { rest: '' }, entries: [], clear: false, sensitive } };
  const asked = settingsIn(ears.expressions, ears.names, text);
  const { parsed } = await hear(ears, asked.rest, own, {});
  if (parsed.act === 'forget' || parsed.act === 'restart')
    return { kind: 'club', wish: { asked: { rest: '' }, entries: [], clear: true } };
  const read = checked(rules, session, { entries: entriesOf(rules, session, parsed), topics: ['settings'] });
  if (read.kind !== 'told') return read;
  if (asked.rest !== '' && read.entries.length === 0) return nothingTold(parsed, session);
  return { kind: 'club', wish: { asked, entries: read.entries, clear: false } };
}

/** "/help cure", "/help curing": by the name of the topic, or by what the words are about. */
function helpOn(about: string, heard: string | null): Read {
  const topic = helped.find((name) => name === about.toLowerCase()) ?? helped.find((name) => name === heard);
  return topic === undefined ? notice('help', {}, true) : notice(`help-${topic}`);
}

export function readParsed(rules: RuleSet, session: Session, parsed: Parsed, refers?: Refers): Read {
  switch (parsed.act) {
    case 'why':
    case 'why-all':
      return { kind: 'why' };
    case 'back':
    case 'restart':
      return { kind: parsed.act };
    case 'forget':
      return { kind: 'restart' };
    case 'help':
      return notice('help', {}, true);
  }
  const emergency = parsed.topic === 'emergency';
  const hard = parsed.problems.find(({ kind, value }) => kind !== 'ambiguous' || value === undefined);
  if (hard !== undefined && !emergency)
    return { kind: 'notice', lines: [problemLine(rules, hard)], offer: false };
  const entries = entriesOf(rules, session, parsed);
  const topics = parsed.topics.filter((topic) => topic !== 'unknown' && topic !== 'smalltalk');
  if (topics[0] === 'settings') return { kind: 'club', wish: { asked: { rest: '' }, entries, clear: false } };
  if (refers === undefined && entries.length === 0 && topics.length === 0)
    return nothingTold(parsed, session);
  const read = checked(rules, session, { entries, topics });
  if (read.kind !== 'told') return read;
  return { ...read, either: eitherOf(parsed), ...(refers === undefined ? {} : { refers }) };
}

/** The first kind of each thing weighed: "titanium" stands for its first grade. */
function eitherOf({ alternatives }: Parsed): Session['either'] {
  const [list = []] = alternatives;
  const [first] = list;
  const kinds = list.filter(
    ({ fact, value, text }, at) =>
      fact === first?.fact &&
      typeof value === 'string' &&
      list.findIndex((other) => other.text === text) === at,
  );
  return first === undefined || kinds.length < 2
    ? null
    : { fact: first.fact, values: kinds.map(({ value }) => String(value)) };
}

function nothingTold(parsed: Parsed, session: Session): Read {
  if (parsed.act === 'thanks') return notice('welcome');
  if (parsed.act === 'greeting' || parsed.topic === 'smalltalk') return notice('greeting', {}, true);
  // Named, but never echoed at length: a paste must not flood the group.
  const words = parsed.unknownWords
    .slice(0, 5)
    .map((word) => word.slice(0, 30))
    .join(', ');
  const lines: Phrase[] = [
    words === '' ? { say: 'not-understood' } : { say: 'words-not-understood', with: { words } },
  ];
  if (session.pending !== null) lines.push({ say: 'still-open' });
  return { kind: 'notice', lines, offer: session.pending === null };
}

function entriesOf(rules: RuleSet, session: Session, parsed: Parsed): NewEntry[] {
  const entries: NewEntry[] = [];
  const add = (fact: string, value: FactValue, from: NewEntry['from']): void => {
    const definition = rules.facts.get(fact);
    if (definition?.kind !== 'choice' && definition?.kind !== 'number') return;
    entries.push({ fact, value, from });
  };
  // The careful reading of an ambiguous word is an assumption; it never stands against what was said outright.
  for (const { fact, value } of parsed.problems)
    if (fact !== undefined && value !== undefined) add(fact, value, 'assumed');
  // "The sea is 300 m away" answers how far, and does not say that the crag stands in the sea.
  const howFar = parsed.found.some(({ fact }) => fact === 'sea_distance_m');
  const bareSea = ({ fact, text }: Found): boolean => fact === 'environment' && !/\s/.test(text);
  for (const found of parsed.found)
    if (!(howFar && session.pending === 'environment' && bareSea(found)))
      add(found.fact, found.value, 'said');
  for (const fact of parsed.unknownFacts) add(fact, 'unknown', 'said');
  if (parsed.act === 'dont-know' && parsed.unknownFacts.length === 0 && session.pending !== null)
    add(session.pending, 'unknown', 'said');
  return entries;
}

function problemLine(rules: RuleSet, problem: Problem): Phrase {
  const fact = problem.fact === undefined ? undefined : rules.facts.get(problem.fact);
  if (problem.kind === 'impossible' && fact?.kind === 'number')
    return impossibleLine(rules, fact.id, problem.text);
  return {
    say: `problem-${problem.kind}`,
    with: {
      text: problem.text.slice(0, 60),
      fact: fact === undefined ? '' : { of: 'fact', id: fact.id },
    },
  };
}

function impossibleLine(rules: RuleSet, id: string, text: string): Phrase {
  const fact = rules.facts.get(id);
  const [least, most] = fact?.kind === 'number' ? fact.possible : [0, 0];
  const unit = fact?.kind === 'number' ? fact.unit : '1';
  return {
    say: 'impossible',
    with: {
      text: text.slice(0, 60),
      fact: { of: 'fact', id },
      least: { value: least, unit, exact: true },
      most: { value: most, unit, exact: true },
    },
  };
}

/** Refuses what cannot be, before it is told to anybody: the session stays as it was. */
function checked(
  rules: RuleSet,
  session: Session,
  read: { readonly entries: readonly NewEntry[]; readonly topics: readonly string[] },
): Read {
  for (const { fact, value } of read.entries)
    if (value !== 'unknown' && impossible(rules, fact, value))
      return { kind: 'notice', lines: [impossibleLine(rules, fact, String(value))], offer: false };
  const fresh = read.entries.map(({ fact }) => fact);
  const facts = { ...factsOf(rules, told(session, read.entries, read.topics[0])) };
  for (const clash of contradictions(rules, facts)) {
    if (clash.kind === 'relation')
      return {
        kind: 'notice',
        lines: [{ say: 'contradiction-relation', with: { words: { of: 'relation', id: clash.id } } }],
        offer: false,
      };
    return notice('contradiction', {
      one: { fact: clash.fact, value: clash.value },
      other: { fact: clash.other, value: clash.otherValue },
    });
  }
  return { kind: 'told', entries: read.entries, topics: read.topics, understood: [...new Set(fresh)] };
}
