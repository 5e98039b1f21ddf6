/** What the club's own pulls say, through the program: grouped, counted by the same reckoning as told results, compared. */
import { describe, expect, it } from 'vitest';
import { freshApp } from '../support/app.ts';
import { chatWith, choice } from './support.ts';

const app = await freshApp();
let chats = 0;

const heading = 'rock,anchor,glue,shank,metal,moisture,diameter [mm],length [mm],peak [kN],failure,direction';
interface Row {
  readonly kn: number;
  readonly rock?: string;
  readonly shank?: string;
  readonly metal?: string;
  readonly length?: number;
  readonly failure?: string;
  readonly moisture?: string;
  readonly direction?: string;
}
const line = ({ kn, rock, shank, metal, length, failure, moisture, direction }: Row): string =>
  [
    rock ?? 'granite',
    'twin leg',
    'epoxy',
    shank ?? '',
    metal ?? '316',
    moisture ?? 'dry',
    12,
    length ?? 100,
    kn,
    failure ?? 'resin came out clean',
    direction ?? '',
  ].join(',');

/** Pulls of one moment stand in no order. */
const sorted = (value: unknown): unknown => (Array.isArray(value) ? value.toSorted((a, b) => a - b) : value);

async function clubWith(rows: readonly Row[]) {
  chats += 1;
  const say = chatWith(app, `ours-${chats}`);
  const table = [heading, ...rows.map(line)].join('\n');
  const read = await say({ file: { name: 'pulls.csv', base64: Buffer.from(table).toString('base64') } });
  await say({ press: choice(read, 'r:keep') });
  return say;
}

// k(5; 0.95, 0.90) = 3.400: NBS Handbook 91 (1963) Table A-7, from memory; lognormal 5 % value 17.90 by SciPy 1.17.
const five = [24.1, 27.3, 22.8, 30.2, 26].map((kn) => ({ kn }));

describe('what we have', () => {
  it('every load, mean, 5 % value, what gave way, and what so few cannot say', async () => {
    const say = await clubWith(five);
    const { text, advice, topic, facts } = await say('our tests in granite');
    expect(topic).toBe('pulltest-result');
    expect(text).toContain('gave way (5): 30.2, 27.3, 26, 24.1, 22.8 kN');
    expect(text).toContain('mean 26 kN (5900 lbf), 5 % value 18 kN (4000 lbf)');
    expect(text).toContain('the glue came out of the rock (5)');
    expect(text).toContain('5 results are few');
    expect(advice?.recommend).toMatchObject({ count: 5, mean_kn: 26.1, characteristic_kn: 17.9 });
    expect(advice?.cautions).toContain('pull-zone');
    expect(sorted(facts.pulls_kn)).toEqual(sorted(five.map(({ kn }) => kn)));
    expect((await say('why')).text).toContain("from the club's own tests");
  });

  it('a stopped pull, and one whose rig failed, held at least so much', async () => {
    const say = await clubWith([...five, { kn: 40, failure: 'stopped' }, { kn: 12, failure: 'rig slipped' }]);
    const { text, facts } = await say('what do we have on granite?');
    expect(text).toContain('held at least (2): 40, 12 kN');
    expect(sorted(facts.stopped_kn)).toEqual(sorted([40, 12]));
  });

  it('puts only like with like: rock, size, glue, wet and direction apart', async () => {
    const say = await clubWith([
      ...five,
      ...five.map(({ kn }) => ({ kn: kn + 1, moisture: 'wet' })),
      ...five.map(({ kn }) => ({ kn: kn + 2, length: 150 })),
      { kn: 50, direction: 'along the rock' },
    ]);
    const { text, facts } = await say('our tests');
    expect(text).toContain('16, in 4 groups');
    expect(text).toContain('about the largest group alone');
    expect(facts.pulls_kn).toHaveLength(5);
  });

  it('a word for a family of rocks finds each kind of it', async () => {
    const say = await clubWith([
      { kn: 19, rock: 'soft sandstone', moisture: 'wet' },
      { kn: 21, rock: 'hard sandstone', moisture: 'wet' },
      { kn: 30, rock: 'hard sandstone' },
    ]);
    expect((await say('what do we have on wet sandstone?')).text).toContain('match: 2, in 2 groups');
  });

  it('says so where nothing matches, or nothing is there', async () => {
    const say = await clubWith(five);
    const none = await say('our tests in limestone');
    expect(none.text).toContain('Of your 5 pulls none matches: limestone');
    expect(none.advice).toBeNull();
    const empty = chatWith(app, 'ours-empty');
    expect((await empty('/tests granite')).text).toContain('no pull tests yet');
  });

  it('a withdrawn pull, and those of another club, count for nothing', async () => {
    const say = await clubWith(five);
    const other = await clubWith([{ kn: 99 }]);
    expect((await other('our tests')).facts.pulls_kn).toEqual([99]);
    expect((await say('our tests')).facts.pulls_kn).not.toContain(99);
  });

  it('a question that tells results of its own is not about these', async () => {
    const say = await clubWith(five);
    const reply = await say('our tests gave 14 15 16 kN, what do they prove?');
    expect(reply.facts.pulls_kn).toEqual([14, 15, 16]);
  });

  it('works by command and in other languages', async () => {
    const say = await clubWith(five);
    for (const [locale, text] of [
      ['en', '/tests granite'],
      ['es', '¿qué tenemos en granito?'],
      ['de', 'was haben wir in Granit?'],
      ['fr', "qu'avons-nous sur le granite ?"],
      ['it', 'che cosa abbiamo su granito?'],
      ['pt', 'o que temos em granito?'],
    ] as const)
      expect((await say({ text, locale }, `member-${locale}`)).facts.pulls_kn, text).toHaveLength(5);
  });
});

