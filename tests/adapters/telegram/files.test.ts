/** Locations, files and pictures over the wire. */
import { deflateSync } from 'node:zlib';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Post } from '../../../src/adapters/post.ts';
import type { Message } from '../../../src/contracts/message.ts';
import { group } from './server/actors.ts';
import { lull, raise, type Stage } from './stage.ts';

let stage: Stage;
let taken: Message[];
const watch = (post: Post): Post => {
  const take = post.take.bind(post);
  post.take = (incoming) => {
    taken.push(incoming.message);
    return take(incoming);
  };
  return post;
};

beforeEach(async () => {
  taken = [];
  stage = await raise({ wrap: watch, fileMilliseconds: 500 });
});
afterEach(() => stage.end());

const csv = Buffer.from('anchor;kN\n1;18.2\n2;21.5\n');
const last = (room = stage.ana.private) => stage.own(room).at(-1)?.text;

test('a location is rounded to about a hundred metres; where it goes live, only its beginning counts', async () => {
  const { ana, answer } = stage;
  const location = { latitude: 50.123456, longitude: -5.678912 };
  const sent = ana.show(ana.private, { media: { location: { ...location, live_period: 900 } } });
  await answer(ana.private, 1);
  expect(taken.map(({ place }) => place)).toEqual([{ lat: 50.123, lon: -5.679 }]);
  ana.edit(sent, { location: { latitude: 51, longitude: -5, live_period: 900 } } as never);
  await lull();
  expect(taken).toHaveLength(1);
});

test('in a group a location or a file counts as a reply to the bot only, a file also with a mention', async () => {
  const { ana, server, answer, own } = stage;
  const room = group(server, -550, [[ana, 'member']]);
  const location = { latitude: 50, longitude: -5 };
  ana.show(room, { media: { location } });
  ana.upload(room, 'tests.csv', csv);
  await lull();
  expect(own(room)).toEqual([]);
  ana.say(room, '/help');
  const help = await answer(room, 1);
  ana.show(room, { media: { location } }, { replyTo: help });
  await answer(room, 2);
  ana.upload(room, 'tests.csv', csv, { caption: 'pull tests @chough_test_bot' });
  await answer(room, 3);
  expect(taken.at(-1)?.text).toBe('pull tests');
});

test('a file arrives byte for byte, whatever its name says', async () => {
  const { ana, answer } = stage;
  const binary = Buffer.from(Array.from({ length: 1000 }, (_, at) => at % 256));
  ana.upload(ana.private, 'tests.csv', csv);
  await answer(ana.private, 1);
  ana.upload(ana.private, 'tests.csv', binary);
  await answer(ana.private, 2);
  ana.upload(ana.private, `${'long-'.repeat(80)}name.csv`, csv);
  await answer(ana.private, 3);
  expect(taken.map(({ file }) => file?.base64)).toEqual(
    [csv, binary, csv].map((one) => one.toString('base64')),
  );
  expect(taken[2]?.file?.name).toMatch(/name\.csv$/);
  expect(taken[2]?.file?.name.length).toBeLessThanOrEqual(255);
});

test('a file of 20 MB, or one over the limit, is refused before it is fetched', async () => {
  const { ana, answer, server } = stage;
  ana.upload(ana.private, 'big.csv', Buffer.alloc(20 * 2 ** 20, 'x'));
  expect((await answer(ana.private, 1)).text).toContain('too big');
  ana.upload(ana.private, 'big.csv', Buffer.alloc(4 * 2 ** 20 + 1, 'x'));
  await answer(ana.private, 2);
  expect(server.callsOf('getFile')).toEqual([]);
  expect(taken).toEqual([]);
});

test('a file that is bigger than was told is cut off', async () => {
  const { ana, answer } = stage;
  ana.upload(ana.private, 'big.csv', Buffer.alloc(6 * 2 ** 20, 'x'), { size: 1000 });
  expect((await answer(ana.private, 1)).text).toContain('too big');
  expect(taken).toEqual([]);
});

