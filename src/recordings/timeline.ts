/** Turns what the rows say of time into seconds from the first sample. */
import type { Layout } from './layout.ts';
import { RecordingError } from './problem.ts';

/** A clock coarser than the sampling: so many rows share one reading of it. */
export interface Tick {
  readonly rows: number;
  readonly seconds: number;
  /** Rows at the beginning, before the clock first moved on. */
  readonly firstRows: number;
}

const halfDay = 43_200;
const day = 86_400;

export class Timeline {
  last = 0;
  private begun = false;
  private raw = 0;
  private shift = 0;
  private step = 0;
  private restart = false;
  private inTick = 0;
  private count = 0;

  constructor(
    private readonly layout: Layout,
    private readonly tick: Tick | null,
  ) {}

  section(): void {
    this.restart = this.begun;
  }

  at(raw: number, line: number): number {
    const { time } = this.layout;
    this.count += 1;
    if (time.kind === 'rows') {
      this.last = (this.count - 1) * time.seconds;
      return this.last;
    }
    if (!this.begun) {
      this.begun = true;
      this.raw = raw;
      this.shift = -raw;
      if (this.tick !== null) {
        this.inTick = Math.max(0, this.tick.rows - this.tick.firstRows);
        this.shift -= (this.inTick * this.tick.seconds) / this.tick.rows;
      }
      return 0;
    }
    if (raw < this.raw) {
      const overMidnight = time.kind === 'clock' && time.dateColumn === null && this.raw - raw > halfDay;
      if (overMidnight && raw >= 0 && this.raw < 2 * day) this.shift += day;
      else if (this.restart) this.shift = this.last + this.step - raw;
      else throw new RecordingError('time-back', line);
      this.inTick = 0;
    } else if (raw > this.raw) this.inTick = 0;
    else this.inTick += 1;
    this.restart = false;
    this.raw = raw;
    let now = raw + this.shift;
    if (this.tick !== null)
      now += (Math.min(this.inTick, this.tick.rows - 0.5) * this.tick.seconds) / this.tick.rows;
    // Late rows of a full tick may not overtake the next one.
    if (now < this.last) now = this.last;
    if (now > this.last) this.step = now - this.last;
    this.last = now;
    return now;
  }
}

/** Looks at the raw times of the first rows: null where the clock is as fine as the sampling. */
export function tickOf(times: readonly number[]): Tick | null {
  const lengths: number[] = [];
  const steps: number[] = [];
  let run = 1;
  for (let index = 1; index < times.length; index += 1) {
    const step = (times[index] as number) - (times[index - 1] as number);
    if (step === 0) run += 1;
    else {
      lengths.push(run);
      steps.push(step);
      run = 1;
    }
  }
  const same = times.length - 1 - steps.length;
  if (times.length < 3 || same < 0.2 * (times.length - 1)) return null;
  const full = lengths.slice(1).toSorted((a, b) => a - b);
  const step = steps.slice(1).toSorted((a, b) => a - b);
  const rows = full[full.length >> 1];
  const seconds = step[step.length >> 1];
  if (rows === undefined || seconds === undefined) throw new RecordingError('time-unit');
  return { rows, seconds, firstRows: Math.min(rows, lengths[0] ?? rows) };
}
