/**
 * Takes out spikes of one to three samples while the rows stream by. A load that truly falls does not come back within
 * three samples, and a load that truly rises stays up: only what returns to where it was is a spike.
 */
export interface SampleSink {
  add(time: number, kn: number, mm: number, at: number, line: number): void;
  spike(size: number): void;
}

const ahead = 4;
const mask = 7;
/** A spike stands so far above the usual step from sample to sample. */
const steps = 8;
/** Of the greatest load so far. Upwards it would falsify the peak, downwards it is only a nuisance. */
const upShare = 0.004;
const downShare = 0.03;

export class Despiker {
  private readonly times = new Float64Array(mask + 1);
  private readonly kns = new Float64Array(mask + 1);
  private readonly mms = new Float64Array(mask + 1);
  private readonly ats = new Float64Array(mask + 1);
  private readonly lines = new Float64Array(mask + 1);
  private taken = 0;
  private given = 0;
  private before = 0;
  /** Usual step between samples. */
  private usual = 0;
  private greatest = 0;

  constructor(private readonly sink: SampleSink) {}

  take(time: number, kn: number, mm: number, at: number, line: number): void {
    const slot = this.taken & mask;
    this.times[slot] = time;
    this.kns[slot] = kn;
    this.mms[slot] = mm;
    this.ats[slot] = at;
    this.lines[slot] = line;
    this.taken += 1;
    if (this.taken - this.given > ahead) this.give();
  }

  end(): void {
    while (this.given < this.taken) this.give();
  }

  private give(): void {
    const index = this.given;
    const slot = index & mask;
    let kn = this.kns[slot] as number;
    if (index === 0) this.before = kn;
    const jump = kn - this.before;
    const size = jump < 0 ? -jump : jump;
    if (size > steps * this.usual && size > upShare * this.greatest && this.isSpike(index, jump)) {
      kn = this.kns[slot] as number;
      this.sink.spike(size);
    }
    const step = kn > this.before ? kn - this.before : this.before - kn;
    this.usual += ((step > 8 * this.usual && index > 8 ? 8 * this.usual + 1e-5 : step) - this.usual) / 32;
    const height = kn < 0 ? -kn : kn;
    if (height > this.greatest) this.greatest = height;
    this.before = kn;
    this.given += 1;
    this.sink.add(
      this.times[slot] as number,
      kn,
      this.mms[slot] as number,
      this.ats[slot] as number,
      this.lines[slot] as number,
    );
  }

  /** Where it is one, the samples of the spike are laid on the line between their neighbours. */
  private isSpike(index: number, jump: number): boolean {
    if (index < 4 || (jump < 0 && -jump < downShare * this.greatest)) return false;
    const back = 0.3 * Math.abs(jump);
    for (let width = 1; width <= 3 && index + width < this.taken; width += 1) {
      const after = this.kns[(index + width) & mask] as number;
      if (Math.abs(after - this.before) > back) continue;
      for (let inside = 0; inside < width; inside += 1)
        this.kns[(index + inside) & mask] =
          this.before + ((after - this.before) * (inside + 1)) / (width + 1);
      return true;
    }
    return false;
  }
}
