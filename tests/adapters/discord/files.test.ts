/** Files in and out. Limits: documentation, Reference, Uploading Files, and Message (attachment description 1024). */
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { fetchFile } from '../../../src/adapters/discord/attachments.ts';
import type { Message } from '../../../src/contracts/message.ts';
import type { Rendered } from '../../../src/contracts/reply.ts';
import { Stage } from './support/stage.ts';

/** A picture of one pixel. */
const png =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
const whole = 'is 304 ok on an overhanging tropical sea cliff?';

let stage: Stage;
let taken: Message[];
beforeAll(async () => {
  stage = await Stage.set({
    bot: { fetchLimits: { bytes: 1024 * 1024, ms: 400 } },
    wrap: (handle) => async (message, posting) => {
      taken.push(message);
      const rendered = await handle(message, posting);
      if (rendered === null || 'silent' in rendered || message.text !== whole) return rendered;
      const file = {
        name: 'curve.png',
        mime: 'image/png',
        base64: png,
        alt: `load over time, ${'x'.repeat(2000)}`,
      };
      const withFile: Rendered = { ...rendered, reply: { ...rendered.reply, files: [file] } };
      return withFile;
    },
  });
});
afterEach(() => {
  stage.check();
  taken = [];
});
taken = [];
afterAll(() => stage.strike());

describe('a file that comes in', () => {
  it('is fetched at once and handed on as it is, with the words beside it', async () => {
    const member = stage.member();
    const bytes = Buffer.from('t;kN\n0;0\n1;12.5\n');
    member.types('what does this show?', { mention: true, files: [{ name: 'pull test 3.csv', bytes }] });
    await stage.nth(member);
    expect(taken[0]?.file).toEqual({ name: 'pull test 3.csv', base64: bytes.toString('base64') });
    expect(taken[0]?.text).toBe('what does this show?');
    expect(stage.server.typed).toContain(member.channel);
  });

  it('that is not what its name says gets an answer all the same', async () => {
    const member = stage.direct();
    member.types('', { files: [{ name: 'curve.csv', bytes: Buffer.from(png, 'base64') }] });
    expect((await stage.nth(member)).content).not.toBe('');
  });

  it('of 20 MB is refused before a byte is asked for', async () => {
    const member = stage.direct();
    const before = stage.server.calls.length;
    member.types('', { files: [{ name: 'long.csv', bytes: Buffer.alloc(10), size: 20 * 1024 * 1024 }] });
    expect((await stage.nth(member)).content).toContain('bigger than 1 MB');
    expect(stage.server.calls.slice(before).filter(({ path }) => path.startsWith('/attachments'))).toEqual(
      [],
    );
    expect(taken).toEqual([]);
  });

  it('that is bigger than was said is cut off', async () => {
    const member = stage.direct();
    member.types('', { files: [{ name: 'long.csv', bytes: Buffer.alloc(20 * 1024 * 1024), size: 10 }] });
    expect((await stage.nth(member)).content).toContain('bigger than 1 MB');
  });

  it('that does not come in time, or is gone, is asked for again', async () => {
    const member = stage.direct();
    member.types('', { files: [{ name: 'slow.csv', bytes: Buffer.from('1'), delayMs: 3000 }] });
    expect((await stage.nth(member)).content).toContain('could not fetch');
    stage.server.faults.plan('GET', /^\/attachments/, { kind: 'error', status: 404 });
    member.types('', { files: [{ name: 'gone.csv', bytes: Buffer.from('1') }] });
    expect((await stage.nth(member, 2)).content).toContain('could not fetch');
  });

  it.each([
    'https://example.org/attachments/1/2/a.csv',
    'http://cdn.discordapp.com/attachments/1/2/a.csv',
    'https://cdn.discordapp.com.example.org/a.csv',
    'https://cdn.discordapp.com:8443/a.csv',
    'http://127.0.0.1:22/a.csv',
    'file:///etc/passwd',
    'nonsense',
  ])('from a strange place is not fetched: %s', async (url) => {
    const fetched = await fetchFile({ url, name: 'a.csv', size: 3 }, stage.server.api);
    expect(fetched).toEqual({ refused: 'discord-file-failed' });
  });

  it('together with another one is asked for alone', async () => {
    const member = stage.direct();
    const bytes = Buffer.from('1');
    member.types('', {
      files: [
        { name: 'a.csv', bytes },
        { name: 'b.csv', bytes },
      ],
    });
    expect((await stage.nth(member)).content).toContain('one file at a time');
  });

  it('under a message that a command is used on is read too', async () => {
    const room = stage.room();
    const [asker, writer] = [stage.member(room), stage.member(room)];
    const target = writer.types('');
    const bytes = Buffer.from('t;kN\n0;0\n');
    const files = [{ name: 'pull.csv', bytes }];
    await stage.answer(asker.asksAbout('Ask about this message', target, { files }));
    expect(taken[0]?.file?.name).toBe('pull.csv');
  });
});

describe('a file that goes out', () => {
  it('stands with the first message and has words for those who cannot see it, cut to the limit', async () => {
    const member = stage.member();
    member.types(whole, { mention: true });
    await stage.nth(member, 2);
    const [first, second] = await stage.delivered(member);
    expect(second?.files).toEqual([]);
    expect(first?.files).toHaveLength(1);
    expect(first?.files[0]?.name).toBe('curve.png');
    expect(first?.files[0]?.bytes.toString('base64')).toBe(png);
    expect(first?.files[0]?.description.length).toBe(1024);
    expect(first?.content).toContain('Take care');
  });
});
