import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { freshApp, talk } from '../support/app.ts';

interface Script {
  readonly start: readonly string[];
  readonly lines: readonly { readonly say: string; readonly text: string }[];
}
const script = JSON.parse(readFileSync(new URL('talks/bad-input.json', import.meta.url), 'utf8')) as Script;

const app = await freshApp();
const standing = (await app.languages.words('en')).say({ say: 'standing' });

describe('bad input', () => {
  it.each(script.lines.map((line, index) => [JSON.stringify(line.say), line, index] as const))(
    '%s',
    async (_, { say, text }, index) => {
      const user = `bad-${index}`;
      for (const opening of script.start) await talk(app, { user, text: opening });
      const before = await talk(app, { user, text: 'hello' });
      const reply = await talk(app, { user, text: say });
      expect(reply.text).toContain(text);
      expect(reply.text).toContain(standing);
      expect(reply.text.length).toBeLessThan(500);
      expect(reply.advice).toBeNull();
      // The talk is as it was: the same facts, and the same next question.
      expect((await talk(app, { user, text: 'hello' })).facts).toEqual(before.facts);
      const [asked, untouched] = [
        await talk(app, { user, text: 'sound rock' }),
        await (async () => {
          for (const opening of script.start) await talk(app, { user: `${user}-clean`, text: opening });
          return talk(app, { user: `${user}-clean`, text: 'sound rock' });
        })(),
      ];
      expect(asked.text).toBe(untouched.text);
    },
  );

  it('a message of 100 000 characters is not read, and says so at once', async () => {
    const started = performance.now();
    const reply = await talk(app, { user: 'long', text: 'granite '.repeat(12_500) });
    expect(performance.now() - started).toBeLessThan(200);
    expect(reply.text).toContain('longer than 10000 characters');
    expect(reply.facts).toEqual({});
  });

  it('two places that cannot both be are asked about, and neither is kept', async () => {
    const reply = await talk(app, {
      user: 'clash',
      text: 'which metal for an inland desert crag 50 m from the sea?',
    });
    expect(reply.text).toContain('do not go together');
    expect(reply.facts).toEqual({});
  });

  it('a button of an older program or of another question changes nothing', async () => {
    for (const press of [
      'f:rock:cheese',
      'f:nothing:granite',
      'x',
      'f:rock',
      't:nonsense',
      'c:rm',
      'f:__proto__:x',
    ]) {
      const reply = await talk(app, { user: 'old', press });
      expect(reply.text, press).toContain('older question');
      expect(reply.facts).toEqual({});
    }
  });
});
