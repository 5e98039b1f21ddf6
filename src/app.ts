/** Puts the parts together: rules, words, understanding, dialogue and store become one function from message to reply. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Respond } from './adapters/respond.ts';
import { guardedJudge } from './advice/index.ts';
import { emptySession } from './contracts/session.ts';
import type { Turn } from './contracts/turn.ts';
import { Dialogue, type DialogueOptions } from './dialogue/turn.ts';
import { makeUnderstand } from './dialogue/understand/index.ts';
import { loadVocabulary } from './dialogue/vocabulary.ts';
import { glossaryOf } from './glossary.ts';
import { render } from './render/render.ts';
import { makeWords, type Words } from './render/words.ts';
import { loadRules, type RuleSet } from './rules/index.ts';
import type { Store } from './store/store.ts';

/** Shown when the program itself failed: no answer is better than a wrong one. */
const failed: Turn = {
  outcome: { kind: 'notice', lines: [{ say: 'failed' }], topics: [] },
  topic: 'unknown',
  facts: {},
  understood: [],
  assumed: [],
  missing: [],
  settle: [],
};

export interface App {
  readonly rules: RuleSet;
  readonly words: Words;
  readonly respond: Respond;
}

export async function makeApp(rulesFolder: string, store: Store, options: DialogueOptions): Promise<App> {
  const [rules, vocabulary, texts] = await Promise.all([
    loadRules(rulesFolder),
    loadVocabulary(join(rulesFolder, 'vocabulary', 'en.json')),
    readFile(join(rulesFolder, 'words', 'en.ftl'), 'utf8'),
  ]);
  const words = makeWords(texts, glossaryOf(rules));
  const understand = makeUnderstand([vocabulary], rules);
  const dialogue = new Dialogue({ rules, judge: guardedJudge(rules) }, understand, options);
  const answer: Respond = async (message) => {
    const session = (await store.loadSession(message.chat, message.user)) ?? emptySession;
    const answered = await dialogue.turn(session, message);
    const reply = render(message, answered.turn, words);
    if (answered.session !== session)
      await store.saveSession(
        message.chat,
        message.user,
        answered.session,
        message.at ?? new Date().toISOString(),
      );
    return reply;
  };
  const respond: Respond = async (message) => {
    try {
      return await answer(message);
    } catch (error) {
      const { log } = await import('./ops/log.ts');
      log.error({ message: message.id, err: error }, 'a message could not be answered');
      return render(message, failed, words);
    }
  };
  return { rules, words, respond };
}
