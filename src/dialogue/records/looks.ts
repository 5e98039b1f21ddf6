/** A look at a registered anchor: advised on with what the register knows of it, and noted when confirmed. */
import type { Advice } from '../../contracts/advice.ts';
import type { Facts } from '../../contracts/facts.ts';
import type { Phrase } from '../../contracts/phrase.ts';
import type { ClubRecord, Draft, RecordBody } from '../../contracts/record.ts';
import type { Session } from '../../contracts/session.ts';
import { factsOfAnchor, looksAt, valueShown } from '../../field/index.ts';
import { factsOfBody } from '../../field/test-record.ts';
import { confirmChoices, questionOf, type Recorded, type Said, saying, type Tools } from './context.ts';
import { hearTold } from './hearing-anchor.ts';

const mostLooks = 10;

/** What holds for the whole chat lies under what the register says of one anchor. */
export function anchorFacts({ entries }: Session, body: RecordBody): Facts {
  const club = entries
    .filter(({ from, value }) => from === 'club' && value !== 'unknown')
    .map(({ fact, value }) => [fact, { value, from: 'club' as const }] as const);
  return { ...Object.fromEntries(club), ...factsOfAnchor(body) };
}

/** What was seen on an anchor, the newest last. */
export async function looksLines(tools: Tools, { chat, id, kind }: ClubRecord): Promise<readonly Phrase[]> {
  if (kind !== 'anchor') return [];
  const looks = looksAt(await tools.records.list(chat, 'inspection'), id);
  return looks.slice(-mostLooks).map(
    (look): Phrase => ({
      say: 'register-look',
      with: {
        id: look.id,
        day: look.body.texts.day ?? look.at.slice(0, 10),
        signs: valueShown(tools.rules, 'signs', look.body.facts.signs),
        by: look.author ?? { say: 'record-by-forgotten' },
      },
    }),
  );
}

/** The advice on what was seen, with the offer to note it. */
export async function advisedOnLook(
  tools: Tools,
  session: Session,
  draft: Extract<Draft, { do: 'add' }>,
  anchor: ClubRecord,
  more: { readonly language?: string; readonly understood?: readonly string[] } = {},
): Promise<Recorded> {
  const facts: Facts = { ...anchorFacts(session, anchor.body), ...factsOfBody(draft.body) };
  const advice: Advice = await tools.advise('inspect', facts);
  const open = session.draft !== null && session.draft.kind !== 'inspection';
  const lines: Phrase[] = [
    { say: 'register-look-of', with: { id: anchor.id, crag: anchor.body.texts.crag ?? '' } },
    { say: open ? 'register-look-later' : 'register-look-note' },
  ];
  const next = { ...session, turn: session.turn + 1, answered: { topic: 'inspect', facts } };
  return saying(tools, open ? next : { ...next, pending: null, draft }, lines, {
    ...more,
    advice,
    topic: 'inspect',
    facts: Object.fromEntries(Object.entries(facts).map(([id, { value }]) => [id, value])),
    choices: open ? [] : confirmChoices(draft),
  });
}

/** "a7k3f has brown streaks", "inspect a7k3f"; null where the message tells of no look. */
export async function lookedAt(
  tools: Tools,
  said: Said,
  record: ClubRecord,
  rest: string,
  tellsNothingElse: boolean,
): Promise<Recorded | null> {
  const empty: RecordBody = { facts: {}, texts: { anchor: record.id, day: said.at.slice(0, 10) } };
  const look = await hearTold(tools, rest, said, empty, 'signs', 'inspection');
  const { parsed, language } = look.heard;
  const asks = look.told.length > 0 || (tellsNothingElse && parsed.topics[0] === 'inspect');
  if (!asks) return null;
  if (record.withdrawn)
    return saying(tools, said.session, [{ say: 'register-is-withdrawn', with: { id: record.id } }], {
      language,
      topic: 'register',
    });
  if (look.wrong.length > 0) return saying(tools, said.session, look.wrong, { language, topic: 'register' });
  const body: RecordBody = {
    facts: Object.fromEntries(look.told.map(({ fact, value }) => [fact, value])),
    texts: { ...empty.texts, ...look.texts },
  };
  const draft = { do: 'add', kind: 'inspection', body } as const;
  if (body.facts.signs !== undefined || said.session.draft !== null)
    return advisedOnLook(tools, said.session, draft, record, { language, understood: ['signs'] });
  const session = { ...said.session, turn: said.session.turn + 1, draft, pending: 'signs' };
  return saying(tools, session, [], {
    language,
    topic: 'register',
    missing: ['signs'],
    open: questionOf(tools.rules, body, 'signs'),
  });
}
