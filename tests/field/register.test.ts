/** The register of anchors in chat: entered, found again, corrected, withdrawn, looked at, and put into an order of work. */
import { describe, expect, it } from 'vitest';
import { freshApp } from '../support/app.ts';
import { chatWith, choice } from './support.ts';

const app = await freshApp();
const standing = (await app.languages.words('en')).say({ say: 'standing' });
let chats = 0;
const fresh = () => {
  chats += 1;
  return chatWith(app, `register-${chats}`);
};
type Say = ReturnType<typeof fresh>;

const whole =
  'register bolt 3 on Gannet Slab, sector Harbour: 12x100 316 twin-leg, epoxy batch 42, set 2024-05-02 by kes';

const idIn = (text: string, letter = 'a'): string => {
  const id = new RegExp(`\\b(${letter}(?=[0-9a-z]*\\d)[0-9a-z]{4,})\\b`).exec(text)?.[1];
  if (id === undefined) throw new Error(`no id in ${text}`);
  return id;
};
const entered = async (say: Say, text = whole, user = 'ana'): Promise<string> => {
  await say(text, user);
  return idIn((await say('keep', user)).text);
};

describe('entering an anchor', () => {
  it('shows all that was told before anything is kept, and keeps it on a tap', async () => {
    const say = fresh();
    const shown = await say(whole);
    expect(shown.topic).toBe('register');
    expect(shown.facts).toEqual({
      anchor: 'glue-in-twin-leg',
      metal: 'stainless-316',
      diameter_mm: 12,
      length_mm: 100,
      adhesive: 'epoxy',
    });
    for (const part of ['Gannet Slab', 'Harbour', 'position: 3', 'batch: 42', '2024-05-02', 'set by: kes'])
      expect(shown.text).toContain(part);
    expect(shown.text).toContain('Nothing is kept yet');
    expect(shown.text).toContain(standing);
    expect((await say('/register')).text).not.toContain('anchors, crags: 1');
    const kept = await say({ press: choice(shown, 'r:keep') });
    expect(kept.text).toContain('Kept as a');
    expect((await say(idIn(kept.text))).facts).toEqual(shown.facts);
  });

  it('asks for the kind and the crag, and takes the bare name of a crag', async () => {
    const say = fresh();
    const kind = await say('/register 12x100 316');
    expect(kind.missing).toEqual(['anchor']);
    const crag = await say('twin leg');
    expect(crag.missing).toEqual(['crag']);
    expect(crag.text).toContain('At which crag');
    expect((await say('keep')).text).toContain('At which crag');
    const shown = await say('Puffin Wall');
    expect(shown.text).toContain('crag: Puffin Wall');
    expect(shown.text).toContain('set on: not known');
    expect((await say('keep')).text).toContain('Kept as a');
  });

  it('takes more while it is open, by words', async () => {
    const say = fresh();
    await say(whole);
    const shown = await say('it is 304, set 1998');
    expect(shown.facts.metal).toBe('stainless-304');
    expect(shown.text).toContain('set on: 1998');
  });

  it.each([
    ['registriere Haken 3 am Gannet Slab, Sektor Hafen: 12x100 316, gesetzt 2024-05-02 von kes', 'de'],
    ['enregistrer ancrage 3 sur Gannet Slab, secteur Port : 12x100 316, posé 2024-05-02 par kes', 'fr'],
    ['registrar anclaje 3 en Gannet Slab, sector Puerto: 12x100 316, colocado 2024-05-02 por kes', 'es'],
    ['registe ancoragem 3 em Gannet Slab, setor Porto: 12x100 316, colocado 2024-05-02 por kes', 'pt'],
    ['registra ancoraggio 3 su Gannet Slab, settore Porto: 12x100 316, posto 2024-05-02 da kes', 'it'],
  ])('in other languages: %s', async (text, locale) => {
    const say = fresh();
    const begun = await say({ text, locale });
    expect(begun.topic).toBe('register');
    const known = begun.missing.length === 0 ? begun : await say({ press: 'f:anchor:?', locale });
    for (const part of ['Gannet Slab', '2024-05-02', 'kes', ': 3']) expect(known.text).toContain(part);
    expect(known.facts).toMatchObject({ metal: 'stainless-316', diameter_mm: 12, length_mm: 100 });
  });

  it.each([
    ['set 2030-05-02', 'still to come'],
    ['set 1949-12-31', 'no day from 1950'],
    ['set 2024-02-31', 'no day from 1950'],
    ['set 1932', 'no day from 1950'],
  ])('a day that cannot be is refused and changes nothing: %s', async (day, why) => {
    const say = fresh();
    await say(whole);
    const shown = await say(day);
    expect(shown.text).toContain(why);
    expect(shown.text).toContain('2024-05-02');
  });

  it('a second anchor at one place is refused; one at another position is not', async () => {
    const say = fresh();
    const id = await entered(say);
    await say(whole.replace('Gannet Slab', 'gannet  slab'));
    expect((await say('keep')).text).toContain(`${id} is at that place already`);
    await say('drop');
    await say(whole.replace('bolt 3', 'bolt 4'));
    expect((await say('keep')).text).toContain('Kept as a');
  });

  it('glue in an anchor that has none is refused', async () => {
    const say = fresh();
    const shown = await say('register bolt 1 on Gannet Slab: wedge 10x80 zinc plated, epoxy');
    expect(shown.text).toContain('no glue');
    expect(shown.facts).toEqual({});
  });
});

