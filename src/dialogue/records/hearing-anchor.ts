/** What a message tells of an anchor of the register, or of a look at one. */
import type { Phrase } from '../../contracts/phrase.ts';
import type { RecordBody, RecordKind } from '../../contracts/record.ts';
import { factsOfKind, isFuture, lacksCrag } from '../../field/index.ts';
import { hear } from '../hear.ts';
import { localNow, type Read, readParsed } from '../read.ts';
import type { Tools } from './context.ts';
import { cleanText, hearPull, type ToldOfPull, talkOf, textsIn } from './hearing.ts';
import { placeTold } from './places-told.ts';

interface When {
  readonly own: string;
  readonly at: string;
}

const topics = { anchor: 'register', inspection: 'inspect' } as const;

/** Only what was said outright: the careful reading of a vague word is no entry in a register. */
const saidFacts = (read: Read, kind: RecordKind): ToldOfPull['told'] =>
  read.kind !== 'told'
    ? []
    : read.entries
        .filter(({ fact, from }) => from === 'said' && factsOfKind(kind).includes(fact))
        .map(({ fact, value }) => ({ fact, value }));

/** A crag may be answered by its bare name, when nothing else is open. */
function bareName(body: RecordBody, pending: string | null, text: string): string | null {
  const open = lacksCrag('anchor', body) && body.facts.anchor !== undefined && pending === null;
  return open && /^\s*\p{L}[\p{L}\p{N}'’ .-]{1,59}$/u.test(text) ? cleanText(text) : null;
}

async function hearAnchor(
  tools: Tools,
  text: string,
  when: When,
  body: RecordBody,
  pending: string | null,
  kind: 'anchor' | 'inspection',
): Promise<ToldOfPull> {
  const { rules, ears } = tools;
  const now = when.at || localNow();
  const columns = textsIn(tools, text, kind);
  const place = placeTold(ears.expressions.register, columns.rest, now);
  const rest = kind === 'anchor' ? place.rest : columns.rest;
  const heard = await hear(ears, rest, when.own, {
    ...(pending === null ? {} : { pending }),
    topic: topics[kind],
    now,
  });
  const { parsed } = heard;
  const read = readParsed(rules, talkOf(body, pending), parsed);
  const told = saidFacts(read, kind);
  const found = Object.entries(place.texts).map(([id, value]) => [id, cleanText(value)] as const);
  const texts: Record<string, string> = {
    ...Object.fromEntries(found.filter(([id]) => kind === 'anchor' || id === 'day')),
    ...columns.texts,
  };
  const [topic] = parsed.topics;
  const plain = parsed.act !== 'restart' && (topic === undefined || topic === 'register');
  const name = kind === 'anchor' && plain ? bareName(body, pending, text) : null;
  if (name !== null && told.length === 0 && Object.keys(texts).length === 0) texts.crag = name;
  const wrong: Phrase[] = [];
  const named = name !== null && texts.crag === name;
  if (!named && read.kind === 'notice' && parsed.problems.length + parsed.found.length > 0)
    wrong.push(...read.lines);
  if (place.wrongDay !== null) wrong.push({ say: 'register-no-day', with: { text: place.wrongDay } });
  if (texts.day !== undefined && isFuture(`${texts.day}-01-01`.slice(0, 10), when.at))
    wrong.push({ say: 'record-future-day', with: { text: texts.day } });
  return { heard, read, told, texts, wrong };
}

/** What a message tells of a record of this kind. */
export const hearTold = (
  tools: Tools,
  text: string,
  when: When,
  body: RecordBody,
  pending: string | null,
  kind: RecordKind,
): Promise<ToldOfPull> =>
  kind === 'test'
    ? hearPull(tools, text, when, body, pending)
    : hearAnchor(tools, text, when, body, pending, kind);
