/** The commands as Discord shows them, in every language; written only when they differ from what is registered. */
import { isDeepStrictEqual } from 'node:util';
import {
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type LocalizationMap,
  PermissionFlagsBits,
  type REST,
  Routes,
} from 'discord.js';
import { z } from 'zod';
import type { Post } from '../post.ts';
import { localesOf } from './locales.ts';
import { clip } from './markdown.ts';

/** The option that holds what is asked, and the command on a message of somebody: names the platform keeps. */
export const questionOption = 'question';
export const askAbout = 'Ask about this message';

/** Those who look after a server; its owner can let others in, so the program asks again at each use. */
const forAdmins = String(PermissionFlagsBits.ManageGuild);

export interface CommandBody {
  readonly type: ApplicationCommandType;
  readonly name: string;
  readonly name_localizations: LocalizationMap;
  readonly description?: string;
  readonly description_localizations?: LocalizationMap;
  readonly options?: readonly object[];
  readonly contexts: readonly InteractionContextType[];
  readonly integration_types: readonly ApplicationIntegrationType[];
  readonly default_member_permissions: string | null;
}

async function inAll(post: Post, text: (language: string) => Promise<string>): Promise<LocalizationMap> {
  const pairs = await Promise.all(
    post.languages.map(async (language) => [language, clip(await text(language), 100)] as const),
  );
  return Object.fromEntries(
    pairs.flatMap(([language, said]) => localesOf(language).map((locale) => [locale, said])),
  );
}

const where = {
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM],
  integration_types: [ApplicationIntegrationType.GuildInstall],
};

export async function commandBodies(post: Post): Promise<readonly CommandBody[]> {
  const english = await post.commands('en');
  const said = (id: string) => (language: string) => post.say(language, { say: id });
  const option = {
    type: ApplicationCommandOptionType.String,
    name: questionOption,
    name_localizations: await inAll(post, said('discord-option')),
    description: clip(await post.say('en', { say: 'discord-option-does' }), 100),
    description_localizations: await inAll(post, said('discord-option-does')),
    required: false,
    autocomplete: true,
    max_length: 1500,
  };
  const slash = await Promise.all(
    english.map(async ({ name, description, admin }) => {
      const own = async (language: string) =>
        (await post.commands(language)).find((one) => one.name === name);
      return {
        type: ApplicationCommandType.ChatInput,
        name,
        name_localizations: await inAll(post, async (language) => (await own(language))?.localName ?? name),
        description: clip(description, 100),
        description_localizations: await inAll(
          post,
          async (language) => (await own(language))?.description ?? description,
        ),
        options: [option],
        default_member_permissions: admin ? forAdmins : null,
        ...where,
      };
    }),
  );
  const menu = {
    type: ApplicationCommandType.Message,
    name: askAbout,
    name_localizations: await inAll(post, said('discord-ask-about')),
    default_member_permissions: null,
    ...where,
  };
  return [...slash, menu];
}

/** What is compared: the platform adds ids and versions, and leaves out what is at its default. */
const registered = z.array(
  z.object({
    type: z.int(),
    name: z.string(),
    name_localizations: z.record(z.string(), z.string()).nullish(),
    description: z.string().optional(),
    description_localizations: z.record(z.string(), z.string()).nullish(),
    default_member_permissions: z.string().nullish(),
    contexts: z.array(z.int()).nullish(),
    integration_types: z.array(z.int()).nullish(),
    options: z
      .array(
        z.object({
          type: z.int(),
          name: z.string(),
          name_localizations: z.record(z.string(), z.string()).nullish(),
          description: z.string(),
          description_localizations: z.record(z.string(), z.string()).nullish(),
          required: z.boolean().default(false),
          autocomplete: z.boolean().default(false),
          max_length: z.int().optional(),
        }),
      )
      .optional(),
  }),
);

const comparable = (commands: unknown): unknown => {
  const parsed = registered.safeParse(commands);
  if (!parsed.success) return null;
  const sorted = parsed.data
    .map((one) => ({
      ...one,
      description: one.description || undefined,
      default_member_permissions: one.default_member_permissions ?? null,
      description_localizations: one.description_localizations ?? undefined,
      options: one.options?.length ? one.options : undefined,
    }))
    .sort((a, b) => `${a.type} ${a.name}`.localeCompare(`${b.type} ${b.name}`));
  return JSON.parse(JSON.stringify(sorted));
};

async function writeIfDifferent(
  rest: REST,
  route: `/${string}`,
  wanted: readonly CommandBody[],
): Promise<boolean> {
  const query = new URLSearchParams({ with_localizations: 'true' });
  const known = await rest.get(route, { query });
  if (isDeepStrictEqual(comparable(known), comparable(wanted))) return false;
  await rest.put(route, { body: wanted });
  return true;
}

/**
 * Global commands, or those of one guild while developing. Copies in guilds show every command twice: they are emptied
 * where the commands are global, and the other way round.
 */
export async function registerCommands(
  rest: REST,
  application: string,
  wanted: readonly CommandBody[],
  guild: string | undefined,
): Promise<{ readonly written: boolean }> {
  const global = Routes.applicationCommands(application);
  if (guild === undefined) return { written: await writeIfDifferent(rest, global, wanted) };
  const own = Routes.applicationGuildCommands(application, guild);
  const written = await writeIfDifferent(rest, own, wanted);
  const emptied = await writeIfDifferent(rest, global, []);
  return { written: written || emptied };
}

/** After a guild was used for developing: its copies go. */
export async function emptyGuildCommands(rest: REST, application: string, guild: string): Promise<boolean> {
  return writeIfDifferent(rest, Routes.applicationGuildCommands(application, guild), []);
}
