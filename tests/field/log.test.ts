/** A pull test in chat: written down, shown, kept, corrected, withdrawn, and never changed silently. */
import { describe, expect, it } from 'vitest';
import { makeApp } from '../../src/app.ts';
import { openSqlite } from '../../src/store/sqlite.ts';
import { freshApp } from '../support/app.ts';
import { rulesFolder } from '../support/desk.ts';
import { chatWith, choice, keptId, now, wholePull } from './support.ts';

const app = await freshApp();
const standing = (await app.languages.words('en')).say({ say: 'standing' });
let chats = 0;
const fresh = () => {
  chats += 1;
  return chatWith(app, `log-${chats}`);
};

describe('writing a pull down', () => {
  it('shows all that was told before anything is kept, and keeps it on a tap', async () => {
    const say = fresh();
    const shown = await say(wholePull);
    expect(shown.topic).toBe('pulltest-record');
    expect(shown.facts).toEqual({
      diameter_mm: 12,
      length_mm: 100,
      metal: 'stainless-316',
      anchor: 'glue-in-twin-leg',
      adhesive: 'epoxy',
      rock: 'granite',
      load_kn: 36.5,
      failure_mode: 'adhesive-rock',
    });
    expect(shown.text).toContain('Nothing is kept yet');
    expect(shown.advice).toBeNull();
    const kept = await say({ press: choice(shown, 'r:keep') });
    expect(kept.text).toContain('Kept as t');
    expect((await say(keptId(kept))).facts).toEqual(shown.facts);
  });

  it('carries the standing sentence and the cautions of a pull in every reply', async () => {
    const say = fresh();
    const replies = [await say('/log'), await say('twin leg'), await say(wholePull), await say('drop')];
    replies.push(await say(wholePull));
    replies.push(await say('keep'));
    for (const { text } of replies) {
      expect(text).toContain(standing);
      expect(text).toContain('keep everybody out of line with the pull');
      expect(text).not.toMatch(/\b(is|are) safe\b|certified/i);
    }
  });

  it('asks for what is missing, one question at a time, and "don\'t know" is kept as unknown', async () => {
    const say = fresh();
    const asked: string[] = [];
    let reply = await say('/log');
    for (const answer of ['wedge', '10x80', { press: 'f:rock:?' }, "don't know", 'steel']) {
      asked.push(reply.missing[0] ?? '');
      reply = await say(answer);
    }
    // A wedge has no glue: the adhesive is not asked for.
    expect(asked).toEqual(['anchor', 'diameter_mm', 'rock', 'load_kn', 'failure_mode']);
    expect(reply.facts).toEqual({
      anchor: 'wedge',
      diameter_mm: 10,
      length_mm: 80,
      rock: 'unknown',
      load_kn: 'unknown',
      failure_mode: 'steel',
    });
    expect(reply.text).toContain('rock: not known');
  });

  it('offers no failure of a glue that is not there, and refuses one that is told', async () => {
    const say = fresh();
    await say('/log');
    await say('wedge 10x80 granite 22 kN');
    const asked = await say('hm');
    expect(asked.choices.map(({ id }) => id)).not.toContain('f:failure_mode:adhesive-rock');
    const told = await say('the resin came out clean');
    expect(told.text).toContain('no glue that could let go');
    expect(told.facts).not.toHaveProperty('failure_mode');
  });

  it('takes corrections by words and by a button', async () => {
    const say = fresh();
    await say(wholePull);
    expect((await say('it was 34 kN')).facts.load_kn).toBe(34);
    expect((await say('no, vinyl ester')).facts).toMatchObject({ adhesive: 'vinyl-ester', load_kn: 34 });
    const asked = await say({ press: 'r:fix:rock' });
    expect(asked.choices.map(({ id }) => id)).toContain('f:rock:gneiss');
    expect((await say({ press: 'f:rock:gneiss' })).facts.rock).toBe('gneiss');
  });

  it('takes crag, batch, note and day as words', async () => {
    const say = fresh();
    const shown = await say(
      `${wholePull}, on 2026-11-20, crag: Gull Wall, note: dusty, second hole 12 mm off`,
    );
    for (const part of ['2026-11-20', 'crag: Gull Wall', 'note: dusty, second hole 12 mm off'])
      expect(shown.text).toContain(part);
    expect(shown.facts).toMatchObject({ diameter_mm: 12, load_kn: 36.5 });
  });

  it('another question in between is answered, and the open record stays', async () => {
    const say = fresh();
    await say(wholePull);
    const other = await say('how long must epoxy cure at 10 °C in a dry hole?');
    expect(other.topic).toBe('cure');
    expect((await say('it was 33 kN')).facts).toMatchObject({ load_kn: 33, rock: 'granite' });
    const again = await say('pulled 10x80 twin leg epoxy granite 20 kN, rock cone');
    expect(again.text).toContain('First keep or drop this one');
    expect(again.facts.load_kn).toBe(33);
  });

  it.each([
    ['es', 'sacamos un 12x100 316 de dos patas, epoxi, granito, 36,5 kN, la resina salió limpia'],
    ['de', '12x100 316 Zweischenkel gezogen, Epoxid, Granit, 36,5 kN, Kleber kam sauber heraus'],
    ['fr', 'tiré un 12x100 316 deux branches, époxy, granite, 36,5 kN, la résine est sortie propre'],
    ['it', 'tirato un 12x100 316 a due gambi, epossidica, granito, 36,5 kN, la resina è uscita pulita'],
    ['pt', 'puxámos um 12x100 316 de duas pernas, epóxi, granito, 36,5 kN, a resina saiu limpa'],
  ])('in %s', async (locale, text) => {
    const shown = await fresh()({ locale, text });
    expect(shown.topic).toBe('pulltest-record');
    expect(shown.facts).toMatchObject({
      diameter_mm: 12,
      rock: 'granite',
      load_kn: 36.5,
      failure_mode: 'adhesive-rock',
    });
  });
});

