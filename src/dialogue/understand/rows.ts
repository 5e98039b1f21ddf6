/** Rows of test results: which numbers are the loads of one group, of a second one, or of pulls that were stopped. */
import type { Language } from './compile.ts';
import { dimensionOf } from './measure.ts';
import type { PhraseTree, Word } from './phrases.ts';
import { endingAt, type Quantity } from './quantities.ts';
import type { Item } from './sizes.ts';

export interface ResultRow {
  readonly fact: string;
  readonly quantities: readonly Quantity[];
  /** The unit that was said once for the whole row. */
  readonly unit: string | null;
  /** "Two stopped at 25": so many times the one number. */
  readonly times: number;
}

export interface Results {
  readonly rows: readonly ResultRow[];
  /** Numbers that are part of a row or count one: no facts of their own. */
  readonly claimed: ReadonlySet<Quantity>;
}

interface Group {
  readonly quantities: readonly Quantity[];
  /** The number before it that counts it. */
  readonly counter: Quantity | null;
  readonly cue: 'stopped' | 'failed' | null;
}

/** Fewer numbers than this are a row only beside another one, or as the answer to the question. */
const SHORTEST_ROW = 3;
const MOST_COUNTED = 50;
const RESULTS: ReadonlySet<string> = new Set(['pulls_kn', 'pulls_other_kn', 'stopped_kn']);
const none: Results = { rows: [], claimed: new Set() };

/** "Five bolts" are counted; a load is written in digits and no noun follows it. */
const isLoad = (quantity: Quantity, words: readonly Word[], language: Language): boolean => {
  const { unit, thread, fraction, negative, inWords, low, high, to } = quantity;
  const plain = !thread && !fraction && !negative && low === high;
  if (!plain || !['bare', 'force'].includes(dimensionOf(unit))) return false;
  // "Series 2: 18, 21": the number names the row.
  if (unit === null && words[to]?.text === ':' && words[quantity.from - 1]?.kind === 'word') return false;
  if (counts(quantity, words, language)) return true;
  // "Bolt 4, 19.5 kN": a number right behind the bolt is its name or its size.
  const before = language.roles.longest(words, quantity.from - 1);
  const named =
    unit === null && before?.said.some(({ role, side }) => role === 'size' && side === 'after') === true;
  return !named && !inWords && language.plural.longest(words, to) === null;
};

/** Where the last of such words ends, -1 if there is none. */
const isIn = (tree: PhraseTree<true>, words: readonly Word[], from: number, to: number): boolean =>
  lastOf(tree, words, from, to) >= 0;

const lastOf = (tree: PhraseTree<true>, words: readonly Word[], from: number, to: number): number =>
  words.slice(from, to).reduce((last, _, index) => {
    const end = tree.longest(words, from + index)?.to ?? -1;
    return end <= to ? Math.max(last, end) : last;
  }, -1);

function joins(a: Quantity, b: Quantity, words: readonly Word[], language: Language): boolean {
  const between = words.slice(a.to, b.from);
  return between.length === 0 || (between.length <= 2 && language.list.covers(between));
}

/** "20, 22, 21 kN and 25, 27, 26 kN": a unit said once for a whole row ends it. */
const startsAnew = (row: readonly Quantity[], load: Quantity, next: Quantity | undefined): boolean =>
  row.length > 1 &&
  row[0]?.unit === null &&
  row.at(-1)?.unit != null &&
  load.unit === null &&
  next !== undefined;

/** "Two stopped at …", "3 of them failed at …": it counts what follows. */
function counts(quantity: Quantity, words: readonly Word[], language: Language): boolean {
  const { low, unit, from, to, inWords } = quantity;
  if (unit !== null || !Number.isInteger(low) || low > MOST_COUNTED) return false;
  // "Bei 20 gestoppt" is a load.
  if (endingAt(language.timed, words, from) !== null) return false;
  const mark = words.findIndex(({ kind }, at) => at >= to && kind === 'mark');
  const end = Math.min(mark < 0 ? words.length : mark, to + 6);
  if (inWords && isIn(language.stopped, words, to, end)) return true;
  const filler = language.fillers.longest(words, to)?.to ?? to;
  return [to, filler, filler + 1].some(
    (at) => language.stopped.longest(words, at) !== null || language.failed.longest(words, at) !== null,
  );
}

