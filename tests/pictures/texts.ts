/** Where the texts of a laid-out picture stand, read from vega's scenegraph, in CSS pixels of the whole picture. */
import { createCanvas } from 'canvas';
import type { TopLevelSpec } from 'vega-lite';
import { layOut, sizeOf } from '../../src/pictures/draw.ts';
import { font } from '../../src/pictures/look.ts';

export interface Area {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface Text extends Area {
  readonly lines: readonly string[];
  /** As the canvas measures the widest line, and what it may be. */
  readonly width: number;
  readonly limit: number;
}

/** What vega's scenegraph really holds: its own declaration leaves out `root` and the fields of texts. */
interface Node {
  readonly marktype?: string;
  readonly items?: readonly Node[];
  readonly bounds: Area;
  readonly x?: number;
  readonly y?: number;
  readonly opacity?: number;
  readonly text?: string | readonly string[];
  readonly fontSize?: number;
  readonly fontWeight?: string | number;
  readonly limit?: number;
}

const context = createCanvas(1, 1).getContext('2d');

function textOf(item: Node, dx: number, dy: number): Text {
  const lines = typeof item.text === 'string' ? item.text.split('\n') : (item.text ?? []);
  context.font = `${item.fontWeight ?? 'normal'} ${item.fontSize ?? 11}px "${font}"`;
  const { x1, y1, x2, y2 } = item.bounds;
  return {
    x1: x1 + dx,
    x2: x2 + dx,
    y1: y1 + dy,
    y2: y2 + dy,
    lines,
    width: Math.max(0, ...lines.map((line) => context.measureText(line).width)),
    limit: item.limit || Number.POSITIVE_INFINITY,
  };
}

function textsIn(mark: Node, dx: number, dy: number): Text[] {
  return (mark.items ?? []).flatMap((item) => {
    if (item.opacity === 0) return [];
    if (mark.marktype === 'text') return item.text === undefined ? [] : [textOf(item, dx, dy)];
    if (mark.marktype !== 'group') return [];
    return (item.items ?? []).flatMap((inner) => textsIn(inner, dx + (item.x ?? 0), dy + (item.y ?? 0)));
  });
}

export interface LaidOut {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly Text[];
}

export async function laidOut(spec: TopLevelSpec): Promise<LaidOut> {
  const view = await layOut(spec);
  const { root } = view.scenegraph() as unknown as { readonly root: Node };
  const padding = view.padding();
  const { left = 0, top = 0 } = typeof padding === 'number' ? {} : padding;
  const found = { ...sizeOf(view), texts: textsIn(root, left, top) };
  view.finalize();
  return found;
}

const meet = (one: Area, other: Area): boolean =>
  one.x1 < other.x2 && other.x1 < one.x2 && one.y1 < other.y2 && other.y1 < one.y2;

/** In words, so that a failing test says which text is wrong; empty where all is well. */
export function faults({ width, height, texts }: LaidOut): string[] {
  const name = (text: Text): string => text.lines.join(' / ');
  return texts.flatMap((text, index) => [
    ...(text.x1 < 0 || text.y1 < 0 || text.x2 > width || text.y2 > height ? [`outside: ${name(text)}`] : []),
    ...(text.width > text.limit ? [`cut: ${name(text)}`] : []),
    ...texts
      .slice(index + 1)
      .filter((other) => meet(text, other))
      .map((other) => `overlap: ${name(text)} | ${name(other)}`),
  ]);
}
