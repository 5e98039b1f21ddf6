/** Buttons, menus and forms: what they carry is all that is needed, also after a restart. */
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { carry } from '../../../src/adapters/discord/controls.ts';
import type { Posted } from './server/messages.ts';
import { Stage } from './support/stage.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await Stage.set();
});
afterEach(() => stage.check());
afterAll(() => stage.strike());

const labels = ({ components }: Posted): string[] =>
  components.flatMap((row) =>
    row.components.flatMap((part) =>
      'options' in part ? part.options.map(({ label }) => label) : part.label,
    ),
  );

describe('a question', () => {
  it('gives way to the next one in its own message; the answer is a new message', async () => {
    const member = stage.member();
    const question = await stage.answer(member.runs('material', 'is 316 ok?'));
    expect(labels(question)).toContain('sea cliff');
    const step = await stage.settled(member.presses(question, 'sea cliff'));
    expect(step.state).toBe('updated');
    expect(question.content).toContain('How warm');
    expect(labels(question)).toContain("Don't know");
    let last = step;
    for (let turn = 0; turn < 8 && last.state === 'updated'; turn += 1)
      last = await stage.settled(member.presses(question, labels(question).at(-1) ?? ''));
    expect(last.state).toBe('answered');
    expect(last.original?.content).toContain('not a certificate');
    expect(last.original?.id).not.toBe(question.id);
    // The question keeps its words and loses its buttons.
    expect(question.content).not.toBe('');
    expect(question.components).toEqual([]);
  });

  it('is not answered by somebody else', async () => {
    const room = stage.room();
    const [member, other] = [stage.member(room), stage.member(room)];
    const question = await stage.answer(member.runs('material'));
    const before = question.content;
    const refused = await stage.answer(other.presses(question, 'sea cliff'));
    expect(refused.private).toBe(true);
    expect(refused.content).toContain('somebody else');
    expect(question.content).toBe(before);
  });

  it('of an older version, or garbage, is refused kindly', async () => {
    const member = stage.member();
    const question = await stage.answer(member.runs('material'));
    const { id } = member.person;
    for (const old of [
      '0:abc:f:rock:granite',
      'hello',
      `2:${BigInt(id).toString(36)}:c:why`,
      '1::x',
      '1:zz',
    ]) {
      const refused = await stage.answer(member.pressesId(question, old));
      expect(refused.private, old).toBe(true);
      expect(refused.content).toContain('older question');
    }
  });

  it('with a forged value changes nothing', async () => {
    const member = stage.member();
    const question = await stage.answer(member.runs('material'));
    const forged = await stage.answer(member.pressesId(question, carry(member.person.id, 'f:rock:cheese')));
    expect(forged.content).toContain('older question');
    const talk = await stage.store.loadSession({
      chat: `discord:${stage.club.id}`,
      room: member.channel,
      user: member.person.id,
    });
    expect(JSON.stringify(talk)).not.toContain('cheese');
  });

  it('that has to be typed has a button that opens a form, and the form is an answer', async () => {
    const member = stage.member();
    const question = await stage.answer(member.runs('cure', 'how long must vinyl ester cure?'));
    let asked = question;
    for (let turn = 0; turn < 6 && !labels(asked).includes('Type it'); turn += 1)
      await stage.settled(member.presses(asked, labels(asked).at(-1) ?? ''));
    asked = question;
    expect(labels(question)).toEqual(['Type it', "Don't know"]);
    const opened = await stage.settled(member.presses(question, 'Type it'));
    expect(opened.state).toBe('modal');
    expect(opened.modal?.title).toBe('Your answer');
    const done = await stage.settled(member.fillsIn(opened, '8 °C'));
    const shown = done.state === 'updated' ? question : done.original;
    expect(shown?.content).toMatch(/8 °C/);
  });
});

describe('an answer', () => {
  it('is never written over: why and back are new messages', async () => {
    const member = stage.member();
    const answer = await stage.answer(
      member.runs('material', 'is 304 ok on an overhanging tropical sea cliff?'),
    );
    const before = answer.content;
    const buttons = stage.posted(member).at(-1);
    if (buttons === undefined) throw new Error('no answer');
    const why = await stage.settled(member.presses(buttons, 'Why?'));
    expect(why.state).toBe('answered');
    expect(why.original?.content).toContain('What I worked from');
    expect(answer.content).toBe(before);
    expect(buttons.components).not.toEqual([]);
  });

  it('whose message was deleted meanwhile is still given', async () => {
    const member = stage.member();
    const question = await stage.answer(member.runs('material', 'is 304 ok on an overhanging sea cliff?'));
    const gone = { ...question };
    question.deleted = true;
    const done = await stage.answer(member.presses(gone, 'tropical or subtropical'));
    expect(done.content).toContain('not a certificate');
  });
});

describe('help', () => {
  it('leads to a question that only the asker sees, and from there to an answer for all', async () => {
    const member = stage.member();
    const help = await stage.answer(member.runs('help'));
    const step = await stage.settled(member.presses(help, 'which metal'));
    expect(step.state).toBe('updated');
    expect(help.content).toContain('Where is the crag?');
    let last = step;
    for (let turn = 0; turn < 8 && last.state === 'updated'; turn += 1)
      last = await stage.settled(member.presses(help, labels(help).at(-1) ?? ''));
    expect(last.original?.private).toBe(false);
    expect(last.original?.content).toContain('not a certificate');
  });
});

it('a button works after a restart, and an older one from before the last question too', async () => {
  const member = stage.member();
  const question = await stage.answer(member.runs('material', 'is 316 ok?'));
  await stage.bot.stop();
  await stage.startBot();
  const step = await stage.settled(member.presses(question, 'sea cliff'));
  expect(step.state).toBe('updated');
  expect(question.content).toContain('sea cliff');
});
