/** Joins the program with the adapters of group platforms: one post each, over the same dialogue and store. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { LimitOptions } from './adapters/limits.ts';
import { type CommandText, Post, type PostCounts } from './adapters/post.ts';
import type { App } from './app.ts';
import type { Store } from './store/store.ts';
import { suggester } from './suggest.ts';

const text = z.strictObject({
  name: z.string().regex(/^[a-z]{1,32}$/),
  does: z.string().min(1).max(100),
});
const commandsSchema = z.strictObject({
  about: z.string(),
  commands: z.array(
    z.strictObject({
      name: z.string().regex(/^[a-z]{1,32}$/),
      admin: z.boolean(),
      words: z.record(z.string(), text),
    }),
  ),
});

export interface PlatformParts {
  readonly rulesFolder: string;
  readonly app: App;
  /** Answers one question at once, with nothing kept. */
  readonly once: App;
  readonly store: Store;
  readonly limits?: LimitOptions;
  readonly metrics?: PostCounts;
}

async function readCommands(rulesFolder: string): Promise<(language: string) => readonly CommandText[]> {
  const file = join(rulesFolder, 'words', 'commands.json');
  const { commands } = commandsSchema.parse(JSON.parse(await readFile(file, 'utf8')));
  return (language) =>
    commands.map(({ name, admin, words }) => {
      const own = words[language] ?? words.en;
      if (own === undefined) throw new Error(`${file}: /${name} has no words in ${language} nor in en`);
      return { name, admin, description: own.does, localName: own.name };
    });
}

/** The posts of all platforms; the platform's name stands in every claim and chat id. */
export async function posts({
  rulesFolder,
  app,
  once,
  store,
  limits,
  metrics,
}: PlatformParts): Promise<(platform: string) => Post> {
  const commands = await readCommands(rulesFolder);
  // A word that no language knows makes all of them load, for seconds: a platform that waits three would give up.
  for (const code of app.languages.codes)
    await Promise.all([app.languages.words(code), app.languages.understand(code)]);
  const suggest = suggester(app);
  return (platform) =>
    new Post({
      platform,
      ledger: store,
      languages: app.languages.codes,
      handle: (message, posting) => app.handle(message, posting),
      async askOnce(message) {
        const rendered = await once.handle(message);
        if (rendered === null || 'silent' in rendered) throw new Error('one question has one answer');
        return rendered;
      },
      say: async (locale, phrase) => (await app.languages.words(app.languages.ofLocale(locale))).say(phrase),
      suggest: (typed, locale) => suggest(typed, app.languages.ofLocale(locale)),
      commands: async (language) => commands(language),
      rooms: async (chat) => (await store.loadClub(chat)).rooms,
      ...(limits === undefined ? {} : { limits }),
      ...(metrics === undefined ? {} : { counts: metrics }),
    });
}
