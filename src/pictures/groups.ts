/** Pull tests of several groups side by side: every single test, the mean, the 5 % value and what is asked. */
import type { TopLevelSpec } from 'vega-lite';
import type { GroupData, GroupTexts, TestValue } from '../contracts/pictures.ts';
import { framed, type KeyLine, nothing, plotWidth } from './frame.ts';
import { colours, dashes } from './look.ts';
import { domainFromZero, drawable, tickFormat } from './numbers.ts';
import { boxes, type Layer, type Paint, points, type Stroke, straight, writing } from './parts.ts';

const left = 52;
const height = 270;
const width = plotWidth(left);
const mostGroups = 6;
/** As wide as a mark, so that two equal tests stand side by side. */
const step = 11;

const strokes = {
  mean: { colour: colours.blue, width: 3 },
  need: { colour: colours.vermillion, width: 2, dash: dashes[0] },
} as const satisfies Record<string, Stroke>;
const characteristicPaint: Paint = { fill: colours.orange, stroke: colours.ink };

type Groups = GroupData['groups'];

interface Swarmed {
  readonly x: number;
  readonly y: number;
  readonly stopped: boolean;
}

/** Tests that would cover each other move aside, the nearest free place first; a full column overlaps at its edges. */
export function swarm(
  tests: readonly TestValue[],
  middle: number,
  room: number,
  pixel: (value: number) => number,
): Swarmed[] {
  const done: Swarmed[] = [];
  const aside = Math.floor(room / 2 / step);
  const offsets = [0, ...Array.from({ length: aside }, (_, index) => [index + 1, -index - 1]).flat()];
  for (const { value, stopped } of tests.toSorted((one, other) => one.value - other.value)) {
    const y = pixel(value);
    const free = offsets.find((offset) =>
      done.every((other) => Math.hypot(other.x - middle - offset * step, other.y - y) >= step - 1),
    );
    done.push({ x: middle + (free ?? done.length % 2) * step, y, stopped });
  }
  return done;
}

function columnLayers(
  group: Groups[number],
  index: number,
  count: number,
  pixel: (value: number) => number,
): Layer[] {
  const room = Math.min(110, width / count);
  const middle = ((index + 0.5) * width) / count;
  const half = room * 0.42;
  const { mean_kn, characteristic_kn } = group;
  const tests = swarm(
    group.tests.filter(({ value }) => drawable(value)),
    middle,
    room - 14,
    pixel,
  );
  return [
    ...(drawable(characteristic_kn)
      ? [
          boxes(
            [{ x: middle - half, y: pixel(characteristic_kn) - 3.5, width: 2 * half, height: 7 }],
            characteristicPaint,
          ),
        ]
      : []),
    ...(drawable(mean_kn)
      ? [straight([middle - half, pixel(mean_kn)], [middle + half, pixel(mean_kn)], strokes.mean)]
      : []),
    points(
      tests.filter(({ stopped }) => !stopped),
      'failed',
    ),
    points(
      tests.filter(({ stopped }) => stopped),
      'stopped',
    ),
    writing([String(index + 1)], middle, height + 14, { bold: true, align: 'center' }),
  ];
}

function keyOf(data: GroupData, groups: Groups, texts: GroupTexts): KeyLine[] {
  const tests = groups.flatMap((group) => group.tests);
  const wanted: (KeyLine | false)[] = [
    tests.some(({ stopped }) => !stopped) && { sample: { dot: 'failed' }, text: texts.failed },
    tests.some(({ stopped }) => stopped) && { sample: { dot: 'stopped' }, text: texts.stopped },
    groups.some((group) => drawable(group.mean_kn)) && { sample: { stroke: strokes.mean }, text: texts.mean },
    groups.some((group) => drawable(group.characteristic_kn)) && {
      sample: { paint: characteristicPaint },
      text: texts.characteristic,
    },
    drawable(data.need?.kn) && { sample: { stroke: strokes.need }, text: texts.need },
    ...groups.map((_, index) => ({
      sample: { number: String(index + 1) },
      text: texts.groups[index] ?? '',
    })),
  ];
  return wanted.filter((line) => line !== false);
}

export function groupComparison(data: GroupData, texts: GroupTexts): TopLevelSpec {
  const groups = data.groups.slice(0, mostGroups);
  const values = groups
    .flatMap((group) => [...group.tests.map(({ value }) => value), group.mean_kn, group.characteristic_kn])
    .filter(drawable);
  const need = data.need?.kn;
  const [bottom, top] = domainFromZero(drawable(need) ? [...values, need] : values, 1.08);
  const pixel = (value: number): number => height - ((value - bottom) / (top - bottom)) * height;
  return framed({
    decimal: texts.decimal,
    title: texts.title,
    above: texts.force,
    left,
    height,
    below: 30,
    layers: [
      {
        data: { values: [{ y: bottom }] },
        mark: { type: 'point', opacity: 0 },
        encoding: {
          y: {
            field: 'y',
            type: 'quantitative',
            scale: { domain: [bottom, top], nice: false },
            axis: { title: null, format: tickFormat(Math.max(top, -bottom)) },
          },
        },
      },
      ...(drawable(need) ? [straight([0, pixel(need)], [width, pixel(need)], strokes.need)] : []),
      ...groups.flatMap((group, index) => columnLayers(group, index, groups.length, pixel)),
      ...(values.length === 0 ? [nothing(texts.nothing, left, height)] : []),
    ],
    key: keyOf(data, groups, texts),
  });
}
