/** One pull of a recording, measured. */
import type { ModeReason, Plateau, Pull, PullMode } from '../contracts/recording.ts';
import { type Ending, endingAfter, plateauAfter } from './after.ts';
import type { ReadDetail } from './detail.ts';
import { type Fall, fallsIn } from './falls.ts';
import { energyOf, rateOf, stiffnessOf } from './figures.ts';
import { kneeOf } from './knee.ts';
import { outlineOf } from './outline.ts';
import { peakNear, topBlock } from './peak.ts';
import type { Segment } from './segments.ts';
import type { Signal } from './signal.ts';
import { disturbanceIn, isClipped, isCoarse, notesOf } from './trust.ts';

/** A rig that settles: early, small, and the load then rises to twice as much. */
const earlyShare = 0.5;
const smallShare = 0.5;
const roseShare = 1.03;
/** Falls to more than this and no plateau: it gave way in part. */
const partShare = 0.25;

const isReSeating = (fall: Fall, top: number, topKn: number): boolean =>
  top > fall.from && fall.fromKn <= earlyShare * topKn && fall.fromKn - fall.toKn <= smallShare * fall.fromKn;

interface Proposal {
  readonly mode: PullMode;
  readonly reasons: readonly ModeReason[];
}

function afterFall(fall: Fall, rose: boolean, plateau: Plateau | null): Proposal {
  if (rose) return { mode: 'rig', reasons: ['sharp-drop', 'rose-again'] };
  if (plateau !== null) return { mode: 'bond-loss', reasons: ['sharp-drop', 'plateau'] };
  if (fall.toKn > partShare * fall.fromKn) return { mode: 'bond-loss', reasons: ['sharp-drop'] };
  return { mode: 'brittle', reasons: ['sharp-drop', 'no-plateau'] };
}

const afterNoFall = (ending: Ending): Proposal => ({
  mode: ending === 'slow-fall' || ending === 'moved-on' ? 'slow-slip' : 'stopped',
  reasons: [ending],
});

export async function pullOf(signal: Signal, segment: Segment, read: ReadDetail): Promise<Pull> {
  const { size } = signal.blocks;
  const top = topBlock(signal, segment);
  const topKn = signal.kn[top] as number;
  const falls = fallsIn(signal, segment);
  const reSeated = falls.filter((fall) => isReSeating(fall, top, topKn));
  const first = falls.find((fall) => !reSeated.includes(fall)) ?? null;
  const knee = first === null ? null : await kneeOf(signal, first, read);

  // What gave way right behind the peak may not be smoothed into it.
  const behind = falls.find((fall) => fall.to >= top && fall.from <= top + 200) ?? null;
  const edge = behind === null ? null : behind === first ? knee : await kneeOf(signal, behind, read);
  const peak = await peakNear(signal, segment, top, edge?.row ?? null, read);

  const rose = first !== null && top > first.to && peak.kn > roseShare * first.fromKn;
  const plateau = first === null || rose ? null : plateauAfter(signal, first, segment);
  const riseEnd = first === null ? top : Math.min(first.from, top);
  const riseKn = signal.kn[riseEnd] as number;
  const settledBy = reSeated.filter(({ to }) => to < riseEnd).at(-1)?.to ?? segment.from;
  const rate = rateOf(signal, Math.max(0, segment.from - 1), riseEnd, riseKn);
  const stiffness = stiffnessOf(signal, settledBy, riseEnd, riseKn);
  const peakBlock = Math.min(segment.to, Math.floor(peak.row / size));
  const { mode, reasons } =
    first === null
      ? afterNoFall(endingAfter(signal, segment, { block: top, kn: topKn }, rate, stiffness))
      : afterFall(first, rose, plateau);
  const { disturbed, gap } = disturbanceIn(signal, segment, peak.kn);
  const clipped = await isClipped(signal, top, read);
  return {
    startS: signal.time[segment.from] as number,
    endS: signal.time[segment.to] as number,
    peakKn: peak.kn,
    timeOfPeakS: peak.time,
    firstDrop:
      first === null || knee === null
        ? null
        : { timeS: knee.time, fromKn: Math.min(knee.kn, peak.kn), toKn: Math.min(first.toKn, knee.kn) },
    plateau,
    stiffnessKnPerMm: stiffness,
    energyJ: energyOf(signal, segment.from, peakBlock),
    rateKnPerS: rate,
    failed: mode !== 'stopped',
    clipped,
    disturbed,
    mode,
    reasons,
    notes: notesOf({
      clipped,
      disturbed,
      gap,
      'starts-loaded': signal.neverRests,
      coarse: isCoarse(signal),
      're-seated': reSeated.length > 0,
    }),
    outline: outlineOf(signal, segment),
  };
}
