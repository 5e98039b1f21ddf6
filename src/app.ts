/** Puts the parts together: rules, words, understanding, dialogue and store become one function from message to reply. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Respond } from './adapters/respond.ts';
import { type Desk, guardedJudge } from './advice/index.ts';
import type { Posting } from './contracts/ledger.ts';
import type { Message } from './contracts/message.ts';
import type { ReadRecording } from './contracts/recording.ts';
import type { Rendered, Silence } from './contracts/reply.ts';
import { emptySession } from './contracts/session.ts';
import type { Turn } from './contracts/turn.ts';
import { Dialogue, type DialogueOptions } from './dialogue/turn.ts';
import { Languages } from './languages.ts';
import { pictured, wishesOf } from './pictured.ts';
import { openPlaces, type Places } from './places/seas.ts';
import { render } from './render/render.ts';
import { loadRules, type RuleSet } from './rules/index.ts';
import { type Kept, RecordConflict, type Store } from './store/store.ts';

/** Shown when the program itself failed: no answer is better than a wrong one. */
const failed: Turn = {
  outcome: { kind: 'notice', lines: [{ say: 'failed' }], topics: [], open: null },
  language: 'en',
  units: 'metric',
  resumed: false,
  lead: [],
  topic: 'unknown',
  facts: {},
  understood: [],
  assumed: [],
  missing: [],
  settle: [],
};

/** The coastline is made by the build and lies beside the program; without it places are not read. */
async function placesIn(rulesFolder: string): Promise<Places | null> {
  const coastFile = join(rulesFolder, '..', 'dist', 'coast.bin');
  return existsSync(coastFile) ? openPlaces(join(rulesFolder, 'places', 'seas.json'), coastFile) : null;
}

/** What measures recordings is loaded when the first one comes. */
const readRecording: ReadRecording = async (bytes) =>
  (await import('./recordings/index.ts')).readBytes(bytes);

/** Answers a message and keeps what it changed. With a posting: null where that update had been taken in before. */
export type Handle = (message: Message, posting?: Posting) => Promise<Rendered | Silence | null>;

export interface App {
  readonly rules: RuleSet;
  readonly languages: Languages;
  readonly handle: Handle;
  readonly respond: Respond;
}

/** What every program over these rules shares, whatever it keeps: loaded once. */
export interface Parts {
  readonly desk: Desk;
  readonly languages: Languages;
  readonly places: Places | null;
}

export async function loadParts(rulesFolder: string, locale?: string): Promise<Parts> {
  const rules = await loadRules(rulesFolder);
  const languages = await Languages.find(rulesFolder, rules);
  // A file that cannot be used stops the start, not the first question.
  const home = languages.ofLocale(locale);
  await Promise.all([languages.words(home), languages.understand(home)]);
  const places = await placesIn(rulesFolder);
  return { desk: { rules, judge: guardedJudge(rules) }, languages, places };
}

type AppOptions = DialogueOptions & { readonly locale?: string };

export const makeApp = async (rulesFolder: string, store: Store, options: AppOptions): Promise<App> =>
  appOver(await loadParts(rulesFolder, options.locale), store, options);

export function appOver({ desk, languages, places }: Parts, store: Store, options: AppOptions): App {
  const home = languages.ofLocale(options.locale);
  const dialogue = new Dialogue(desk, languages, options, places, store.records, readRecording);

  const answer: Handle = async (message, posting) => {
    const { chat, user, room = '' } = message;
    const talk = { chat, room, user };
    const session = (await store.loadSession(talk)) ?? emptySession;
    const club = await store.loadClub(chat);
    const own = languages.ofLocale(message.locale ?? club.language ?? options.locale);
    const answered = await dialogue.turn(session, message, own, club);
    const { language, units } = answered.turn;
    const words = await languages.words(language, units);
    const at = message.at ?? new Date().toISOString();
    const keep = async (turn: Turn, kept: Partial<Kept>): Promise<Rendered | Silence | null> => {
      const rendered = await pictured(words, render(message, turn, words), wishesOf(turn));
      const posted =
        posting === undefined ? {} : { posting, rendered: 'reply' in rendered ? rendered : null };
      return (await store.keep({ talk, at, ...kept, ...posted })) ? rendered : null;
    };
    try {
      return await keep(answered.turn, {
        ...(answered.session === session ? {} : { session: answered.session }),
        ...(answered.club === undefined ? {} : { club: answered.club }),
        ...(answered.changes === undefined ? {} : { changes: answered.changes }),
      });
    } catch (error) {
      if (!(error instanceof RecordConflict)) throw error;
      // Somebody was faster: nothing was changed, and what the member saw no longer holds.
      const lines = [{ say: 'record-changed-meanwhile' }];
      const outcome: Turn['outcome'] = { kind: 'notice', lines, topics: [], open: null };
      return keep({ ...answered.turn, outcome }, { session: answered.session });
    }
  };

  const handle: Handle = async (message, posting) => {
    try {
      return await answer(message, posting);
    } catch (error) {
      const { log } = await import('./ops/log.ts');
      log.error({ message: message.id, err: error }, 'a message could not be answered');
      return render(message, failed, await languages.words(languages.ofLocale(message.locale ?? home)));
    }
  };
  const respond: Respond = async (message) => {
    const rendered = await handle(message);
    if (rendered === null) return { inReplyTo: message.id, silent: true };
    return 'reply' in rendered ? rendered.reply : rendered;
  };
  return { rules: desk.rules, languages, handle, respond };
}
