/** What a message tells of one pull: facts, words, and the day. Assumed readings do not count: a record holds what was said. */
import type { FactValue } from '../../contracts/facts.ts';
import type { Phrase } from '../../contracts/phrase.ts';
import type { RecordBody, RecordKind } from '../../contracts/record.ts';
import { type Entry, emptySession, type Session } from '../../contracts/session.ts';
import { dayIn, isFuture, textsOfKind } from '../../field/index.ts';
import { columnNamed } from '../../field/table/words.ts';
import { isTestFact, modeOfRow } from '../../field/test-record.ts';
import { impossible } from '../../rules/index.ts';
import { type ForceUnit, forceUnits, toKn } from '../../units/convert.ts';
import { around } from '../expressions.ts';
import { type Heard, hear } from '../hear.ts';
import { localNow, type Read, readParsed } from '../read.ts';
import type { Parsed } from '../understand/index.ts';
import type { Tools } from './context.ts';

export interface ToldOfPull {
  readonly heard: Heard;
  readonly read: Read;
  readonly told: readonly { readonly fact: string; readonly value: FactValue }[];
  readonly texts: Readonly<Record<string, string>>;
  /** Why nothing of it can count. */
  readonly wrong: readonly Phrase[];
}

const longestText = 200;
const results = ['load_kn', 'pulls_kn', 'pulls_other_kn', 'stopped_kn'];

