/** The shape of every file under rules/. Strict everywhere: a key that is not known is an error with its path. */
import { z } from 'zod';

const id = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._+-]*$/, 'use letters, digits, dots, hyphens and underscores');
const factId = z.string().regex(/^[a-z][a-z0-9_]*$/, 'use lower-case letters, digits and underscores');
const words = z.string().trim().min(1);
const day = z.iso.date();

// ---- facts.json -------------------------------------------------------------------------------------------

const labels = z.record(id, words).optional();
const shown = { id: factId, name: words, about: words.optional() };
const asked = { ask: words.optional(), whyAsked: words.optional() };
const told = {
  /** The fact it hangs on: when that one changes later, this one no longer holds. */
  of: factId.optional(),
  /** `message`: it says what this one message wants and is not carried on. */
  lasts: z.literal('message').optional(),
};

export const factSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('choice'),
    ...shown,
    ...asked,
    ...told,
    table: id.optional(),
    values: z.array(id).min(1).optional(),
    /** The values stand from worst to best. */
    ordered: z.boolean().optional(),
    /** A fact with a default is never unknown. */
    default: id.optional(),
    /** The default is an assumption that members should hear of. */
    tellDefault: z.boolean().optional(),
    /** What is taken, and said aloud, when nobody told it. */
    assume: id.optional(),
    labels,
  }),
  z.strictObject({
    kind: z.literal('number'),
    ...shown,
    ...asked,
    ...told,
    unit: words,
    /** Outside these limits a value is a slip of the keyboard, whatever the rock. */
    possible: z.tuple([z.number(), z.number()]),
    /** Facts that need not be asked for once this one is told: who knows the depth need not tell the length. */
    standsFor: z.array(factId).optional(),
    /** Several may be told at once: the results of a row of tests. */
    many: z.boolean().optional(),
  }),
  z.strictObject({
    kind: z.literal('derived'),
    ...shown,
    from: factId,
    column: words,
    values: z.array(id).min(1),
    ordered: z.boolean().optional(),
    labels,
  }),
  z.strictObject({
    kind: z.literal('band'),
    ...shown,
    from: factId,
    steps: z
      .array(
        z.union([
          z.strictObject({ below: z.number(), value: id }),
          z.strictObject({ upTo: z.number(), value: id }),
        ]),
      )
      .min(1),
    last: id,
    ordered: z.boolean().optional(),
    labels,
  }),
  z.strictObject({ kind: z.literal('outcome'), ...shown, decision: id, outcome: factId, labels }),
  z.strictObject({
    kind: z.literal('computed'),
    ...shown,
    values: z.array(id).min(1),
    ordered: z.boolean().optional(),
    labels,
  }),
]);

export const factsFileSchema = z.strictObject({
  about: words,
  facts: z.array(factSchema).min(1),
  relations: z.array(z.strictObject({ id, lessOrEqual: z.tuple([factId, factId]), words })),
});

// ---- tables/*.json ----------------------------------------------------------------------------------------

const columnSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('number'), about: words, unit: words.optional() }),
  /** Lowest and highest of what is found. */
  z.strictObject({ type: z.literal('range'), about: words, unit: words.optional() }),
  z.strictObject({ type: z.literal('text'), about: words }),
  /** One of the values of the derived fact that reads this column. */
  z.strictObject({ type: z.literal('choice'), about: words, values: z.array(id).min(1) }),
  z.strictObject({ type: z.literal('flag'), about: words }),
]);

export const tableFileSchema = z.strictObject({
  table: id,
  about: words,
  columns: z.record(factId, columnSchema),
  rows: z
    .array(
      z.strictObject({
        id,
        name: words,
        note: words.optional(),
        /** Rows of this table that are milder or better: the order that the safe direction is checked along. */
        worseThan: z.array(id).optional(),
        /** Facts that this row settles, unless somebody said otherwise. */
        implies: z.record(factId, id).optional(),
        /** Values of other facts that can go with this row; anything else is a contradiction to ask about. */
        allows: z.record(factId, z.array(id).min(1)).optional(),
        sources: z.array(id).min(1),
        /** The values of the columns. */
        is: z.record(
          factId,
          z.union([z.number(), z.string(), z.boolean(), z.tuple([z.number(), z.number()])]),
        ),
      }),
    )
    .min(1),
});

// ---- decisions/*.json -------------------------------------------------------------------------------------

