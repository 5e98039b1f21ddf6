/** Force over time, and over displacement, of one recording with its pulls. */
import type { TopLevelSpec } from 'vega-lite';
import type { ForceData, ForcePoint, ForceTexts } from '../contracts/pictures.ts';
import { framed, type KeyLine, nothing, plotWidth } from './frame.ts';
import { colours, dashes } from './look.ts';
import { domainFromZero, domainOf, drawable, short, tickFormat } from './numbers.ts';
import { type Dot as Place, thinned } from './outline.ts';
import { type Layer, points, type Stroke, straight } from './parts.ts';
import { type Label, placed } from './place.ts';

const left = 52;
const height = 230;
const width = plotWidth(left);
const mostPulls = 12;
const mostNeeds = 4;
const few = 3;

const needStroke = (index: number): Stroke => ({
  colour: colours.vermillion,
  width: 2,
  dash: dashes[index % dashes.length] ?? [7, 4],
});

interface Marked {
  /** As the key counts the pulls. */
  readonly number: number;
  readonly peak: Place;
  readonly firstDrop: Place | undefined;
}

interface Axis {
  readonly title: string;
  readonly of: (point: ForcePoint) => number | undefined;
}

function marksOf(data: ForceData, { of }: Axis): Marked[] {
  const place = (point: ForcePoint | undefined): Place | undefined => {
    if (point === undefined) return undefined;
    const x = of(point);
    return drawable(x) && drawable(point.kn) ? { x, y: point.kn } : undefined;
  };
  return data.pulls.slice(0, mostPulls).flatMap((pull, index) => {
    const peak = place(pull.peak);
    return peak === undefined ? [] : [{ number: index + 1, peak, firstDrop: place(pull.firstDrop) }];
  });
}

function keyOf(data: ForceData, texts: ForceTexts, marks: readonly Marked[]): KeyLine[] {
  const left = data.pulls.length - mostPulls;
  const pulls = texts.pulls.slice(0, mostPulls);
  const needs = texts.needs.slice(0, mostNeeds);
  return [
    ...(marks.length === 0 ? [] : [{ sample: { dot: 'peak' as const }, text: texts.peak }]),
    ...(marks.some(({ firstDrop }) => firstDrop !== undefined)
      ? [{ sample: { dot: 'firstDrop' as const }, text: texts.firstDrop }]
      : []),
    ...needs.map((text, index) => ({ sample: { stroke: needStroke(index) }, text })),
    ...pulls.map((text, index) => ({
      sample: data.pulls.length === 1 ? ('none' as const) : { number: String(index + 1) },
      text,
    })),
    ...(left > 0 ? [{ sample: 'none' as const, text: texts.more(left) }] : []),
  ];
}

/** Few pulls: figures stand beside the marks. Many: the numbers that the key explains, so that each is surely its mark's. */
function labelsOf(marks: readonly Marked[], texts: ForceTexts): Label[] {
  const figure = (kn: number): string => `${short(kn, texts.decimal)} kN`;
  if (marks.length > few) return marks.map(({ number, peak }) => ({ texts: [String(number)], ...peak }));
  const bare = (kn: number): string => short(kn, texts.decimal);
  const peaks = marks.map(({ number, peak }) => ({
    texts:
      marks.length === 1 ? [figure(peak.y), bare(peak.y)] : [`${number}: ${figure(peak.y)}`, String(number)],
    ...peak,
  }));
  const drops = marks.flatMap(({ firstDrop }) =>
    firstDrop === undefined ? [] : [{ texts: [figure(firstDrop.y), bare(firstDrop.y)], ...firstDrop }],
  );
  return [...peaks, ...drops];
}

function curve(dots: readonly Place[], x: [number, number], y: [number, number], title: string): Layer {
  const axis = { title, format: tickFormat(Math.max(Math.abs(x[0]), Math.abs(x[1]))) };
  const upright = { title: null, format: tickFormat(Math.max(Math.abs(y[0]), y[1])) };
  return {
    data: { values: dots.map((dot, order) => ({ ...dot, order })) },
    mark: dots.length === 1 ? { type: 'point', filled: true, size: 60, opacity: 1 } : { type: 'line' },
    encoding: {
      x: { field: 'x', type: 'quantitative', scale: { domain: x, nice: false, zero: false }, axis },
      y: { field: 'y', type: 'quantitative', scale: { domain: y, nice: false }, axis: upright },
      // In the order of time, also where the displacement goes back.
      ...(dots.length === 1 ? {} : { order: { field: 'order', type: 'quantitative' } }),
      color: { value: colours.blue },
    },
  };
}

function picture(data: ForceData, texts: ForceTexts, title: string, axis: Axis): TopLevelSpec {
  const all = data.outline.flatMap((point) => {
    const x = axis.of(point);
    return drawable(x) && drawable(point.kn) ? [{ x, y: point.kn }] : [];
  });
  const marks = marksOf(data, axis);
  const marked = marks.flatMap(({ peak, firstDrop }) => (firstDrop ? [peak, firstDrop] : [peak]));
  const needs = data.needs
    .slice(0, mostNeeds)
    .flatMap(({ kn }, index) => (drawable(kn) ? [{ kn, index }] : []));
  const xs = domainOf([...all, ...marked].map(({ x }) => x));
  const ys = domainFromZero(
    [...all.map(({ y }) => y), ...marked.map(({ y }) => y), ...needs.map((n) => n.kn)],
    1.2,
  );
  const dots = thinned(all, width);
  const inPixels = ({ x, y }: Place): Place => ({
    x: ((x - xs[0]) / (xs[1] - xs[0])) * width,
    y: height - ((y - ys[0]) / (ys[1] - ys[0])) * height,
  });
  const labels = labelsOf(marks, texts).map((label) => ({ ...label, ...inPixels(label) }));
  const needAt = needs.map(({ kn, index }) => ({ y: inPixels({ x: xs[0], y: kn }).y, index }));
  const written = placed(labels, { width, height }, marked.map(inPixels), dots.map(inPixels));
  return framed({
    decimal: texts.decimal,
    title,
    above: texts.force,
    left,
    height,
    below: 46,
    layers: [
      ...needAt.map(({ y, index }) => straight([0, y], [width, y], needStroke(index))),
      ...written.grounds,
      curve(dots, xs, ys, axis.title),
      points(
        marks.flatMap(({ firstDrop }) => (firstDrop ? [inPixels(firstDrop)] : [])),
        'firstDrop',
      ),
      points(
        marks.map(({ peak }) => inPixels(peak)),
        'peak',
      ),
      ...written.texts,
      ...(all.length + marked.length === 0 ? [nothing(texts.nothing, left, height)] : []),
    ],
    key: keyOf(data, texts, marks),
  });
}

export const forceOverTime = (data: ForceData, texts: ForceTexts): TopLevelSpec =>
  picture(data, texts, texts.title, { title: texts.time, of: ({ t_s }) => t_s });

/** Undefined where no displacement was recorded. */
export const forceOverDisplacement = (data: ForceData, texts: ForceTexts): TopLevelSpec | undefined =>
  data.outline.some(({ mm }) => drawable(mm))
    ? picture(data, texts, texts.displacementTitle, {
        title: texts.displacement,
        of: ({ mm }) => mm,
      })
    : undefined;
