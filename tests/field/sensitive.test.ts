/** Sensitive crags: only the name is kept and shown, whoever asks and however it was written down. */
import { describe, expect, it } from 'vitest';
import { freshApp } from '../support/app.ts';
import { chatWith } from './support.ts';

const app = await freshApp();
const whole = 'register bolt 3 on Gannet Slab, sector Harbour: 12x100 316 twin-leg, set 2024-05-02 by kes';
const hidden = /Harbour|position: 3|, 3 —/;
const idIn = (text: string): string => /\b(a(?=[0-9a-z]*\d)[0-9a-z]{4,})\b/.exec(text)?.[1] ?? 'none';
let chats = 0;
const fresh = () => {
  chats += 1;
  return chatWith(app, `sensitive-${chats}`);
};

describe('a sensitive crag', () => {
  it('is marked only by those who look after the group', async () => {
    const say = fresh();
    expect((await say('/club sensitive Gannet Slab')).text).not.toContain('Gannet Slab');
    expect((await say('/club sensitive Gannet Slab', 'cleo', true)).text).toContain('only the name');
    expect((await say('/club')).text).toContain('Gannet Slab');
  });

  it('is entered without sector, route and position', async () => {
    const say = fresh();
    await say('/club sensitive gannet slab', 'cleo', true);
    const shown = await say(whole);
    expect(shown.text).toContain('marked as sensitive');
    expect(shown.text).not.toMatch(hidden);
    const id = idIn((await say('keep')).text);
    await say('/club not sensitive Gannet Slab', 'cleo', true);
    const { text } = await say(id);
    expect(text).toContain('Gannet Slab');
    expect(text).not.toMatch(hidden);
  });

  it('shows nothing more of what was entered before: entry, list, history, file, order of work', async () => {
    const say = fresh();
    await say(whole);
    const id = idIn((await say('keep')).text);
    expect((await say(id)).text).toMatch(hidden);
    await say('/club sensitive Gannet Slab', 'cleo', true);
    const file = (await say('export the register')).files[0]?.base64 ?? '';
    const replies = [id, `history ${id}`, 'anchors on Gannet Slab', 'which anchors first?'];
    const texts = [Buffer.from(file, 'base64').toString('utf8')];
    for (const one of replies) texts.push((await say(one)).text);
    for (const text of texts) {
      expect(text).toContain('Gannet Slab');
      expect(text).not.toMatch(hidden);
    }
    await say('/club clear', 'cleo', true);
    expect((await say(id)).text).not.toMatch(hidden);
  });

  it('is read from a table without its places, and a draft shown before loses them when kept', async () => {
    const say = fresh();
    await say('crag,sector,position,anchor\nGannet Slab,Harbour,3,wedge');
    await say('/club sensitive Gannet Slab', 'cleo', true);
    await say('keep');
    await say('/club not sensitive Gannet Slab', 'cleo', true);
    expect((await say('anchors on Gannet Slab')).text).not.toMatch(hidden);
  });
});
