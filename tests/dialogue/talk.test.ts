import { describe, expect, it } from 'vitest';
import { freshApp, talk } from '../support/app.ts';

const app = await freshApp();
let members = 0;

/** A member nobody has talked to yet. */
function member(): (text: string) => ReturnType<typeof talk> {
  members += 1;
  const user = `member-${members}`;
  return (text) => talk(app, { user, text });
}

/** Says "don't know" until there is an answer; the program may not ask for ever. */
async function answerOf(say: (text: string) => ReturnType<typeof talk>, opening: string) {
  let reply = await say(opening);
  for (let asked = 0; reply.advice === null; asked += 1) {
    if (asked === 3) throw new Error(`still no answer to "${opening}" but: ${reply.text}`);
    expect(reply.choices.at(-1)?.label, reply.text).toBe("Don't know");
    reply = await say("don't know");
  }
  return { ...reply, advice: reply.advice };
}

describe('asking', () => {
  it('asks at most three questions before the first answer, and "don\'t know" is an answer', async () => {
    for (const opening of [
      'which bolt?',
      'is it deep enough?',
      'which glue?',
      'which kind of anchor should I use?',
    ]) {
      const reply = await answerOf(member(), opening);
      expect(reply.advice.cautions.length).toBeGreaterThan(0);
    }
  });

  it('never asks what is told already, and lists what is open in the order of asking', async () => {
    const say = member();
    const first = await say('which bolt for a tropical sea cliff?');
    const open = first.missing;
    expect(open).not.toContain('environment');
    expect(open).not.toContain('climate');
  });

  it('does not ask what cannot change the answer', async () => {
    const say = member();
    // Titanium alone, whatever the rest: there is nothing to ask.
    const reply = await say('which bolt for an overhanging tropical sea cliff, bolts have snapped there?');
    expect(reply.advice?.recommend.metal).toEqual(['titanium-grade-2']);
  });
});

describe('taking back', () => {
  it('a correction changes one fact and answers again', async () => {
    const say = member();
    await say(
      'is a 12x100 single-leg glue-in in soft sandstone with epoxy ok? sound rock, dry hole, 1 m from any edge, 316, for a belay',
    );
    const before = await answerOf(say, 'threaded shank');
    const after = await say('sorry, granite');
    expect(after.advice?.id).not.toBe(before.advice?.id);
    expect(after.facts).toMatchObject({
      rock: 'granite',
      diameter_mm: 12,
      length_mm: 100,
      adhesive: 'epoxy',
    });
  });

  it('back takes the last thing back and asks again', async () => {
    const say = member();
    const asked = await say('is a 12x100 glue-in in granite with epoxy ok?');
    const next = await say('sound rock');
    expect(next.facts.rock_condition).toBe('sound');
    const back = await say('back');
    expect(back.facts).not.toHaveProperty('rock_condition');
    expect(back.missing).toEqual(asked.missing);
  });

  it('restart forgets everything', async () => {
    const say = member();
    await say('which bolt for a sea cliff?');
    expect((await say('restart')).facts).toEqual({});
    expect((await say('why')).text).toContain('not given an answer yet');
  });

  it('what hangs on the place lapses when the place changes', async () => {
    const say = member();
    await say('which bolt for an overhanging tropical sea cliff?');
    const reply = await say('and for an inland crag, temperate?');
    expect(reply.facts).not.toHaveProperty('rain_washed', 'no');
  });
});

describe('why', () => {
  it('shows facts with their origin, rules, formulas with numbers, and sources with clause', async () => {
    const say = member();
    const reply = await answerOf(
      say,
      'is a 12x100 single-leg glue-in in granite with epoxy ok? sound rock, dry hole',
    );
    const why = await say('why?');
    for (const part of [
      'rock: granite (you said so)',
      'assumed, nobody told',
      '[size.',
      'N = ',
      'd = 12 mm (diameter of the bolt, you said so; valid from 6 to 50)',
      'UCS = 100 MPa (from the table rocks/granite; valid from 0.5 to 400)',
      'kN',
      'EN 1992-4',
      'Sources',
    ])
      expect(why.text).toContain(part);
    expect(why.advice?.id).toBe(reply.advice.id);
  });
});

describe('what is not answered with a number', () => {
  it.each([
    ['can you certify this anchor?', 'certify'],
    ['is it safe to hang people from it?', 'hang-people'],
    ['12x100 glue-in in granite with epoxy, the rock sounds hollow, deep enough?', 'hollow-rock'],
  ])('%s', async (text, refusal) => {
    const reply = await member()(text);
    expect(reply.topic).toBe('refuse');
    expect(reply.advice?.recommend.refusal).toBe(refusal);
    expect(reply.advice?.checks).toEqual([]);
    expect(reply.advice?.cautions.length).toBeGreaterThan(0);
  });

  it('rock that nobody knows gets no number', async () => {
    const reply = await answerOf(member(), 'is a 12x100 glue-in with epoxy deep enough?');
    expect(reply.advice.checks.filter(({ unit }) => unit === 'kN')).toEqual([]);
    expect(reply.text).toContain('I give no number');
  });

  it('an emergency comes before any question', async () => {
    const reply = await member()('help, the bolt broke and my partner is hanging from the last one!');
    expect(reply.topic).toBe('emergency');
    expect(reply.text.split('\n')[0]).toContain('rescue');
  });
});
