/** A record being written down or corrected: asked for what is missing, shown as a whole, kept only when confirmed. */
import type { Phrase } from '../../contracts/phrase.ts';
import type { Draft, RecordBody, RecordChange, RecordKind } from '../../contracts/record.ts';
import type { Session } from '../../contracts/session.ts';
import {
  atSamePlace,
  bodyLines,
  changeLines,
  factsOfKind,
  freshId,
  lacksCrag,
  markOf,
  sheltered,
} from '../../field/index.ts';
import { clashIn, emptyBody, withTold } from '../../field/test-record.ts';
import { domain } from '../../rules/index.ts';
import {
  bodyOf,
  confirmChoices,
  mayChange,
  questionOf,
  type Recorded,
  type Said,
  saying,
  stillOpen,
  type Tools,
  topicOfKind,
} from './context.ts';
import { opensPull, type ToldOfPull } from './hearing.ts';
import { hearTold } from './hearing-anchor.ts';
import { advisedOnLook } from './looks.ts';
import { opensAnchor } from './opening.ts';

const withDraft = (session: Session, draft: Draft | null, pending: string | null = null): Session => ({
  ...session,
  turn: session.turn + 1,
  draft,
  pending,
});

/** What to show of a draft: the next question, or all of it to be confirmed. */
export async function goOn(
  tools: Tools,
  session: Session,
  draft: Draft,
  more: {
    readonly understood?: readonly string[];
    readonly language?: string;
    readonly lines?: readonly Phrase[];
  } = {},
): Promise<Recorded> {
  const { rules } = tools;
  const body = bodyOf(draft) ?? emptyBody;
  const missing = stillOpen(rules, draft);
  const [open] = missing;
  const { lines = [], ...rest } = more;
  const shared = { ...rest, facts: body.facts, missing, topic: topicOfKind(draft.kind) };
  if (open !== undefined)
    return saying(tools, withDraft(session, draft, open), lines, {
      ...shared,
      open: questionOf(rules, body, open),
    });
  if (lacksCrag(draft.kind, body) && draft.do === 'add')
    return saying(tools, withDraft(session, draft), [...lines, { say: 'register-which-crag' }], {
      ...shared,
      missing: ['crag'],
      choices: confirmChoices(draft).slice(1),
    });
  return saying(tools, withDraft(session, draft), [...lines, ...shownWhole(tools, draft)], {
    ...shared,
    choices: [...confirmChoices(draft), ...fixChoices(draft)],
  });
}

/** Texts of the register are its own where a pull is named. */
export const wordsOf = (kind: RecordKind, what: 'draft' | 'draft-how' | 'withdraw' | 'kept-how'): string =>
  kind === 'test' ? `record-${what}` : `register-${kind}-${what}`;

/** What an entry is poor without is shown as not known, so that it is seen before it is kept. */
function untold({ kind, body }: Extract<Draft, { do: 'add' }>): readonly Phrase[] {
  if (kind !== 'anchor') return [];
  const facts = ['metal', 'environment'].filter((fact) => body.facts[fact] === undefined);
  return [
    ...facts.map(
      (id): Phrase => ({
        say: 'record-fact',
        with: { fact: { of: 'fact', id }, value: { say: 'not-known' } },
      }),
    ),
    ...(body.texts.day === undefined ? [{ say: 'register-day-not-known' }] : []),
  ];
}

function shownWhole({ rules }: Tools, draft: Draft): readonly Phrase[] {
  switch (draft.do) {
    case 'add':
      return [
        { say: wordsOf(draft.kind, 'draft') },
        ...bodyLines(rules, draft.body, draft.kind),
        ...untold(draft),
        { say: wordsOf(draft.kind, 'draft-how') },
      ];
    case 'correct':
      return [
        { say: 'record-correct', with: { id: draft.id } },
        ...changeLines(rules, draft.before, draft.body, draft.kind),
        { say: wordsOf(draft.kind, 'draft-how') },
      ];
    case 'withdraw':
      return [
        { say: wordsOf(draft.kind, 'withdraw'), with: { id: draft.id } },
        ...bodyLines(rules, draft.body, draft.kind),
      ];
    case 'import':
      return [{ say: 'table-ready', with: { count: draft.bodies.length } }];
  }
}

const mayFix = ['load_kn', 'failure_mode', 'anchor', 'metal', 'diameter_mm', 'length_mm', 'rock', 'adhesive'];

const fixChoices = (draft: Draft) =>
  draft.do !== 'add'
    ? []
    : mayFix
        .filter((fact) => draft.body.facts[fact] !== undefined && (fact !== 'metal' || draft.kind !== 'test'))
        .map((fact) => ({
          id: `r:fix:${fact}`,
          say: { say: 'choice-fix', with: { fact: { of: 'fact', id: fact } } } satisfies Phrase,
        }));

