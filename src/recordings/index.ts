/** Reads and measures the load-cell recording of one or more pull tests. */
import type { Pull, Reading, ReadRecording, Recording } from '../contracts/recording.ts';
import { Blocks, usualRoom } from './blocks.ts';
import { Despiker } from './despike.ts';
import { detailReader } from './detail.ts';
import { fillHoles } from './holes.ts';
import { RecordingError } from './problem.ts';
import { pullOf } from './pull.ts';
import { readRows, type Script } from './rows.ts';
import { scriptOf } from './script.ts';
import { segmentsOf } from './segments.ts';
import { signalOf } from './signal.ts';
import { bytesSource, fileSource, type Source } from './source.ts';
import { type Tick, Timeline, tickOf } from './timeline.ts';

export { RecordingError } from './problem.ts';
export { bytesSource, fileSource, type Source } from './source.ts';

const fewestRows = 8;
/** Enough to see a clock of whole seconds move on a few times at 10 kHz. */
const rowsForTick = 40_000;

async function tickIn(source: Source, script: Script): Promise<Tick | null> {
  if (script.layout.time.kind === 'rows') return null;
  const times: number[] = [];
  await readRows(source, script, start(script), {
    section: () => undefined,
    row: (time) => {
      times.push(time);
      // Most clocks are as fine as their rows, and that is seen at once.
      return times.length >= rowsForTick || (times.length === 2000 && new Set(times).size > 1900);
    },
  });
  return tickOf(times);
}

const start = ({ encoding }: Script) => ({ at: encoding.skip, line: 0 });

async function blocksOf(source: Source, script: Script, room: number): Promise<Blocks> {
  const blocks = new Blocks(room);
  const despiker = new Despiker(blocks);
  const timeline = new Timeline(script.layout, await tickIn(source, script));
  await readRows(source, script, start(script), {
    section: () => timeline.section(),
    row: (time, kn, mm, at, line) => {
      despiker.take(timeline.at(time, line), kn, mm, at, line);
      return false;
    },
  });
  despiker.end();
  blocks.end();
  if (blocks.rows < fewestRows || timeline.last === 0) throw new RecordingError('too-short');
  return blocks;
}

/** `room`: how many blocks are held, an even number; with fewer a long recording is looked at more coarsely first. */
export async function readRecording(source: Source, room = usualRoom): Promise<Recording> {
  const script = await scriptOf(source);
  const blocks = await blocksOf(source, script, room);
  const signal = signalOf(blocks, script.layout.move !== null);
  fillHoles(signal);
  const read = detailReader(source, script, signal);
  const pulls: Pull[] = [];
  for (const segment of segmentsOf(signal)) pulls.push(await pullOf(signal, segment, read));
  return {
    unit: script.layout.force.unit,
    rows: blocks.rows,
    restKn: signal.restKn,
    noiseKn: signal.noise,
    samplesPerS: 1 / signal.step,
    pulls,
  };
}

/** All of it, or why not. */
async function readingOf(open: () => Promise<Source> | Source): Promise<Reading> {
  try {
    const source = await open();
    try {
      return { recording: await readRecording(source) };
    } finally {
      await source.close();
    }
  } catch (error) {
    if (!(error instanceof RecordingError)) throw error;
    const { code, line } = error;
    return {
      problem: {
        code,
        line,
        words: { say: `recording-problem-${code}`, with: { line: line ?? 0 } },
      },
    };
  }
}

export const readFile = (path: string): Promise<Reading> => readingOf(() => fileSource(path));

/** A file that a member sent. */
export const readBytes: ReadRecording = (bytes) => readingOf(() => bytesSource(bytes));
