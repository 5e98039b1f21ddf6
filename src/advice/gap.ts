/** The gap between bolt and wall of the hole, against what the adhesive fills; the maker's own hole comes first. */
import type { Measure, Phrase, Term } from '../contracts/phrase.ts';
import { checkGap, usualGap } from '../engineering/index.ts';
import { numberCell } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

export interface Gap {
  /** On each side, mm. */
  readonly each: number;
  readonly verdict: 'too-wide' | 'too-tight' | 'ok';
  /** The value of the fact `gap_width`. */
  readonly width: string;
}

/** Upper ends of the steps of the fact `gap_width`, mm: what adhesives are told to fill. */
const widths = [1, 2, 3, 4] as const;

const widthOf = (each: number): string => {
  const step = widths.find((most) => each <= most);
  return step === undefined ? `above-${widths.at(-1)}` : `to-${step}`;
};

/** With no adhesive told, the one that fills least: nobody ruled it out. */
function widest(sheet: Worksheet): number {
  const told = sheet.told('adhesive');
  const rows = sheet.desk.rules.table('adhesives').rows;
  const one = rows.filter(({ id }) => told === undefined || id === told);
  return Math.min(...one.map((row) => numberCell(row, 'widest_gap_mm')));
}

/** Undefined while bolt or hole is not told, and for an anchor without adhesive. */
export function gapOf(sheet: Worksheet): Gap | undefined {
  const { anchor_family: family = 'unknown' } = sheet.situation;
  const diameter = sheet.told('diameter_mm');
  const hole = sheet.told('hole_diameter_mm');
  if (family !== 'glue-in' && family !== 'unknown') return undefined;
  if (typeof diameter !== 'number' || typeof hole !== 'number') return undefined;
  const each = (hole - diameter) / 2;
  if (each <= 0) return { each: 0, verdict: 'too-tight', width: widthOf(0) };
  const { verdict } = checkGap(diameter, hole, { least: usualGap.least, most: widest(sheet) });
  return { each, verdict, width: widthOf(each) };
}

/** Adhesives that fill such a gap by the usual figures. */
export const fillers = (sheet: Worksheet, each: number): readonly Term[] =>
  sheet.desk.rules
    .table('adhesives')
    .rows.filter((row) => numberCell(row, 'widest_gap_mm') >= each)
    .map(({ id }) => ({ fact: 'adhesive', value: id }));

export function gapLines(sheet: Worksheet): Phrase[] {
  const gap = gapOf(sheet);
  if (gap === undefined || gap.verdict === 'ok') return [];
  const each: Measure = { value: gap.each, unit: 'mm', exact: true };
  if (gap.verdict === 'too-tight') return [{ say: 'amount-too-tight', with: { each } }];
  const who = fillers(sheet, gap.each);
  return who.length === 0
    ? [{ say: 'amount-too-wide', with: { each } }]
    : [{ say: 'amount-too-wide-for-most', with: { each, who } }];
}
