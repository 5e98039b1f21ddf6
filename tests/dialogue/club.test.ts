import { describe, expect, it } from 'vitest';
import { freshApp, talk } from '../support/app.ts';

const app = await freshApp();

describe('the settings of a chat', () => {
  it('stand below what a member tells, and only in that chat', async () => {
    const chat = 'club';
    const set = await talk(app, { chat, user: 'admin', text: '/club soft sandstone, temperate' });
    expect(set.text).toContain('soft sandstone');
    const asked = await talk(app, { chat, user: 'a', text: 'is a 12x100 glue-in with epoxy ok?' });
    expect(asked.facts).toMatchObject({ rock: 'sandstone-soft' });
    expect(asked.missing).not.toContain('rock');
    const other = await talk(app, { chat, user: 'b', text: 'is a 12x100 glue-in in granite with epoxy ok?' });
    expect(other.facts).toMatchObject({ rock: 'granite' });
    const elsewhere = await talk(app, {
      chat: 'other',
      user: 'a',
      text: 'is a 12x100 glue-in with epoxy ok?',
    });
    expect(elsewhere.facts).not.toHaveProperty('rock');
  });

  it('are named as the club\'s in "why"', async () => {
    const chat = 'why';
    await talk(app, { chat, user: 'admin', text: '/club limestone' });
    await talk(app, { chat, user: 'a', text: 'which bolt for an overhanging tropical sea cliff?' });
    const why = await talk(app, { chat, user: 'a', text: 'why' });
    expect(why.text).toContain("rock: limestone, kind not told (your club's setting)");
  });

  it('survive "restart" and "back", and are cleared by their own word', async () => {
    const chat = 'clear';
    await talk(app, { chat, user: 'admin', text: '/club granite' });
    await talk(app, { chat, user: 'a', text: 'which glue?' });
    await talk(app, { chat, user: 'a', text: 'restart' });
    expect((await talk(app, { chat, user: 'a', text: 'which kind of anchor?' })).facts).toMatchObject({
      rock: 'granite',
    });
    await talk(app, { chat, user: 'a', text: 'back' });
    expect((await talk(app, { chat, user: 'a', text: 'which kind of anchor?' })).facts).toMatchObject({
      rock: 'granite',
    });
    expect((await talk(app, { chat, user: 'admin', text: '/club clear' })).text).toContain('Nothing is set');
    expect((await talk(app, { chat, user: 'new', text: 'which kind of anchor?' })).facts).not.toHaveProperty(
      'rock',
    );
  });
});

describe('who may change the settings of a chat', () => {
  it('only those who look after it, where the platform says who does', async () => {
    const chat = 'rights';
    const refused = await talk(app, { chat, user: 'm', text: '/club granite', admin: false });
    expect(refused.text).toContain('Nothing was changed');
    expect((await talk(app, { chat, user: 'm', text: '/club', admin: false })).text).toContain(
      'Nothing is set',
    );
    expect((await talk(app, { chat, user: 'a', text: '/club granite', admin: true })).text).toContain(
      'granite',
    );
    expect((await talk(app, { chat, user: 'm', text: '/club clear', admin: false })).text).toContain(
      'Nothing was changed',
    );
    expect((await talk(app, { chat, user: 'm', text: '/club', admin: false })).text).toContain('granite');
  });

  it('sets language and units beside facts, and says what it did not understand', async () => {
    const chat = 'all';
    const set = await talk(app, { chat, text: '/club soft sandstone, inches, español', admin: true });
    expect(set.text).toContain('soft sandstone');
    expect(set.text).toContain('Inches and pounds first');
    expect(set.text).toContain('español');
    const spanish = await talk(app, { chat, user: 'new', text: '12x100' });
    expect(spanish.text).toContain('He leído');
    const odd = await talk(app, { chat, text: '/club zorblat quux', admin: true });
    expect(odd.text).toContain('zorblat');
    expect((await talk(app, { chat, text: '/club', admin: true })).text).toContain('arenisca blanda');
    const nowhere = await talk(app, { chat, text: '/club solo aquí', admin: true });
    expect(nowhere.text).toContain('no tiene temas');
  });
});
