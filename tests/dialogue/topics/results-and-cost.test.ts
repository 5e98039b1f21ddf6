import { describe, expect, it } from 'vitest';
import type { Reply } from '../../../src/contracts/reply.ts';
import { freshApp, talk } from '../../support/app.ts';

const app = await freshApp();
let members = 0;

/** A talk of one new member; the last reply counts. */
async function lastOf(...texts: readonly string[]): Promise<Reply> {
  members += 1;
  let reply: Reply | undefined;
  for (const text of texts) reply = await talk(app, { user: `results-${members}`, text });
  if (reply === undefined) throw new Error('nothing was said');
  return reply;
}

/** An answer that may be sent: with its cautions, the deferral and sources. */
function answered(reply: Reply): string {
  expect(reply.advice, reply.text).not.toBeNull();
  expect(reply.advice?.cautions.length).toBeGreaterThan(0);
  expect(reply.advice?.sources.length).toBeGreaterThan(0);
  expect(reply.text).toContain('This is advice, not a certificate.');
  return reply.text;
}

describe('results of pull tests', () => {
  it('five loads: mean and 5 % value, as an upper bound until the frame is told', async () => {
    const reply = await lastOf('we pulled 24.1 27.3 22.8 30.2 26 kN');
    expect(answered(reply)).toContain('5 pulls: mean 26 kN (5900 lbf), 5 % value 18 kN (4000 lbf)');
    expect(reply.topic).toBe('pulltest-result');
    expect(reply.assumed).toContain('frame');
    expect(reply.advice?.cautions).toContain('type-test-not-working-load');
    const clear = await lastOf('we pulled 24.1 27.3 22.8 30.2 26 kN', 'the frame stood clear');
    expect(answered(clear)).toContain('above the 15 kN');
  });

  it('stopped pulls are told apart from failures', async () => {
    const reply = await lastOf('3 failed at 18, 21, 24; two stopped at 25');
    expect(reply.facts).toMatchObject({ pulls_kn: [18, 21, 24], stopped_kn: [25, 25] });
    expect(answered(reply)).toContain('5 pulls, 3 to failure and 2 stopped before: middle 24 kN');
  });

  it('proof tests that all held', async () => {
    const reply = await lastOf('5 proof tests to 8 kN all held');
    expect(answered(reply)).toContain('up to 45 % may still be bad');
    expect(reply.advice?.cautions).toContain('proof-proves-little');
  });

  it('asks for the loads, and takes a bare row as the answer', async () => {
    expect((await lastOf('what do our pull tests say?')).missing).toEqual(['pulls_kn']);
    expect(answered(await lastOf('what do our pull tests say?', '24 27 23 26'))).toContain(
      '4 pulls: mean 25 kN',
    );
  });

  it('shows the formula and the tolerance factor on "why"', async () => {
    const why = await lastOf('we pulled 24.1 27.3 22.8 30.2 26 kN', 'why?');
    expect(why.text).toMatch(/k = t'\(γ; n−1, z_P·√n\)\/√n; n = 5 .*P = 0\.95 .*γ = 0\.9 /);
    expect(why.text).toContain('7.2.6.3');
  });
});

describe('comparing groups', () => {
  it('two rows with a word before each', async () => {
    const reply = await lastOf('smooth: 33 35 37, rough: 36 44 51');
    expect(reply.topic).toBe('compare');
    expect(answered(reply)).toContain('No difference is shown');
    expect(reply.text).toContain('between -26 kN and 8.5 kN');
  });

  it('asks for the second group', async () => {
    const reply = await lastOf('compare our two pull test series', '33 35 37', '36 44 51');
    expect(reply.facts).toMatchObject({ pulls_kn: [33, 35, 37], pulls_other_kn: [36, 44, 51] });
    answered(reply);
  });

  it('two metals without numbers are a question of metal', async () => {
    expect((await lastOf('316 or titanium?')).topic).toBe('material');
  });
});

describe('planning a pull test', () => {
  it('names the test, the load, the hold and the feet of the frame', async () => {
    const reply = await lastOf('how do we proof test 40 lead bolts in granite, 12x100 glue-ins, sound rock?');
    const text = answered(reply);
    expect(text).toContain('4 of 40');
    expect(text).toContain('6 kN');
    expect(text).toContain('200 mm');
    expect(reply.advice?.cautions).toContain('pull-zone');
  });
});

describe('cost and life', () => {
  it('one choice with everything told', async () => {
    const reply = await lastOf(
      'bolts cost 6 euro each, labour 20 per bolt, last 10 years, what does that cost over 50 years?',
    );
    expect(answered(reply)).toContain('It costs 3.0 a year for each anchor over 50 years, with 5 holes.');
  });

  it('two metals at a place: ranking among what is safe', async () => {
    const reply = await lastOf(
      '316 costs 20 and lasts 25 years, titanium grade 2 costs 43 and lasts 50 years, labour 20, temperate inland crag. Which is cheaper?',
    );
    expect(answered(reply)).toContain('Among what is safe there, stainless steel 316 is cheapest');
    expect(reply.advice?.cautions).toContain('safe-before-cheap');
  });

  it('what is not safe there is not ranked', async () => {
    const reply = await lastOf(
      '316 costs 20 and lasts 25 years, titanium grade 2 costs 43 and lasts 50 years, labour 20, overhanging tropical sea cliff. Which is cheaper?',
    );
    expect(answered(reply).split('\n')[0]).not.toContain('316');
    expect(reply.advice?.reject.map(({ what }) => what)).toEqual(['stainless-316']);
  });

  it('how long a metal lasts', async () => {
    const reply = await lastOf('how long does 316 last on a temperate inland crag?');
    expect(answered(reply)).toContain('Plan 30 to 50 years for stainless steel 316');
    const sea = await lastOf('how long does 316 last on an overhanging tropical sea cliff?');
    expect(answered(sea)).toContain('Plan no life at all');
  });
});
