/** Standard sizes (rules/tables/sizes.json): what is one size longer, one thicker, and what each would hold. */
import type { Measure, Phrase } from '../contracts/phrase.ts';
import type { Size } from '../engineering/index.ts';
import { numberCell } from '../rules/index.ts';
import { strengthWithin } from './capacity.ts';
import { type Setting, usualHole } from './capacity-setting.ts';
import type { Worksheet } from './worksheet.ts';

export interface StandardSize extends Size {
  readonly installed: number;
}

/** The sizes of a kind, thin and short first. */
export const standardSizes = (sheet: Worksheet, anchor: string): readonly StandardSize[] =>
  sheet.desk.rules
    .table('sizes')
    .rows.filter(({ is }) => is.anchor === anchor)
    .map((row) => ({
      diameter: numberCell(row, 'diameter_mm'),
      length: numberCell(row, 'length_mm'),
      holeDiameter: numberCell(row, 'hole_mm'),
      installed: numberCell(row, 'installed_mm'),
    }))
    .toSorted((a, b) => a.diameter - b.diameter || a.length - b.length);

/** The same place with another size of the same kind. */
export const withSize = (setting: Setting, size: StandardSize): Setting => ({
  ...setting,
  diameter: size.diameter,
  holeDiameter: size.holeDiameter,
  embedment: size.installed - setting.standOff,
});

const mm = (value: number): Measure => ({ value, unit: 'mm', exact: true });

function line(say: string, size: number, changed: Setting): Phrase[] {
  const governs = strengthWithin(changed)?.tension.governs;
  if (governs === undefined) return [];
  return [
    {
      say,
      with: {
        size: mm(size),
        mean: { value: governs.mean, unit: 'kN' },
        characteristic: { value: governs.characteristic, unit: 'kN' },
        mode: { say: `mode-${governs.mode}` },
      },
    },
  ];
}

/** What one size longer and one size thicker would bring, by the same method. */
export function alternatives(sheet: Worksheet, setting: Setting, anchor: string, length: number): Phrase[] {
  const sizes = standardSizes(sheet, anchor);
  const same = sizes.filter((size) => size.diameter === setting.diameter);
  const lengths = (same.length > 0 ? same : sizes).map((size) => size.length);
  const longer = Math.min(...lengths.filter((one) => one > length));
  const thicker = Math.min(...sizes.map((size) => size.diameter).filter((one) => one > setting.diameter));
  const { glueIn, holeDiameter, embedment } = setting;
  const gap = Math.max(holeDiameter - setting.diameter, usualHole(0, glueIn));
  return [
    ...(Number.isFinite(longer)
      ? line('embedment-longer', longer, { ...setting, embedment: embedment + longer - length })
      : []),
    ...(Number.isFinite(thicker)
      ? line('embedment-fatter', thicker, { ...setting, diameter: thicker, holeDiameter: thicker + gap })
      : []),
  ];
}
