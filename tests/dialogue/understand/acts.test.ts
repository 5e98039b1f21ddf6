import { describe, expect, it } from 'vitest';
import { loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand();

describe('acts', () => {
  it.each([
    ['why?', 'why'],
    ['why not 304', 'why'],
    ['how do you know', 'why'],
    ['explain everything', 'why-all'],
    ['go back', 'back'],
    ['start over', 'restart'],
    ['forget me', 'forget'],
    ['help', 'help'],
    ["don't know", 'dont-know'],
    ['dunno', 'dont-know'],
    ['yes', 'yes'],
    ['nope', 'no'],
    ['thanks mate', 'thanks'],
    ['hello', 'greeting'],
    ['sorry, granite', 'correction'],
    ['no, granite', 'correction'],
    ['no wait, 316', 'correction'],
    ['granite', 'ask'],
    ['hi, which bolt for granite?', 'ask'],
    ['thanks, and how long must it cure?', 'ask'],
    ['no granite here', 'ask'],
    ['/why', 'why'],
    ['/back', 'back'],
    ['/restart', 'restart'],
    ['/forget', 'forget'],
    ['/help@some_bot', 'help'],
  ])('%s: %s', (text, act) => expect(understand(text).act).toBe(act));
});

describe('commands set the topic', () => {
  it.each([
    ['/material granite', 'material', { rock: 'granite' }],
    ['/anchor@club_bot soft sandstone', 'anchor', { rock: 'sandstone-soft' }],
    ['/embedment 10x80', 'embedment', { diameter_mm: 10, length_mm: 80 }],
    ['/cure epoxy 6C', 'cure', { adhesive: 'epoxy', temperature_c: 6 }],
    ['/pulltest', 'pulltest-plan', {}],
    ['/club', 'settings', {}],
    ['/COST', 'cost', {}],
    ['/remind', 'remind', {}],
  ])('%s', (text, topic, facts) => {
    const parsed = understand(text);
    expect(parsed.topic).toBe(topic);
    expect(parsed.topicSure).toBe(true);
    expect(told(parsed)).toEqual(facts);
  });
});

describe('corrections, the last word counts', () => {
  it.each([
    ['is 304 ok? no wait 316', { metal: 'stainless-316' }],
    ['granite. sorry, gneiss', { rock: 'gneiss' }],
    ['10 mm, no, sorry I meant 12 mm', { diameter_mm: 12 }],
    ['not granite, limestone', { rock: 'limestone' }],
  ])('%s', (text, want) => expect(told(understand(text))).toMatchObject(want));
});

describe('several things at once', () => {
  it('keeps either-or apart from facts', () => {
    const { found, alternatives } = understand('316 or titanium grade 2 for limestone?');
    expect(found.map(({ fact }) => fact)).toEqual(['rock']);
    expect(alternatives.map((list) => list.map(({ value }) => value))).toEqual([
      ['stainless-316', 'titanium-grade-2'],
    ]);
  });

  it('gives every topic in the order asked', () => {
    expect(understand('which glue and how much for 20 bolts?').topics).toEqual([
      'adhesive',
      'adhesive-amount',
    ]);
    expect(understand('how long does epoxy cure and how do I clean the hole?').topics).toEqual([
      'cure',
      'hole',
    ]);
  });

  it('names the facts that are not known', () => {
    expect(understand("don't know the rock or the metal").unknownFacts).toEqual(['rock', 'metal']);
    expect(understand('no idea', { pending: 'rock' }).unknownFacts).toEqual(['rock']);
    expect(understand('maybe granite').unknownFacts).toEqual(['rock']);
  });

  it('keeps the words that a fact came from, and the unit that was said', () => {
    expect(understand('half inch bolt in granite').found).toEqual([
      { fact: 'diameter_mm', value: 12.7, text: 'half inch', unit: 'in' },
      { fact: 'rock', value: 'granite', text: 'granite' },
    ]);
  });
});

describe('an emergency beats everything, a question about one does not', () => {
  it.each([
    'which bolt for granite? help my partner is hanging on a bolt that just broke',
    'someone is hanging unconscious',
    'bolt just snapped and my partner is stuck',
    'got resin in my eye how long does it cure',
    'call rescue!!!',
  ])('%s', (text) => expect(understand(text).topic).toBe('emergency'));

  it.each([
    'what anchors for an emergency bivouac?',
    'a bolt broke last year, which metal?',
    'is a hanging belay ok in granite',
  ])('%s', (text) => expect(understand(text).topic).not.toBe('emergency'));
});
