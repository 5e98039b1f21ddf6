/** Who is heard, and who is not. Rules of the platform: documentation, Gateway, Message Content Intent. */
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { Stage } from './support/stage.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await Stage.set();
});
afterEach(() => stage.check());
afterAll(() => stage.strike());

const whole = 'is 304 ok on an overhanging tropical sea cliff?';

describe('a command', () => {
  it('is answered for all to see, with cautions and deferral in the first message', async () => {
    const member = stage.member();
    const answer = await stage.answer(member.runs('material', whole));
    expect(answer.private).toBe(false);
    expect(answer.content).toMatch(/^\*\*.+\*\*\n/);
    expect(answer.content).toContain('Take care');
    expect(answer.content).toContain('not a certificate');
    expect(answer.via).toBe('callback');
  });

  it('without a question asks for what it needs', async () => {
    const answer = await stage.answer(stage.member().runs('material'));
    expect(answer.content).toContain('Where is the crag?');
    expect(answer.private).toBe(false);
  });

  it('is answered in the language of the member', async () => {
    const answer = await stage.answer(stage.member(undefined, 'es-419').runs('material'));
    expect(answer.content).toContain('¿');
  });

  it('help is for the asker alone; in a direct message nothing needs hiding', async () => {
    expect((await stage.answer(stage.member().runs('help'))).private).toBe(true);
    expect((await stage.answer(stage.direct().runs('help'))).private).toBe(false);
  });

  it('what was not understood is for the asker alone', async () => {
    const answer = await stage.answer(stage.member().runs('help', 'xyzzy plugh'));
    expect(answer.private).toBe(true);
  });
});

describe('settings', () => {
  it('are changed by those who look after the server, and shown to them alone', async () => {
    const room = stage.room();
    const admin = stage.member(room, 'en-GB', true);
    const set = await stage.answer(admin.runs('club', 'granite'));
    expect(set.private).toBe(true);
    expect(set.content).toContain('granite');
    const cleared = await stage.answer(admin.runs('club', 'clear'));
    expect(cleared.content).toContain('Nothing is set');
  });

  it('are not changed by others, whatever the client let them send', async () => {
    const member = stage.member();
    const refused = await stage.answer(member.runs('club', 'granite'));
    expect(refused.private).toBe(true);
    expect(refused.content).toContain('Only those who look after this group');
    expect((await stage.store.loadClub(`discord:${stage.club.id}`)).facts).toEqual({});
  });

  it('are not changed by a member who types the command in a mention; rights come with the roles', async () => {
    const member = stage.member();
    member.types('/club granite', { mention: true });
    expect((await stage.nth(member)).content).toContain('Only those who look after');
    const admin = stage.member(stage.room(), 'en-GB', true);
    admin.types('/club granite', { mention: true });
    expect((await stage.nth(admin)).content).toContain('granite');
    await stage.answer(admin.runs('club', 'clear'));
  });

  it('limit the bot to some channels and their threads; elsewhere one line, or silence', async () => {
    const home = stage.room('anchors');
    const admin = stage.member(home, 'en-GB', true);
    await stage.answer(admin.runs('club', 'only here'));
    const elsewhere = stage.member();
    const refused = await stage.answer(elsewhere.runs('material', whole));
    expect(refused.content).toContain('other channels');
    expect(refused.private).toBe(true);
    elsewhere.types(whole, { mention: true });
    const thread = stage.member(stage.room('a thread', { type: 11, parent: home.id }));
    thread.types(whole, { mention: true });
    expect((await stage.nth(thread)).content).toContain('not a certificate');
    await stage.quiet();
    expect(stage.posted(elsewhere)).toHaveLength(1);
    await stage.answer(admin.runs('club', 'clear'));
  });
});

