/** Where a wrong fact would make advice bolder. What the words mean is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand();
const facts = (text: string, context = {}) => told(understand(text, context));

describe('what is denied, quoted or a name is no fact', () => {
  it.each([
    ['not stainless 304', {}],
    ['no granite here', {}],
    ['neither epoxy nor polyester', {}],
    ['> use 304 on granite', {}],
    ['he wrote "10x80 in granite is fine"', {}],
    ['on "Granite Groove" there is slate', { rock: 'slate' }],
    ['the route called Titanium Man is gneiss', { rock: 'gneiss' }],
    ['Limestone Cowboy needs new bolts', {}],
    ['granite-coloured hangers', {}],
    ['granite like texture', {}],
    ['first aid kit', {}],
    ['will 316 rust?', { metal: 'stainless-316' }],
    ['A2 aid pitch', { use: 'aid' }],
    ['a 6c+ route', {}],
    ['7c sport route in limestone', { use: 'lead', rock: 'limestone' }],
    ['304 m from the sea', { sea_distance_m: 304 }],
    ['pitch 316', { metal: 'stainless-316' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));

  it.each([
    'a plated hanger on a 316 bolt',
    'my bolts are 316 and the hanger that touches them is zinc plated',
    'bolt A4, chain plated',
  ])('two metals that touch: %s', (text) =>
    expect(facts(text)).toMatchObject({ metal: 'stainless-316', metal_other: 'zinc-plated' }),
  );

  it('does not take a second metal of the bolt itself for that of a fitting', () =>
    expect(facts('the hangers are fine, the bolt is 316 or 304')).not.toHaveProperty('metal_other'));

  it('says what was ruled out', () => {
    const { ruledOut } = understand('not 304, not granite');
    expect(ruledOut.map(({ fact, value }) => [fact, value])).toEqual([
      ['metal', 'stainless-304'],
      ['rock', 'granite'],
    ]);
  });
});

describe('what may be something else is asked back and not taken', () => {
  it.each([
    ['stainless', 'metal', 'stainless-304'],
    ['titanium', 'metal', 'titanium-grade-2'],
    ['galvanised', 'metal', 'zinc-plated'],
    ['glue-in', 'anchor', 'glue-in-single-leg'],
    ['near the sea', 'environment', 'sea-cliff'],
    ['45 degrees rock temperature', 'temperature_c', 7.222],
  ])('%s', (text, fact, careful) => {
    const { found, problems } = understand(text);
    expect(found).toEqual([]);
    expect(problems).toMatchObject([{ kind: 'ambiguous', fact, value: careful }]);
  });

  it.each([
    ['below 5 °C', 'ambiguous', 'temperature_c'],
    ['10x12x80', 'ambiguous', 'diameter_mm'],
    ['10x12', 'impossible', 'length_mm'],
    ['embedment 70 kN', 'unit-mismatch', 'embedment_mm'],
    ['load 200 kg', 'unit-mismatch', 'load_kn'],
    ['granite and limestone', 'conflict', 'rock'],
    ['air temperature 15 C', 'ambiguous', 'temperature_c'],
    ['-80 mm deep', 'impossible', 'embedment_mm'],
    ['fall factor 900', 'impossible', 'fall_factor'],
    ['humidity 140%', 'impossible', 'humidity_pct'],
  ])('%s: %s %s', (text, kind, fact) => {
    const { found, problems } = understand(text);
    expect(found.filter((one) => one.fact === fact)).toEqual([]);
    expect(problems).toMatchObject([{ kind, fact }]);
  });

  it.each(['maybe granite', 'might be granite', "I'm not sure if it's granite", 'either granite or gneiss'])(
    '%s',
    (text) => expect(facts(text)).toEqual({}),
  );
});

describe('of two values the careful one', () => {
  it.each([
    ['4 to 6 °C', { temperature_c: 4 }],
    ['between 4 and 6 C', { temperature_c: 4 }],
    ['4-6C', { temperature_c: 4 }],
    ['-5 to 2 C', { temperature_c: -5 }],
    ['80-100 mm deep', { embedment_mm: 80 }],
    ['edge 10-15 cm', { edge_distance_mm: 100 }],
    ['load 10-15 kN', { load_kn: 15 }],
    ['20-30 bolts', { count: 30 }],
    ['damp or wet hole', { hole_moisture: 'wet' }],
    ['hole is dry outside and wet inside', { hole_moisture: 'wet' }],
    ['rusty and loose bolt', { signs: 'loose' }],
    ['rock 4 C, air temp 15 C', { temperature_c: 4 }],
    ['15 C by day, 3 C at night', { temperature_c: 3 }],
  ])('%s', (text, want) => expect(facts(text)).toMatchObject(want));
});

describe('words that only look like corrections of spelling', () => {
  it.each([
    'graphite',
    'state',
    'planet',
    'marvel',
    'grapes',
    'steal',
    'epoch',
    'dolphin',
    'basil',
    'tuffet',
  ])('%s', (word) => expect(facts(`a ${word} thing`)).toEqual({}));
  it.each([
    ['limesotne', { rock: 'limestone' }],
    ['granit', { rock: 'granite' }],
    ['conglomorate', { rock: 'conglomerate' }],
    ['metacrylate', { adhesive: 'methacrylate' }],
    ['vinylesther', { adhesive: 'vinyl-ester' }],
    ['seacliff', { environment: 'sea-cliff' }],
    ['31 6', {}],
    ['A 4', {}],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});
