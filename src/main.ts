#!/usr/bin/env node
/** Composition root: reads arguments and environment, builds the parts, runs one adapter. */
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { readSettings, SettingError } from './config.ts';
import { RuleFileError } from './rules/index.ts';

const usage = `chough: cautious, sourced, computed advice on climbing anchors in rock

  chough [chat]             talk in the terminal; what you told is kept
  chough ask "…" [--json]   one question, one answer; --json prints the reply object
  chough serve [--check]    answers in Telegram groups and on Discord servers; --check only looks at the settings
  chough pipe               JSON Lines in, JSON Lines out, for bridges and tests
  chough pull FILE… [--json]  reads load-cell recordings (CSV) of pull tests and draws FILE.png beside each;
                            --json prints one object a file and draws nothing
  chough --help             this page

Settings (environment): CHOUGH_DB (SQLite file), CHOUGH_LOCALE (en, es, …), LOG_LEVEL; for serve see "chough serve"
without a token.
Chough advises and never certifies. Local codes, the maker's instructions and a qualified installer decide.
`;

/** The bundle lies in dist/, the source in src/: the rules are beside either. */
const rulesFolder = join(dirname(fileURLToPath(import.meta.url)), '..', 'rules');

async function ask(words: readonly string[], json: boolean): Promise<number> {
  const question = words.join(' ').trim();
  if (question === '') {
    process.stderr.write('chough ask needs a question: chough ask "which bolt for a sea cliff?"\n');
    return 2;
  }
  const [{ makeApp }, { keepNothing }, { runAsk }] = await Promise.all([
    import('./app.ts'),
    import('./store/nothing.ts'),
    import('./adapters/terminal/ask.ts'),
  ]);
  const { locale } = readSettings(process.env);
  const app = await makeApp(rulesFolder, keepNothing, { oneShot: true, locale });
  await runAsk(app.respond, question, json, process.stdout);
  return 0;
}

async function talk(how: 'chat' | 'pipe'): Promise<number> {
  const settings = readSettings(process.env);
  const [{ makeApp }, { openSqlite }] = await Promise.all([import('./app.ts'), import('./store/sqlite.ts')]);
  const store = await openSqlite(settings.db);
  try {
    const app = await makeApp(rulesFolder, store, { oneShot: false, locale: settings.locale });
    if (how === 'pipe') {
      const { runPipe } = await import('./adapters/pipe/pipe.ts');
      await runPipe(app.respond, process.stdin, process.stdout);
    } else {
      const { runChat } = await import('./adapters/terminal/chat.ts');
      const words = await app.languages.words(app.languages.ofLocale(settings.locale));
      const say = (id: string) => words.say({ say: id });
      await runChat(app.respond, process.stdin, process.stdout, {
        greeting: say('chat-greeting'),
        choose: say('chat-choose'),
      });
    }
  } finally {
    await store.close();
  }
  return 0;
}

async function pull(files: readonly string[], json: boolean): Promise<number> {
  if (files.length === 0) {
    process.stderr.write('chough pull needs a file: chough pull recording.csv\n');
    return 2;
  }
  const [{ readFile }, { runPull }, { Languages }, { loadRules }, { recordingPictures }] = await Promise.all([
    import('./recordings/index.ts'),
    import('./adapters/terminal/pull.ts'),
    import('./languages.ts'),
    import('./rules/index.ts'),
    import('./pictured.ts'),
  ]);
  const { isMarked } = await import('./pictures/mark.ts');
  const languages = await Languages.find(rulesFolder, await loadRules(rulesFolder));
  const words = await languages.words(languages.ofLocale(readSettings(process.env).locale));
  return runPull(readFile, files, json, words, process.stdout, {
    draw: (name, recording) => recordingPictures(words, basename(name), recording),
    isOurs: isMarked,
  });
}

const readArguments = () =>
  parseArgs({
    allowPositionals: true,
    options: { json: { type: 'boolean' }, check: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
  });

async function main(): Promise<number> {
  let read: ReturnType<typeof readArguments>;
  try {
    read = readArguments();
  } catch (error) {
    process.stderr.write(`${(error as Error).message}\n\n${usage}`);
    return 2;
  }
  const { values, positionals } = read;
  const [command = 'chat', ...rest] = positionals;
  if (values.help || command === 'help') {
    process.stdout.write(usage);
    return 0;
  }
  switch (command) {
    case 'chat':
    case 'pipe':
      return talk(command);
    case 'ask':
      return ask(rest, values.json ?? false);
    case 'serve': {
      const { serve } = await import('./serve/serve.ts');
      return serve(readSettings(process.env), rulesFolder, { check: values.check ?? false });
    }
    case 'pull':
      return pull(rest, values.json ?? false);
    default:
      process.stderr.write(`chough has no call "${command}".\n\n${usage}`);
      return 2;
  }
}

// A reader that went away (`| head`) is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));

try {
  process.exitCode = await main();
} catch (error) {
  const known =
    error instanceof RuleFileError ||
    error instanceof SettingError ||
    (error instanceof Error &&
      ['StoreError', 'VocabularyError', 'TelegramError', 'DiscordError'].includes(error.name));
  process.stderr.write(`${known ? (error as Error).message : (error as Error).stack}\n`);
  process.exitCode = 1;
}
