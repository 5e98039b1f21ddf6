/**
 * The published limits of a message, as a check of each call. Figures from Discord's documentation: Message resource
 * (content 2000, embeds 6000 in all, nonce 25 characters, attachment description 1024), Component reference (rows,
 * buttons, selects, custom_id, text inputs, modals), Interactions (25 choices of 100 characters).
 */
import { z } from 'zod';

const customId = z.string().min(1).max(100);

const button = z.strictObject({
  type: z.literal(2),
  style: z.int().min(1).max(4),
  label: z.string().min(1).max(80),
  custom_id: customId,
  disabled: z.boolean().optional(),
});

const option = z.strictObject({
  label: z.string().min(1).max(100),
  value: z.string().min(1).max(100),
  description: z.string().min(1).max(100).optional(),
  default: z.boolean().optional(),
});

const select = z.strictObject({
  type: z.literal(3),
  custom_id: customId,
  placeholder: z.string().max(150).optional(),
  options: z.array(option).min(1).max(25),
  min_values: z.int().min(0).max(25).optional(),
  max_values: z.int().min(1).max(25).optional(),
});

const row = z.strictObject({
  type: z.literal(1),
  components: z
    .array(z.union([button, select]))
    .min(1)
    .max(5),
});

const embed = z.looseObject({
  title: z.string().max(256).optional(),
  description: z.string().max(4096).optional(),
});

const attachment = z.strictObject({
  id: z.union([z.int(), z.string()]),
  filename: z.string().min(1).optional(),
  description: z.string().max(1024).optional(),
});

/** Present in every message and edit, and empty: without it the platform parses mentions by its own defaults. */
const noMentions = z.strictObject({
  parse: z.array(z.string()).length(0),
  replied_user: z.literal(false).optional(),
});

const messageSchema = z.looseObject({
  content: z.string().max(2000).optional(),
  embeds: z.array(embed).max(10).optional(),
  components: z.array(row).max(5).optional(),
  attachments: z.array(attachment).max(10).optional(),
  allowed_mentions: noMentions,
  nonce: z.union([z.string().min(1).max(25), z.int()]).optional(),
  enforce_nonce: z.boolean().optional(),
  flags: z.int().optional(),
  message_reference: z
    .looseObject({ message_id: z.string(), fail_if_not_exists: z.boolean().optional() })
    .optional(),
});

export type SentMessage = z.infer<typeof messageSchema>;
export type SentRow = z.infer<typeof row>;

const label = z.strictObject({
  type: z.literal(18),
  label: z.string().min(1).max(45),
  description: z.string().min(1).max(100).optional(),
  component: z.strictObject({
    type: z.literal(4),
    custom_id: customId,
    style: z.int().min(1).max(2),
    min_length: z.int().min(0).max(4000).optional(),
    max_length: z.int().min(1).max(4000).optional(),
    required: z.boolean().optional(),
    placeholder: z.string().max(100).optional(),
  }),
});

const modalSchema = z.strictObject({
  title: z.string().min(1).max(45),
  custom_id: customId,
  components: z.array(label).min(1).max(5),
});

export type SentModal = z.infer<typeof modalSchema>;

const choice = z.looseObject({ name: z.string().min(1).max(100), value: z.string().min(1).max(100) });
const choicesSchema = z.strictObject({ choices: z.array(choice).max(25) });

const issues = (error: z.ZodError): string[] =>
  error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);

const repeated = (list: readonly string[]): string[] => list.filter((one, at) => list.indexOf(one) !== at);

export interface Checked<T> {
  readonly value: T | null;
  readonly problems: readonly string[];
}

function checked<T>(schema: z.ZodType<T>, body: unknown): Checked<T> {
  const parsed = schema.safeParse(body);
  return parsed.success
    ? { value: parsed.data, problems: [] }
    : { value: null, problems: issues(parsed.error) };
}

export function checkMessage(body: unknown, files: number): Checked<SentMessage> {
  const { value, problems } = checked(messageSchema, body);
  if (value === null) return { value, problems };
  const more: string[] = [];
  const parts = (value.components ?? []).flatMap(({ components }) => components);
  const ids = repeated(parts.map(({ custom_id }) => custom_id));
  if (ids.length > 0) more.push(`custom_id twice: ${ids.join(', ')}`);
  for (const { components } of value.components ?? [])
    if (components.some((part) => 'options' in part) && components.length > 1)
      more.push('a select needs a row of its own');
  for (const part of parts) {
    if (!('options' in part)) continue;
    const values = repeated(part.options.map((one) => one.value));
    if (values.length > 0) more.push(`select value twice: ${values.join(', ')}`);
  }
  const embedded = (value.embeds ?? []).reduce(
    (sum, { title = '', description = '' }) => sum + title.length + description.length,
    0,
  );
  if (embedded > 6000) more.push(`embeds of ${embedded} characters`);
  if ((value.attachments ?? []).length < files) more.push('a file without its description');
  if ((value.attachments ?? []).some(({ description }) => !description))
    more.push('a picture without alternative text');
  return { value: more.length > 0 ? null : value, problems: more };
}

export const checkModal = (body: unknown): Checked<SentModal> => checked(modalSchema, body);
export const checkChoices = (body: unknown): Checked<z.infer<typeof choicesSchema>> =>
  checked(choicesSchema, body);
