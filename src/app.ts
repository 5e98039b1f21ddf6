/** Puts the parts together: rules, words, understanding, dialogue and store become one function from message to reply. */
import type { Respond } from './adapters/respond.ts';
import { guardedJudge } from './advice/index.ts';
import { emptySession } from './contracts/session.ts';
import type { Turn } from './contracts/turn.ts';
import { Dialogue, type DialogueOptions } from './dialogue/turn.ts';
import { Languages } from './languages.ts';
import { render } from './render/render.ts';
import { loadRules, type RuleSet } from './rules/index.ts';
import type { Store } from './store/store.ts';

/** Shown when the program itself failed: no answer is better than a wrong one. */
const failed: Turn = {
  outcome: { kind: 'notice', lines: [{ say: 'failed' }], topics: [], open: null },
  language: 'en',
  resumed: false,
  topic: 'unknown',
  facts: {},
  understood: [],
  assumed: [],
  missing: [],
  settle: [],
};

export interface App {
  readonly rules: RuleSet;
  readonly languages: Languages;
  readonly respond: Respond;
}

export async function makeApp(
  rulesFolder: string,
  store: Store,
  options: DialogueOptions & { readonly locale?: string },
): Promise<App> {
  const rules = await loadRules(rulesFolder);
  const languages = await Languages.find(rulesFolder, rules);
  // A file that cannot be used stops the start, not the first question.
  const home = languages.ofLocale(options.locale);
  const [homeWords] = await Promise.all([languages.words(home), languages.understand(home)]);
  const dialogue = new Dialogue({ rules, judge: guardedJudge(rules) }, languages, options);
  const answer: Respond = async (message) => {
    const session = (await store.loadSession(message.chat, message.user)) ?? emptySession;
    const own = languages.ofLocale(message.locale ?? options.locale);
    const club = await store.loadClub(message.chat);
    const answered = await dialogue.turn(session, message, own, club);
    const reply = render(message, answered.turn, await languages.words(answered.turn.language));
    if (answered.session !== session)
      await store.saveSession(
        message.chat,
        message.user,
        answered.session,
        message.at ?? new Date().toISOString(),
      );
    if (answered.club !== undefined) await store.saveClub(message.chat, answered.club);
    return reply;
  };
  const respond: Respond = async (message) => {
    try {
      return await answer(message);
    } catch (error) {
      const { log } = await import('./ops/log.ts');
      log.error({ message: message.id, err: error }, 'a message could not be answered');
      return render(message, failed, homeWords);
    }
  };
  return { rules, languages, respond };
}
