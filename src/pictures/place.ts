/** Finds room for short labels beside their marks: each takes the first place where it covers nothing. */
import { widthOf } from './lettering.ts';
import { colours, sizes } from './look.ts';
import { boxes, type Layer, writing } from './parts.ts';

export interface Label {
  /** The best text first; the shorter ones are for where that finds no room. */
  readonly texts: readonly string[];
  readonly x: number;
  readonly y: number;
}

interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const gap = 7;
const lineHeight = sizes.text * sizes.line;

const apart = (one: Area, other: Area): boolean =>
  one.right < other.left || other.right < one.left || one.bottom < other.top || other.bottom < one.top;

const around = (x: number, y: number, reach: number): Area => ({
  left: x - reach,
  right: x + reach,
  top: y - reach,
  bottom: y + reach,
});

/** All next to the mark: a label farther off would seem to belong to another. */
function placesFor({ x, y }: Label, width: number): Area[] {
  const at = (left: number, middle: number): Area => ({
    left,
    right: left + width,
    top: middle - lineHeight / 2,
    bottom: middle + lineHeight / 2,
  });
  const [up, down] = [y - gap - lineHeight / 2, y + gap + lineHeight / 2];
  const [left, right] = [x - gap - width, x + gap];
  return [
    at(x - width / 2, up),
    at(right, y),
    at(left, y),
    at(right, up),
    at(left, up),
    at(right, down),
    at(left, down),
    at(x - width / 2, down),
  ];
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Spots all along a drawn line, close enough that no letter fits between two. */
function along(line: readonly Spot[]): Area[] {
  return line.flatMap((to, index) => {
    const from = line[index - 1] ?? to;
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 4));
    return Array.from({ length: steps }, (_, step) => {
      const share = (step + 1) / steps;
      return around(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share, 1);
    });
  });
}

export interface Placed {
  /** To be drawn below the line and the marks, so that it hides neither. */
  readonly grounds: readonly Layer[];
  readonly texts: readonly Layer[];
}

/** No label covers one of the `marks`, and the line only where there is no other room; over a mere help line its own ground keeps it readable. */
export function placed(
  labels: readonly Label[],
  field: { readonly width: number; readonly height: number },
  marks: readonly Spot[],
  line: readonly Spot[],
): Placed {
  const covered = marks.map(({ x, y }) => around(x, y, 6));
  const drawn = along(line);
  const taken: Area[] = [];
  const free = (area: Area, careful: boolean): boolean =>
    area.left >= 0 &&
    area.right <= field.width &&
    area.top >= 0 &&
    area.bottom <= field.height &&
    taken.every((one) => apart(one, area)) &&
    covered.every((one) => apart(one, area)) &&
    (!careful || drawn.every((one) => apart(one, area)));
  const grounds: Layer[] = [];
  const texts: Layer[] = [];
  for (const label of labels) {
    // A short one that crosses the line is still better than none; over a mark or a label it would be misread.
    const tries = [
      ...label.texts.map((text) => [text, true] as const),
      [label.texts.at(-1) ?? '', false] as const,
    ];
    const found = tries
      .map(([text, careful]) => {
        const places = placesFor(label, widthOf(text, sizes.text, true));
        return { text, area: places.find((area) => free(area, careful)) };
      })
      .find(({ area }) => area !== undefined);
    if (found?.area === undefined) continue;
    const { left, right, top, bottom } = found.area;
    taken.push(found.area);
    grounds.push(
      boxes([{ x: left, y: top + 1, width: right - left, height: bottom - top - 2 }], { fill: colours.card }),
    );
    texts.push(
      writing([found.text], (left + right) / 2, (top + bottom) / 2, { align: 'center', bold: true }),
    );
  }
  return { grounds, texts };
}