test('a file that comes too slowly, or that is not there, is said to have failed', async () => {
  const { ana, answer, server } = stage;
  server.slowFiles = 200;
  ana.upload(ana.private, 'slow.csv', csv);
  expect((await answer(ana.private, 1)).text).toContain('did not reach me');
  server.slowFiles = null;
  server.faults.plan('getFile', {
    kind: 'error',
    code: 400,
    description: 'Bad Request: file is temporarily unavailable',
  });
  ana.upload(ana.private, 'gone.csv', csv);
  await answer(ana.private, 2);
  expect(taken).toEqual([]);
});

test('what cannot be looked at is said, and the words with it are answered; news of the platform are passed over', async () => {
  const { ana, answer, own } = stage;
  const photo = [{ file_id: 'p', file_unique_id: 'p', width: 90, height: 90 }];
  ana.show(ana.private, { media: { photo } });
  expect((await answer(ana.private, 1)).text).toContain('I read words');
  ana.show(ana.private, { caption: '/help', media: { photo } });
  await answer(ana.private, 3);
  expect(taken.map(({ text }) => text)).toEqual(['/help']);
  ana.show(ana.private, { media: { pinned_message: own(ana.private)[0] } as never });
  await lull();
  expect(own(ana.private)).toHaveLength(3);
  expect(last()).not.toContain('I read words');
});

/** A real picture: 90 × 90 grey, by the PNG specification (ISO/IEC 15948). */
function png(): Buffer {
  const crc = (bytes: Buffer): number => {
    let value = ~0;
    for (const byte of bytes) {
      value ^= byte;
      for (let bit = 0; bit < 8; bit += 1) value = (value >>> 1) ^ (value & 1 ? 0xedb88320 : 0);
    }
    return ~value >>> 0;
  };
  const chunk = (type: string, data: Buffer): Buffer => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const size = Buffer.alloc(4);
    size.writeUInt32BE(data.length);
    const sum = Buffer.alloc(4);
    sum.writeUInt32BE(crc(body));
    return Buffer.concat([size, body, sum]);
  };
  const head = Buffer.from([0, 0, 0, 90, 0, 0, 0, 90, 8, 0, 0, 0, 0]);
  const rows = deflateSync(Buffer.alloc(90 * 91));
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))]);
}

test('pictures follow the words, with the alternative text as caption; other files are documents', async () => {
  await stage.end();
  const bytes = png();
  const files = [
    {
      name: 'spacing.png',
      mime: 'image/png',
      base64: bytes.toString('base64'),
      alt: `Distances <between> anchors ${'x'.repeat(2000)}`,
    },
    { name: 'tests.csv', mime: 'text/csv', base64: csv.toString('base64'), alt: 'The results' },
  ];
  stage = await raise({
    wrap: (post) => {
      const take = post.take.bind(post);
      post.take = async (incoming) => {
        const parcel = await take(incoming);
        if (parcel === null) return null;
        const { rendered } = parcel;
        return { ...parcel, rendered: { ...rendered, reply: { ...rendered.reply, files } } };
      };
      return post;
    },
  });
  const { ana, answer, server, own } = stage;
  ana.say(ana.private, '/material');
  await answer(ana.private, 3);
  const [words, picture, table] = own(ana.private);
  expect(words?.text).toBeDefined();
  expect(picture?.photo).toBeDefined();
  expect(picture?.caption).toMatch(/^Distances <between> anchors x+$/);
  expect(picture?.caption?.length).toBe(1024);
  expect(table).toMatchObject({ caption: 'The results', document: { file_name: 'tests.csv' } });
  const sent = server.callsOf('sendPhoto').map(({ params }) => (params.photo as { bytes: Buffer }).bytes);
  expect(sent).toEqual([bytes]);
});
