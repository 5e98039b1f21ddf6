import { describe, expect, it } from 'vitest';
import { freshApp, talk } from '../../support/app.ts';

const app = await freshApp();
let members = 0;

function member(): (text: string) => ReturnType<typeof talk> {
  members += 1;
  const user = `load-${members}`;
  return (text) => talk(app, { user, text });
}

describe('questions on loads', () => {
  // Numbers as in tests/advice/load*.test.ts, where their sources stand.
  it.each([
    [
      'how hard is a factor 1 fall with 80 kg on the top bolt?',
      /up to 17 kN .* on the top bolt, 10 kN/,
      'en-892',
    ],
    [
      'what force on two bolts at 120 degrees with 2 kN?',
      /^Too wide: .* 2\.0 kN .* 100 % of the load/,
      'practice',
    ],
    ['highline 50 m span 2.5 m sag 80 kg', /pulls 3\.9 kN/, 'highline-measurements'],
    ['load when lowering a 90 kg climber', /^Lowering 90 kg puts 1\.5 kN/, 'en-959-2018'],
    [
      'two bolts, one leg 20 and the other 40 degrees from vertical, 2 kN load',
      /1\.5 kN .* 74 %/,
      'practice',
    ],
    ['abseiling 75 kg, what load?', /0\.74 kN .* hanging still/, 'practice'],
    ['rescue: 200 kg, what load?', /2\.0 kN .* still, 3\.3 kN .* lowered/, 'practice'],
    [
      'fall factor 2 on the belay, 80 kg',
      /13 kN .* straight onto the belay, 21 kN/,
      'hall-fall-measurements',
    ],
    ['fall factor 2.5 with 80 kg', /^No number/, 'practice'],
    [
      'what force does a 5 m fall with 15 m of rope out make with 80 kg?',
      /^Factor 0\.33 fall, 80 kg/,
      'en-892',
    ],
  ])('%s', async (question, verdict, source) => {
    const reply = await member()(question);
    expect(reply.text).toMatch(verdict);
    expect(reply.topic).toBe('load');
    expect(reply.advice?.cautions).toEqual(
      expect.arrayContaining(['competent-person', 'type-test-not-working-load']),
    );
    expect(reply.advice?.sources).toContain(source);
    expect(reply.advice?.deferral).toBe(true);
  });

  it('the two angles of 90 and of 20 and 40 degrees together are answered, and the difference is told', async () => {
    const say = member();
    await say('two bolts 90 degrees, one 20 one 40 degrees from vertical');
    const reply = await say('2 kN');
    expect(reply.text).toContain('make 60° between them, not 90°');
    expect(reply.text).toMatch(/1\.5 kN .* 74 %/);
  });

  it('asks for what a case needs and nothing else', async () => {
    const say = member();
    expect((await say('what load does a highline make?')).missing[0]).toBe('span_m');
    expect((await say('50 m')).missing[0]).toBe('sag_m');
    await say('2.5 m');
    const reply = await say('80 kg');
    expect(reply.text).toMatch(/pulls 3\.9 kN/);
  });

  it('asks what is done with the anchor when nothing tells', async () => {
    const reply = await member()('what load is on the anchor?');
    expect(reply.advice).toBeNull();
    expect(reply.missing[0]).toBe('use');
  });

  it('shows the formulas and their numbers when asked why', async () => {
    const say = member();
    await say('how hard is a factor 1 fall with 80 kg on the top bolt?');
    const why = await say('why?');
    for (const part of ['EA = F0', 'F = mg + √', 'F_r = F·(1 + r)', 'EN 892'])
      expect(why.text).toContain(part);
  });
});