function groupsOf(loads: readonly Quantity[], words: readonly Word[], language: Language): Group[] {
  const groups: Group[] = [];
  let row: Quantity[] = [];
  let counter: Quantity | null = null;
  let from = 0;
  const close = (next = words.length): void => {
    const [first] = row;
    if (first) {
      // "25 without failing, the others failed at 21": the nearer word counts.
      const stopped = lastOf(language.stopped, words, from, first.from);
      const failed = lastOf(language.failed, words, from, first.from);
      const last = row.at(-1)?.to ?? first.to;
      const mark = words.findIndex(({ kind }, at) => at >= last && kind === 'mark');
      // "Zwei bei 20 gestoppt": some languages say it behind the loads.
      const behind = Math.min(next, mark < 0 ? words.length : mark, last + 3);
      const told = Math.max(stopped, failed) >= 0;
      const cue = isIn(language.stopped, words, last, behind)
        ? 'stopped'
        : !told
          ? null
          : stopped >= failed
            ? 'stopped'
            : 'failed';
      groups.push({ quantities: row, counter, cue });
      from = row.at(-1)?.to ?? from;
      counter = null;
    }
    row = [];
  };
  for (const [index, load] of loads.entries()) {
    const last = row.at(-1);
    if (counts(load, words, language)) {
      close(load.from);
      counter = load;
      from = load.to;
      continue;
    }
    if (last && !(joins(last, load, words, language) && !startsAnew(row, load, loads[index + 1])))
      close(load.from);
    row.push(load);
  }
  close();
  return groups;
}

export function readRows(
  items: readonly Item[],
  words: readonly Word[],
  language: Language,
  pending: string | undefined,
): Results {
  const loads = items.flatMap((item) =>
    item.kind === 'quantity' && isLoad(item.quantity, words, language) ? [item.quantity] : [],
  );
  const groups = groupsOf(loads, words, language);
  const answering = pending !== undefined && RESULTS.has(pending);
  const inForce = loads.some(({ unit }) => unit !== null);
  const spoken = lastOf(language.failed, words, 0, words.length) >= 0;
  // Two loads beside a word of giving way are a short row; two bare numbers may be anything.
  const shortest = spoken && inForce ? SHORTEST_ROW - 1 : SHORTEST_ROW;
  // "Bolt 12, 25 kN" is a size and a load.
  const listed = ([first, second, third]: readonly Quantity[]): boolean =>
    third !== undefined || first?.unit != null || words[first?.to ?? 0]?.text !== ',' || second === undefined;
  const isLong = (row: readonly Quantity[]): boolean => row.length >= shortest && listed(row);
  const long = groups.filter(({ quantities }) => isLong(quantities));
  const cued = groups.filter(({ cue }) => cue !== null);
  const rowsThere = long.length > 1 || (long.length === 1 && (inForce || spoken));
  if (!answering && !rowsThere && !(cued.length > 1 && inForce)) return none;
  const rows: ResultRow[] = [];
  const claimed = new Set<Quantity>();
  const order = pending === 'pulls_other_kn' ? ['pulls_other_kn'] : ['pulls_kn', 'pulls_other_kn'];
  let next = 0;
  for (const { quantities, counter, cue } of groups) {
    const isRow = isLong(quantities) || cue !== null || (answering && groups.length === 1);
    if (!isRow) continue;
    const stopped = cue === 'stopped' || pending === 'stopped_kn';
    // A single failure beside a row belongs to it: "… and one failed at 12".
    const single = !stopped && next > 0 && (quantities.length < shortest || long.length === 1);
    const fact = stopped ? 'stopped_kn' : order[single ? next - 1 : next];
    if (fact === undefined) continue;
    if (!stopped && !single) next++;
    const unit = quantities.find((one) => one.unit !== null)?.unit ?? null;
    rows.push({ fact, quantities, unit, times: quantities.length === 1 ? (counter?.low ?? 1) : 1 });
    for (const one of counter === null ? quantities : [...quantities, counter]) claimed.add(one);
  }
  return { rows, claimed };
}
