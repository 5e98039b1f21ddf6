/** What comes out is a real PNG within the platforms' limits, and its texts have ink. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createCanvas, loadImage } from 'canvas';
import type { TopLevelSpec } from 'vega-lite';
import { describe, expect, it } from 'vitest';
import { registerFont } from '../../src/pictures/draw.ts';
import { draw } from '../../src/pictures/index.ts';
import { colours, sizes } from '../../src/pictures/look.ts';
import { words } from '../support/desk.ts';
import { bond, bondPicture, comparison, force, recording, samples } from './samples.ts';
import { type Area, laidOut } from './texts.ts';

interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray;
}

async function decode(png: Buffer): Promise<Pixels> {
  const image = await loadImage(png);
  const { width, height } = image;
  const context = createCanvas(width, height).getContext('2d');
  context.drawImage(image, 0, 0);
  return { width, height, rgba: context.getImageData(0, 0, width, height).data };
}

const pixel = ({ width, rgba }: Pixels, x: number, y: number): readonly number[] => [
  ...rgba.slice((y * width + x) * 4, (y * width + x) * 4 + 4),
];

/** The share of pixels that are clearly darker than the card. */
function ink(picture: Pixels, area: Area): number {
  const [x1, x2, y1, y2] = [area.x1, area.x2, area.y1, area.y2].map((one) => Math.round(one * sizes.scale));
  let [dark, all] = [0, 0];
  for (let y = y1 ?? 0; y < (y2 ?? 0); y += 1)
    for (let x = x1 ?? 0; x < (x2 ?? 0); x += 1) {
      const [red = 255, green = 255, blue = 255] = pixel(picture, x, y);
      all += 1;
      if (red + green + blue < 3 * 140) dark += 1;
    }
  return dark / Math.max(1, all);
}

const rgba = (hex: string): readonly number[] => [
  ...[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)),
  255,
];

describe.each(Object.entries(samples(words)))('%s', (_, { spec }) => {
  it('is a PNG that the chats take', async () => {
    const png = await draw(spec);
    // The signature: RFC 2083 (PNG), section 3.1.
    expect([...png.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    const { width, height } = await decode(png);
    expect(width).toBe(sizes.width * sizes.scale);
    // Telegram Bot API, sendPhoto: width and height together at most 10000, their ratio at most 20 (from memory).
    expect(width + height).toBeLessThanOrEqual(10_000);
    expect(height / width).toBeLessThan(20);
    expect(png.length).toBeLessThan(1_000_000);
  });

  it('has ink in each of its texts, an opaque ground and a border', async () => {
    const picture = await decode(await draw(spec));
    const { texts } = await laidOut(spec);
    for (const text of texts) expect(ink(picture, text), text.lines.join(' ')).toBeGreaterThan(0.03);
    expect(pixel(picture, 6, 6)).toEqual(rgba(colours.card));
    for (const [x, y] of [
      [0, 0],
      [picture.width - 1, picture.height - 1],
    ] as const)
      expect(pixel(picture, x, y)).toEqual(rgba(colours.border));
  });
});

describe('data and picture', () => {
  const same = async (one: TopLevelSpec, other: TopLevelSpec): Promise<boolean> =>
    (await draw(one)).equals(await draw(other));

  it('the same data give the same picture, and are left as they were', async () => {
    const { spec } = bondPicture(bond('granite'), words);
    const before = structuredClone(spec);
    expect(await same(spec, spec)).toBe(true);
    expect(spec).toEqual(before);
  });

  it('other data give another picture', async () => {
    const one = recording('Gully', [22], false);
    expect(await same(force(one, words).spec, force(recording('Gully', [21], false), words).spec)).toBe(
      false,
    );
    expect(await same(force(one, words).spec, force({ ...one, needs: [] }, words).spec)).toBe(false);
  });

  it.each([
    [false, colours.ink],
    [true, colours.card],
  ])('a test (stopped: %s) is filled with %s', async (stopped, fill) => {
    const group = { name: 'Gully', tests: [{ value: 20, stopped }] };
    const { spec } = comparison({ name: 'Gully', groups: [group] }, words);
    const picture = await decode(await draw(spec));
    const { height, padding } = spec as {
      readonly height: number;
      readonly padding: { readonly top: number };
    };
    // The axis ends 8 % above the only value; the mark stands in the middle of the plot.
    const y = padding.top + height * (1 - 1 / 1.08);
    const x = 52 + (sizes.width - 52 - 16) / 2;
    expect(pixel(picture, Math.round(x * sizes.scale), Math.round(y * sizes.scale))).toEqual(rgba(fill));
  });

  it.each([0, 1])('%i points are drawn, and said', async (count) => {
    const data = {
      name: 'Gully',
      outline: [{ t_s: 3, kn: 12 }].slice(0, count),
      pulls: [],
      needs: [],
    };
    const { spec, alt } = force(data, words);
    expect((await draw(spec)).length).toBeGreaterThan(1000);
    expect(alt).toMatch(/^0 pulls/);
    const { texts } = await laidOut(spec);
    const empty = texts.some(({ lines }) => lines.join(' ') === words.say({ say: 'picture-nothing' }));
    expect(empty).toBe(count === 0);
  });
});

describe('a font that cannot be used is an error and no empty picture', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fonts-'));
  const broken = join(folder, 'broken.ttf');
  writeFileSync(broken, 'no font');

  it.each([join(folder, 'none.ttf'), broken])('%s', async (path) => {
    await expect(registerFont(path)).rejects.toThrow('no texts');
  });

  it('and the folder goes', () => rmSync(folder, { recursive: true }));
});
