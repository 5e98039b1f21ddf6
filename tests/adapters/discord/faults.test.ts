/** The platform and the line fail in every way that is known; an answer is neither lost nor doubled, and the next one is given. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Member } from './server/member.ts';
import type { Posted } from './server/messages.ts';
import { Stage, until } from './support/stage.ts';

const whole = 'is 304 ok on an overhanging tropical sea cliff?';
const callback = /^\/interactions\/.*\/callback$/;
const original = /^\/webhooks\/.*@original$/;
const messages = /^\/channels\/\d+\/messages$/;

describe('a message in a channel', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await Stage.set({ bot: { timeoutMs: 400 } });
  });
  afterEach(() => stage.check());
  afterAll(() => stage.strike());

  const once = async (): Promise<void> => {
    const member = stage.member();
    member.types(whole, { mention: true });
    await stage.nth(member);
    await stage.delivered(member);
    await stage.quiet();
    const texts = stage.posted(member).map(({ content }) => content);
    expect(new Set(texts).size).toBe(texts.length);
    expect(texts.filter((text) => text.includes('not a certificate'))).toHaveLength(1);
  };

  it.each([500, 502, 503])('%i: sent again until it is taken', async (status) => {
    stage.server.faults.plan('POST', messages, { kind: 'error', status }, 2);
    await once();
  });

  it('500 after the fact: the number of the message keeps it from being doubled', async () => {
    stage.server.faults.plan('POST', messages, { kind: 'error-after', status: 500 }, 2);
    await once();
  });

  it('a longer outage than the library waits out: tried again in the background', async () => {
    stage.server.faults.plan('POST', messages, { kind: 'error', status: 502 }, 5);
    await once();
  });

  it('no answer at all: given up and sent again', async () => {
    stage.server.faults.plan('POST', messages, { kind: 'hang' }, 2);
    await once();
  });

  it('a socket that is cut before or after the fact', async () => {
    stage.server.faults.plan('POST', messages, { kind: 'reset', after: false });
    await once();
    stage.server.faults.plan('POST', messages, { kind: 'reset', after: true });
    await once();
  });

  it.each([true, false])('429 (global: %s) is waited out', async (global) => {
    const before = stage.server.calls.length;
    stage.server.faults.plan('POST', messages, { kind: 'rate-limit', retryAfter: 0.3, global });
    await once();
    expect(stage.server.calls.length - before).toBeGreaterThanOrEqual(2);
  });

  it("the platform's own limit of a channel is kept to, and nothing is lost", async () => {
    const member = stage.member();
    for (let time = 0; time < 8; time += 1) member.types(`${whole} ${time}`, { mention: true });
    await until('all answers', () => answers(stage, member).length === 8, 28_000);
    const all = await stage.delivered(member, 20_000);
    expect(all.filter(({ content }) => content.includes('not a certificate'))).toHaveLength(8);
    expect(new Set(all.map(({ nonce }) => nonce)).size).toBe(all.length);
  });

  it('no right to read the history: sent without the reference', async () => {
    stage.server.faults.plan('POST', messages, { kind: 'error', status: 400, code: 160002 });
    const member = stage.member();
    member.types(whole, { mention: true });
    expect((await stage.nth(member)).replyTo).toBeNull();
  });

  it('the asked message was deleted: the answer comes all the same', async () => {
    const member = stage.member();
    member.types(whole, { mention: true }).deleted = true;
    expect((await stage.nth(member)).content).toContain('not a certificate');
  });

  it('a thread that was closed meanwhile: the answer goes to its channel and says where from', async () => {
    const parent = stage.room();
    const thread = stage.room('thread', { type: 11, parent: parent.id, archived: true });
    const member = stage.member(thread);
    member.types(whole, { mention: true });
    const answer = await stage.nth(stage.member(parent));
    await stage.delivered(member);
    expect(answer.content).toContain('From a thread that is closed');
    expect(answer.content).toContain('not a certificate');
  });

  it.each([50001, 50013, 10003])('%i: that server is paused, and nothing more is tried', async (code) => {
    const member = stage.member();
    const chat = `discord:${stage.club.id}`;
    const status = code === 10003 ? 404 : 403;
    stage.server.faults.plan('POST', messages, { kind: 'error', status, code });
    const before = stage.bot.counters.closedTargets;
    member.types(whole, { mention: true });
    await until('a closed target', () => stage.bot.counters.closedTargets === before + 1);
    // The server is paused before the answer is cleared.
    await stage.delivered(member);
    expect(stage.posted(member)).toEqual([]);
    expect(await stage.store.isPaused(chat)).toBe(true);
    expect(await stage.outstanding(member)).toEqual([]);
    await stage.store.joined(chat, 'discord', new Date().toISOString());
  });

  it('50007: a member who refuses direct messages is left alone', async () => {
    const member = stage.direct();
    const before = stage.bot.counters.closedTargets;
    stage.server.faults.plan('POST', messages, { kind: 'error', status: 403, code: 50007 });
    member.types(whole);
    await until('a closed target', () => stage.bot.counters.closedTargets === before + 1);
    await stage.delivered(member);
    expect(stage.posted(member)).toEqual([]);
  });

  it('the same event twice is answered once; so is one that is edited later', async () => {
    const member = stage.member();
    const posted = member.types(whole, { mention: true });
    const event = member.messageEvent(posted, { mention: true });
    stage.server.gateway.dispatch('MESSAGE_CREATE', event, stage.club.id);
    stage.server.gateway.dispatch(
      'MESSAGE_UPDATE',
      { ...event, edited_timestamp: new Date().toISOString() },
      stage.club.id,
    );
    stage.server.gateway.dispatch(
      'MESSAGE_DELETE',
      { id: posted.id, channel_id: member.channel, guild_id: stage.club.id },
      stage.club.id,
    );
    await stage.nth(member);
    await stage.delivered(member);
    await stage.quiet();
    expect(answers(stage, member)).toHaveLength(1);
  });
});

describe('an interaction', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await Stage.set({ bot: { timeoutMs: 400 } });
  });
  afterEach(() => stage.check());
  afterAll(() => stage.strike());

  it.each([500, 502])('%i is tried again', async (status) => {
    stage.server.faults.plan('POST', callback, { kind: 'error', status }, 2);
    const member = stage.member();
    await stage.answer(member.runs('material', whole));
    expect(answers(stage, member)).toHaveLength(1);
  });

  it.each([
    { kind: 'error-after', status: 500 },
    { kind: 'reset', after: true },
  ] as const)('$kind after the fact: acknowledged once, shown once', async (fault) => {
    const before = stage.bot.counters.alreadyAcknowledged;
    stage.server.faults.plan('POST', callback, fault);
    const member = stage.member();
    const one = await stage.settled(member.runs('material', whole));
    expect(one.acknowledgements).toBe(1);
    expect(answers(stage, member)).toHaveLength(1);
    expect(stage.bot.counters.alreadyAcknowledged).toBe(before + 1);
  });

  it('a step of a question, after the fact: the question is rewritten once more with the same', async () => {
    const member = stage.member();
    const question = await stage.answer(member.runs('material', 'is 316 ok?'));
    stage.server.faults.plan('POST', callback, { kind: 'error-after', status: 500 });
    await stage.settled(member.presses(question, 'sea cliff'));
    expect(question.content).toContain('How warm');
    expect(stage.posted(member)).toHaveLength(1);
  });

  it('10062: the platform has given up; the answer comes as a message, but what is private does not', async () => {
    const before = stage.bot.counters.unknownInteractions;
    stage.server.faults.plan('POST', callback, { kind: 'error', status: 404, code: 10062 }, 2);
    const member = stage.member();
    const late = member.runs('material', whole);
    const answer = await stage.nth(member);
    expect(answer.via).toBe('channel');
    const other = stage.member();
    const help = other.runs('help');
    await stage.quiet();
    expect(stage.bot.counters.unknownInteractions).toBe(before + 2);
    expect(stage.posted(other)).toEqual([]);
    expect(await stage.outstanding(other)).toEqual([]);
    for (const { timer } of [late, help]) if (timer) clearTimeout(timer);
  });

  it('40060: acknowledged by another process; the answer is written once and counted', async () => {
    const before = stage.bot.counters.alreadyAcknowledged;
    const member = stage.member();
    const [one, event] = member.interactionEvent(2, member.commandData('material', whole));
    one.state = 'thinking';
    if (one.timer) clearTimeout(one.timer);
    member.send([one, event]);
    await stage.nth(member);
    expect(stage.bot.counters.alreadyAcknowledged).toBe(before + 1);
    expect(answers(stage, member)).toHaveLength(1);
  });

  it('nobody answers the acknowledgement: given up before the deadline, and the answer comes as a message', async () => {
    stage.server.faults.plan('POST', callback, { kind: 'hang' }, 20);
    const member = stage.member();
    const one = member.runs('material', whole);
    if (one.timer) clearTimeout(one.timer);
    expect((await stage.nth(member)).via).toBe('channel');
  });

  it('the same interaction twice is answered once', async () => {
    const before = stage.bot.counters.alreadyAcknowledged;
    const member = stage.member();
    const [one, event] = member.interactionEvent(2, member.commandData('material', whole));
    member.send([one, event]);
    member.send([one, event]);
    await stage.settled(one);
    expect(one.acknowledgements).toBe(1);
    expect(answers(stage, member)).toHaveLength(1);
    expect(stage.bot.counters.alreadyAcknowledged).toBe(before);
  });

  it('presses that come out of order are each answered', async () => {
    const member = stage.member();
    const question = await stage.answer(member.runs('material', 'is 316 ok?'));
    const first = member.interactionEvent(
      3,
      { custom_id: pick(question), component_type: 3, values: ['f:environment:sea-cliff'] },
      question,
    );
    const second = member.interactionEvent(
      3,
      { custom_id: pick(question), component_type: 3, values: ['f:environment:mountain'] },
      question,
    );
    member.send(second);
    member.send(first);
    await Promise.all([stage.settled(first[0]), stage.settled(second[0])]);
    expect([first[0].acknowledgements, second[0].acknowledgements]).toEqual([1, 1]);
  });

  it('a second part that may have come through is sent again with a mark', async () => {
    const member = stage.member();
    stage.server.faults.plan('POST', /^\/webhooks\//, { kind: 'error-after', status: 500 });
    const one = await stage.settled(member.runs('material', whole));
    const [part, again, ...more] = one.followUps.map(({ content }) => content);
    expect(again).toMatch(/^\(Sent again/);
    expect(again?.endsWith(part ?? '?')).toBe(true);
    expect(more).toEqual([]);
  });

  it('a second part that did not come through just comes', async () => {
    const member = stage.member();
    stage.server.faults.plan('POST', /^\/webhooks\//, { kind: 'rate-limit', retryAfter: 0.2, global: false });
    const one = await stage.settled(member.runs('material', whole));
    await until('the second part', () => one.followUps.length > 0);
    expect(one.followUps).toHaveLength(1);
    expect(one.followUps[0]?.content).not.toContain('Sent again');
  });
});

describe('a slow program', () => {
  let stage: Stage;
  let waits: number;
  beforeAll(async () => {
    stage = await Stage.set({
      bot: { deferAfterMs: 150 },
      wrap: (handle) => async (message, posting) => {
        await sleep(waits);
        if (message.text?.includes('crash')) throw new Error('the program fell over');
        return handle(message, posting);
      },
    });
  });
  afterEach(() => stage.check());
  afterAll(() => stage.strike());

  it('shows that it thinks, in good time, and then answers in the same message', async () => {
    waits = 400;
    const member = stage.member();
    const one = await stage.settled(member.runs('material', whole));
    expect(one.acknowledgedAfter).toBeLessThan(400);
    expect(one.original?.via).toBe('original');
    expect(one.original?.private).toBe(false);
    expect(stage.bot.counters.deferred).toBeGreaterThan(0);
    const help = await stage.settled(stage.member().runs('help'));
    expect(help.original?.private).toBe(true);
  });

  it('keeps the question as it is while it thinks, then puts the next one in its place', async () => {
    waits = 0;
    const member = stage.member();
    const question = await stage.answer(member.runs('material', 'is 316 ok?'));
    waits = 400;
    const step = await stage.settled(member.presses(question, 'sea cliff'));
    expect(step.state).toBe('updated');
    expect(question.content).toContain('How warm');
  });

  it('an answer to a press that took long is a message of its own', async () => {
    waits = 0;
    const member = stage.member();
    const question = await stage.answer(member.runs('material', 'is 304 ok on an overhanging sea cliff?'));
    waits = 400;
    const step = member.presses(question, 'tropical or subtropical');
    await until('a follow-up', () => step.followUps.length > 0);
    await stage.quiet();
    expect(step.followUps[0]?.content).toContain('not a certificate');
    expect(question.components).toEqual([]);
  });

  it('a late acknowledgement that the platform refuses does not race the answer', async () => {
    waits = 300;
    stage.server.faults.plan('POST', callback, { kind: 'slow', ms: 400 });
    const member = stage.member();
    const one = await stage.settled(member.runs('material', whole));
    expect(one.acknowledgements).toBe(1);
    expect(stage.posted(member).length).toBeGreaterThanOrEqual(1);
  });

  it('an edit that fails is tried again', async () => {
    waits = 300;
    stage.server.faults.plan('PATCH', original, { kind: 'error', status: 502 }, 2);
    const member = stage.member();
    const one = await stage.settled(member.runs('material', whole));
    expect(one.original?.content).toContain('not a certificate');
  });

  it('a token that is over while it thinks: the answer comes to the channel', async () => {
    waits = 300;
    stage.server.faults.plan('PATCH', original, { kind: 'error', status: 401, code: 50027 });
    const member = stage.member();
    const one = member.runs('material', whole);
    const answer = await stage.nth(member);
    expect(answer.via).toBe('channel');
    expect(one.state).toBe('thinking');
    // A 401 on an interaction says nothing about the bot's own token.
    waits = 0;
    member.types(whole, { mention: true });
    await stage.nth(member, 2);
  });

  it('a program that falls over says so to the member, and goes on', async () => {
    waits = 0;
    const member = stage.member();
    const crashed = await stage.answer(member.runs('material', 'crash'));
    expect(crashed.content).toContain('Something in me failed');
    expect(crashed.private).toBe(true);
    member.types('crash', { mention: true });
    await until('the second failure', () => stage.bot.counters.failures === 2);
    const next = await stage.answer(member.runs('material', whole));
    expect(next.content).toContain('not a certificate');
  });
});

const answers = (stage: Stage, member: Member): readonly Posted[] =>
  stage.posted(member).filter(({ content }) => content.includes('not a certificate'));

function pick(question: { components: readonly { components: readonly object[] }[] }): string {
  const [first] = question.components[0]?.components ?? [];
  if (first === undefined || !('custom_id' in first)) throw new Error('nothing to press');
  return String(first.custom_id);
}
