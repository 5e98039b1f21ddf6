/**
 * The published limits of application commands (Discord's documentation, Application Commands): names 1–32 of lower-case
 * letters for slash commands, descriptions 1–100, 25 options, 100 global slash and 15 message commands, and 8000
 * characters in all for each command, the longest localisation of each field counted.
 */
import { z } from 'zod';

/** CHAT_INPUT names, as the documentation gives the expression. */
const slashName = z
  .string()
  .regex(/^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u)
  .refine((name) => name === name.toLowerCase(), 'must be lower case');
const menuName = z.string().min(1).max(32);
const description = z.string().min(1).max(100);
/** The documentation's list of locales, Reference, Locales. */
const locale = z.enum(
  'id da de en-GB en-US es-ES es-419 fr hr it lt hu nl no pl pt-BR ro fi sv-SE vi tr cs el bg ru uk hi th zh-CN ja zh-TW ko'.split(
    ' ',
  ) as [string, ...string[]],
);
const localised = <T extends z.ZodType>(value: T) => z.partialRecord(locale, value).nullish();

const option = z.strictObject({
  type: z.literal(3),
  name: slashName,
  name_localizations: localised(slashName),
  description,
  description_localizations: localised(description),
  required: z.boolean().optional(),
  autocomplete: z.boolean().optional(),
  max_length: z.int().min(1).max(6000).optional(),
});

const common = {
  contexts: z.array(z.int().min(0).max(2)).min(1),
  integration_types: z.array(z.int().min(0).max(1)).min(1),
  default_member_permissions: z.string().nullish(),
};

const command = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal(1),
    name: slashName,
    name_localizations: localised(slashName),
    description,
    description_localizations: localised(description),
    options: z.array(option).max(25).optional(),
    ...common,
  }),
  z.strictObject({
    type: z.literal(3),
    name: menuName,
    name_localizations: localised(menuName),
    ...common,
  }),
]);

const commandsSchema = z.array(command);
export type SentCommand = z.infer<typeof command>;

const longest = (text: string, others?: Partial<Record<string, string>> | null): number =>
  Math.max(text.length, ...Object.values(others ?? {}).map((one) => one?.length ?? 0));

function size(one: SentCommand): number {
  const name = longest(one.name, one.name_localizations);
  if (one.type === 3) return name;
  return (one.options ?? []).reduce(
    (sum, part) =>
      sum +
      longest(part.name, part.name_localizations) +
      longest(part.description, part.description_localizations),
    name + longest(one.description, one.description_localizations),
  );
}

export function checkCommands(body: unknown): {
  value: readonly SentCommand[] | null;
  problems: readonly string[];
} {
  const parsed = commandsSchema.safeParse(body);
  if (!parsed.success)
    return {
      value: null,
      problems: parsed.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`),
    };
  const { data } = parsed;
  const problems: string[] = [];
  for (const one of data) if (size(one) > 8000) problems.push(`${one.name} has ${size(one)} characters`);
  for (const [type, most] of [
    [1, 100],
    [3, 15],
  ] as const) {
    const ofType = data.filter((one) => one.type === type);
    if (ofType.length > most) problems.push(`${ofType.length} commands of type ${type}`);
    // "names must be unique in their scope", in each language as well
    for (const language of ['', ...locale.options]) {
      const names = ofType.map((one) => one.name_localizations?.[language] ?? one.name);
      const twice = names.filter((name, at) => names.indexOf(name) !== at);
      if (twice.length > 0) problems.push(`name twice (${language || 'default'}): ${twice.join(', ')}`);
    }
  }
  return { value: problems.length > 0 ? null : data, problems };
}
