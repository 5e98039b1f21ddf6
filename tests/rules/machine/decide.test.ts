import { expect, it } from 'vitest';
import {
  decide,
  decideAll,
  decideAllNow,
  decideNow,
  exampleProblems,
  explain,
  loadRules,
  RuleConflict,
  RuleGap,
  situation,
  withValues,
} from '../../../src/rules/index.ts';
import { differences, everySituation } from './same.ts';
import { boots, variant } from './variant.ts';

const rules = await loadRules(boots);
const told = situation(rules, {
  path: { value: 'meadow', from: 'said' },
  season: { value: 'summer', from: 'said' },
});

it('gives values, reasons and sources, the overridden rule apart', async () => {
  const s = withValues(rules, told, { footing: 'treacherous' });
  expect(await decide(rules, 'boots', s, 'sandal')).toEqual({
    decision: 'boots',
    candidate: 'sandal',
    values: { suitability: 'unsuitable', pace: 'slow' },
    because: { suitability: ['boots.slick'], pace: ['boots.alone'] },
    fired: ['boots.slick', 'boots.brisk', 'boots.alone'],
    overridden: ['boots.brisk'],
    sources: ['walks', 'practice'],
  });
});

it('gathers in the order of the declared values', async () => {
  const outcome = await decide(rules, 'warnings', situation(rules, {}));
  expect(outcome.values).toEqual({
    set: ['tell-somebody', 'rest-first', 'take-a-coat', 'turn-back'],
    gear: ['poles', 'torch'],
  });
  const calm = { season: 'summer', rest: 'rested', forecast: 'fair', company: 'group', slope: 'flat' };
  expect((await decide(rules, 'warnings', calm)).values.gear).toEqual([]);
});

it.each([...rules.decisions.keys()])('engine and compiled rules agree on all of %s', async (name) => {
  const all = [...everySituation(rules, name)];
  expect(all.length).toBeGreaterThan(50);
  expect(await differences(rules, name, all)).toEqual([]);
});

it('counts what is unknown as worse and never as better', async () => {
  const fired = async (season: string, wetness: string) =>
    (await decide(rules, 'ground', { path: 'unknown', season, wetness })).fired;
  expect(await fired('autumn', 'dry')).toEqual(['ground.firm']);
  expect(await fired('summer', 'dry')).toEqual(['ground.firm']);
  expect(await fired('winter', 'dry')).toEqual(['ground.winter']);
  expect(await fired('unknown', 'dry')).toEqual(['ground.winter']);
  expect(await fired('autumn', 'moist')).toEqual(['ground.moist']);
  expect(await fired('autumn', 'soaked')).toEqual(['ground.soaked', 'ground.moist']);
  expect(await fired('autumn', 'unknown')).toEqual(['ground.soaked', 'ground.moist']);
});

it('takes earlier decisions first and hands their outcomes on', async () => {
  const all = await decideAll(rules, ['boots', 'warnings'], told);
  expect([...all.outcomes.keys()]).toEqual(['ground', 'boots', 'warnings']);
  expect(all.situation.footing).toBe('slippery');
  expect(all.outcomes.get('boots')?.map(({ candidate, values }) => [candidate, values.suitability])).toEqual([
    ['sandal', 'unsuitable'],
    ['trainer', 'unsuitable'],
    ['boot', 'suitable'],
  ]);
  expect(decideAllNow(rules, ['boots', 'warnings'], told)).toEqual(all);
  const handed = await decideAll(rules, ['boots'], withValues(rules, told, { footing: 'firm' }));
  expect([...handed.outcomes.keys()]).toEqual(['boots']);
});

it('does not take a missing outcome, an unknown value or a stray candidate for an answer', async () => {
  await expect(decide(rules, 'boots', told, 'boot')).rejects.toThrow('the situation has no footing');
  await expect(decide(rules, 'ground', { ...told, season: 'spring' })).rejects.toThrow(
    'not a value of season',
  );
  await expect(decide(rules, 'ground', told, 'boot')).rejects.toThrow('not taken for each');
  expect(() => decideNow(rules, 'boots', told, 'boot')).toThrow('the situation has no footing');
});

it('turns a gap and a conflict into errors that name the rules and the situation', async () => {
  const file = 'decisions/boots.json';
  const holey = await variant([
    { file, at: ['rules', 4] },
    { file, at: ['rules', 4, 'overrides'] },
  ]);
  const firm = withValues(holey, told, { footing: 'firm' });
  await expect(decide(holey, 'boots', firm, 'boot')).rejects.toThrow(RuleGap);
  await expect(decide(holey, 'boots', firm, 'boot')).rejects.toThrow(
    /no rule gives pace when .*footing=firm/,
  );

  const torn = await variant([{ file, at: ['rules', 5, 'overrides'] }]);
  const error = await decide(torn, 'boots', withValues(torn, told, { footing: 'treacherous' }), 'boot').catch(
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(RuleConflict);
  expect(error).toMatchObject({ decision: 'boots', outcome: 'pace', rules: ['boots.brisk', 'boots.alone'] });
});

it('lets an overridden rule still override: an exception of an exception does not revive the rule', async () => {
  const file = 'decisions/boots.json';
  const three = await variant([{ file, at: ['rules', 3, 'overrides'], put: ['boots.alone'] }]);
  const s = { ...told, footing: 'firm', company: 'alone' };
  await expect(decide(three, 'boots', s, 'sandal')).rejects.toThrow(RuleGap);
});

it('explains what each rule tested and saw', async () => {
  const outcome = await decide(rules, 'ground', situation(rules, { path: { value: 'bog', from: 'said' } }));
  expect(explain(rules, outcome, situation(rules, { path: { value: 'bog', from: 'said' } }))).toEqual([
    {
      rule: 'ground.soaked',
      words: 'Soaked ground gives way.',
      sources: ['walks', 'practice'],
      overridden: false,
      tested: [
        { fact: 'wetness', operator: 'in', value: ['soaked', 'unknown'], seen: 'soaked', held: true },
        { fact: 'path', operator: 'equal', value: 'bog', seen: 'bog', held: true },
      ],
    },
    {
      rule: 'ground.moist',
      words: 'Moist ground slips.',
      sources: ['walks'],
      overridden: false,
      tested: [{ fact: 'wetness', operator: 'orWorse', value: 'moist', seen: 'soaked', held: true }],
    },
  ]);
});

it('checks the examples beside the rules', async () => {
  expect(exampleProblems(rules)).toEqual([]);
  const wrong = await variant([
    { file: 'decisions/ground.json', at: ['examples', 0, 'expect', 'footing'], put: 'firm' },
    { file: 'decisions/ground.json', at: ['examples', 1, 'facts', 'wetness'], put: 'dry' },
    { file: 'decisions/warnings.json', at: ['examples', 0, 'expect', 'set'], put: ['turn-back'] },
    { file: 'decisions/warnings.json', at: ['examples', 1, 'facts', 'path'], put: 'bog' },
    { file: 'decisions/warnings.json', at: ['examples', 1, 'facts', 'season'], put: 'summer' },
  ]);
  expect(exampleProblems(wrong)).toEqual([
    'ground, example "meadow in summer": footing is slippery and not firm, because of ground.moist',
    'ground, example "scree in summer": wetness follows from path: leave it out',
    'warnings, example "a good day": set is tell-somebody and not turn-back, because of warnings.always',
    'warnings, example "winter": path=bog does not allow season=summer',
    'warnings, example "winter": set is tell-somebody,rest-first,take-a-coat and not turn-back, ' +
      'because of warnings.always, warnings.rest, warnings.weather',
  ]);
});
