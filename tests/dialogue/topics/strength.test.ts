/** Questions on size, adhesive and pairs of metals as members ask them; numbers as in tests/advice, where their sources stand. */
import { describe, expect, it } from 'vitest';
import { freshApp, talk } from '../../support/app.ts';

const app = await freshApp();
let members = 0;

/** Tells one line after the other; the last reply. */
async function told(lines: readonly string[]): Promise<Awaited<ReturnType<typeof talk>>> {
  members += 1;
  const user = `strength-${members}`;
  let reply: Awaited<ReturnType<typeof talk>> | undefined;
  for (const text of lines) reply = await talk(app, { user, text });
  if (reply === undefined) throw new Error('nothing was told');
  return reply;
}

const granite = 'granite, epoxy, sound rock, dry hole, 2 m from any edge, 316, threaded shank, for a belay';

describe('questions on size, adhesive and metals', () => {
  it.each([
    [
      'check',
      [`is a 12x100 single-leg glue-in ok? ${granite}`],
      /^12 mm .* 100 mm .* test it .*\n[\s\S]*mean 49 kN .* 5 % value 17 kN/,
      'en-959-2018',
      'test-in-this-rock',
    ],
    [
      'class of the rock',
      [`is a 12x100 single-leg glue-in ok? ${granite}, several hammer blows to break it`],
      /mean 33 kN [\s\S]* R4 has 50 MPa/,
      'isrm-grades',
      'strike-rock',
    ],
    [
      'hot face',
      [`is a 12x100 single-leg glue-in ok? ${granite}, the rock gets to 60 °C in the sun`],
      /too weak[\s\S]* as hot there as this adhesive may soften/,
      'ead-330499',
      'hot-rock',
    ],
    [
      'standing off',
      [`is a 12x100 single-leg glue-in ok? ${granite}, sticks out 20 mm`],
      /do not place it[\s\S]* bent where it leaves the rock: 5 % value 2\.5 kN/,
      'en-1992-4-2018',
      'competent-person',
    ],
    [
      'size',
      ['what size do I need in granite with epoxy?', 'sound rock', 'dry hole', 'for lead climbing'],
      /^Smallest usual size to try: 12 mm .* 1\d0 mm [\s\S]*95 of 100/,
      'en-959-2018',
      'test-in-this-rock',
    ],
    [
      'spells',
      ['vinyl ester, 6 h at 10 °C then 4 h at 2 °C in a dry hole, cured?'],
      /^Usually cured by now: .* 380 %/,
      'practice',
      'no-load-before-cure',
    ],
    [
      'sheet',
      ['the data sheet says 12 h at 10 °C, epoxy, dry hole, how long must it cure at 14 °C'],
      /at 14 °C .* 12 h before any load/,
      'practice',
      'follow-instructions',
    ],
    [
      'cartridges',
      ['how many 380 ml cartridges for 300 single-leg glue-ins 12x100 in 14 mm holes'],
      /5 cartridges of 380 ml/,
      'practice',
      'fresh-cartridge',
    ],
    [
      'past its date',
      ['our cartridge expired in March, can we still use it?'],
      /^Do not use it: that adhesive is past its date/,
      'glue-installation-study-2011',
      'competent-person',
    ],
    [
      'gap',
      ['12 mm bolt in an 18 mm hole, ok?'],
      /^A gap of 3 mm .* only slow pure epoxy or cement grout/,
      'practice',
      'clean-hole',
    ],
    [
      'pair',
      ['304 hanger on a titanium bolt?', 'sea cliff'],
      /^titanium grade 2 with stainless steel 304: do not plan it[\s\S]* 0\.16 V; at most 0\.15 V: NOT met/,
      'astm-g82',
      'one-metal',
    ],
    [
      'damp salt',
      ['316 bolt in the sun 45 °C, air 28 °C 75 % humidity, sea cliff, overhang'],
      /^Dangerous for stainless steel: at 45 °C .* 30 % humidity/,
      'magnus-wmo-8',
      'invisible-cracks',
    ],
  ] as const)('%s', async (_, lines, first, source, caution) => {
    const reply = await told(lines);
    expect(reply.advice, reply.text).not.toBeNull();
    expect(reply.text).toMatch(first);
    expect(reply.advice?.sources).toContain(source);
    expect(reply.advice?.cautions).toContain(caution);
  });

  it('what a message wants of two metals holds while a question is open, and no longer', async () => {
    const lines = ['304 hanger on a titanium bolt?', 'sea cliff'];
    expect((await told(lines)).advice?.recommend.pairing).toBe('poor');
    const after = await told([...lines, 'and which metal is best there? overhanging, temperate, limestone']);
    expect(after.topic).toBe('material');
    expect(after.facts).not.toHaveProperty('metal_other');
  });

  it('an old cartridge does not stop the next question', async () => {
    const after = await told([
      'our cartridge expired in March, can we still use it?',
      'ok, a new one. how much for 20 single-leg glue-ins 10x100 in 12 mm holes?',
    ]);
    expect(after.topic).toBe('adhesive-amount');
  });
});
