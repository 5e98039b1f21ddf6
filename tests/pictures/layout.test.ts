/** No text overlaps another, leaves the picture or is cut, in any language and with whatever a member types. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Languages } from '../../src/languages.ts';
import { longestAlt } from '../../src/render/pictures.ts';
import { rules, rulesFolder, words } from '../support/desk.ts';
import {
  bond,
  bondPicture,
  comparison,
  costPicture,
  costs,
  type Drawn,
  force,
  groups,
  overDisplacement,
  recording,
  riskPicture,
  risks,
  samples,
} from './samples.ts';
import { faults, laidOut } from './texts.ts';

const languages = await Languages.find(rulesFolder, rules);

const hostile = [
  'x'.repeat(5000),
  'long words '.repeat(400),
  '\u202eabc\u2066def\u200f\u0000\u0007\u001b[31m',
  '🧗🏽‍♀️🪨🇨🇭👨‍👩‍👧‍👦 '.repeat(30),
  'one\ntwo\r\nthree\tfour\u2028five',
  `Z${'\u0300\u0323'.repeat(300)}algo`,
  'W'.repeat(200),
  '鳥嘴山岩壁'.repeat(40),
  'שלום עולם مرحبا بالعالم',
  '{"signal": "width"} datum.x \'"</text><script>',
  'constructor',
  'valueOf __proto__ toString',
  'null',
  '',
  '   ',
];

const allWith = (name: string): Readonly<Record<string, Drawn>> => ({
  force: force({ ...recording(name, [24, 23, 25], true), needs: [{ name, kn: 15 }] }, words),
  groups: comparison(groups(Array.from({ length: 6 }, () => name)), words),
  bond: bondPicture(bond(name), words),
  costs: costPicture({ ...costs([name, name, name, name]), currency: name }, words),
  risks: riskPicture(
    { name, anchors: [{ name, perYear: 0.1, act: true }, ...risks([name], 19).anchors] },
    words,
  ),
});

describe.each(languages.codes)('in %s', (code) => {
  it('every sample is laid out without a fault', async () => {
    const spoken = await languages.words(code);
    for (const [name, { spec }] of Object.entries(samples(spoken))) {
      const picture = await laidOut(spec);
      expect(picture.texts.length, name).toBeGreaterThan(4);
      expect(faults(picture), name).toEqual([]);
      expect(picture.width, name).toBe(390);
    }
  });
});

describe('hostile names', () => {
  it.each(hostile.map((name) => [JSON.stringify(name.slice(0, 24)), name]))('%s', async (_, name) => {
    for (const [kind, { spec }] of Object.entries(allWith(name))) {
      const picture = await laidOut(spec);
      expect(faults(picture), kind).toEqual([]);
      expect(picture.height, kind).toBeLessThan(1500);
      const drawn = picture.texts.flatMap(({ lines }) => lines).join('');
      // But for the left-to-right mark that keeps figures on their side.
      expect(drawn.replaceAll('\u200e', ''), kind).not.toMatch(/\p{Cc}|\p{Cf}|\p{Zl}/u);
    }
  });
});

const value = fc.oneof(
  fc.double({ min: 0, max: 60, noNaN: true }),
  fc.constantFrom(0, 1e-9, 15, 99_999, 1e6, 1e15, 1e29, 1e300, -3, Number.NaN, Number.POSITIVE_INFINITY),
);
const test = fc.record({ value, stopped: fc.boolean() });
const point = fc.record({ t_s: value, kn: value }).chain(({ t_s, kn }) =>
  fc.oneof(
    fc.constant({ t_s, kn }),
    value.map((mm) => ({ t_s, kn, mm })),
  ),
);
const name = fc.string({ unit: 'grapheme', maxLength: 60 });
const need = fc.record({ name, kn: value });
const anyForce = fc.record({
  name,
  outline: fc.array(point, { maxLength: 30 }),
  pulls: fc.array(fc.record({ peak: point, firstDrop: point }), { maxLength: 20 }),
  needs: fc.array(need, { maxLength: 6 }),
});
const anyGroups = fc.record({
  name,
  groups: fc.array(
    fc.record({
      name,
      tests: fc.array(test, { maxLength: 40 }),
      mean_kn: value,
      characteristic_kn: value,
    }),
    { maxLength: 9 },
  ),
  need,
});
const anyBond = fc.record({
  name,
  published: fc.record({ low: value, high: value }),
  tests: fc.array(test, { maxLength: 40 }),
  learned: fc.record({ mean: value, low: value, high: value, share: fc.constantFrom(0.9, 0.95) }),
  used: value,
});
const anyCosts = fc.record({
  name,
  currency: name,
  firstYear: fc.integer({ min: 1950, max: 2100 }),
  policies: fc.array(fc.record({ name, perYear: fc.array(value, { maxLength: 120 }) }), { maxLength: 6 }),
});
const anyRisks = fc.record({
  name,
  anchors: fc.array(fc.record({ name, perYear: value, act: fc.boolean() }), { maxLength: 30 }),
});
const anyPicture: fc.Arbitrary<Drawn> = fc.oneof(
  anyForce.map((data) => force(data, words)),
  anyForce.map((data) => {
    const drawn = force(data, words);
    return { ...drawn, spec: overDisplacement(data, words) ?? drawn.spec };
  }),
  anyGroups.map((data) => comparison(data, words)),
  anyBond.map((data) => bondPicture(data, words)),
  anyCosts.map((data) => costPicture(data, words)),
  anyRisks.map((data) => riskPicture(data, words)),
);

it('whatever the data, nothing overlaps or is cut, and the alternative text says it with figures', {
  timeout: 120_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(anyPicture, async ({ spec, alt }) => {
      const picture = await laidOut(spec);
      expect(faults(picture)).toEqual([]);
      expect(picture.height).toBeLessThan(1500);
      expect(alt).toMatch(/\d/);
      expect(alt.length).toBeLessThanOrEqual(longestAlt);
    }),
    { numRuns: 100 },
  );
});

describe('the check itself', () => {
  it('finds an overlap, a cut and a text outside', async () => {
    const { width, height, texts } = await laidOut(bondPicture(bond('granite'), words).spec);
    const [first, ...rest] = texts;
    if (first === undefined) throw new Error('no text');
    const wrong = { ...first, x1: -1, limit: first.width - 1 };
    const kinds = faults({ width, height, texts: [first, wrong, ...rest] }).map((one) => one.split(':')[0]);
    expect(new Set(kinds)).toEqual(new Set(['overlap', 'cut', 'outside']));
  });

  it('sees the ticks of the axes and the title', async () => {
    const { texts } = await laidOut(bondPicture(bond('granite'), words).spec);
    const all = texts.map(({ lines }) => lines.join(' '));
    expect(all).toEqual(expect.arrayContaining(['0', '10', 'Bond strength, learned and published: granite']));
  });
});
