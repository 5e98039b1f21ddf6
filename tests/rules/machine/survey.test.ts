import { describe, expect, it } from 'vitest';
import { faults, loadRules, remarks, type Survey, survey } from '../../../src/rules/index.ts';
import { byHand } from './by-hand.ts';
import { differences, everySituation, seeded } from './same.ts';
import { boots, type Edit, variant } from './variant.ts';

const rules = await loadRules(boots);
const ground = 'decisions/ground.json';
const boot = 'decisions/boots.json';
const warnings = 'decisions/warnings.json';
const of = async (name: string, ...edits: Edit[]) => survey(await variant(edits), name);
const named = ({ outcome, item }: { outcome: string; item?: string }) =>
  item === undefined ? outcome : `${outcome} ${item}`;
const breaches = (found: Survey) => [
  ...found.notMonotone.map((one) => `${named(one)} ${one.fact} ${one.value} ${one.than}`),
  ...found.unknownIsBold.map((one) => `${named(one)} ${one.fact} unknown ${one.than}`),
];

describe('the fixture as it stands', () => {
  it.each([...rules.decisions.keys()])('has no fault in %s', (name) => {
    expect(faults(survey(rules, name))).toEqual([]);
  });
  it('counts what is possible', () => {
    expect(survey(rules, 'ground').combinations).toBe(18);
    expect(survey(rules, 'boots').combinations).toBe(4 * 3 * 3 * 2);
  });
  it('remarks on a fact that is read and changes nothing', () => {
    expect(remarks(survey(rules, 'warnings'))).toEqual(['warnings: company is read and makes no difference']);
  });
});

describe('planted faults are found', () => {
  it('a gap, with the situation', async () => {
    const found = await of('ground', { file: ground, at: ['rules', 3] });
    expect(found.gaps).toEqual([
      {
        outcome: 'footing',
        count: 2,
        situations: [
          { path: 'scree', wetness: 'dry', season: 'autumn' },
          { path: 'scree', wetness: 'dry', season: 'summer' },
        ],
      },
    ]);
    expect(found.neverGiven).toEqual(['footing firm']);
  });

  it('a gap of something gathered that may not be empty', async () => {
    const found = await of('warnings', {
      file: warnings,
      at: ['rules', 0, 'when', 'value'],
      put: ['alone'],
    });
    expect(found.gaps.map(({ outcome, count }) => ({ outcome, count }))).toEqual([
      { outcome: 'set', count: 12 },
    ]);
    expect(found.gaps[0]?.situations[0]).toMatchObject({ company: 'group', forecast: 'fair' });
  });

  it('a conflict, with the two rules', async () => {
    const found = await of('boots', { file: boot, at: ['rules', 5, 'overrides'] });
    expect(found.conflicts).toMatchObject([
      { outcome: 'pace', rules: ['boots.brisk', 'boots.alone'], count: 4, situation: { company: 'alone' } },
    ]);
  });

  it('a rule that never fires', async () => {
    const when = {
      all: [
        { fact: 'path', operator: 'equal', value: 'bog' },
        { fact: 'wetness', operator: 'equal', value: 'dry' },
      ],
    };
    expect((await of('ground', { file: ground, at: ['rules', 0, 'when'], put: when })).neverFires).toEqual([
      'ground.winter',
    ]);
  });

  it('a rule that is shadowed', async () => {
    const put = {
      id: 'ground.bog',
      since: '2026-11-25',
      words: 'A bog is soft.',
      sources: ['walks'],
      when: { fact: 'path', operator: 'equal', value: 'bog' },
      gives: { footing: 'slippery' },
    };
    expect((await of('ground', { file: ground, at: ['rules', 4], put })).shadowed).toEqual(['ground.bog']);
  });

  it('an unknown that is bolder than the worst known value', async () => {
    const found = await of('ground', {
      file: ground,
      at: ['rules', 1, 'when', 'any', 0, 'value'],
      put: ['soaked'],
    });
    expect(found.unknownIsBold.map(({ count, ...one }) => one)).toEqual([
      {
        outcome: 'footing',
        fact: 'path',
        value: 'unknown',
        gives: 'slippery',
        than: 'bog',
        insteadOf: 'treacherous',
        situation: { path: 'unknown', wetness: 'unknown', season: 'autumn' },
      },
    ]);
    const lost = await of('warnings', {
      file: warnings,
      at: ['rules', 1, 'when'],
      put: { fact: 'rest', operator: 'equal', value: 'tired' },
    });
    expect(breaches(lost)).toEqual([
      'set rest-first rest unknown tired',
      'set take-a-coat rest unknown tired',
      'gear poles rest unknown tired',
    ]);
  });

  it('a harsher value that is better off: along an order, along the rows of a table, and a lost warning', async () => {
    const mild = { fact: 'season', operator: 'in', value: ['autumn', 'unknown', 'summer'] };
    expect(breaches(await of('ground', { file: ground, at: ['rules', 0, 'when'], put: mild }))).toContain(
      'footing season winter autumn',
    );
    const row = await of('ground', {
      file: 'tables/paths.json',
      at: ['rows', 1, 'worseThan'],
      put: ['meadow'],
    });
    expect(breaches(row)).toEqual(['footing path gully meadow', 'footing path scree meadow'].slice(1));
    const storm = { fact: 'forecast', operator: 'in', value: ['rain', 'unknown'] };
    const lost = await of('warnings', {
      file: warnings,
      at: ['rules', 2, 'when', 'any', 0],
      put: storm,
    });
    expect(breaches(lost)).toEqual(['set take-a-coat forecast storm rain', 'gear torch forecast storm rain']);
    expect(faults(lost)[0]).toBe(
      'warnings: broken order: forecast=storm gives set "take-a-coat" not there, but rain gives there ' +
        '(4 times; first: rest=fair, forecast=storm, season=autumn)',
    );
  });

  it('none of the two where the decision says that a fact is not ordered', async () => {
    const rest = { fact: 'rest', operator: 'equal', value: 'tired' };
    const found = await of(
      'warnings',
      { file: warnings, at: ['rules', 1, 'when'], put: rest },
      { file: warnings, at: ['notOrdered'], put: { rest: 'a trial' } },
    );
    expect(breaches(found)).toEqual([]);
  });
});

