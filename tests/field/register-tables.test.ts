/** Tables of the register: bad rows by number, nothing twice, out and in again, ten thousand in time. */
import { describe, expect, it } from 'vitest';
import { freshApp } from '../support/app.ts';
import { chatWith, choice } from './support.ts';

const app = await freshApp();
let chats = 0;
const fresh = () => {
  chats += 1;
  return chatWith(app, `register-table-${chats}`);
};
const heading = 'crag,sector,route,position,kind of anchor,metal,diameter [mm],length [mm],date,set by,batch';
const row = (position: number, more = 'twin leg,316,12,100,2024-05-02,kes,42') =>
  `Gannet Slab,Harbour,Long Way,${position},${more}`;
const csv = (base64 = ''): string => Buffer.from(base64, 'base64').toString('utf8');

describe('a table of anchors', () => {
  it('is read, shown and kept on a tap', async () => {
    const say = fresh();
    const read = await say([heading, row(1), row(2)].join('\n'));
    expect(read.topic).toBe('register');
    expect(read.text).toContain('I read 2 rows: 2 can be kept, 0 cannot.');
    expect((await say('/register')).text).toContain('no anchors');
    expect((await say({ press: choice(read, 'r:keep') })).text).toContain('Kept: 2 records');
    expect((await say('anchors at Harbour')).text).toContain('12 × 100 mm, 2024-05-02');
  });

  it('names bad rows by number and keeps the rest', async () => {
    const say = fresh();
    const read = await say(
      [
        heading,
        row(1),
        row(1),
        ',,,2,twin leg,316,12,100,,,',
        row(3, ',316,12,100,,,'),
        row(4, 'twin leg,cheese,12,100,,,'),
        row(5, 'twin leg,316,12,100,2030-01-01,,'),
        row(6, 'twin leg,316,12,100,1949,,'),
        row(7, '?,?,,,1998,,'),
        row(8, 'twin leg,316,9000,100,,,'),
      ].join('\n'),
    );
    expect(read.text).toContain('I read 9 rows: 2 can be kept, 7 cannot.');
    for (const part of [
      'Row 3: it names the same place as row 2',
      'Row 4: crag is missing',
      'Row 5: ',
      'Row 6: "cheese"',
      'Row 7: 2030-01-01 is still to come',
      'Row 8: "1949" is no day',
      'Row 10: "9000"',
    ])
      expect(read.text).toContain(part);
  });

  it('adds nothing twice, and refuses a second anchor at one place', async () => {
    const say = fresh();
    await say([heading, row(1)].join('\n'));
    await say('keep');
    expect((await say([heading, row(1)].join('\n'))).text).toContain('Already here, and left out: 1');
    const other = await say([heading, row(1, 'wedge,304,10,80,2001,,')].join('\n'));
    expect(other.text).toMatch(/Row 2: a[0-9a-z]+ is at that place already/);
  });

  it('goes out as a file and comes in again elsewhere', async () => {
    const say = fresh();
    await say([heading, row(1), row(2, '?,zinc plated,10,,1998,,')].join('\n'));
    await say('keep');
    const out = await say('export the register');
    const [file] = out.files;
    expect(file?.name).toBe('anchors-2026-11-25.csv');
    const again = await say({ file: { name: 'a.csv', base64: file?.base64 ?? '' } });
    expect(again.text).toContain('Already here, and left out: 2');
    const other = fresh();
    const read = await other({ file: { name: 'a.csv', base64: file?.base64 ?? '' } });
    await other({ press: choice(read, 'r:keep') });
    const bodies = (text: string) => text.split('\r\n').map((line) => line.replace(/^[^,]*,/, ''));
    expect(bodies(csv((await other('export the register')).files[0]?.base64)).toSorted()).toEqual(
      bodies(csv(file?.base64)).toSorted(),
    );
  });

  it('a table of pulls stays one of pulls', async () => {
    const read = await fresh()('crag,anchor,rock,peak [kN]\nGannet Slab,twin leg,granite,30');
    expect(read.topic).toBe('pulltest-record');
    expect(read.text).toContain('Loads from');
  });

  it('ten thousand anchors in under ten seconds', async () => {
    const say = fresh();
    const kinds = ['twin leg,316,12,100', 'wedge,zinc plated,10,80', 'wedge,304,10,70'];
    const rows = Array.from({ length: 10_000 }, (_, at) =>
      row(at, `${kinds[at % 3]},${1960 + (at % 60)},kes,`),
    );
    const started = performance.now();
    const read = await say({
      file: { name: 'all.csv', base64: Buffer.from([heading, ...rows].join('\n')).toString('base64') },
    });
    expect(read.text).toContain('10,000 can be kept');
    expect((await say({ press: choice(read, 'r:keep') })).text).toContain('Kept: 10,000 records');
    expect(performance.now() - started).toBeLessThan(10_000);
    const found = await say('anchors at Harbour, zinc plated');
    expect(found.text).toMatch(/and 3,313 more/);
    const first = await say('which anchors first?');
    expect(first.text).toContain('15 of 10');
  }, 60_000);
});
