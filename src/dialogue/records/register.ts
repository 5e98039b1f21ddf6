/** The register of anchors in the talk: an entry begun, anchors found again by plain words, and which to see to first. */
import type { Phrase } from '../../contracts/phrase.ts';
import type { ClubRecord, RecordBody } from '../../contracts/record.ts';
import { fits, type Wanted } from '../../field/groups.ts';
import { factsOfKind, foldedName } from '../../field/index.ts';
import { anchorLine } from '../../field/listing.ts';
import { emptyBody } from '../../field/test-record.ts';
import { around } from '../expressions.ts';
import { hear } from '../hear.ts';
import { type Recorded, type Said, saying, type Tools } from './context.ts';
import { begin, goOn } from './drafting.ts';
import { listed, nameOfWanted } from './group-lines.ts';
import { hearTold } from './hearing-anchor.ts';
import { isRegisterCommand, opensAnchor } from './opening.ts';
import { rankedFirst } from './ranking.ts';

const mostListed = 20;
const mostCrags = 15;
/** As many other words as a look-up may have beside the names: more is a question about something else. */
const mostBeside = 3;

const where = ['crag', 'sector', 'route'] as const;

const anchorsOf = (tools: Tools, { message }: Said): Promise<readonly ClubRecord[]> =>
  tools.records.list(message.chat, 'anchor');

/** How many anchors each crag has, and how to add one. */
function overview(tools: Tools, said: Said, anchors: readonly ClubRecord[]): Promise<Recorded> {
  const crags = new Map<string, { name: string; count: number }>();
  for (const { body } of anchors) {
    const name = body.texts.crag ?? '';
    const one = crags.get(foldedName(name)) ?? { name, count: 0 };
    one.count += 1;
    crags.set(foldedName(name), one);
  }
  const most = [...crags.values()].toSorted((a, b) => b.count - a.count);
  const lines: Phrase[] = [
    { say: 'register-all', with: { count: anchors.length, crags: most.length } },
    ...most
      .slice(0, mostCrags)
      .map(({ name, count }): Phrase => ({ say: 'register-crag', with: { name, count } })),
    { say: 'register-how' },
  ];
  return saying(tools, said.session, anchors.length === 0 ? [{ say: 'register-none' }] : lines, {
    topic: 'register',
  });
}

/** Names of crags, sectors and routes of this register that stand in a text, and the text without them. */
function namesIn(anchors: readonly ClubRecord[], text: string): { names: readonly string[]; rest: string } {
  const known = new Set(
    anchors.flatMap(({ body }) => where.flatMap((one) => foldedName(body.texts[one] ?? '') || [])),
  );
  let rest = ` ${foldedName(text)} `;
  const names: string[] = [];
  for (const name of [...known].toSorted((a, b) => b.length - a.length)) {
    if (name.length < 2 || !rest.includes(` ${name} `)) continue;
    names.push(name);
    rest = rest.replace(` ${name} `, ' , ');
  }
  return { names, rest: rest.trim() };
}

const isAt = ({ texts }: RecordBody, name: string): boolean =>
  where.some((one) => foldedName(texts[one] ?? '') === name);

interface Sought {
  readonly names: readonly string[];
  readonly wanted: readonly Wanted[];
  readonly language: string;
  /** Nothing in the words is about anything else. */
  readonly only: boolean;
}

async function soughtIn(
  tools: Tools,
  said: Said,
  anchors: readonly ClubRecord[],
  text: string,
): Promise<Sought> {
  const { names, rest } = namesIn(anchors, text);
  const { parsed, language } = await hear(tools.ears, rest, said.own, {});
  const told = parsed.found.map(({ fact, value }): Wanted => ({ fact, value, family: false }));
  const open = parsed.problems.flatMap(({ fact, value }): Wanted[] =>
    fact === undefined || value === undefined ? [] : [{ fact, value, family: true }],
  );
  const all = [...told, ...open];
  const wanted = all.filter(({ fact }) => factsOfKind('anchor').includes(fact));
  return { names, wanted, language, only: wanted.length === all.length && parsed.unknownWords.length === 0 };
}

