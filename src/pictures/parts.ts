/** The marks that pictures are put together from. Each has data of its own, one row a mark, so that nothing is drawn twice. */
import type { Field } from 'vega-lite/types_unstable/channeldef.js';
import type { UnitSpec } from 'vega-lite/types_unstable/spec/unit.js';
import { colours, sizes } from './look.ts';

export interface Layer extends UnitSpec<Field> {
  readonly data: { readonly values: Record<string, string | number>[] };
}

/** Pixels from the plot's upper left corner, and not a value on an axis. */
const inPixels = <Name extends string>(field: Name) =>
  ({ field, type: 'quantitative', scale: null, axis: null }) as const;
const place = { x: inPixels('x'), y: inPixels('y') };
const places = { ...place, x2: { field: 'x2' }, y2: { field: 'y2' } };

/** Marks of one look become one layer, at the place of the first: half the time of drawing went into many small layers. */
export function merged(layers: readonly Layer[]): Layer[] {
  const looks = new Map<string, Layer>();
  for (const layer of layers) {
    const { data, ...look } = layer;
    const key = JSON.stringify(look);
    const values = [...(looks.get(key)?.data.values ?? []), ...data.values];
    looks.set(key, { ...layer, data: { values } });
  }
  return [...looks.values()];
}

export interface Writing {
  readonly size?: number;
  readonly bold?: boolean;
  readonly colour?: string;
  readonly align?: 'left' | 'center' | 'right';
  /** The place of the first line's middle, or of its foot. */
  readonly baseline?: 'middle' | 'bottom';
  /** In pixels, measured by the canvas: the last guard should a line come out wider than reckoned. */
  readonly limit?: number;
}

/** Lines of text at a place in pixels; below zero and beyond the plot are the margins. */
export function writing(lines: readonly string[], x: number, y: number, how: Writing = {}): Layer {
  const { size = sizes.text, bold = false, colour = colours.ink, align = 'left', baseline = 'middle' } = how;
  return {
    // As data and not as a property of the mark: vega fails on a property with the value "constructor" or "valueOf".
    data: { values: [{ text: lines.join('\n'), x, y }] },
    mark: {
      type: 'text',
      lineBreak: '\n',
      align,
      baseline: baseline === 'bottom' ? 'line-bottom' : 'middle',
      fontSize: size,
      fontWeight: bold ? 'bold' : 'normal',
      lineHeight: size * sizes.line,
      color: colour,
      limit: how.limit ?? sizes.width,
    },
    encoding: { text: { field: 'text', type: 'nominal' }, ...place },
  };
}

export interface Stroke {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

export function straight(
  from: readonly [number, number],
  to: readonly [number, number],
  stroke: Stroke,
): Layer {
  return {
    data: { values: [{ x: from[0], y: from[1], x2: to[0], y2: to[1] }] },
    mark: { type: 'rule', color: stroke.colour, strokeWidth: stroke.width, ...dashed(stroke) },
    encoding: places,
  };
}

export const dashed = ({ dash }: Stroke): { strokeDash?: number[] } =>
  dash === undefined ? {} : { strokeDash: [...dash] };

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Paint {
  readonly fill: string;
  readonly stroke?: string;
}

export function boxes(all: readonly Box[], paint: Paint): Layer {
  return {
    data: { values: all.map(({ x, y, width, height }) => ({ x, y, x2: x + width, y2: y + height })) },
    mark: { type: 'rect', fill: paint.fill, stroke: paint.stroke ?? paint.fill, strokeWidth: 1 },
    encoding: places,
  };
}

/** Filled or open, so that the kinds differ without colour. */
export const dots = {
  failed: { shape: 'circle', fill: colours.ink, size: 55 },
  stopped: { shape: 'triangle-up', fill: colours.card, size: 75 },
  /** For an axis that lies: it points to more all the same. */
  stoppedAside: { shape: 'triangle-right', fill: colours.card, size: 75 },
  peak: { shape: 'circle', fill: colours.ink, size: 55 },
  firstDrop: { shape: 'diamond', fill: colours.card, size: 80 },
  learned: { shape: 'square', fill: colours.blue, size: 80 },
} as const;
export type Dot = keyof typeof dots;

export function points(all: readonly { readonly x: number; readonly y: number }[], dot: Dot): Layer {
  const { shape, fill, size } = dots[dot];
  return {
    data: { values: all.map(({ x, y }) => ({ x, y })) },
    mark: { type: 'point', shape, fill, size, stroke: colours.ink, strokeWidth: 1.5, opacity: 1 },
    encoding: place,
  };
}
