/** Bond strength from the club's own pulls of one size, and what it makes of the table's bond. */
import type { Phrase } from '../contracts/phrase.ts';
import { bondFromTests, bondStressOf, OutOfRange, updateStrength } from '../engineering/index.ts';
import { numberCell } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

/** The table's bond counts as much as two pulls of the club's own, and scatters as rock does (our judgement). */
const tableWeight = 2;
const tableScatter = 0.45;

interface Glued {
  readonly diameter: number;
  /** Of both legs together. */
  readonly embedment: number;
  readonly legs: number;
}

/** Undefined while size or kind is not told, or when nothing is glued. The kind not told exactly: two legs, the lower bond. */
function glued(sheet: Worksheet): Glued | undefined {
  const diameter = sheet.number('diameter_mm');
  const depth = sheet.number('embedment_mm') ?? sheet.number('length_mm');
  const family = sheet.situation.anchor_family;
  const isGlued = family === 'glue-in' || (family === 'unknown' && sheet.told('adhesive') !== undefined);
  if (diameter === undefined || depth === undefined || !isGlued) return undefined;
  const anchor = sheet.told('anchor');
  const exact = typeof anchor === 'string' && !sheet.isAssumed('anchor');
  const legs = exact ? numberCell(sheet.row('anchors', anchor), 'legs') : 2;
  return { diameter, embedment: depth * legs, legs };
}

function updated(sheet: Worksheet, ratios: readonly number[]): Phrase[] {
  const adhesive = sheet.choice('adhesive');
  if (adhesive === 'unknown') return [];
  const table = numberCell(sheet.row('adhesives', adhesive), 'bond_mean_mpa');
  const { median, predictive5 } = updateStrength(
    {
      median: table / Math.sqrt(1 + tableScatter ** 2),
      scatter: tableScatter,
      weight: tableWeight,
      freedom: tableWeight,
    },
    ratios,
  );
  return [
    {
      say: 'results-bond-update',
      with: {
        adhesive: { fact: 'adhesive', value: adhesive },
        table: { value: table, unit: 'MPa', metric: true },
        median: { value: median, unit: 'MPa', metric: true },
        low: { value: predictive5, unit: 'MPa', metric: true },
      },
    },
  ];
}

export function bondLines(sheet: Worksheet, pulls: readonly number[]): Phrase[] {
  const rod = glued(sheet);
  if (rod === undefined) return [];
  const { diameter, embedment, legs } = rod;
  const byGlue = sheet.choice('gave_way') === 'glue';
  try {
    const { mean, characteristic } = bondFromTests(pulls.map((load) => ({ load, diameter, embedment })));
    const average = pulls.reduce((sum, load) => sum + load, 0) / pulls.length;
    sheet.compute(bondStressOf({ resistance: average, diameter, embedment }));
    return [
      {
        say: byGlue ? 'results-bond' : 'results-bond-least',
        with: {
          mean: { value: mean, unit: 'MPa', metric: true },
          low: { value: characteristic.value, unit: 'MPa', metric: true },
          legs,
          diameter: { value: diameter, unit: 'mm', exact: true, metric: true },
          depth: { value: embedment / legs, unit: 'mm', exact: true, metric: true },
        },
      },
      ...(byGlue
        ? updated(
            sheet,
            pulls.map((load) => (1000 * load) / (Math.PI * diameter * embedment)),
          )
        : []),
    ];
  } catch (error) {
    // A size outside the method says nothing against the row of results itself.
    if (error instanceof OutOfRange) return [];
    throw error;
  }
}
