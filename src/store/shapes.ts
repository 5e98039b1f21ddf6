/** How what is kept looks in the database. A row of another shape (an older program) is not guessed at. */
import { z } from 'zod';
import type { Draft, RecordBody } from '../contracts/record.ts';
import type { Rendered } from '../contracts/reply.ts';
import type { ClubSettings, Session } from '../contracts/session.ts';

export interface Tables {
  talks: { chat: string; room: string; member: string; body: string; updated: string };
  clubs: { chat: string; facts: string; settings: string | null };
  claims: { claim: string; at: string };
  outbox: { id: string; platform: string; address: string; body: string; at: string };
  chats: { chat: string; platform: string; joined: string; paused: number };
  records: {
    chat: string;
    id: string;
    kind: string;
    author: string | null;
    at: string;
    version: number;
    withdrawn: number;
    body: string;
  };
  record_steps: {
    chat: string;
    id: string;
    version: number;
    did: string;
    member: string | null;
    at: string;
    body: string;
  };
}

const value = z.union([z.string(), z.number(), z.array(z.number())]);
const from = z.enum(['said', 'assumed', 'club', 'map', 'measured']);
const units = z.enum(['metric', 'imperial']).nullable();

const factsSchema = z.record(z.string(), value);
const settingsSchema = z.strictObject({
  language: z.string().nullable(),
  units,
  rooms: z.array(z.string()),
  sensitive: z.array(z.string()).default([]),
});

const bodySchema: z.ZodType<RecordBody> = z.strictObject({
  facts: factsSchema,
  texts: z.record(z.string(), z.string()),
});

const kind = z.enum(['test', 'anchor', 'inspection']);
const seen = { kind, id: z.string(), version: z.number().int() };
const draftSchema: z.ZodType<Draft> = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('add'), kind, body: bodySchema }),
  z.strictObject({ do: z.literal('correct'), ...seen, before: bodySchema, body: bodySchema }),
  z.strictObject({ do: z.literal('withdraw'), ...seen, body: bodySchema }),
  z.strictObject({ do: z.literal('import'), kind, bodies: z.array(bodySchema) }),
]);

const sessionSchema: z.ZodType<Session> = z.strictObject({
  turn: z.number().int(),
  entries: z.array(z.strictObject({ turn: z.number().int(), fact: z.string(), value, from })),
  topics: z.array(z.strictObject({ turn: z.number().int(), topic: z.string() })),
  pending: z.string().nullable(),
  asked: z.array(z.string()),
  language: z.string().nullable(),
  units: units.default(null),
  either: z
    .strictObject({ fact: z.string(), values: z.array(z.string()) })
    .nullable()
    .default(null),
  at: z.string().nullable(),
  answered: z
    .strictObject({ topic: z.string(), facts: z.record(z.string(), z.strictObject({ value, from })) })
    .nullable(),
  draft: draftSchema.nullable().default(null),
});

/** The conversation starts afresh where its row cannot be read. */
export function sessionIn(body: string): Session | null {
  const parsed = sessionSchema.safeParse(JSON.parse(body));
  return parsed.success ? parsed.data : null;
}

export function clubIn(row: { facts: string; settings: string | null }): ClubSettings {
  const facts = factsSchema.safeParse(JSON.parse(row.facts));
  const settings = settingsSchema.safeParse(JSON.parse(row.settings ?? 'null'));
  return {
    facts: facts.success ? facts.data : {},
    ...(settings.success ? settings.data : { language: null, units: null, rooms: [], sensitive: [] }),
  };
}

/** The program's own rows of minutes ago: only their outline is looked at. */
const renderedSchema = z.looseObject({
  reply: z.looseObject({ text: z.string(), choices: z.array(z.unknown()), files: z.array(z.unknown()) }),
  groups: z.array(z.array(z.strictObject({ text: z.string(), first: z.boolean() }))),
});

export function renderedIn(body: string): Rendered | null {
  const parsed = renderedSchema.safeParse(JSON.parse(body));
  return parsed.success ? (parsed.data as unknown as Rendered) : null;
}

/** A record that cannot be read is a fault of the store, and is never passed over silently. */
export const recordBodyIn = (body: string): RecordBody => bodySchema.parse(JSON.parse(body));
