import { describe, expect, it } from 'vitest';
import { freshApp, talk } from '../support/app.ts';

const app = await freshApp();

describe('words that point back at the last answer', () => {
  it('"the other one" of two that were weighed: the one that was not recommended', async () => {
    const chat = 'weighed';
    await talk(app, {
      chat,
      text: '316 or titanium on a sea cliff for a lower-off? it is warm, overhanging limestone',
    });
    const first = await talk(app, { chat, text: "don't know" });
    expect(first.advice?.recommend.metal).toEqual(['titanium-grade-2']);
    const other = await talk(app, { chat, text: 'and the other one?' });
    expect(other.facts.metal).toBe('stainless-316');
    const back = await talk(app, { chat, text: 'the other one then' });
    expect(back.facts.metal).toBe('titanium-grade-2');
  });

  it('is no number: nothing is read out of "one"', async () => {
    const chat = 'number';
    await talk(app, { chat, text: 'vinylester or epoxy in granite?' });
    const asked = await talk(app, { chat, text: 'the other one then' });
    expect(asked.facts).not.toHaveProperty('temperature_c');
    expect(asked.choices.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['f:adhesive:epoxy', 'f:adhesive:vinyl-ester']),
    );
    expect(asked.advice).toBeNull();
  });

  it('says so where there is no other one', async () => {
    const none = await talk(app, { chat: 'none', text: 'and the other one?' });
    expect(none.text).toContain('I do not know which other one you mean');
  });

  it('the shady side: warmth and damp of the rock are asked anew', async () => {
    const chat = 'shade';
    await talk(app, {
      chat,
      text: 'how long must vinyl ester cure at 18 °C in granite, dry hole, set 2 hours ago',
    });
    for (const text of ["don't know", "don't know"]) await talk(app, { chat, text });
    const shade = await talk(app, { chat, text: 'what about the shady side?' });
    expect(shade.facts).not.toHaveProperty('temperature_c');
    expect(shade.missing[0]).toBe('temperature_c');
    const told = await talk(app, { chat, text: '6 degrees' });
    expect(told.facts.temperature_c).toBe(6);
  });

  it('works in other languages', async () => {
    const chat = 'es';
    const [locale, user] = ['es', 'es'];
    await talk(app, { chat, user, locale, text: '¿316 o titanio en un acantilado marino tropical?' });
    await talk(app, { chat, user, locale, text: 'no sé' });
    const other = await talk(app, { chat, user, locale, text: '¿y el otro?' });
    expect(other.facts.metal).toBe('stainless-316');
  });
});

describe('"same but", "and for"', () => {
  it('changes one fact of the last question', async () => {
    const chat = 'same';
    const facts = 'rock sounds solid, far from any edge';
    await talk(app, { chat, text: `is 10x80 epoxy 316 twin-leg in granite deep enough, dry hole, ${facts}` });
    const bigger = await talk(app, { chat, text: 'same but 12 mm' });
    expect(bigger.facts).toMatchObject({ diameter_mm: 12, length_mm: 80, rock: 'granite' });
    const titanium = await talk(app, { chat, text: 'and for titanium?' });
    expect(titanium.facts).toMatchObject({ diameter_mm: 12, metal: 'titanium-grade-2', rock: 'granite' });
    expect(titanium.topic).toBe('embedment');
  });
});

describe('units', () => {
  it('stand in the order that the member or the club wants, both always', async () => {
    const chat = 'units';
    const question = 'how long does a 12x100 glue-in in granite with epoxy hold, dry hole';
    expect((await talk(app, { chat, text: question })).text).toContain('12 mm (½ in)');
    await talk(app, { chat, user: 'admin', text: '/club inches', admin: true });
    expect((await talk(app, { chat, text: question })).text).toContain('½ in (12 mm)');
    const set = await talk(app, { chat, text: 'metric units please' });
    expect(set.text).toContain('metric units first');
    expect((await talk(app, { chat, text: question })).text).toContain('12 mm (½ in)');
    await talk(app, { chat, text: 'restart' });
    expect((await talk(app, { chat, text: question })).text).toContain('12 mm (½ in)');
  });

  it('are not set by a size told in inches', async () => {
    const told = await talk(app, { chat: 'size', text: '1/2 inches' });
    expect(told.text).not.toContain('From now on');
  });
});