const placeDropped = (before: RecordBody, after: RecordBody): boolean =>
  Object.keys(after.texts).length < Object.keys(before.texts).length;

/** Adds what was told to a draft; what cannot be changes nothing. */
async function told(
  tools: Tools,
  { session, message }: Said,
  draft: Draft,
  pull: Pick<ToldOfPull, 'told' | 'texts' | 'wrong'>,
  language?: string,
): Promise<Recorded> {
  const body = bodyOf(draft);
  if (body === null || draft.do === 'withdraw' || draft.do === 'import')
    return goOn(tools, session, draft, language === undefined ? {} : { language });
  const shared = language === undefined ? {} : { language };
  if (pull.wrong.length > 0) return goOn(tools, session, draft, { ...shared, lines: pull.wrong });
  const whole = withTold(body, pull.told, pull.texts);
  const next = sheltered(tools.sensitive, whole);
  const lines: Phrase[] = placeDropped(whole, next) ? [{ say: 'register-sheltered' }] : [];
  const clash = clashIn(tools.rules, next);
  if (clash !== null)
    return goOn(tools, session, draft, { ...shared, lines: [{ say: `record-clash-${clash}` }] });
  const understood = pull.told.map(({ fact }) => fact);
  if (draft.do === 'add' && draft.kind === 'inspection' && next.facts.signs !== undefined) {
    const anchor = await tools.records.find(message.chat, next.texts.anchor ?? '');
    if (anchor !== null)
      return advisedOnLook(tools, session, { ...draft, body: next }, anchor, { ...shared, understood });
  }
  return goOn(tools, session, { ...draft, body: next }, { ...shared, understood, lines });
}

/** Begins a record with what the message tells of the pull. */
export async function begin(
  tools: Tools,
  said: Said,
  text: string,
  kind: RecordKind = 'test',
): Promise<Recorded> {
  const pull = await hearTold(tools, text, said, emptyBody, null, kind);
  // A pull is written down on its day; when an anchor was set is told or not known.
  const texts: RecordBody['texts'] = kind === 'anchor' ? {} : { day: said.at.slice(0, 10) };
  const draft: Draft = { do: 'add', kind, body: { facts: {}, texts } };
  return told(tools, said, draft, pull, pull.heard.language);
}

/** Words while a record is open; null where they are about something else. */
export async function goOnWith(
  tools: Tools,
  said: Said,
  draft: Draft,
  text: string,
): Promise<Recorded | null> {
  const { session } = said;
  const body = bodyOf(draft);
  if (body === null || draft.do === 'withdraw') return null;
  const pull = await hearTold(tools, text, said, body, session.pending, draft.kind);
  const { parsed, language } = pull.heard;
  const [topic] = parsed.topics;
  if (topic === 'emergency' || topic === 'refuse') return null;
  if (parsed.act === 'restart') return dropped(tools, said, language);
  const opens = opensPull(tools, parsed, text) || opensAnchor(tools, text) !== undefined;
  if (stillOpen(tools.rules, draft).length === 0 && opens)
    return goOn(tools, session, draft, { language, lines: [{ say: 'record-open-first' }] });
  const nothing =
    pull.told.length + pull.wrong.length === 0 && topic === undefined && pull.read.kind === 'notice';
  if (nothing && ['ask', 'yes', 'no'].includes(parsed.act) && Object.keys(pull.texts).length === 0)
    return goOn(tools, session, draft, { language, lines: pull.read.lines });
  const toldNothing = pull.told.length + Object.keys(pull.texts).length === 0;
  // Of an anchor a day that cannot be is told of this entry, and of nothing else.
  const tellsNothing = toldNothing && (draft.kind === 'test' || pull.wrong.length === 0);
  const asks = text.includes('?') || (topic !== undefined && tellsNothing);
  const tells = pull.told.length + Object.keys(pull.texts).length + pull.wrong.length > 0;
  if (asks || !tells) return null;
  return told(tools, said, draft, pull, language);
}

/** A tap on a value while a record is open; null where the button is not of this question. */
export async function tapped(tools: Tools, said: Said, press: string): Promise<Recorded | null> {
  const { session } = said;
  const { draft, pending } = session;
  const [kind, fact = '', value = ''] = press.split(':');
  const body = bodyOf(draft);
  if (kind !== 'f' || draft === null || body === null || fact !== pending) return null;
  if (!factsOfKind(draft.kind).includes(fact)) return null;
  const known = value === '?' || domain(tools.rules, fact).includes(value);
  if (!known || value === 'unknown') return null;
  const told1 = { fact, value: value === '?' ? 'unknown' : value };
  return told(tools, said, draft, { told: [told1], texts: {}, wrong: [] });
}

