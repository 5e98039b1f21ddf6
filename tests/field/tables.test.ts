/** Tables of pulls, in and out: every row checked, nothing half stored, nothing that a spreadsheet would run. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeApp } from '../../src/app.ts';
import { folded, tableWordsSchema } from '../../src/field/table/words.ts';
import { openSqlite } from '../../src/store/sqlite.ts';
import { rulesFolder } from '../support/desk.ts';
import { chatWith, choice, wholePull } from './support.ts';

const store = await openSqlite(':memory:');
const app = await makeApp(rulesFolder, store, { oneShot: false });
const fileOf = (text: string | Buffer, name = 'tests.csv') => ({
  file: { name, base64: Buffer.from(text).toString('base64') },
});
let chats = 0;
const fresh = () => {
  chats += 1;
  const chat = `table-${chats}`;
  return { say: chatWith(app, chat), chat, list: () => store.records.list(chat, 'test') };
};
const csvIn = (base64: string | undefined): string => Buffer.from(base64 ?? '', 'base64').toString('utf8');

const good = [
  'date,rock,kind of anchor,glue,diameter (mm),length [in],peak load (lbf),failure,note',
  '2026-05-02,granite,twin leg,epoxy,12,4,8200,adhesive came out clean,first',
  '2026-05-02,Granit,Zweischenkel,epoxi,12,4,"7900.5",rock cone,"dusty, windy"',
  '03.05.2026,granito,?,,12,,8000,stopped,',
].join('\n');

describe('a table taken in', () => {
  it('is understood by words of any language and kept only on a tap', async () => {
    const { say, list } = fresh();
    const read = await say(fileOf(good));
    expect(read.text).toContain('I read 3 rows: 3 can be kept, 0 cannot');
    expect(await list()).toEqual([]);
    const kept = await say({ press: choice(read, 'r:keep') });
    expect(kept.text).toContain('Kept: 3 records');
    const bodies = (await list()).map(({ body }) => body);
    // 8200 lbf = 36.475 kN, 4 in = 101.6 mm (NIST SP 811: 1 lbf = 4.448 222 N, 1 in = 25.4 mm).
    expect(bodies).toContainEqual({
      facts: {
        rock: 'granite',
        anchor: 'glue-in-twin-leg',
        adhesive: 'epoxy',
        diameter_mm: 12,
        length_mm: 101.6,
        load_kn: 36.475,
        failure_mode: 'adhesive-rock',
      },
      texts: { day: '2026-05-02', note: 'first' },
    });
    expect(bodies).toContainEqual({
      facts: {
        rock: 'granite',
        anchor: 'unknown',
        diameter_mm: 12,
        load_kn: 35.586,
        failure_mode: 'stopped',
      },
      texts: { day: '2026-05-03' },
    });
  });

  it.each([
    ['semicolons and decimal commas', ';', 'carga máxima [kN]', '36,5'],
    ['tabs', '\t', 'größte Last [kN]', '36,5'],
    ['bars', '|', 'charge maximale (kN)', '36.5'],
    ['quoted commas', ',', 'carico massimo [daN]', '"3650"'],
  ])('with %s', async (_, separator, load, value) => {
    const { say, list } = fresh();
    const text = [
      ['rock', 'diameter [mm]', load].join(separator),
      ['granite', '12', value].join(separator),
    ].join('\r\n');
    // Pasted as well as sent.
    const read = await say(text);
    await say({ press: choice(read, 'r:keep') });
    expect((await list())[0]?.body.facts).toMatchObject({ load_kn: 36.5, diameter_mm: 12, rock: 'granite' });
  });

  it('names each bad row by number with the reason, and keeps the others', async () => {
    const { say, list } = fresh();
    const read = await say(
      fileOf(
        [
          'rock,anchor,diameter [mm],peak [kN],failure,date',
          'granite,twin leg,12,36.5,rock cone,2026-05-02',
          'cheese,twin leg,12,36.5,rock cone,2026-05-02',
          'granite,twin leg,1200,36.5,rock cone,2026-05-02',
          'granite,twin leg,12,3600,rock cone,2026-05-02',
          'granite,twin leg,12,"1.234,5",rock cone,2026-05-02',
          'granite,twin leg,12,,rock cone,2026-05-02',
          'granite,wedge,12,20,resin came out clean,2026-05-02',
          'granite,twin leg,12,20,rock cone,2031-05-02',
          'granite,twin leg,12,20,rock cone,5/2/2026',
          'granite,twin leg,12,20,rock cone,2026-05-02,more',
        ].join('\n'),
      ),
    );
    expect(read.text).toContain('I read 10 rows: 1 can be kept, 9 cannot');
    for (const line of [
      'Row 3: "cheese" is no rock that I know',
      'Row 4: "1200" cannot be the diameter',
      'Row 5: "3600" cannot be the load',
      'Row 6: "1.234,5" is no number',
      'Row 7: load is missing',
      'Row 8: that kind of anchor has no glue',
      'Row 9: 2031-05-02 is still to come',
      'Row 10: "5/2/2026" is no day',
      'Row 11: it has more cells',
    ])
      expect(read.text).toContain(line);
    await say({ press: choice(read, 'r:keep') });
    expect(await list()).toHaveLength(1);
  });

  it.each([
    ['rock,diameter,peak\ngranite,12,36', 'has no unit'],
    ['rock,diameter [mm],peak [bananas]\ngranite,12,36', 'does not fit that column'],
    ['rock,diameter [kN],peak [kN]\ngranite,12,36', 'does not fit that column'],
    ['rock,stone,diameter [mm],peak [kN]\ngranite,granite,12,36', 'stands there twice'],
    ['rock,diameter [mm],peak [kN]\n\n', 'no rows'],
    [`rock,diameter [mm],peak [kN]\n${'granite,12,36\n'.repeat(10_001)}`, 'more than 10'],
    [`rock,diameter [mm],peak [kN]\n${'x'.repeat(5_100_000)}`, 'larger than 5 MB'],
    [Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 0, 9, 9]), 'no text'],
  ])('that cannot be read changes nothing: %#', async (text, why) => {
    const { say, list } = fresh();
    const reply = await say(fileOf(text));
    expect(reply.text).toContain(why);
    expect(reply.choices).toEqual([]);
    expect((await say('keep')).text).not.toContain('Kept');
    expect(await list()).toEqual([]);
  });

  it('a table of something else is none of pulls', async () => {
    const { say } = fresh();
    expect((await say(fileOf('time [s],force [kN]\n0,0\n1,2\n'))).text).not.toContain('can be kept');
    expect((await say(fileOf('\n\n', 'empty.csv'))).text).not.toContain('can be kept');
    expect((await say({ file: { name: 'x.csv', base64: '%%%' } })).text).not.toContain('can be kept');
  });

  it('an old table button keeps nothing', async () => {
    const { say, list } = fresh();
    const first = await say(fileOf(good));
    await say({ press: choice(first, 'r:drop') });
    expect((await say({ press: choice(first, 'r:keep') })).text).toContain('older question');
    expect(await list()).toEqual([]);
  });

  it('takes in ten thousand rows, wholly', async () => {
    const { say, list } = fresh();
    const rows = Array.from(
      { length: 10_000 },
      (_, index) => `granite,12,${10 + (index % 400) / 10},rock cone,${index}`,
    );
    const started = performance.now();
    const read = await say(fileOf(`rock,diameter [mm],peak [kN],failure,note\n${rows.join('\n')}`));
    const kept = await say({ press: choice(read, 'r:keep') });
    console.log(`10 000 rows: ${Math.round(performance.now() - started)} ms`);
    expect(kept.text).toContain('Kept: 10');
    expect(await list()).toHaveLength(10_000);
    expect(new Set((await list()).map(({ id }) => id)).size).toBe(10_000);
  }, 60_000);

  it('words that nobody knows do not hold it up', async () => {
    const { say } = fresh();
    const rows = Array.from({ length: 3000 }, (_, index) => `xq${index}zz,12,20`);
    const started = performance.now();
    const read = await say(fileOf(`rock,diameter [mm],peak [kN]\n${rows.join('\n')}`));
    console.log(`3000 unknown words: ${Math.round(performance.now() - started)} ms`);
    expect(read.text).toContain('0 can be kept, 3,000 cannot');
    expect(read.text.length).toBeLessThan(2000);
  }, 60_000);
});

describe('a table given out', () => {
  it('holds the same records when it is read again, in another chat and in the same', async () => {
    const { say, list } = fresh();
    const read = await say(fileOf(good));
    await say({ press: choice(read, 'r:keep') });
    await say(`${wholePull}, note: =HYPERLINK("x")`);
    await say('keep');
    const out = await say('export our tests');
    const [file] = out.files;
    const csv = csvIn(file?.base64);
    expect(csv.split('\r\n')[0]).toContain('peak load [kN]');
    expect(file?.alt).toContain('4 pull tests');
    const other = fresh();
    const again = await other.say(fileOf(csv));
    await other.say({ press: choice(again, 'r:keep') });
    const bodies = async (of: typeof list) =>
      (await of())
        .map(({ body }) => JSON.stringify([Object.entries(body.facts).sort(), body.texts]))
        .toSorted();
    expect(await bodies(other.list)).toEqual(await bodies(list));
    const same = await say(fileOf(csv));
    expect(same.text).toContain('Already here, and left out: 4');
    expect(same.choices).toEqual([]);
  });

  // The marks that a spreadsheet takes for a formula: OWASP, CSV Injection.
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', "'=1", '=cmd|"/c calc"!A0'])('makes %s harmless', async (note) => {
    const { say, list } = fresh();
    await say(`${wholePull}, note: ${note}`);
    await say('keep');
    const csv = csvIn((await say('export our tests')).files[0]?.base64);
    const cells = csv.split(/[,\r\n]+/).map((cell) => cell.replace(/^"/, ''));
    expect(cells.filter((cell) => /^[=+\-@\t]/.test(cell))).toEqual([]);
    const other = fresh();
    const read = await other.say(fileOf(csv));
    await other.say({ press: choice(read, 'r:keep') });
    expect((await other.list())[0]?.body.texts.note).toBe(note);
    expect((await list())[0]?.body.texts.note).toBe(note);
  });

  it('holds only the own chat, and only what stands', async () => {
    const { say } = fresh();
    expect((await say('export our tests')).files).toEqual([]);
    expect((await say('export our tests')).text).toContain('no pull tests yet');
  });

  it('writes headings in the language of the member', async () => {
    const { say } = fresh();
    await say(wholePull);
    await say('keep');
    const out = await say({ text: 'Versuche exportieren', locale: 'de' }, 'dora');
    expect(csvIn(out.files[0]?.base64)).toContain('größte last [kN]');
  });
});

it('no name of a column stands for two columns', () => {
  const words = tableWordsSchema.parse(JSON.parse(readFileSync(`${rulesFolder}/words/tables.json`, 'utf8')));
  const owner = new Map<string, string>();
  const twice = Object.entries(words.columns).flatMap(([column, byLanguage]) =>
    [column, ...Object.values(byLanguage).flat()].filter((name) => {
      const before = owner.get(folded(name)) ?? column;
      owner.set(folded(name), column);
      return before !== column;
    }),
  );
  expect(twice).toEqual([]);
  for (const [column, byLanguage] of Object.entries(words.columns))
    expect(Object.keys(byLanguage), column).toEqual(['en', 'es', 'pt', 'fr', 'it', 'de']);
});
