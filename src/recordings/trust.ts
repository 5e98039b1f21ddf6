/** Whether the cell can be believed: at its end, disturbed, or with samples missing. */
import type { PullNote } from '../contracts/recording.ts';
import type { ReadDetail } from './detail.ts';
import type { Segment } from './segments.ts';
import type { Signal } from './signal.ts';

const fewestFlat = 6;
/** Flat at the top for so many times longer than at other levels: a slow rise shown with few digits has steps too. */
const flatter = 5;

const rowsBefore = 64;
const rowsAfter = 4096;
/** Only loads near the top are compared: at rest a cell may well show the same number for long. */
const nearShare = 0.8;

/** A cell at its end shows one and the same number, and longer than any other. */
export async function isClipped({ blocks }: Signal, block: number, read: ReadDetail): Promise<boolean> {
  const row = block * blocks.size;
  const { kn } = await read(row - rowsBefore, row + blocks.size + rowsAfter);
  let top = Number.NEGATIVE_INFINITY;
  for (const load of kn) top = Math.max(top, load);
  let run = 0;
  let longest = 0;
  let usual = 1;
  for (let i = 0; i < kn.length; i += 1) {
    run = i > 0 && kn[i] === kn[i - 1] ? run + 1 : 1;
    if (kn[i] === top) longest = Math.max(longest, run);
    else if ((kn[i] as number) > nearShare * top) usual = Math.max(usual, run);
  }
  return longest >= fewestFlat && longest >= flatter * usual;
}

const spikeShare = 0.02;
const gapRows = 10;
const gapS = 0.5;
const slowestS = 0.11;

export interface Disturbance {
  readonly disturbed: boolean;
  readonly gap: boolean;
}

export function disturbanceIn(signal: Signal, { from, to }: Segment, peakKn: number): Disturbance {
  const { blocks, holes, step } = signal;
  const inside = (block: number): boolean => block >= from && block <= to;
  const spikes = blocks.spikes.filter(
    ({ row, size }) => inside(Math.floor(row / blocks.size)) && size >= spikeShare * peakKn,
  );
  let gap = false;
  for (let i = from + 1; i <= to && !gap; i += 1) {
    const missing = (blocks.first[i] as number) - (blocks.last[i - 1] as number);
    gap = missing > Math.max(gapRows * step, gapS);
  }
  return {
    disturbed: spikes.length > 0 || holes.some(([first, last]) => inside(first) || inside(last)),
    gap,
  };
}

export const isCoarse = ({ step }: Signal): boolean => step > slowestS;

export function notesOf(flags: Readonly<Record<PullNote, boolean>>): PullNote[] {
  return (Object.keys(flags) as PullNote[]).filter((note) => flags[note]);
}