export const dropped = (tools: Tools, { session }: Said, language?: string): Promise<Recorded> =>
  saying(tools, withDraft(session, null), [{ say: 'record-dropped' }], {
    ...(session.draft === null ? {} : { topic: topicOfKind(session.draft.kind) }),
    ...(language === undefined ? {} : { language }),
  });

export async function fix(tools: Tools, said: Said, fact: string): Promise<Recorded | null> {
  const { session } = said;
  const body = bodyOf(session.draft);
  if (session.draft?.do !== 'add' || body === null || !Object.hasOwn(body.facts, fact)) return null;
  return saying(tools, withDraft(session, session.draft, fact), [], {
    topic: topicOfKind(session.draft.kind),
    facts: body.facts,
    missing: [fact],
    open: questionOf(tools.rules, body, fact),
  });
}

/** Keeps what was shown. A button of something shown before keeps nothing. */
export async function keep(tools: Tools, said: Said, mark?: string): Promise<Recorded | null> {
  const { session, message } = said;
  const { draft } = session;
  if (draft === null || (mark !== undefined && mark !== markOf(draft))) return null;
  if (stillOpen(tools.rules, draft).length > 0) return goOn(tools, session, draft);
  const bar = await barsKeeping(tools, said, draft);
  if (bar !== null) return goOn(tools, session, draft, { lines: [bar] });
  const closed = withDraft(session, null);
  const topic = topicOfKind(draft.kind);
  if (draft.do === 'add' || draft.do === 'import') {
    // The crag may have been marked since this was shown.
    const shown = draft.do === 'add' ? [draft.body] : draft.bodies;
    const bodies = shown.map((one) => sheltered(tools.sensitive, one));
    const added = await additions(tools, said, draft.kind, bodies);
    const [first, last] = [added.at(0)?.id ?? '', added.at(-1)?.id ?? ''];
    const lines: Phrase[] =
      draft.do === 'add'
        ? [
            { say: 'record-kept', with: { id: first } },
            { say: wordsOf(draft.kind, 'kept-how'), with: { id: first } },
          ]
        : [{ say: 'table-kept', with: { count: added.length, first, last } }];
    return saying(tools, closed, lines, { changes: added, topic, facts: bodyOf(draft)?.facts ?? {} });
  }
  const record = await tools.records.find(message.chat, draft.id);
  if (record === null || record.withdrawn || record.version !== draft.version)
    return saying(tools, closed, [{ say: 'record-changed-meanwhile' }], { topic });
  if (!mayChange(record, message)) return saying(tools, closed, [{ say: 'record-not-yours' }], { topic });
  const { id, version } = draft;
  const body = sheltered(tools.sensitive, draft.body);
  const change: RecordChange =
    draft.do === 'withdraw' ? { do: 'withdraw', id, version } : { do: 'correct', id, version, body };
  const lines: Phrase[] = [
    { say: draft.do === 'withdraw' ? 'record-withdrawn' : 'record-corrected', with: { id } },
  ];
  return saying(tools, closed, lines, { changes: [change], topic, facts: body.facts });
}

/** What the register cannot take: nothing without a crag, no second anchor at one place, no look at one that is gone. */
async function barsKeeping(tools: Tools, { message }: Said, draft: Draft): Promise<Phrase | null> {
  if (draft.kind === 'test' || (draft.do !== 'add' && draft.do !== 'correct')) return null;
  const { body, kind } = draft;
  if (kind === 'inspection') {
    const anchor = await tools.records.find(message.chat, body.texts.anchor ?? '');
    return anchor === null || anchor.withdrawn
      ? { say: 'register-is-withdrawn', with: { id: body.texts.anchor ?? '' } }
      : null;
  }
  if (lacksCrag(kind, body)) return { say: 'register-nowhere' };
  const standing = await tools.records.list(message.chat, kind);
  const other = atSamePlace(standing, body, draft.do === 'correct' ? draft.id : undefined);
  return other === undefined ? null : { say: 'register-twice', with: { id: other.id } };
}

/** Each body gets an id of its own, the same for the same message. */
async function additions(
  { records }: Tools,
  { message }: Said,
  kind: Draft['kind'],
  bodies: readonly RecordBody[],
): Promise<readonly Extract<RecordChange, { do: 'add' }>[]> {
  const given = new Set<string>();
  const added: Extract<RecordChange, { do: 'add' }>[] = [];
  for (const [place, body] of bodies.entries()) {
    const from = [message.chat, message.user, message.room ?? '', message.id, String(place)];
    const id = await freshId(
      kind,
      from,
      async (one) => given.has(one) || (await records.find(message.chat, one)) !== null,
    );
    given.add(id);
    added.push({ do: 'add', id, kind, body });
  }
  return added;
}
