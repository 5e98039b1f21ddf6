/** Tables of records: a file or a paste read row by row and kept only when confirmed; all records as a file to take away. */
import { setImmediate as pause } from 'node:timers/promises';
import type { Phrase } from '../../contracts/phrase.ts';
import type { ClubRecord, Draft, RecordBody } from '../../contracts/record.ts';
import { placeOf, sheltered } from '../../field/index.ts';
import { anchorLayout, type Layout, testLayout } from '../../field/table/layout.ts';
import { mostBytes, type OpenTable, openTable, textOf } from '../../field/table/open.ts';
import { type Know, readRow } from '../../field/table/row.ts';
import { writeTable } from '../../field/table/write.ts';
import type { Understand } from '../hear.ts';
import { confirmChoices, type Recorded, type Said, saying, type Tools, topicOfKind } from './context.ts';
import { goOn } from './drafting.ts';
import { recordingIn } from './recordings.ts';

/** Told in an answer; the rest is counted. */
const mostTold = 10;
/** Words that no language knows cost the most: after so many, others like them are not tried. */
const mostUnknown = 200;
const longestWord = 60;
const rowsAtOnce = 200;

/** Enough to see the heading of a table that is too large. */
const headBytes = 8192;

type SentFile = NonNullable<Said['message']['file']>;

const isNamedTable = (name: string): boolean => /\.(csv|tsv|txt)$/i.test(name);

