/** A load cell's file sent in a chat: measured, drawn, asked back, noted only when confirmed. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { makeApp } from '../../src/app.ts';
import type { Message } from '../../src/contracts/message.ts';
import { openSqlite } from '../../src/store/sqlite.ts';
import { rulesFolder } from '../support/desk.ts';
import { pipe, root } from '../support/program.ts';
import { chatWith, choice, keptId, wholePull } from './support.ts';

const store = await openSqlite(':memory:');
const app = await makeApp(rulesFolder, store, { oneShot: false });
let chats = 0;
const fresh = () => {
  chats += 1;
  const chat = `cell-${chats}`;
  return { say: chatWith(app, chat), list: () => store.records.list(chat, 'test') };
};
const fileOf = (content: string | Buffer, name = 'cell.csv'): Partial<Message> => ({
  file: { name, base64: Buffer.from(content).toString('base64') },
});
const demoBytes = (name: string): Buffer => readFileSync(join(root, 'demo', 'recordings', `${name}.csv`));
const demo = (name: string): Partial<Message> => fileOf(demoBytes(name), `${name}.csv`);
/** PNG signature: PNG specification (W3C), 5.2. */
const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const head = 'Time [s];Force [kN]\n';
const rows = (count: number, from = 0): string =>
  Array.from({ length: count }, (_, i) => `${((from + i) / 100).toFixed(2)};${(i / 10).toFixed(3)}\n`).join(
    '',
  );

describe('a recording sent as a file', () => {
  it('is answered by verdict, question, cautions, deferral and both pictures with words', async () => {
    const { say, list } = fresh();
    const reply = await say(demo('broke'));
    expect(reply.text).toMatch(/^It gave way: the highest load was 31 kN/);
    for (const part of [
      'First sharp drop',
      'Which was it: a broken bolt, or a cone of rock?',
      'out of line with the pull',
      'not a certificate',
      'Shall I note it',
    ])
      expect(reply.text).toContain(part);
    expect(reply.files.map(({ name }) => name)).toEqual(['force-time.png', 'force-displacement.png']);
    for (const { mime, base64, alt } of reply.files) {
      expect(mime).toBe('image/png');
      expect(Buffer.from(base64, 'base64').subarray(0, 8)).toEqual(signature);
      expect(alt).toContain('31 kN');
      expect(alt).toContain('broke.csv');
    }
    expect(reply.files[1]?.alt).toContain('displacement');
    expect(reply.choices.map(({ id }) => id)).toEqual([
      'r:pull:31:steel',
      'r:pull:31:rock-cone',
      'r:pull:31:?',
    ]);
    expect(await list()).toEqual([]);
  });

  it('says the same as the command line of the pull', async () => {
    const { say } = fresh();
    const { text } = await say(demo('slipped'));
    for (const part of ['7.45 kN', 'After that it still held about 7.13 kN', 'the bond went first'])
      expect(text).toContain(part);
  });

  it('is known by its content: neither the name nor a talk beside it counts', async () => {
    const { say } = fresh();
    const reply = await say({ ...fileOf(demoBytes('broke'), 'LOG0001'), text: 'look at this' });
    expect(reply.text).toMatch(/^It gave way/);
    const utf16 = Buffer.from(`\uFEFF${demoBytes('broke').toString('utf8')}`, 'utf16le');
    expect((await say(fileOf(utf16))).text).toMatch(/^It gave way: the highest load was 31 kN/);
  });

  it('of a stopped pull never says that it failed', async () => {
    const { say } = fresh();
    const reply = await say(demo('stopped'));
    expect(reply.text).toMatch(/^Stopped before anything gave way/);
    expect(reply.choices[0]?.id).toMatch(/^r:pull:[\d.]+:stopped$/);
  });

  it('names the strongest of several, and the member picks', async () => {
    const { say } = fresh();
    const reply = await say(demo('three-pulls'));
    expect(reply.text).toMatch(/The strongest is pull [123] with 24(\.\d)? kN/);
    expect(reply.choices.map(({ label }) => label.slice(0, 11))).toEqual(
      [1, 2, 3].map((n) => `Note pull ${n}`),
    );
    expect(reply.choices.map(({ id }) => id.split(':')[3])).toEqual(['stopped', '?', '?']);
    expect(reply.text.match(/not a certificate\. Local/g)).toHaveLength(1);
  });

  it('whose peak was clipped is not offered to be noted', async () => {
    const { say } = fresh();
    const clipped = Array.from({ length: 800 }, (_, i) => {
      const kn = i < 100 ? 0 : i < 700 ? Math.min(20, (i - 100) / 15) : 0;
      const noise = kn === 20 ? 0 : 0.01 * Math.sin(i * 12.9898);
      return `${(i / 50).toFixed(2)};${(kn + noise).toFixed(4)}\n`;
    }).join('');
    const reply = await say(fileOf(head + clipped));
    expect(reply.text).toContain('Do not use this peak');
    expect(reply.text).toContain('do not offer');
    expect(reply.choices).toEqual([]);
  });

  it('speaks the language of the member', async () => {
    const { say } = fresh();
    const { text, files } = await say({ ...demo('broke'), locale: 'de' });
    expect(text).toContain('Zugversuch');
    expect(files[0]?.alt).not.toContain('peak');
  });
});