/** Without what a screen does not show. */
export const cleanText = (text: string): string =>
  text
    .replaceAll(/[\p{Cc}\p{Cf}]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim()
    .slice(0, longestText);

/** A talk in which only this record was told, to check what is new against it. */
export function talkOf(body: RecordBody, pending: string | null): Session {
  const entries = Object.entries(body.facts).map(
    ([fact, value]): Entry => ({ turn: 1, fact, value, from: 'said' }),
  );
  return { ...emptySession, turn: 1, entries, pending, topics: [{ turn: 1, topic: 'pulltest-record' }] };
}

/** "crag: Gull Wall, note: dust in the hole": words by their column; a note goes on to the end. */
export function textsIn(
  tools: Tools,
  text: string,
  kind: RecordKind,
): { rest: string; texts: Record<string, string> } {
  const texts: Record<string, string> = {};
  const wordColumn = (name: string): string | undefined => {
    const column = columnNamed(tools.ears.tables, name);
    return column !== 'day' && textsOfKind(kind).includes(column ?? '') ? column : undefined;
  };
  const rest: string[] = [];
  let note = false;
  for (const part of text.split(/(?<=[,;\n])/)) {
    const [, name = '', value = ''] = /^\s*([\p{L}' ]{2,30}?)\s*[:=]\s*(.+)$/su.exec(part) ?? [];
    const column: string | undefined = note ? undefined : wordColumn(name);
    if (note) texts.note = (texts.note ?? '') + part;
    else if (column === undefined) rest.push(part);
    else texts[column] = column === 'note' ? value : value.replace(/[,;\s]+$/, '');
    note ||= column === 'note';
  }
  const cleaned = Object.entries(texts).map(([id, value]) => [id, cleanText(value)]);
  return { rest: rest.join(''), texts: Object.fromEntries(cleaned) };
}

/** One load that stopped, or at which it gave way, is the load of this pull; of several it is not said which. */
function ofOnePull(read: Read, stoppedSaid: boolean): ToldOfPull['told'] | 'several' {
  if (read.kind !== 'told') return [];
  const told = read.entries.filter(({ from }) => from !== 'assumed');
  const value = (fact: string): FactValue | undefined => told.find((one) => one.fact === fact)?.value;
  const rows = ['pulls_kn', 'stopped_kn'].flatMap((fact): readonly number[] => {
    const row = value(fact);
    return typeof row === 'object' ? row : typeof row === 'number' ? [row] : [];
  });
  if (rows.length > 1 || (rows.length === 1 && value('load_kn') !== undefined)) return 'several';
  const facts = told
    .filter(({ fact }) => isTestFact(fact))
    .map(({ fact, value: of }) => ({ fact, value: of }));
  const [load] = rows;
  if (load !== undefined) facts.push({ fact: 'load_kn', value: load });
  const mode = modeOfRow[String(value('gave_way'))];
  const stopped = stoppedSaid || value('stopped_kn') !== undefined ? 'stopped' : undefined;
  const one = mode ?? stopped;
  if (one !== undefined && value('failure_mode') === undefined)
    facts.push({ fact: 'failure_mode', value: one });
  return facts;
}

const isForce = (unit: unknown): unit is ForceUnit => (forceUnits as readonly unknown[]).includes(unit);

/** Of one pull a force is its load, whatever stands beside it: "dry hole, 28.4 kN". */
export function withLoad(parsed: Parsed): Parsed {
  if (parsed.found.some(({ fact }) => results.includes(fact))) return parsed;
  const forces = parsed.problems.filter(
    ({ kind, detail, value }) =>
      kind === 'unit-mismatch' && isForce(detail?.unit) && typeof value === 'number',
  );
  const [force] = forces;
  const unit = force?.detail?.unit;
  if (forces.length !== 1 || force === undefined || !isForce(unit)) return parsed;
  const load = { fact: 'load_kn', value: toKn(Number(force.value), unit), text: force.text };
  const problems = parsed.problems.filter((problem) => problem !== force);
  return { ...parsed, found: [...parsed.found, load], problems };
}

export async function hearPull(
  tools: Tools,
  text: string,
  said: { readonly own: string; readonly at: string },
  body: RecordBody,
  pending: string | null,
): Promise<ToldOfPull> {
  const { rules, ears } = tools;
  const { rest, texts } = textsIn(tools, text, 'test');
  const day = dayIn(rest);
  const { parsed, language } = await hear(
    ears,
    day === undefined ? rest : rest.replace(day.text, ' '),
    said.own,
    {
      ...(pending === null ? {} : { pending }),
      topic: 'pulltest-record',
      now: said.at || localNow(),
    },
  );
  const heard: Heard = { language, parsed: withLoad(parsed) };
  const read = readParsed(rules, talkOf(body, pending), heard.parsed);
  const stopped = around(rest, ears.expressions.records.stopped) !== undefined;
  const told = ofOnePull(read, stopped);
  const wrong: Phrase[] = [];
  if (read.kind === 'notice' && heard.parsed.problems.length + heard.parsed.found.length > 0)
    wrong.push(...read.lines);
  if (told === 'several') wrong.push({ say: 'record-one-at-a-time' });
  if (day?.kind === 'no-day') wrong.push({ say: 'record-no-day', with: { text: day.text } });
  if (day?.kind === 'day' && isFuture(day.day, said.at))
    wrong.push({ say: 'record-future-day', with: { text: day.text } });
  const facts = told === 'several' ? [] : told;
  const load = facts.find(({ fact }) => fact === 'load_kn')?.value;
  if (load !== undefined && load !== 'unknown' && impossible(rules, 'pulls_kn', load))
    wrong.push({ say: 'record-load-impossible' });
  return {
    heard,
    read,
    told: facts,
    texts: day?.kind === 'day' ? { ...texts, day: day.day } : texts,
    wrong,
  };
}

/** So many words may stand before "pulled": "yesterday we pulled …". */
const mostBefore = 2;

/** "Pulled a 12x100 …, 36 kN": a message that opens with what was done tells of a pull of its own. */
export const opensPull = (tools: Tools, { found, act }: Parsed, text: string): boolean => {
  const first = around(text, tools.ears.expressions.records.pulled);
  const has = (fact: string): boolean => found.some((one) => one.fact === fact);
  const early = first !== undefined && first.before.split(' ').length <= mostBefore;
  return early && act !== 'correction' && has('load_kn') && has('diameter_mm');
};

/** A message that is to be written down: said so, or one load of one bolt with what gave way. */
export function tellsOfPull(tools: Tools, parsed: Parsed, text: string): boolean {
  const { topics, found, act } = parsed;
  const [topic] = topics;
  if (topic === 'pulltest-record') return true;
  if (topic === 'emergency' || topic === 'refuse' || act === 'correction' || text.includes('?')) return false;
  const has = (fact: string): boolean => found.some((one) => one.fact === fact);
  const stopped = around(text, tools.ears.expressions.records.stopped) !== undefined;
  const how = has('failure_mode') || has('gave_way') || stopped;
  return opensPull(tools, parsed, text) || (how && has('load_kn') && has('diameter_mm'));
}