describe('finding anchors again', () => {
  const filled = async () => {
    const say = fresh();
    await entered(say);
    await entered(say, 'register bolt 4 on Gannet Slab, sector Quarry: wedge 10x80 zinc plated, set 2001');
    await entered(say, 'register bolt 1 on Puffin Wall: 12x100 304 twin-leg');
    return say;
  };
  it.each([
    ['anchors on Gannet Slab', 2],
    ['what is at Harbour?', 1],
    ['what is on puffin wall', 1],
    ['all zinc plated', 1],
    ['/register anchors on Gannet Slab', 2],
    ['anchors on Gannet Slab, zinc plated', 1],
  ])('%s', async (text, count) => {
    const say = await filled();
    const { text: told } = await say(text);
    expect(told.match(/^• a[0-9a-z]{4,}:/gm)?.length ?? 0, told).toBe(count);
    expect(told).toContain(standing);
  });
  it('another question is no look-up', async () => {
    const say = await filled();
    expect((await say('what is the curing time of epoxy at 10 °C in a dry hole?')).topic).toBe('cure');
    expect((await say('all stainless steel bolts rust by the sea?')).topic).not.toBe('register');
  });
  it('"/register" tells what there is', async () => {
    expect((await (await filled())('/register')).text).toContain('3 anchors, crags: 2');
  });
  it('another chat sees nothing of it', async () => {
    const id = await entered(fresh());
    const other = fresh();
    expect((await other(id)).text).toContain(`no record ${id}`);
    expect((await other('/register')).text).toContain('no anchors in its register');
  });
});