describe('correcting and withdrawing', () => {
  const kept = async () => {
    const say = fresh();
    const shown = await say(wholePull);
    return { say, id: keptId(await say({ press: choice(shown, 'r:keep') })) };
  };

  it('shows before and after, asks, and keeps every step with who and when', async () => {
    const { say, id } = await kept();
    const asked = await say(`${id} was 34 kN`);
    expect(asked.text).toContain('greatest load: 36.5 kN (8200 lbf) → 34 kN (7600 lbf)');
    expect((await say(id, 'ben')).facts.load_kn).toBe(36.5);
    await say({ press: choice(asked, 'r:keep') });
    expect((await say(id)).facts.load_kn).toBe(34);
    await say(`withdraw ${id}`);
    await say('withdraw');
    const history = (await say(`history ${id}`)).text;
    expect(history).toContain('1. Written down by ana, 2026-11-25 10:00 UTC');
    expect(history).toContain('2. Corrected by ana');
    expect(history).toContain('36.5 kN (8200 lbf) → 34 kN (7600 lbf)');
    expect(history).toContain('3. Withdrawn by ana');
  });

  it('only by the author or by those who look after the group', async () => {
    const { say, id } = await kept();
    expect((await say(`${id} was 34 kN`, 'ben')).text).toContain('Only whoever wrote it down');
    expect((await say(`withdraw ${id}`, 'ben')).text).toContain('Only whoever wrote it down');
    expect((await say({ press: `r:withdraw:${id}:1` }, 'ben')).text).toContain('Only whoever wrote it down');
    expect((await say(`withdraw ${id}`, 'carla', true)).text).toContain(`Withdraw record ${id}?`);
  });

  it('a withdrawn record changes no more', async () => {
    const { say, id } = await kept();
    const asked = await say(`withdraw ${id}`);
    await say({ press: choice(asked, 'r:keep') });
    expect((await say(`${id} was 34 kN`)).text).toContain('was withdrawn and can no longer be changed');
    expect((await say({ press: choice(asked, 'r:keep') })).text).toContain('older question');
    expect((await say({ press: `r:withdraw:${id}:2` })).text).toContain('older question');
  });

  it('is refused, with nothing changed, when somebody else was faster', async () => {
    const { say, id } = await kept();
    const mine = await say(`${id} was 34 kN`);
    const theirs = await say(`${id} was 30 kN`, 'carla', true);
    await say({ press: choice(theirs, 'r:keep') }, 'carla', true);
    expect((await say({ press: choice(mine, 'r:keep') })).text).toContain(
      'Somebody else changed that record',
    );
    expect((await say(id)).facts.load_kn).toBe(30);
  });
});

describe('what must change nothing', () => {
  it('forged and old buttons', async () => {
    const say = fresh();
    const first = await say(wholePull);
    await say('it was 34 kN');
    for (const press of [
      choice(first, 'r:keep'),
      choice(first, 'r:drop'),
      'r:keep',
      'r:keep:00000000',
      'r:drop:',
      'r:fix:topic',
      'r:fix:__proto__',
      'r:withdraw:t0000:1',
      'r:withdraw:t0000:x:y:z',
      'r:',
      'r:nonsense',
    ])
      expect((await say({ press })).text, press).toContain('older question');
    expect((await say({ press: 'f:load_kn:9' })).text).toContain('older question');
    expect((await say('it was 35 kN')).facts).toMatchObject({ load_kn: 35, rock: 'granite' });
  });

  it('an id of another club', async () => {
    const [ours, theirs] = [fresh(), fresh()];
    const shown = await ours(wholePull);
    const id = keptId(await ours({ press: choice(shown, 'r:keep') }));
    for (const text of [id, `${id} was 3 kN`, `withdraw ${id}`, `history ${id}`])
      expect((await theirs(text)).text, text).toContain(`This chat has no record ${id}`);
    expect((await theirs({ press: `r:withdraw:${id}:1` })).text).toContain('older question');
    expect((await ours(id)).facts.load_kn).toBe(36.5);
  });

  it('an update that comes twice', async () => {
    const store = await openSqlite(':memory:');
    const own = await makeApp(rulesFolder, store, { oneShot: false });
    const message = { chat: 'twice', user: 'ana', at: now };
    const shown = await own.respond({ ...message, id: '1', text: wholePull });
    if ('silent' in shown) throw new Error('silence');
    const press = { ...message, id: '2', press: choice(shown, 'r:keep') };
    await own.respond(press);
    await own.respond(press);
    expect(await store.records.list('twice', 'test')).toHaveLength(1);
  });

  it.each([
    [`${wholePull}, on 2031-01-01`, 'still to come'],
    [`${wholePull}, on 2026-02-31`, 'is no day'],
    ['/log 12x100 granite 900 kN', 'No pull on an anchor reaches'],
    ['/log 12x100 granite -5 kN', 'Nothing was changed'],
    ['log these pull tests: 24.1, 27.3, 22.8 kN in granite', 'One pull at a time'],
  ])('%s', async (text, why) => {
    const say = fresh();
    const reply = await say(text);
    expect(reply.text).toContain(why);
    expect(reply.facts).toEqual({});
  });
});