const test = { fact: factId };
/**
 * `equal` and `in` name values; `orWorse` and `orBetter` go along an ordered fact. What is unknown counts as
 * worse and never as better, so a rule cannot read "unknown" as safe by accident.
 */
const leafSchema = z.discriminatedUnion('operator', [
  z.strictObject({ ...test, operator: z.literal('equal'), value: id }),
  z.strictObject({ ...test, operator: z.literal('in'), value: z.array(id).min(1) }),
  z.strictObject({ ...test, operator: z.literal('orWorse'), value: id }),
  z.strictObject({ ...test, operator: z.literal('orBetter'), value: id }),
]);

export type Leaf = z.infer<typeof leafSchema>;
export type Condition =
  | Leaf
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] };

const parts = z.array(z.lazy((): z.ZodType<Condition> => conditionSchema)).min(1);
const allSchema = z.strictObject({ all: parts });
const anySchema = z.strictObject({ any: parts });

/** Chosen by the key that is present: a union would only say "invalid input" and not where. */
export const conditionSchema: z.ZodType<Condition> = z.unknown().transform((value, context): Condition => {
  const keys = typeof value === 'object' && value !== null ? Object.keys(value) : [];
  const schema = keys.includes('all') ? allSchema : keys.includes('any') ? anySchema : leafSchema;
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  for (const issue of parsed.error.issues)
    context.addIssue({ ...issue, code: 'custom', message: issue.message });
  return z.NEVER;
});

const outcomeSchema = z.strictObject({
  about: words,
  /** From worst to best. For `all`, everything that may be gathered. */
  values: z.array(id).min(1),
  /** worst: the worst value of all rules that fire; exactly-one: two rules that differ are an error; all: gathered. */
  combine: z.enum(['worst', 'exactly-one', 'all']),
  /** Only for `all`: whether gathering nothing is an answer. */
  mayBeEmpty: z.boolean().optional(),
});

const given = z.record(factId, id);
const result = z.record(factId, z.union([id, z.array(id).min(1)]));
/** An example may also say that nothing is gathered. */
const expected = z.record(factId, z.union([id, z.array(id)]));

export const decisionFileSchema = z.strictObject({
  decision: id,
  about: words,
  /** The decision is taken once for each value of this fact (each metal, each adhesive). */
  each: factId.optional(),
  /** Everything that the conditions read, no more and no less. */
  reads: z.array(factId).min(1),
  outcomes: z.record(factId, outcomeSchema),
  rules: z
    .array(
      z.strictObject({
        id,
        since: day,
        /** The reason, in one plain sentence that a member reads. */
        words,
        sources: z.array(id).min(1),
        when: conditionSchema,
        gives: result,
        /** Declared exceptions: rules that do not count when this one fires. */
        overrides: z.array(id).optional(),
      }),
    )
    .min(1),
  /** Facts along which the safe direction does not hold, each with the reason. */
  notOrdered: z.record(factId, words).optional(),
  examples: z.array(z.strictObject({ name: words, facts: given, expect: expected })).min(1),
});

// ---- cautions/*.json, sources.json ------------------------------------------------------------------------

export const cautionsFileSchema = z.strictObject({
  about: words,
  cautions: z
    .array(
      z.strictObject({
        id,
        words,
        /** For what holds nearly always: a few words, so that an answer can gather such cautions in one line. */
        short: words.optional(),
        /** Smaller stands first. */
        order: z.number().int(),
        sources: z.array(id).min(1),
      }),
    )
    .min(1),
});

export const sourceSchema = z.strictObject({
  id,
  /** As an answer cites it: "EN 959:2018". */
  short: words,
  title: words,
  edition: words.optional(),
  kind: z.enum(['standard', 'paper', 'handbook', 'guidance', 'report', 'practice', 'data']),
  /** Whether the text itself was seen, seen as somebody else quotes it, or recalled. */
  state: z.enum(['read', 'read-second-hand', 'memory', 'practice']),
  checked: day,
  note: words.optional(),
});

export const sourcesFileSchema = z.strictObject({ about: words, sources: z.array(sourceSchema).min(1) });

export type FactDefinition = z.infer<typeof factSchema>;
export type FactsFile = z.infer<typeof factsFileSchema>;
export type TableFile = z.infer<typeof tableFileSchema>;
export type DecisionFile = z.infer<typeof decisionFileSchema>;
export type RuleEntry = DecisionFile['rules'][number];
export type Caution = z.infer<typeof cautionsFileSchema>['cautions'][number];
export type Source = z.infer<typeof sourceSchema>;