describe('correcting and withdrawing', () => {
  it('by its author: shown, confirmed, kept in the history', async () => {
    const say = fresh();
    const id = await entered(say);
    const change = await say(`${id} is 304`);
    expect(change.text).toContain('316');
    expect(change.text).toContain('304');
    expect((await say('keep')).text).toContain(`Corrected: ${id}`);
    const { text } = await say(`history ${id}`);
    expect(text).toContain('1. Written down by ana');
    expect(text).toContain('2. Corrected by ana');
  });

  it('by others only with the say of those who look after the group', async () => {
    const say = fresh();
    const id = await entered(say);
    expect((await say(`${id} is 304`, 'bo')).text).toContain('Nothing was changed');
    expect((await say(`withdraw ${id}`, 'bo')).text).toContain('Nothing was changed');
    expect((await say(id)).facts.metal).toBe('stainless-316');
    expect((await say(`withdraw ${id}`, 'cleo', true)).text).toContain('Withdraw anchor');
    expect((await say('withdraw', 'cleo', true)).text).toContain('Withdrawn');
    expect((await say(`${id} is 304`)).text).toContain('withdrawn from the register');
    expect((await say(`${id} has brown streaks`)).text).toContain('withdrawn from the register');
    expect((await say('/register')).text).toContain('no anchors');
  });

  it('a forged button changes nothing', async () => {
    const say = fresh();
    const id = await entered(say);
    for (const press of [`r:withdraw:${id}:9`, 'r:keep:00000000', 'r:withdraw:a0000:1', 'r:fix:constructor'])
      expect((await say({ press }, 'bo')).text).not.toMatch(/Kept|Withdrawn:|Corrected:/);
    expect((await say({ press: `r:withdraw:${id}:1` }, 'bo')).text).toContain('Nothing was changed');
    expect((await say(id)).text).toContain('version 1');
  });

  it('a correction cannot put two anchors at one place', async () => {
    const say = fresh();
    await entered(say);
    const second = await entered(say, whole.replace('bolt 3', 'bolt 4'));
    await say(`${second} position: 3`);
    expect((await say('keep')).text).toContain('at that place already');
    await say('drop');
    expect((await say(second)).text).toContain('position: 4');
  });
});

describe('a look at an anchor', () => {
  it('is advised on with what the register knows, and noted when confirmed', async () => {
    const say = fresh();
    const id = await entered(say, `${whole}, at the sea`);
    const advised = await say(`${id} has brown streaks`, 'bo');
    expect(advised.topic).toBe('inspect');
    expect(advised.facts).toMatchObject({
      signs: 'stain',
      metal: 'stainless-316',
      anchor: 'glue-in-twin-leg',
    });
    expect((await say(`history ${id}`)).text).not.toContain('noted by');
    const kept = await say({ press: choice(advised, 'r:keep') }, 'bo');
    expect(kept.text).toContain('Kept as i');
    const { text } = await say(`history ${id}`);
    expect(text).toContain('noted by bo');
    expect(text).toContain('brown stain');
  });

  it('without a sign asks what is seen', async () => {
    const say = fresh();
    const id = await entered(say);
    const asked = await say(`inspect ${id}`);
    expect(asked.missing).toEqual(['signs']);
    const advised = await say({ press: 'f:signs:crack' });
    expect(advised.text).toContain('do not use it again');
    expect((await say({ press: choice(advised, 'r:keep') })).text).toContain('Kept as i');
    expect((await say(id)).text).toContain('crack');
  });

  it('while another record is open it is answered and not noted', async () => {
    const say = fresh();
    const id = await entered(say);
    await say(whole.replace('bolt 3', 'bolt 5'));
    const advised = await say(`${id} has a crack`);
    expect(advised.text).toContain('do not use it again');
    expect(advised.choices.map(({ id: one }) => one)).not.toContain('r:keep');
    expect((await say('keep')).text).toContain('Kept as a');
  });
});

describe('which anchors first', () => {
  it('puts what was seen before metal, metal before age, and never certifies', async () => {
    const say = fresh();
    const good = await entered(
      say,
      'register bolt 1 on Inland Wall: 12x100 316 twin-leg, inland, set 2024-05-02',
    );
    const sea = await entered(
      say,
      'register bolt 2 on Sea Wall: wedge 10x80 zinc plated, at the sea, set 2020-05-02',
    );
    const seen = await entered(
      say,
      'register bolt 3 on Inland Wall: 12x100 316 twin-leg, inland, set 2024-05-02',
    );
    const old = await entered(say, 'register bolt 4 on Inland Wall: 12x100 316 twin-leg, inland, set 1955');
    await say(`${seen} has a crack`);
    await say('keep');
    const { text } = await say('which anchors first?');
    const order = [...text.matchAll(/^\d+\. (a[0-9a-z]+):/gm)].map(([, id]) => id);
    expect(order, text).toEqual([seen, sea, old, good]);
    expect(text).toContain('crack');
    expect(text).toContain('counts as worse');
    expect(text).toContain(standing);
    expect(text).not.toMatch(/\b(is|are) safe\b|certified/i);
  });
});
