/** Costs of several metals: the choices in the order said, and each number with the metal that it stands beside. */
import type { Mention } from './mention.ts';
import type { Found, Problem } from './parsed.ts';
import type { Reading } from './reading.ts';

const OPTIONS = ['option_1', 'option_2', 'option_3'] as const;
const NUMBERS = ['unit_cost', 'labour_cost', 'life_years'] as const;

export interface Told {
  readonly found: readonly Found[];
  readonly problems: readonly Problem[];
}

const inOrder = (mentions: readonly Mention[]): Mention[] => [...mentions].sort((a, b) => a.from - b.from);

/** A family ("stainless") counts as one choice unless a kind of it was named. */
function metalsIn(mentions: readonly Mention[]): Mention[] {
  const said = inOrder(mentions.filter(({ fact, denied, hedged }) => fact === 'metal' && !denied && !hedged));
  return said.filter(
    ({ family }) =>
      family === undefined ||
      !said.some((other) => other.family === undefined && family.includes(String(other.value))),
  );
}

/** The metal that each number belongs to: all stand before their numbers, or all behind; undefined if neither fits. */
function bound(
  numbers: readonly Mention[],
  metals: readonly Mention[],
  sentenceOf: (mention: Mention) => number | undefined,
): readonly string[] | undefined {
  const between = (from: number, to: number): boolean =>
    numbers.some((number) => number.from >= from && number.to <= to);
  const before = (number: Mention) => metals.findLast(({ to }) => to <= number.from);
  const after = (number: Mention) => metals.find(({ from }) => from >= number.to);
  for (const side of [before, after]) {
    const found = numbers.map((number) => {
      const metal = side(number);
      if (metal === undefined || sentenceOf(metal) !== sentenceOf(number)) return undefined;
      const [from, to] = metal.to <= number.from ? [metal.to, number.from] : [number.to, metal.from];
      return between(from, to) ? undefined : String(metal.value);
    });
    const sure = found.flatMap((one) => one ?? []);
    if (sure.length === numbers.length && new Set(sure).size === sure.length) return sure;
  }
  return undefined;
}

/** Undefined where fewer than two metals are named: then the message tells of one anchor. */
export function readOptions({ mentions, words, clean }: Reading, told: Told): Told | undefined {
  const textOf = (from: number, to: number): string => clean.slice(words[from]?.start, words[to - 1]?.end);
  const metals = metalsIn(mentions);
  const names = [...new Set(metals.map(({ value }) => String(value)))].slice(0, OPTIONS.length);
  if (names.length < 2) return undefined;
  const rows = NUMBERS.map((fact) => {
    const numbers = inOrder(mentions.filter((one) => one.fact === fact && typeof one.value === 'number'));
    return {
      fact,
      numbers,
      of: numbers.length === 0 ? undefined : bound(numbers, metals, ({ from }) => words[from]?.sentence),
    };
  });
  const own = rows.filter(({ fact }) => fact !== 'labour_cost');
  const known = (name: string): number => own.filter(({ of }) => of?.includes(name)).length;
  const order = names.toSorted((a, b) => known(b) - known(a));
  const found: Found[] = told.found.filter(
    ({ fact }) => fact !== 'metal' && !(NUMBERS as readonly string[]).includes(fact),
  );
  const problems: Problem[] = told.problems.filter(({ fact }) => fact !== 'metal');
  order.forEach((name, index) => {
    const mention = metals.find(({ value }) => value === name);
    const fact = OPTIONS[index];
    if (mention === undefined || fact === undefined) return;
    const text = textOf(mention.from, mention.to);
    if (mention.family === undefined) found.push({ fact, value: name, text });
    else problems.push({ kind: 'ambiguous', fact, value: name, text });
  });
  for (const { fact, numbers, of } of rows) {
    const [first, last] = [numbers[0], numbers.at(-1)];
    if (first === undefined || last === undefined) continue;
    const text = textOf(first.from, last.to);
    const said = numbers.map(({ value }) => Number(value));
    const each = said.length === 1 && (of === undefined || fact === 'labour_cost');
    // As said, the numbers follow the metals as said, wherever those stand in the end.
    const owner = of ?? names;
    const values = each
      ? order.map(() => said[0] ?? 0)
      : order.flatMap((name) => (owner.includes(name) ? (said[owner.indexOf(name)] ?? []) : []));
    // A number of the second choice alone has no place in a row that begins with the first.
    const inPlace =
      each ||
      order.slice(0, said.length).every((name) => owner.indexOf(name) < said.length && owner.includes(name));
    if (inPlace) found.push({ fact, value: values.length === 1 ? (values[0] ?? 0) : values, text });
  }
  return { found, problems };
}
