/** A message that names a record: shown, its history told, corrected, withdrawn. */
import type { ClubRecord, Draft } from '../../contracts/record.ts';
import { bodyLines, historyLines, idsIn, sheltered } from '../../field/index.ts';
import { changedFacts, changedTexts, clashIn, withTold } from '../../field/test-record.ts';
import { around } from '../expressions.ts';
import { mayChange, type Recorded, type Said, saying, type Tools, topicOfKind } from './context.ts';
import { goOn, wordsOf } from './drafting.ts';
import { hearTold } from './hearing-anchor.ts';
import { lookedAt, looksLines } from './looks.ts';

/** Null where the message names no record of this chat. */
export async function aboutRecord(tools: Tools, said: Said, text: string): Promise<Recorded | null> {
  const { chat } = said.message;
  const ids = [...new Set(idsIn(text))].slice(0, 3);
  if (ids.length === 0) return null;
  const { withdraw, history } = tools.ears.expressions.records;
  const [wantsWithdrawn, wantsHistory] = [around(text, withdraw), around(text, history)];
  for (const id of ids) {
    const record = await tools.records.find(chat, id);
    if (record === null) continue;
    const rest = text.replace(new RegExp(`\\b${id}\\b`, 'i'), ' ');
    if (wantsWithdrawn !== undefined) return withdrawal(tools, said, record);
    if (wantsHistory !== undefined) return told(tools, said, record);
    return correction(tools, said, record, rest);
  }
  const leads = text
    .trim()
    .toLowerCase()
    .startsWith(ids[0] ?? ' ');
  if (wantsWithdrawn === undefined && wantsHistory === undefined && !leads) return null;
  return saying(tools, said.session, [{ say: 'record-none', with: { id: ids[0] ?? '' } }]);
}

async function told(tools: Tools, said: Said, record: ClubRecord): Promise<Recorded> {
  const steps = await tools.records.history(record.chat, record.id);
  return saying(
    tools,
    said.session,
    [
      { say: 'record-history', with: { id: record.id } },
      ...historyLines(tools.rules, steps, record.kind),
      ...(await looksLines(tools, record)),
    ],
    { facts: record.body.facts, topic: topicOfKind(record.kind) },
  );
}

export async function shown(tools: Tools, said: Said, record: ClubRecord): Promise<Recorded> {
  const { id, version, withdrawn, body } = record;
  const changes = mayChange(record, said.message) && !withdrawn;
  return saying(
    tools,
    said.session,
    [
      { say: withdrawn ? 'record-shown-withdrawn' : 'record-shown', with: { id, version } },
      ...bodyLines(tools.rules, body, record.kind),
      ...(await looksLines(tools, record)),
      ...(changes ? [{ say: wordsOf(record.kind, 'kept-how'), with: { id } }] : []),
    ],
    {
      facts: body.facts,
      topic: topicOfKind(record.kind),
      choices: changes ? [{ id: `r:withdraw:${id}:${version}`, say: { say: 'choice-withdraw' } }] : [],
    },
  );
}

/** Why a record cannot be changed by this member, or null. */
function barred(record: ClubRecord, { message }: Said): string | null {
  if (record.withdrawn) return record.kind === 'test' ? 'record-is-withdrawn' : 'register-is-withdrawn';
  return mayChange(record, message) ? null : 'record-not-yours';
}

export async function withdrawal(tools: Tools, said: Said, record: ClubRecord): Promise<Recorded> {
  const why = barred(record, said);
  if (why !== null)
    return saying(tools, said.session, [refusal(why, record)], { topic: topicOfKind(record.kind) });
  const { id, version, body, kind } = record;
  const draft: Draft = { do: 'withdraw', kind, id, version, body };
  return goOn(tools, said.session, draft);
}

const refusal = (say: string, { id }: ClubRecord) => ({ say, with: { id } });

async function correction(tools: Tools, said: Said, record: ClubRecord, rest: string): Promise<Recorded> {
  const { id, version, body, kind } = record;
  const pull = await hearTold(tools, rest, said, body, null, kind);
  const topic = topicOfKind(kind);
  const { language } = pull.heard;
  const tells = pull.told.length + Object.keys(pull.texts).length + pull.wrong.length > 0;
  if (kind === 'anchor') {
    const looked = await lookedAt(tools, said, record, rest, !tells);
    if (looked !== null) return looked;
  }
  if (!tells) return { ...(await shown(tools, said, record)), language };
  const why = barred(record, said);
  if (why !== null) return saying(tools, said.session, [refusal(why, record)], { language, topic });
  if (pull.wrong.length > 0)
    return saying(tools, said.session, pull.wrong, { language, topic, facts: body.facts });
  const next = sheltered(tools.sensitive, withTold(body, pull.told, pull.texts));
  const clash = clashIn(tools.rules, next);
  if (clash !== null)
    return saying(tools, said.session, [{ say: `record-clash-${clash}` }], {
      language,
      topic,
      facts: body.facts,
    });
  if (changedFacts(body, next).length + changedTexts(body, next).length === 0)
    return saying(tools, said.session, [{ say: 'record-same', with: { id } }], {
      language,
      topic,
      facts: body.facts,
    });
  const draft: Draft = { do: 'correct', kind, id, version, before: body, body: next };
  return goOn(tools, said.session, draft, { language, understood: pull.told.map(({ fact }) => fact) });
}