async function found(
  tools: Tools,
  said: Said,
  anchors: readonly ClubRecord[],
  { names, wanted, language }: Sought,
): Promise<Recorded> {
  const fitting = anchors.filter(
    ({ body }) =>
      names.every((name) => isAt(body, name)) &&
      wanted.every((one) => fits(tools.rules, one, body.facts[one.fact])),
  );
  const what: Phrase = {
    say: 'line',
    with: { text: listed([...names, ...(wanted.length > 0 ? [nameOfWanted(tools.rules, wanted)] : [])]) },
  };
  const more = fitting.length - mostListed;
  const lines: Phrase[] =
    fitting.length === 0
      ? [{ say: 'register-no-match', with: { what, count: anchors.length } }]
      : [
          { say: 'register-found', with: { what, count: fitting.length } },
          ...fitting.slice(0, mostListed).map(anchorLine),
          ...(more > 0 ? [{ say: 'register-more', with: { count: more } }] : []),
        ];
  return saying(tools, said.session, lines, { topic: 'register', language });
}

const wordsIn = (text: string): number => foldedName(text).split(' ').filter(Boolean).length;

/** "Anchors on Gannet Slab", "all zinc plated": null where it names nothing of this register. */
async function lookUp(
  tools: Tools,
  said: Said,
  anchors: readonly ClubRecord[],
  text: string,
): Promise<Recorded | null> {
  const { find, all } = tools.ears.expressions.register;
  const asked = around(text, find);
  const every = around(text, all);
  if (asked !== undefined && wordsIn(asked.before) <= 1) {
    const sought = await soughtIn(tools, said, anchors, asked.after);
    const beside = wordsIn(namesIn(anchors, asked.after).rest);
    if (sought.names.length > 0 && beside <= mostBeside + sought.wanted.length * 2)
      return found(tools, said, anchors, sought);
  }
  if (every === undefined || every.before !== '' || wordsIn(every.after) > 2 * mostBeside) return null;
  const sought = await soughtIn(tools, said, anchors, every.after);
  const filters = sought.names.length + sought.wanted.length;
  return filters > 0 && sought.only ? found(tools, said, anchors, sought) : null;
}

/** Begins an entry where the words tell of an anchor; an open record comes first. */
async function begun(tools: Tools, said: Said, opened: string): Promise<Recorded | null> {
  if (opened === '' || opened.includes('?')) return null;
  const { told, texts, wrong } = await hearTold(tools, opened, said, emptyBody, null, 'anchor');
  if (told.length + Object.keys(texts).length + wrong.length === 0) return null;
  const { draft } = said.session;
  if (draft !== null) return goOn(tools, said.session, draft, { lines: [{ say: 'record-open-first' }] });
  return begin(tools, said, opened, 'anchor');
}

/** A message about the register; null where it is about something else. */
export async function aboutRegister(tools: Tools, said: Said, text: string): Promise<Recorded | null> {
  const { first, find, all } = tools.ears.expressions.register;
  const opened = opensAnchor(tools, text);
  if (opened === undefined && /^\s*\//.test(text)) return null;
  const looksUp = around(opened ?? text, find)?.before === '';
  // The register is read only for a message that may be about it: there are many, and it may be long.
  const has = (words: readonly string[]): boolean => around(text, words) !== undefined;
  const mayBe = has(first) || has(find) || around(text, all)?.before === '';
  if (opened === undefined && !mayBe) return null;
  const anchors = await anchorsOf(tools, said);
  if (anchors.length > 0) {
    if (around(text, first) !== undefined) return rankedFirst(tools, said, anchors);
    const looked =
      opened === undefined || looksUp ? await lookUp(tools, said, anchors, opened ?? text) : null;
    if (looked !== null) return looked;
  }
  if (opened === undefined) return null;
  const entry = await begun(tools, said, opened);
  return entry ?? (isRegisterCommand(text) ? overview(tools, said, anchors) : null);
}

/** A message that was understood as one about the register: an entry, a look-up, or what there is. */
export async function registerAsked(tools: Tools, said: Said, text: string): Promise<Recorded> {
  const anchors = await anchorsOf(tools, said);
  const heard = await hearTold(tools, text, said, emptyBody, null, 'anchor');
  const sized = heard.told.some(({ fact }) => fact === 'anchor' || fact === 'diameter_mm');
  if (sized && !text.includes('?')) {
    const entry = await begun(tools, said, text);
    if (entry !== null) return entry;
  }
  const sought = await soughtIn(tools, said, anchors, text);
  return anchors.length > 0 && sought.names.length + sought.wanted.length > 0
    ? found(tools, said, anchors, sought)
    : overview(tools, said, anchors);
}
