/** Bond strength: what is published, what the own tests gave, what follows from both, and what is used. */
import type { TopLevelSpec } from 'vega-lite';
import type { BondData, BondTexts } from '../contracts/pictures.ts';
import { framed, type KeyLine, nothing, plotWidth } from './frame.ts';
import { swarm } from './groups.ts';
import { wrap } from './lettering.ts';
import { colours, sizes } from './look.ts';
import { domainFromZero, drawable, tickFormat } from './numbers.ts';
import { boxes, type Layer, type Paint, points, type Stroke, straight, writing } from './parts.ts';

const left = 24;
const width = plotWidth(left);
const across = width + left - sizes.edge;

const band: Paint = { fill: '#d6e6f0', stroke: colours.blue };
const usedStroke: Stroke = { colour: colours.vermillion, width: 3 };
const learnedStroke: Stroke = { colour: colours.ink, width: 2 };

interface Row {
  readonly text: string;
  readonly height: number;
  readonly draw: (middle: number) => Layer[];
}

/** Nothing of one's own yet. */
const bare: Row = { text: '', height: 60, draw: () => [] };

function learnedRow(data: BondData, text: string, pixel: (mpa: number) => number): Row[] {
  const { learned } = data;
  if (learned === undefined || ![learned.mean, learned.low, learned.high].every(drawable)) return [];
  const [low, high] = [pixel(learned.low), pixel(learned.high)];
  const draw = (y: number): Layer[] => [
    straight([low, y], [high, y], learnedStroke),
    straight([low, y - 6], [low, y + 6], learnedStroke),
    straight([high, y - 6], [high, y + 6], learnedStroke),
    points([{ x: pixel(learned.mean), y }], 'learned'),
  ];
  return [{ text, height: 26, draw }];
}

/** The value axis lies here, so tests that nearly agree move up and down. */
function testsRow(data: BondData, text: string, pixel: (mpa: number) => number): Row[] {
  const tests = data.tests.filter(({ value }) => drawable(value));
  if (tests.length === 0) return [];
  const draw = (middle: number): Layer[] => {
    const turned = swarm(tests, middle, 44, pixel).map(({ x, y, stopped }) => ({ x: y, y: x, stopped }));
    return [
      points(
        turned.filter(({ stopped }) => !stopped),
        'failed',
      ),
      points(
        turned.filter(({ stopped }) => stopped),
        'stoppedAside',
      ),
    ];
  };
  return [{ text, height: 62, draw }];
}

const publishedOf = ({ published }: BondData): BondData['published'] =>
  published !== undefined && drawable(published.low) && drawable(published.high) ? published : undefined;

/** Each strip under its own words, which have the whole width; what is published and what is used goes through all strips. */
function stacked(rows: readonly Row[], ground: (top: number, height: number) => Layer[]) {
  const layers: Layer[] = [];
  let y = 0;
  for (const { text, height, draw } of rows) {
    const lines = wrap(text, { width: across, size: sizes.text, most: 4 });
    layers.push(writing(lines, sizes.edge - left, y + sizes.text / 2, { limit: across }));
    y += lines.length * sizes.text * sizes.line + 2;
    layers.push(...ground(y, height), ...draw(y + height / 2));
    y += height + 12;
  }
  return { layers, height: y - 12 };
}

function keyOf(data: BondData, texts: BondTexts): KeyLine[] {
  const wanted: (KeyLine | false)[] = [
    publishedOf(data) !== undefined && { sample: { paint: band }, text: texts.published },
    data.tests.some(({ stopped }) => !stopped) && { sample: { dot: 'failed' }, text: texts.failed },
    data.tests.some(({ stopped }) => stopped) && { sample: { dot: 'stoppedAside' }, text: texts.stopped },
    drawable(data.used) && { sample: { stroke: usedStroke }, text: texts.used },
  ];
  return wanted.filter((line) => line !== false);
}

export function bondStrength(data: BondData, texts: BondTexts): TopLevelSpec {
  const { learned, used } = data;
  const published = publishedOf(data);
  const values = [
    ...data.tests.map(({ value }) => value),
    published?.low,
    published?.high,
    learned?.low,
    learned?.high,
    learned?.mean,
    used,
  ].filter(drawable);
  const [least, most] = domainFromZero(values, 1.08);
  const pixel = (mpa: number): number => ((mpa - least) / (most - least)) * width;
  const ground = (top: number, height: number): Layer[] => [
    ...(published === undefined
      ? []
      : [
          boxes(
            [
              {
                x: pixel(published.low),
                y: top,
                width: pixel(published.high) - pixel(published.low),
                height,
              },
            ],
            band,
          ),
        ]),
    straight([0, top + height], [width, top + height], { colour: colours.border, width: 1 }),
    ...(drawable(used) ? [straight([pixel(used), top], [pixel(used), top + height], usedStroke)] : []),
  ];
  const rows = [...testsRow(data, texts.tests, pixel), ...learnedRow(data, texts.learned, pixel)];
  const { layers, height } = stacked(rows.length === 0 ? [bare] : rows, ground);
  return framed({
    decimal: texts.decimal,
    title: texts.title,
    left,
    height,
    below: 46,
    layers: [
      {
        data: { values: [{ x: least }] },
        mark: { type: 'point', opacity: 0 },
        encoding: {
          x: {
            field: 'x',
            type: 'quantitative',
            scale: { domain: [least, most], nice: false },
            axis: { title: texts.strength, format: tickFormat(Math.max(most, -least)), grid: false },
          },
        },
      },
      ...layers,
      ...(values.length === 0 ? [nothing(texts.nothing, left, height)] : []),
    ],
    key: keyOf(data, texts),
  });
}
