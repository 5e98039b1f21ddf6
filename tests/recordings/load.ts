/** Writes a load over time, sample by sample, the way a pull test goes. Nothing here knows how it will be read. */
import type { Random } from './random.ts';

export class Load {
  readonly kn: number[] = [];
  readonly mm: number[] = [];
  private now = 0;
  private moved = 0;
  /** Movement that does not come back. */
  private slipped = 0;

  constructor(
    readonly random: Random,
    readonly step: number,
    /** kN/mm of anchor and rig. */
    readonly stiffness: number,
  ) {}

  get rows(): number {
    return this.kn.length;
  }
  get load(): number {
    return this.now;
  }

  private put(kn: number, slip = 0): void {
    this.slipped += slip;
    this.now = kn;
    this.moved = kn / this.stiffness + this.slipped;
    this.kn.push(kn);
    this.mm.push(this.moved);
  }

  /** `shape` of the share of the way, 0 to 1, by the share of the time. */
  go(to: number, seconds: number, shape: (share: number) => number = (x) => x, slipMm = 0): void {
    const count = Math.max(1, Math.round(seconds / this.step));
    const from = this.now;
    for (let i = 1; i <= count; i += 1) this.put(from + (to - from) * shape(i / count), slipMm / count);
  }

  rest(seconds: number): void {
    this.go(this.now, seconds);
  }

  ramp(to: number, rate: number): void {
    const seconds = (to - this.now) / rate;
    this.go(to, seconds);
  }

  /** Strokes of a hand pump: up, and a short wait. */
  strokes(to: number, rate: number): void {
    const stroke = (to - this.now) / Math.max(8, Math.round((to - this.now) / 0.8));
    while (this.now < to - stroke / 2) {
      const seconds = stroke / rate;
      this.go(Math.min(to, this.now + stroke), seconds * 0.7);
      this.rest(seconds * 0.3);
    }
    if (this.now < to) this.go(to, this.step);
  }

  /**
   * Something gives way between this row and the next, within a few thousandths of a second.
   * Gives the last row before it.
   */
  drop(to: number, seconds: number, slipMm: number): number {
    const row = this.rows - 1;
    const from = this.now;
    const late = this.random.unit() * this.step;
    const ringing = this.random.chance(0.5);
    for (let i = 1; ; i += 1) {
      const share = Math.min(1, (i * this.step - late) / seconds);
      if (share <= 0) {
        this.put(from);
        continue;
      }
      this.put(
        from + (to - from) * (ringing ? 1 - (1 - share) ** 2 : share),
        slipMm / Math.ceil(seconds / this.step),
      );
      if (share >= 1) return row;
    }
  }

  /** Friction: stick and slip around a level, for so long. */
  slide(level: number, seconds: number, mmPerS: number): void {
    const count = Math.max(5, Math.round(seconds / this.step));
    const from = this.now;
    const period = this.random.between(0.4, 1.5);
    for (let i = 1; i <= count; i += 1) {
      const time = i * this.step;
      const way = Math.min(1, time / (0.2 * seconds));
      const tooth = 0.03 * level * (((time / period) % 1) - 0.5);
      this.put(from + (level - from) * way + tooth * way, mmPerS * this.step);
    }
  }
}
