/** Every screen of a conversation as a member sees it, to be read by people when it changes. */
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Member } from './server/member.ts';
import type { Posted } from './server/messages.ts';
import { screen } from './support/seen.ts';
import { Stage, until } from './support/stage.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await Stage.set({ server: { bucketMs: 300 } });
});
afterEach(() => stage.check());
afterAll(() => stage.strike());

/** Writes down what is done and what is seen then. */
class Notebook {
  readonly pages: string[] = [];
  #before = new Set<Posted>();

  constructor(readonly member: Member) {}

  async page(what: string, changed?: Posted): Promise<readonly Posted[]> {
    // A page on which nothing is seen would be a page written too early.
    if (changed === undefined)
      await until(what, () => stage.posted(this.member).some((one) => !this.#before.has(one)));
    await stage.quiet();
    await stage.delivered(this.member);
    const fresh = stage.posted(this.member).filter((one) => !this.#before.has(one));
    for (const one of fresh) this.#before.add(one);
    const shown = [
      ...(changed ? [`(the question above becomes)\n${screen(changed)}`] : []),
      ...fresh.map(screen),
    ];
    this.pages.push(`═══ ${what}\n\n${shown.join('\n\n· · ·\n\n')}`);
    return fresh;
  }

  async steps(question: Posted, labels: readonly string[]): Promise<void> {
    for (const label of labels) {
      const before = question.content;
      await stage.settled(this.member.presses(question, label));
      await stage.quiet();
      const same = question.content === before;
      const closed = question.components.length === 0;
      await this.page(
        `presses: ${label}${closed ? ' (and the question loses its buttons)' : ''}`,
        same ? undefined : question,
      );
    }
  }

  text(): string {
    // The marks of answer and rules change with every rule.
    return `${this.pages.join('\n\n\n').replace(/\b(Answer|Respuesta) [^.]+\./g, '$1 ….')}\n`;
  }
}

const talks = {
  en: {
    locale: 'en-GB',
    words: ['is 316 ok?', 'how long must vinyl ester cure?', '8 °C', 'xyzzy plugh', 'club'],
    press: ['mountains', "Don't know"],
    why: 'Why?',
    type: 'Type it',
  },
  es: {
    locale: 'es-ES',
    words: ['¿vale el 316?', '¿cuánto debe curar el viniléster?', '8 °C', 'xyzzy plugh', 'club'],
    press: ['montaña', 'No lo sé'],
    why: '¿Por qué?',
    type: 'Escribirlo',
  },
} as const;

describe.each(['en', 'es'] as const)('a conversation (%s)', (language) => {
  it('looks like this', { timeout: 60_000 }, async () => {
    const talk = talks[language];
    const [metal, cure, temperature, nonsense] = talk.words;
    const member = stage.member(stage.room(), talk.locale);
    const book = new Notebook(member);
    member.runs('help');
    await book.page('/help');
    const asked = await stage.answer(member.runs('material', metal));
    await book.page(`/material ${metal}`);
    const [place, unknown] = talk.press;
    await book.steps(asked, [place]);
    for (let turn = 0; turn < 8 && asked.components.length > 0; turn += 1) await book.steps(asked, [unknown]);
    const answer = stage.posted(member).at(-1);
    if (answer === undefined) throw new Error('no answer');
    await stage.settled(member.presses(answer, talk.why));
    await book.page(`presses: ${talk.why}`);
    const other = stage.member(stage.server.channels.get(member.channel), talk.locale);
    await stage.settled(other.presses(answer, talk.why));
    await book.page('somebody else presses the same');
    member.runs('cure', cure);
    const [typed] = await book.page(`/cure ${cure}`);
    if (typed === undefined) throw new Error('no question');
    for (let turn = 0; turn < 6 && !JSON.stringify(typed.components).includes(talk.type); turn += 1)
      await book.steps(typed, [unknown]);
    const opened = await stage.settled(member.presses(typed, talk.type));
    book.pages.push(`═══ presses: ${talk.type}\n\n${JSON.stringify(opened.modal, null, 1)}`);
    const before = typed.content;
    await stage.settled(member.fillsIn(opened, temperature));
    await book.page(`types: ${temperature}`, typed.content === before ? undefined : typed);
    member.types(nonsense, { mention: true });
    await book.page(`mentions the bot: ${nonsense}`);
    member.runs('club', 'granite');
    await book.page('/club granite, by a member');
    const text = book
      .text()
      .replaceAll(member.person.id, 'member')
      .replace(/1:[0-9a-z]+:/g, '1:member:');
    await expect(text).toMatchFileSnapshot(`screens/${language}.txt`);
  });
});