/** Rules of this kind are as likely wrong as right, so that every kind of finding occurs. */
function chanceEdits(seed: number): Edit[] {
  const random = seeded(seed);
  const pick = <T>(items: readonly T[]): T => {
    const item = items[Math.floor(random() * items.length)];
    if (item === undefined) throw new Error('nothing to pick from');
    return item;
  };
  const domains: Record<string, string[]> = {
    path: ['bog', 'scree', 'gully', 'meadow', 'unknown'],
    wetness: ['soaked', 'moist', 'dry', 'unknown'],
    season: ['winter', 'autumn', 'summer', 'unknown'],
    rest: ['tired', 'fair', 'rested', 'unknown'],
  };
  const leaf = () => {
    const fact = pick(Object.keys(domains));
    const values = (domains[fact] ?? []).filter(() => random() < 0.5);
    return { fact, operator: 'in', value: values.length > 0 ? values : ['unknown'] };
  };
  const everything = { fact: 'season', operator: 'in', value: domains.season };
  const rules = Array.from({ length: 7 }, (_, place) => ({
    id: `ground.${place}`,
    since: '2026-11-25',
    words: 'By chance.',
    sources: ['practice'],
    // The first rule of two sets in three leaves no gap.
    when:
      place === 0 && seed % 3 > 0
        ? everything
        : pick([{ all: [leaf(), leaf()] }, { any: [leaf(), { all: [leaf(), leaf()] }] }, leaf()]),
    gives:
      place === 0
        ? { footing: 'slippery' }
        : pick<object>([
            { footing: pick(['treacherous', 'slippery', 'firm']) },
            { note: [pick(['mud', 'ice'])] },
            { footing: 'slippery', note: 'ice' },
          ]),
    ...(random() < 0.3 && place > 0 ? { overrides: [`ground.${place - 1}`] } : {}),
  }));
  const used = Object.keys(domains).filter((fact) => JSON.stringify(rules).includes(`"${fact}"`));
  const note = { about: 'notes', values: ['mud', 'ice'], combine: 'all', mayBeEmpty: true };
  return [
    { file: ground, at: ['rules'], put: rules },
    { file: ground, at: ['reads'], put: used },
    { file: ground, at: ['outcomes', 'note'], put: note },
  ];
}

it('finds in 40 rule sets made by chance what a search by hand finds', async () => {
  let breached = 0;
  let whole = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const made = await variant(chanceEdits(seed));
    const found = survey(made, 'ground');
    const hand = byHand(made, 'ground');
    expect(await differences(made, 'ground', everySituation(made, 'ground'))).toEqual([]);
    expect(found.combinations).toBe(hand.combinations);
    expect(found.gaps.length > 0).toBe(hand.gaps > 0);
    expect(found.neverFires).toEqual(hand.neverFires);
    const close = ({ notMonotone }: Survey) =>
      notMonotone.map((one) => `${named(one)} ${one.fact} ${one.value} ${one.than}`);
    const bold = found.unknownIsBold.map((one) => `${named(one)} ${one.fact}`);
    if (hand.gaps === 0) {
      expect(new Set(close(found))).toEqual(hand.broken);
      expect(new Set(bold)).toEqual(hand.bold);
      whole += 1;
      breached += hand.broken.size + hand.bold.size;
    }
  }
  expect(breached).toBeGreaterThan(50);
  expect(whole).toBeGreaterThan(20);
});
