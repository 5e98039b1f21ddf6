/** Short expressions that steer the talk rather than tell a fact: rules/words/talk.json. */
import { z } from 'zod';
import type { Units } from '../contracts/session.ts';
import { plain } from '../units/plain.ts';

const list = z.array(z.string().min(2)).min(6);

export const expressionsSchema = z.strictObject({
  about: z.string(),
  units: z.strictObject({ metric: list, imperial: list }),
  rooms: z.strictObject({ here: list, everywhere: list }),
  refers: z.strictObject({ other: list, shade: list }),
  records: z.strictObject({
    keep: list,
    drop: list,
    withdraw: list,
    history: list,
    ours: list,
    longer: list,
    against: list,
    export: list,
    pulled: list,
    stopped: list,
  }),
  register: z.strictObject({
    begin: list,
    find: list,
    all: list,
    export: list,
    first: list,
    position: list,
    at: z.array(z.string().min(1)).min(6),
    sector: list,
    route: list,
    batch: list,
    by: list,
    set: list,
    sensitive: list,
    notSensitive: list,
  }),
});

export type Expressions = z.infer<typeof expressionsSchema>;
export type Refers = keyof Expressions['refers'];

/** Small letters without accents, one blank between words: as people type them. */
const asTyped = (text: string): string =>
  plain(text)
    .replaceAll(/[’`]/g, "'")
    .replaceAll(/[^\p{L}\p{N}'/.,]+/gu, ' ')
    .trim();

/** The lists are the same for every message: made plain once. */
const madePlain = new WeakMap<readonly string[], readonly string[]>();

function plainList(expressions: readonly string[]): readonly string[] {
  const known = madePlain.get(expressions) ?? expressions.map(asTyped);
  madePlain.set(expressions, known);
  return known;
}

/** Where the longest of these expressions stands in a text, as whole words. */
function find(text: string, expressions: readonly string[]): { from: number; to: number } | undefined {
  const places = plainList(expressions).flatMap((words) => {
    const from = ` ${text} `.indexOf(` ${words} `);
    return from < 0 ? [] : [{ from, to: from + words.length }];
  });
  return places.toSorted((a, b) => b.to - b.from - (a.to - a.from))[0];
}

/** What is left of a text when an expression is taken out, or undefined where it is not in it. */
function without(text: string, expressions: readonly string[]): string | undefined {
  const bare = asTyped(text.replaceAll(/[?!.,;:]+(\s|$)/g, ' '));
  const found = find(bare, expressions);
  return found === undefined ? undefined : `${bare.slice(0, found.from)} ${bare.slice(found.to)}`.trim();
}

/** What stands before and after the longest of these expressions; undefined where none is in the text. */
export function around(
  text: string,
  expressions: readonly string[],
): { readonly before: string; readonly after: string } | undefined {
  const bare = asTyped(text.replaceAll(/[?!.,;:]+(\s|$)/g, ' '));
  const found = find(bare, expressions);
  return found === undefined
    ? undefined
    : { before: bare.slice(0, found.from).trim(), after: bare.slice(found.to).trim() };
}

const filler = 3;

/** "inches please", "/units metric": a message that asks for units and little else. */
export function unitsAsked(expressions: Expressions, text: string): Units | undefined {
  const asked = text.replace(/^\s*\/units(@\w+)?/i, '');
  if (/^\s*\//.test(asked)) return undefined;
  for (const units of ['metric', 'imperial'] as const) {
    const rest = without(asked, expressions.units[units]);
    const left = rest?.split(' ').filter((word) => word !== '').length ?? Number.POSITIVE_INFINITY;
    if (left < filler && !/\d/.test(asked)) return units;
  }
  return undefined;
}

export interface Referring {
  readonly refers: Refers;
  /** The message without the expression. */
  readonly rest: string;
}

/** "And the other one?": words that point at the last answer. Only short messages do that. */
export function referring(expressions: Expressions, text: string): Referring | undefined {
  if (text.length > 80) return undefined;
  for (const refers of ['other', 'shade'] as const) {
    const rest = without(text, expressions.refers[refers]);
    if (rest !== undefined && rest.split(' ').length <= 5) return { refers, rest };
  }
  return undefined;
}

export interface SensitiveAsked {
  readonly name: string;
  readonly on: boolean;
}

/** "Sensitive Gannet Slab", "not sensitive Gannet Slab". */
export function sensitiveAsked({ register }: Expressions, text: string): SensitiveAsked | undefined {
  for (const [on, words] of [
    [false, register.notSensitive],
    [true, register.sensitive],
  ] as const) {
    const lead = words.find((one) => asTyped(text).startsWith(`${asTyped(one)} `));
    const name = lead === undefined ? '' : text.trim().split(/\s+/).slice(lead.split(' ').length).join(' ');
    const clean = name
      .replaceAll(/[\p{Cc}\p{Cf}]/gu, '')
      .replace(/^[:,\s]+/, '')
      .trim();
    if (/\p{L}/u.test(clean)) return { name: clean.slice(0, 60), on };
  }
  return undefined;
}

export interface SettingsAsked {
  readonly language?: string;
  readonly units?: Units;
  readonly rooms?: 'here' | 'everywhere';
  /** What is left, to be understood as facts. */
  readonly rest: string;
}

/** "español, inches, only here, soft sandstone": what is no fact of a crag is taken out first. */
export function settingsIn(
  expressions: Expressions,
  languages: ReadonlyMap<string, string>,
  text: string,
): SettingsAsked {
  let asked: SettingsAsked = { rest: '' };
  const rest: string[] = [];
  for (const part of text.split(/[,;\n]+/).map((one) => one.trim())) {
    if (part === '') continue;
    const language = part.length > 2 ? languages.get(part.toLowerCase()) : undefined;
    const units = unitsAsked(expressions, part);
    const room = (['here', 'everywhere'] as const).find(
      (one) => without(part, expressions.rooms[one]) !== undefined,
    );
    if (language !== undefined) asked = { ...asked, language };
    else if (units !== undefined) asked = { ...asked, units };
    else if (room !== undefined) asked = { ...asked, rooms: room };
    else rest.push(part);
  }
  return { ...asked, rest: rest.join(', ') };
}
