import type { Phrase } from './phrase.ts';

/** What the shape of a pull speaks for. Proposed and asked back, never asserted. */
export const pullModes = ['bond-loss', 'brittle', 'slow-slip', 'rig', 'stopped'] as const;
export type PullMode = (typeof pullModes)[number];

/** Why a mode is proposed. */
export const modeReasons = [
  'sharp-drop',
  'plateau',
  'no-plateau',
  'rose-again',
  'slow-fall',
  'moved-on',
  'taken-off',
  'ends-loaded',
] as const;
export type ModeReason = (typeof modeReasons)[number];

/** What a reader has to know before trusting the figures of a pull. */
export const pullNotes = ['clipped', 'disturbed', 'gap', 'starts-loaded', 'coarse', 're-seated'] as const;
export type PullNote = (typeof pullNotes)[number];

export interface Drop {
  readonly timeS: number;
  readonly fromKn: number;
  readonly toKn: number;
}

/** Load that is still held after the first drop: friction of an anchor that slips. */
export interface Plateau {
  readonly fromS: number;
  readonly toS: number;
  readonly levelKn: number;
}

/** Least and most of the load, slice by slice, for a picture: at most 1000 slices, hence 2000 points. */
export interface Outline {
  readonly timeS: readonly number[];
  readonly leastKn: readonly number[];
  readonly mostKn: readonly number[];
  /** Displacement in the middle of the slice; null where it was not recorded. */
  readonly mm: readonly number[] | null;
}

/** One pull test. Times are seconds from the first sample of the file; loads are above the cell's reading at rest. */
export interface Pull {
  readonly startS: number;
  readonly endS: number;
  readonly peakKn: number;
  readonly timeOfPeakS: number;
  readonly firstDrop: Drop | null;
  readonly plateau: Plateau | null;
  /** Only with displacement. */
  readonly stiffnessKnPerMm: number | null;
  /** Only with displacement: work done from the start of the pull to its peak. */
  readonly energyJ: number | null;
  /** Null where the rise was not recorded. */
  readonly rateKnPerS: number | null;
  /** False: the load was taken off, or the recording ends, before anything gave way. */
  readonly failed: boolean;
  readonly clipped: boolean;
  readonly disturbed: boolean;
  readonly mode: PullMode;
  readonly reasons: readonly ModeReason[];
  readonly notes: readonly PullNote[];
  readonly outline: Outline;
}

export interface Recording {
  /** The unit that the file states. */
  readonly unit: string;
  readonly rows: number;
  /** What the cell read at rest and was taken off every load; 0 where the recording never rests. */
  readonly restKn: number;
  /** Spread of the cell's noise. */
  readonly noiseKn: number;
  readonly samplesPerS: number;
  readonly pulls: readonly Pull[];
}

/** Either all of a recording or why there is none of it. */
export type Reading =
  | { readonly recording: Recording }
  | { readonly problem: { readonly code: string; readonly line: number | null; readonly words: Phrase } };

/** Reads a recording as a whole; whoever puts the parts together gives it, so that it is loaded only when a file comes. */
export type ReadRecording = (bytes: Uint8Array) => Promise<Reading>;

/** Those of a pull test, as rules/decisions/cautions.json gives them for its result. */
export const recordingCautions = [
  'pull-zone',
  'proof-proves-little',
  'screening-values',
  'competent-person',
] as const;

/** A reading deserves three digits. */
export const shownKn = (value: number): number => Number(value.toPrecision(3));
