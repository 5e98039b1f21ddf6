/** What policies of replacement cost, year by year: one strip of bars each, on one scale. */
import type { TopLevelSpec } from 'vega-lite';
import type { CostData, CostTexts } from '../contracts/pictures.ts';
import { framed, nothing, plotWidth } from './frame.ts';
import { wrap } from './lettering.ts';
import { colours, sizes } from './look.ts';
import { domainFromZero, drawable, short } from './numbers.ts';
import { boxes, type Layer, straight, writing } from './parts.ts';

const left = 56;
const width = plotWidth(left);
const strip = 64;
const mostPolicies = 4;
const mostYears = 100;
const across = width + left - sizes.edge;

/** Ticks at steps that leave room for four digits. */
function yearTicks(first: number, count: number): number[] {
  const gap = [1, 2, 5, 10, 20, 25].find((one) => (one * width) / count >= 42) ?? 50;
  return Array.from({ length: count }, (_, index) => first + index).filter((year) => year % gap === 0);
}

export function costPerYear(data: CostData, texts: CostTexts): TopLevelSpec {
  const policies = data.policies
    .slice(0, mostPolicies)
    .map(({ perYear }) =>
      perYear.slice(0, mostYears).map((cost) => (drawable(cost) ? Math.max(0, cost) : 0)),
    );
  const years = Math.max(1, ...policies.map(({ length }) => length));
  const values = policies.flat();
  const [, top] = domainFromZero(values, 1);
  const slot = width / years;
  const layers: Layer[] = [];
  let y = 0;
  policies.forEach((costs, index) => {
    const lines = wrap(texts.policies[index] ?? '', { width: across, size: sizes.text, bold: true, most: 3 });
    layers.push(writing(lines, sizes.edge - left, y + sizes.text / 2, { bold: true, limit: across }));
    y += lines.length * sizes.text * sizes.line + 8;
    const foot = y + strip;
    layers.push(
      straight([0, y], [width, y], { colour: colours.grid, width: 1 }),
      writing([short(top, texts.decimal)], -6, y, { size: sizes.tick, align: 'right', limit: left - 8 }),
      writing(['0'], -6, foot, { size: sizes.tick, align: 'right' }),
      boxes(
        costs.flatMap((cost, year) => {
          const tall = (cost / top) * strip;
          const box = { x: year * slot + slot * 0.1, y: foot - tall, width: slot * 0.8, height: tall };
          return cost > 0 ? [box] : [];
        }),
        { fill: colours.blue },
      ),
      straight([0, foot], [width, foot], { colour: colours.border, width: 1 }),
    );
    y = foot + 16;
  });
  const height = Math.max(60, y - 16);
  if (policies.length > 0)
    for (const year of yearTicks(data.firstYear, years)) {
      const x = (year - data.firstYear + 0.5) * slot;
      layers.push(
        straight([x, height], [x, height + 5], { colour: colours.border, width: 1 }),
        writing([String(year)], x, height + 13, { size: sizes.tick, align: 'center' }),
      );
    }
  return framed({
    decimal: texts.decimal,
    title: texts.title,
    above: texts.cost,
    left,
    height,
    below: 24,
    layers: [...layers, ...(policies.length === 0 ? [nothing(texts.nothing, left, height)] : [])],
    key: [],
  });
}