describe('compared', () => {
  const smooth = [33, 35, 37, 34, 36].map((kn) => ({ kn, shank: 'smooth' }));
  const rough = [44, 46, 51, 47, 49].map((kn) => ({ kn, shank: 'rough', metal: 'hot-dip galvanised' }));

  it('"316 smooth against galvanised rough, same glue?"', async () => {
    const say = await clubWith([...smooth, ...rough]);
    const { text, advice, topic, facts } = await say('316 smooth against galvanised rough, same glue?');
    expect(topic).toBe('compare');
    expect(sorted(facts.pulls_kn)).toEqual(sorted([33, 35, 37, 34, 36]));
    expect(sorted(facts.pulls_other_kn)).toEqual(sorted([44, 46, 51, 47, 49]));
    // Welch: t = −12.4/√(2.5/5 + 7.3/5) = −8.857, df 6.47 (NIST/SEMATECH 1.3.5.3 by hand).
    expect(advice?.recommend.stronger).toBe('second');
    expect(text).toContain('The second group is stronger');
    expect(text).not.toContain('The two also differ');
  });

  it('warns where the two differ in more than was asked, and leaves stopped pulls out aloud', async () => {
    const say = await clubWith([
      ...smooth,
      ...rough.map((row) => ({ ...row, length: 150, failure: 'rock cone' })),
      { kn: 30, shank: 'smooth', failure: 'stopped' },
    ]);
    const { text } = await say('smooth against rough');
    expect(text).toContain('The two also differ, or are mixed, in: length of the bolt');
    expect(text).toContain('did not all give way in the same way');
    expect(text).toContain('Pulls that were stopped, 1,');
  });

  it('is left to the adviser where the club has no such pulls', async () => {
    const say = await clubWith(smooth);
    expect((await say('epoxy against vinyl ester in granite?')).topic).not.toBe('compare');
  });

  it('"does longer help here?": the deepest against the shallowest of one kind', async () => {
    const say = await clubWith([
      ...smooth,
      ...smooth.map((row) => ({ ...row, kn: row.kn + 12, length: 150 })),
    ]);
    await say('we are in granite, epoxy');
    const { facts, text } = await say('does longer help here?');
    expect(sorted(facts.pulls_kn)).toEqual(sorted([45, 47, 49, 46, 48]));
    expect(sorted(facts.pulls_other_kn)).toEqual(sorted([33, 35, 37, 34, 36]));
    expect(text).toContain('the deepest, the second the shallowest');
    const none = await (await clubWith(smooth))('does longer help here?');
    expect(none.text).toContain('none of one kind at two depths');
  });
});
