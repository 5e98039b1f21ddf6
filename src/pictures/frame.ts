/** What all pictures share: title above, plot, and below it the key, each of a height reckoned beforehand. */
import type { TopLevelSpec } from 'vega-lite';
import { wrap } from './lettering.ts';
import { colours, font, sizes } from './look.ts';
import {
  type Box,
  boxes,
  type Dot,
  type Layer,
  merged,
  type Paint,
  points,
  type Stroke,
  straight,
  writing,
} from './parts.ts';

export type Sample =
  | { readonly dot: Dot }
  | { readonly stroke: Stroke }
  | { readonly paint: Paint }
  | { readonly number: string }
  | 'none';

export interface KeyLine {
  readonly sample: Sample;
  readonly text: string;
}

export interface Frame {
  readonly decimal: '.' | ',';
  readonly title: string;
  /** What is on the vertical axis, written above it. */
  readonly above?: string;
  /** Pixels left of the plot, for ticks. */
  readonly left: number;
  readonly height: number;
  /** Pixels below the plot for its axis. */
  readonly below: number;
  readonly layers: readonly Layer[];
  readonly key: readonly KeyLine[];
}

const sampleWidth = 30;
const full = sizes.width - 2 * sizes.edge;
export const plotWidth = (left: number): number => sizes.width - left - sizes.edge - 4;

function drawSample(sample: Sample, x: number, y: number): Layer[] {
  if (sample === 'none') return [];
  if ('dot' in sample) return [points([{ x: x + 11, y }], sample.dot)];
  if ('stroke' in sample) return [straight([x, y], [x + 24, y], sample.stroke)];
  if ('number' in sample)
    return [writing([sample.number], x + 11, y, { bold: true, align: 'center', limit: sampleWidth })];
  const box: Box = { x, y: y - 5, width: 22, height: 10 };
  return [boxes([box], sample.paint)];
}

function drawKey(key: readonly KeyLine[], x: number, top: number): { layers: Layer[]; height: number } {
  const layers: Layer[] = [];
  let y = top;
  for (const { sample, text } of key) {
    const indent = sample === 'none' ? 0 : sampleWidth;
    const lines = wrap(text, { width: full - indent, size: sizes.text, most: 5 });
    layers.push(...drawSample(sample, x, y + sizes.text / 2));
    layers.push(writing(lines, x + indent, y + sizes.text / 2, { limit: full - indent }));
    y += lines.length * sizes.text * sizes.line + 5;
  }
  return { layers, height: y - top };
}

export function framed(frame: Frame): TopLevelSpec {
  const { left, height, below } = frame;
  const x = sizes.edge - left;
  const title = wrap(frame.title, { width: full, size: sizes.title, bold: true, most: 3 });
  const titleHeight = title.length * sizes.title * sizes.line;
  const above =
    frame.above === undefined ? [] : wrap(frame.above, { width: full, size: sizes.text, most: 2 });
  const aboveHeight = above.length * sizes.text * sizes.line + 4;
  const top = sizes.edge + titleHeight + aboveHeight + 6;
  const key = drawKey(frame.key, x, height + below);
  return {
    width: plotWidth(left),
    height,
    padding: {
      left,
      top,
      right: sizes.edge + 4,
      bottom: Math.ceil(below + key.height + sizes.edge - 4),
    },
    autosize: 'none',
    background: colours.card,
    layer: merged([
      ...frame.layers,
      writing(title, x, sizes.edge - top + sizes.title / 2, {
        size: sizes.title,
        bold: true,
        limit: full,
      }),
      ...(above.length === 0
        ? []
        : [writing(above, x, -aboveHeight + sizes.text / 2 - 4, { colour: colours.soft, limit: full })]),
      ...key.layers,
    ]),
    config: {
      font,
      view: { stroke: null },
      locale: { number: { decimal: frame.decimal, thousands: '', grouping: [3], currency: ['', ''] } },
      axis: {
        labelFontSize: sizes.tick,
        titleFontSize: sizes.text,
        titleFontWeight: 'normal',
        labelColor: colours.ink,
        titleColor: colours.soft,
        gridColor: colours.grid,
        domainColor: colours.border,
        tickColor: colours.border,
        labelLimit: 0,
        labelOverlap: true,
        titleLimit: full,
        tickCount: 5,
      },
    },
  };
}

/** Said in the middle of an empty plot. */
export function nothing(text: string, left: number, height: number): Layer {
  const lines = wrap(text, { width: plotWidth(left) - 20, size: sizes.text });
  return writing(lines, plotWidth(left) / 2, height / 2, { align: 'center', colour: colours.soft });
}