describe('the offer', () => {
  it('becomes a draft with load and failure, asks for the rest, and is kept on a tap', async () => {
    const { say, list } = fresh();
    const reply = await say(demo('slipped'));
    let next = await say({ press: choice(reply, 'r:pull:18:adhesive-rock') });
    expect(await list()).toEqual([]);
    for (const told of ['twin leg', '12 mm', '100 mm', 'granite', 'epoxy']) next = await say(told);
    expect(next.text).toContain('I would write this pull test down');
    expect(await list()).toEqual([]);
    const kept = await say({ press: choice(next, 'r:keep') });
    const [record] = await list();
    expect(record?.id).toBe(keptId(kept));
    expect(record?.body).toMatchObject({
      facts: {
        load_kn: 18,
        failure_mode: 'adhesive-rock',
        rock: 'granite',
        adhesive: 'epoxy',
        diameter_mm: 12,
      },
      texts: { day: '2026-11-25' },
    });
  });

  it('of a stopped pull counts as at least that load', async () => {
    const { say, list } = fresh();
    const reply = await say(demo('stopped'));
    let next = await say({ press: choice(reply, 'r:pull:') });
    for (const told of ['twin leg', '12 mm', '100 mm', 'granite', 'epoxy']) next = await say(told);
    await say({ press: choice(next, 'r:keep') });
    expect((await list())[0]?.body.facts).toMatchObject({ load_kn: 15, failure_mode: 'stopped' });
    expect((await say('our tests')).text).toMatch(/stopped/i);
  });

  it('without a mode asks what gave way', async () => {
    const { say } = fresh();
    let next = await say({ press: choice(await say(demo('broke')), 'r:pull:31:?') });
    for (const told of ['twin leg', '12 mm', '100 mm', 'granite', 'epoxy']) next = await say(told);
    expect(next.text).toContain('What gave way?');
    expect(next.missing).toEqual(['failure_mode']);
  });

  it('waits for an open record', async () => {
    const { say } = fresh();
    const reply = await say(demo('broke'));
    await say(wholePull);
    expect((await say({ press: choice(reply, 'r:pull') })).text).toContain('First keep or drop this one');
  });

  it.each([
    'r:pull',
    'r:pull:x:steel',
    'r:pull:-3:steel',
    'r:pull:31:nonsense',
    'r:pull:31:unknown',
    'r:pull:9999:steel',
    'r:pull:1e3:?',
  ])('refuses a button that says %s', async (press) => {
    const { say, list } = fresh();
    expect((await say({ press })).text).toContain('older question');
    expect((await say('keep')).text).not.toContain('Kept');
    expect(await list()).toEqual([]);
  });
});

describe('a file that is neither', () => {
  it.each([
    ['nothing', '', 'The file is empty'],
    ['blank lines', '\n\n', 'The file is empty'],
    ['zip', Buffer.concat([Buffer.from([0x50, 0x4b, 3, 4]), Buffer.alloc(200)]), 'packed file'],
    ['gzip', gzipSync(head + rows(50)), 'packed file'],
    ['bytes', Buffer.from(Array.from({ length: 4000 }, (_, i) => (i * 7919) % 251)), 'not text'],
    ['prose', 'We pulled three bolts.\nAll held.\n', 'no table of numbers'],
    ['no unit', `Time [s];Force\n${rows(50)}`, 'unit of the load is not stated'],
    ['no header', rows(50), 'Line 1'],
    ['not a number', `${head}${rows(50)}0.50;NaN\n${rows(50, 51)}`, 'Line 52'],
    ['cut off', `${head}${rows(50)}0.50`, 'Line 52'],
    ['a formula', `${head}${rows(50)}0.50;=1+1\n${rows(50, 51)}`, 'Line 52'],
    ['too large', Buffer.alloc(20_000_001, '1;2\n'), 'larger than I read'],
  ])('%s: says why, and stores nothing', async (_, content, why) => {
    const { say, list } = fresh();
    for (const name of ['cell.csv', 'cell']) {
      const reply = await say(fileOf(content, name));
      expect(reply.text).toContain(why);
      expect(reply.text).toContain('changed');
      expect(reply.text).toContain('never certifies');
      expect(reply.choices).toEqual([]);
      expect(reply.files).toEqual([]);
    }
    expect((await say('keep')).text).not.toContain('Kept');
    expect(await list()).toEqual([]);
  });

  it('another file beside a question leaves the question to be answered', async () => {
    const { say } = fresh();
    const photo = fileOf(Buffer.concat([signature, Buffer.alloc(300)]), 'hole.png');
    const { topic } = await say({ ...photo, text: 'how long does epoxy need at 12 degrees?' });
    expect(topic).toBe('cure');
  });

  it('an open record stays open', async () => {
    const { say } = fresh();
    const draft = await say(wholePull);
    await say(fileOf('rubbish\n1\n'));
    await say(demo('broke'));
    expect((await say({ press: choice(draft, 'r:keep') })).text).toContain('Kept');
  });
});

it('goes through the built program', async () => {
  const [reply] = await pipe([demo('stopped')]);
  expect(reply?.text).toMatch(/^Stopped before anything gave way/);
  expect(reply?.files.map(({ mime, alt }) => [mime, alt.includes('15 kN')])).toEqual([['image/png', true]]);
});