describe('plain messages', () => {
  it('a mention is answered as a reply, and the mention is no part of the question', async () => {
    const member = stage.member();
    const asked = member.types(whole, { mention: true });
    const answer = await stage.nth(member);
    expect(answer.replyTo).toBe(asked.id);
    expect(answer.content).toContain('not a certificate');
    expect(answer.content).not.toContain(stage.server.bot.id);
    expect(answer.via).toBe('channel');
  });

  it('a reply to the bot is answered, with the talk going on', async () => {
    const member = stage.member();
    member.types('which bolt for a sea cliff?', { mention: true });
    const question = await stage.nth(member);
    member.types('temperate', { replyTo: question });
    const next = await stage.nth(member, 2);
    expect(next.content).toContain('temperate');
  });

  it('a direct message is answered, in a channel never seen before', async () => {
    const member = stage.direct();
    member.types(whole);
    expect((await stage.nth(member)).content).toContain('not a certificate');
  });

  it('a bare mention is answered with help', async () => {
    const member = stage.member();
    member.types('', { mention: true });
    expect((await stage.nth(member)).content).toContain('Ask in your own words');
  });

  it('nothing else is answered: talk among members, replies without a ping, replies to others', async () => {
    const member = stage.member();
    const other = stage.member(stage.server.channels.get(member.channel));
    member.types(whole);
    const asked = other.types('which bolt for a sea cliff?', { mention: true });
    const question = await stage.nth(member);
    member.types(whole, { replyTo: question, ping: false });
    member.types(whole, { replyTo: asked });
    await stage.quiet();
    expect(stage.posted(member)).toHaveLength(1);
  });

  it('neither other bots, nor webhooks, nor notices of the platform are answered', async () => {
    const member = stage.member();
    const posted = member.types('hello');
    const event = member.messageEvent(posted, { mention: true });
    const { author } = event as { author: object };
    for (const [id, more] of [
      ['1', { author: { ...author, bot: true } }],
      ['2', { webhook_id: '77' }],
      ['3', { type: 7 }],
    ] as const)
      stage.server.gateway.dispatch(
        'MESSAGE_CREATE',
        { ...event, content: `<@${stage.server.bot.id}> ${whole}`, id: `${posted.id}${id}`, ...more },
        stage.club.id,
      );
    await stage.quiet();
    expect(stage.posted(member)).toHaveLength(0);
  });

  it('an answer goes into the thread where it was asked', async () => {
    const parent = stage.room();
    const member = stage.member(stage.room('thread', { type: 11, parent: parent.id }));
    member.types(whole, { mention: true });
    expect((await stage.nth(member)).channel).toBe(member.channel);
  });

  it('two members of one channel, and one member in two channels, have talks of their own', async () => {
    const room = stage.room();
    const [one, two] = [stage.member(room), stage.member(room)];
    await stage.answer(one.runs('material', 'which bolt for a sea cliff?'));
    const fresh = await stage.answer(two.runs('material'));
    expect(fresh.content).toContain('Where is the crag?');
    expect(fresh.content).not.toContain('sea cliff');
  });
});

describe('a command on a message', () => {
  it('answers what somebody else wrote', async () => {
    const room = stage.room();
    const [asker, writer] = [stage.member(room), stage.member(room)];
    const target = writer.types(whole);
    const answer = await stage.answer(asker.asksAbout('Ask about this message', target));
    expect(answer.content).toContain('not a certificate');
    expect(answer.private).toBe(false);
  });

  it('says so where there is no text', async () => {
    const member = stage.member();
    const target = member.types('');
    const answer = await stage.answer(member.asksAbout('Ask about this message', target));
    expect(answer.content).toContain('no text in that message');
    expect(answer.private).toBe(true);
  });
});

describe('autocomplete', () => {
  it('offers names while somebody types, within the limits', async () => {
    const member = stage.member();
    const typed = await stage.settled(member.completes('material', 'is titan'));
    expect(typed.choices?.map(({ value }) => value)).toContain('is titanium grade 2');
    const empty = await stage.settled(member.completes('material', ''));
    expect(empty.choices?.length).toBeGreaterThan(5);
    const long = await stage.settled(member.completes('material', 'x'.repeat(400)));
    expect(long.choices?.every(({ value }) => value.length <= 100)).toBe(true);
  });

  it('offers nothing in a hurry: an error leaves the list empty and harms nobody', async () => {
    stage.server.faults.plan('POST', /callback/, { kind: 'error', status: 404, code: 10062 });
    const before = stage.bot.counters.unknownInteractions;
    const one = stage.member().completes('material', 'gran');
    await stage.quiet();
    expect(stage.bot.counters.unknownInteractions).toBe(before + 1);
    if (one.timer) clearTimeout(one.timer);
  });
});

it('too much at once gets one polite line, and then every command still gets an answer', async () => {
  const quick = await Stage.set({ limits: { memberIn10s: 2, chatInMinute: 100 } });
  const member = quick.member();
  const answers = [];
  for (let time = 0; time < 4; time += 1) answers.push(await quick.answer(member.runs('material', whole)));
  expect(answers[2]?.content).toContain('too fast');
  expect(answers[3]?.content).toContain('nothing to add');
  expect(answers.slice(2).every((one) => one.private)).toBe(true);
  quick.check();
  await quick.strike();
});
