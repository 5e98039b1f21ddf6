/** How much adhesive: millilitres a hole, for all holes with waste, and cartridges. */
import type { Phrase } from '../contracts/phrase.ts';
import { annulusVolume, cartridgesNeeded, usualWaste } from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import { gapLines, gapOf } from './gap.ts';
import type { Worksheet } from './worksheet.ts';

/** A common cartridge, while nobody told theirs, and what is pumped away until the colour is even (common practice). */
const usualCartridge = 300;
const nozzleLoss = 20;

export interface Amount {
  readonly lines: readonly Phrase[];
  readonly recommend: Readonly<Record<string, number>>;
}

/** Undefined while diameter or depth is not told. */
export function amountOf(sheet: Worksheet): Amount | undefined {
  const diameter = sheet.number('diameter_mm');
  const depth = sheet.number('embedment_mm') ?? sheet.number('length_mm');
  if (diameter === undefined || depth === undefined || gapOf(sheet)?.each === 0) return undefined;
  const holeDiameter = sheet.number('hole_diameter_mm') ?? diameter + 2;
  const anchor = sheet.told('anchor');
  const legs =
    typeof anchor === 'string' && sheet.row('anchors', sheet.choice('anchor')).is.legs === 2 ? 2 : 1;
  const anchors = sheet.number('count') ?? 1;
  const cartridge = sheet.number('cartridge_ml') ?? usualCartridge;
  // The smallest cartridges have nozzles to match.
  const lost = Math.min(nozzleLoss, cartridge / 4);
  const volume = sheet.compute(annulusVolume({ holeDiameter, diameter, embedment: depth }));
  const total = anchors * legs * volume * (1 + usualWaste);
  const cartridges = sheet.compute(
    cartridgesNeeded({ holes: anchors * legs, volume, waste: usualWaste, cartridge, nozzleLoss: lost }),
  );
  return {
    lines: [
      {
        say: 'amount-hole',
        with: {
          volume: { value: volume, unit: 'ml' },
          diameter: { value: diameter, unit: 'mm', exact: true },
          hole: { value: holeDiameter, unit: 'mm', exact: true },
          depth: { value: depth, unit: 'mm', exact: true },
        },
      },
      {
        say: 'amount-total',
        with: {
          anchors,
          holes: anchors * legs,
          total: { value: total, unit: 'ml' },
          waste: Math.round(usualWaste * 100),
          cartridges,
          size: String(cartridge),
        },
      },
      ...(legs === 2 ? [{ say: 'amount-legs' }] : []),
      { say: 'amount-nozzle', with: { lost: { value: lost, unit: 'ml' } } },
      ...gapLines(sheet),
    ],
    recommend: {
      ml_per_hole: Number(volume.toPrecision(2)),
      ml_total: Number(total.toPrecision(2)),
      cartridges,
      holes: anchors * legs,
    },
  };
}

/** A gap that cannot be filled is the answer, whatever the amount. */
function gapDraft(
  sheet: Worksheet,
  lines: readonly Phrase[],
  recommend: Amount['recommend'],
): Draft | undefined {
  const gap = gapOf(sheet);
  const [verdict] = gapLines(sheet);
  if (gap === undefined || verdict === undefined) return undefined;
  sheet.number('diameter_mm');
  sheet.number('hole_diameter_mm');
  return {
    stance: 'stop',
    verdict,
    points: [...lines.filter(({ say }) => say !== verdict.say), { say: 'amount-gap-next' }],
    recommend: { ...recommend, gap_mm: gap.each, gap: gap.verdict },
    reject: [],
  };
}

export async function adhesiveAmount(sheet: Worksheet): Promise<Draft> {
  sheet.cite('practice');
  const amount = amountOf(sheet);
  const unfilled = gapDraft(sheet, amount?.lines ?? [], amount?.recommend ?? {});
  if (unfilled !== undefined) return unfilled;
  if (amount === undefined)
    return {
      stance: 'stop',
      verdict: { say: 'amount-size' },
      points: [],
      recommend: {},
      reject: [],
      lacking: ['diameter_mm', 'length_mm'].filter((fact) => sheet.told(fact) === undefined),
    };
  return {
    stance: 'tell',
    verdict: {
      say: 'amount-verdict',
      with: {
        volume: { value: amount.recommend.ml_per_hole ?? 0, unit: 'ml' },
        total: { value: amount.recommend.ml_total ?? 0, unit: 'ml' },
        holes: amount.recommend.holes ?? 1,
      },
    },
    points: [...amount.lines, { say: 'amount-check' }],
    recommend: amount.recommend,
    reject: [],
  };
}