/** A value in the words of any language; the member's own first. */
function knower(tools: Tools, own: string): Know {
  const known = new Map<string, string | null>();
  let unknown = 0;
  const { ears } = tools;
  const codes = [own, ...ears.codes.filter((code) => code !== own)];
  const one = (understand: Understand, language: string, fact: string, text: string): string | null => {
    const { found, act, unknownFacts, problems } = understand(text, { language, pending: fact });
    if (act === 'dont-know' || unknownFacts.includes(fact)) return 'unknown';
    const values = [...new Set(found.filter((told) => told.fact === fact).map(({ value }) => value))];
    const [value] = values;
    return values.length === 1 && typeof value === 'string' && problems.length === 0 ? value : null;
  };
  return async (fact, text) => {
    const key = `${fact} ${text}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    if (text.length > longestWord || unknown >= mostUnknown) return null;
    let value: string | null = null;
    for (const code of codes) value ??= one(await ears.understand(code), code, fact, text);
    if (value === null) unknown += 1;
    known.set(key, value);
    return value;
  };
}

interface RowsRead {
  readonly bodies: readonly RecordBody[];
  readonly bad: readonly Phrase[];
  /** Rows that are records of this chat already. */
  readonly there: number;
}

const same = (body: RecordBody): string =>
  JSON.stringify([Object.entries(body.facts).toSorted(), Object.entries(body.texts).toSorted()]);

/** Rows of anchors that are at one place with another row or with an anchor that is there; null for the rest. */
function twiceAtOnePlace(
  standing: readonly ClubRecord[],
): (body: RecordBody, number: number) => Phrase | null {
  const taken = new Map<string, Phrase>();
  for (const { id, body } of standing) {
    const place = placeOf(body);
    if (place !== null) taken.set(place, { say: 'register-row-twice', with: { id } });
  }
  return (body, number) => {
    const place = placeOf(body);
    const there = place === null ? undefined : taken.get(place);
    if (place !== null) taken.set(place, there ?? { say: 'register-row-same', with: { number } });
    return there ?? null;
  };
}

async function readRows(tools: Tools, said: Said, table: OpenTable, layout: Layout): Promise<RowsRead> {
  const standing = await tools.records.list(said.message.chat, layout.kind);
  const twice = layout.kind === 'anchor' ? twiceAtOnePlace(standing) : () => null;
  const byId = new Map(standing.map((record) => [record.id, record]));
  const count = new Map<string, number>();
  for (const { body } of standing) count.set(same(body), (count.get(same(body)) ?? 0) + 1);
  const bodies: RecordBody[] = [];
  const bad: Phrase[] = [];
  let there = 0;
  const options = { now: said.at, know: knower(tools, said.own) };
  for (const { number, cells } of table.rows) {
    // Other chats are answered in between.
    if (number % rowsAtOnce === 0) await pause();
    const row = await readRow(tools.rules, layout, table.columns, cells, options);
    if (row.kind === 'bad') {
      bad.push({ say: 'table-row', with: { number, why: row.why } });
      continue;
    }
    const read = { ...row, body: sheltered(tools.sensitive, row.body) };
    const own = read.id === null ? undefined : byId.get(read.id);
    const left = count.get(same(read.body)) ?? 0;
    if (left > 0) {
      count.set(same(read.body), left - 1);
      there += 1;
    } else if (own !== undefined)
      bad.push({
        say: 'table-row',
        with: { number, why: { say: 'table-row-differs', with: { id: own.id } } },
      });
    else {
      const why = twice(read.body, number);
      if (why === null) bodies.push(read.body);
      else bad.push({ say: 'table-row', with: { number, why } });
    }
  }
  return { bodies, bad, there };
}

function rowLines(table: OpenTable, { bodies, bad, there }: RowsRead): readonly Phrase[] {
  return [
    { say: 'table-read', with: { rows: table.rows.length, good: bodies.length, bad: bad.length } },
    ...(there > 0 ? [{ say: 'table-there', with: { count: there } }] : []),
    ...(table.left.length > 0
      ? [{ say: 'table-left', with: { names: table.left.slice(0, mostTold).join(', ') } }]
      : []),
    ...bad.slice(0, mostTold),
    ...(bad.length > mostTold ? [{ say: 'table-rows-more', with: { count: bad.length - mostTold } }] : []),
  ];
}

const loadOf = ({ facts }: RecordBody): number => (typeof facts.load_kn === 'number' ? facts.load_kn : 0);

function rangeLine(bodies: readonly RecordBody[]): Phrase {
  const loads = bodies.map(loadOf);
  const measure = (value: number) => ({ value, unit: 'kN', exact: true });
  const [least, most] = [loads.reduce((a, b) => Math.min(a, b)), loads.reduce((a, b) => Math.max(a, b))];
  return { say: 'table-range', with: { least: measure(least), most: measure(most) } };
}

async function offered(tools: Tools, said: Said, table: OpenTable, layout: Layout): Promise<Recorded> {
  const topic = topicOfKind(layout.kind);
  const { session } = said;
  if (session.draft !== null)
    return goOn(tools, session, session.draft, { lines: [{ say: 'record-open-first' }] });
  const read = await readRows(tools, said, table, layout);
  const lines = rowLines(table, read);
  if (read.bodies.length === 0)
    return saying(tools, session, [...lines, { say: 'table-nothing' }], { topic });
  const draft: Draft = { do: 'import', kind: layout.kind, bodies: read.bodies };
  return saying(
    tools,
    { ...session, turn: session.turn + 1, draft, pending: null },
    [
      ...lines,
      ...(layout.kind === 'test' ? [rangeLine(read.bodies)] : []),
      { say: 'table-ready', with: { count: read.bodies.length } },
    ],
    { choices: confirmChoices(draft), topic },
  );
}

/** A file or a paste that is a table of pulls; null where it is something else. */
export async function tableIn(tools: Tools, said: Said): Promise<Recorded | null> {
  const { file, text } = said.message;
  if (file === undefined && !text?.includes('\n')) return null;
  if (file !== undefined) return fileIn(tools, said, file);
  return text === undefined || text.length > mostBytes ? null : openedTable(tools, said, text);
}

/** A table of pulls or of anchors, told apart by its heading. */
async function openedTable(tools: Tools, said: Said, content: string): Promise<Recorded | null> {
  for (const layout of [testLayout, anchorLayout]) {
    const opened = openTable(tools.rules, tools.ears.tables, layout, content);
    if (opened.kind === 'refused')
      return saying(tools, said.session, [opened.why], { topic: topicOfKind(layout.kind) });
    if (opened.kind === 'table') return offered(tools, said, opened.table, layout);
  }
  return null;
}

/** The content tells a table, whose heading is known, from the recording of a load cell. */
async function fileIn(tools: Tools, said: Said, file: SentFile): Promise<Recorded | null> {
  const bytes = Buffer.from(file.base64, 'base64');
  const named = isNamedTable(file.name);
  if (named && bytes.length <= mostBytes) {
    const content = textOf(bytes);
    const table = content === null ? null : await openedTable(tools, said, content);
    if (table !== null) return table;
  } else if (named) {
    const head = textOf(bytes.subarray(0, headBytes));
    const isTable =
      head !== null &&
      [testLayout, anchorLayout].some(
        (layout) => openTable(tools.rules, tools.ears.tables, layout, head).kind !== 'other',
      );
    if (isTable) return saying(tools, said.session, [{ say: 'table-too-large' }]);
  }
  return recordingIn(tools, said, file.name, bytes, named);
}

/** Every standing record of a kind in the chat, as a file. */
export async function exported(tools: Tools, said: Said, layout: Layout = testLayout): Promise<Recorded> {
  const anchors = layout.kind === 'anchor';
  const topic = topicOfKind(layout.kind);
  const records: readonly ClubRecord[] = await tools.records.list(said.message.chat, layout.kind);
  if (records.length === 0)
    return saying(tools, said.session, [{ say: anchors ? 'register-none' : 'ours-none' }], { topic });
  const csv = writeTable(tools.rules, tools.ears.tables, layout, records, said.own);
  const file = {
    name: `${anchors ? 'anchors' : 'pull-tests'}-${said.at.slice(0, 10)}.csv`,
    mime: 'text/csv',
    base64: Buffer.from(csv, 'utf8').toString('base64'),
    alt: { say: anchors ? 'register-exported' : 'table-exported', with: { count: records.length } },
  };
  return saying(tools, said.session, [file.alt, { say: 'table-exported-how' }], { files: [file], topic });
}
