/** Anchors ranked by their risk, the highest first: each bar under its own name, which has the whole width. */
import type { TopLevelSpec } from 'vega-lite';
import type { RiskData, RiskTexts } from '../contracts/pictures.ts';
import { framed, type KeyLine, nothing, plotWidth } from './frame.ts';
import { widthOf, wrap } from './lettering.ts';
import { colours, sizes } from './look.ts';
import { boxes, type Layer, type Paint, writing } from './parts.ts';

const left = 16;
const width = plotWidth(left);
const mostAnchors = 15;
const bar = 9;
/** Where all are next to nothing, no bar looks long. */
const leastMost = 1e-5;

const paints = {
  act: { fill: colours.vermillion, stroke: colours.ink },
  watch: { fill: colours.card, stroke: colours.ink },
} as const satisfies Record<string, Paint>;

export function rankedRisks(data: RiskData, texts: RiskTexts): TopLevelSpec {
  const all = data.anchors
    .filter(({ perYear }) => perYear >= 0 && perYear <= 1)
    .toSorted((one, other) => other.perYear - one.perYear);
  const shown = all.slice(0, mostAnchors);
  const most = Math.max(shown[0]?.perYear ?? 0, leastMost);
  // Beside the longest bar each figure must still fit.
  const figures = shown.map(({ perYear }) => widthOf(texts.share(perYear), sizes.text, true));
  const longest = Math.max(40, width - 12 - Math.max(0, ...figures));
  const layers: Layer[] = [];
  let y = 4;
  shown.forEach(({ name, perYear, act }, index) => {
    const text = `${index + 1}. ${name}`;
    const lines = wrap(text, { width, size: sizes.text, bold: act, most: 2 });
    layers.push(writing(lines, 0, y + sizes.text / 2, { bold: act, limit: width }));
    y += lines.length * sizes.text * sizes.line + 1;
    const long = Math.max(1, (perYear / most) * longest);
    layers.push(
      boxes([{ x: 0, y, width: long, height: bar }], act ? paints.act : paints.watch),
      writing([texts.share(perYear)], long + 6, y + bar / 2, { bold: act, limit: width }),
    );
    y += bar + 10;
  });
  const more = all.length - shown.length;
  const key: (KeyLine | false)[] = [
    shown.some(({ act }) => act) && { sample: { paint: paints.act }, text: texts.act },
    shown.some(({ act }) => !act) && { sample: { paint: paints.watch }, text: texts.watch },
    more > 0 && { sample: 'none', text: texts.more(more) },
  ];
  const height = Math.max(60, y);
  return framed({
    decimal: texts.decimal,
    title: texts.title,
    above: texts.risk,
    left,
    height,
    below: 4,
    layers: [...layers, ...(shown.length === 0 ? [nothing(texts.nothing, left, height)] : [])],
    key: key.filter((line) => line !== false),
  });
}
