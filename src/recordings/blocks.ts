/**
 * A recording of any length in bounded memory: blocks of rows with least, most and mean. While it is short each block is
 * one row; when the room is full, neighbours are joined and blocks hold twice as many rows. Each remembers where in the
 * file it begins, so that the few places that matter are read again row by row.
 */
import type { SampleSink } from './despike.ts';

export const usualRoom = 1 << 18;

export class Blocks implements SampleSink {
  /** Rows in a block; the last may have fewer. */
  size = 1;
  count = 0;
  rows = 0;
  readonly first: Float64Array;
  readonly last: Float64Array;
  readonly mean: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
  readonly mm: Float64Array;
  readonly at: Float64Array;
  readonly line: Float64Array;
  /** Block and size of each spike; the first thousand. */
  readonly spikes: { readonly row: number; readonly size: number }[] = [];
  /** Second differences, thinned out evenly: from them comes the noise. */
  readonly bends: number[] = [];
  private thin = 1;
  private one = 0;
  private two = 0;
  private inside = 0;
  private sum = 0;
  private sumMm = 0;

  constructor(readonly room = usualRoom) {
    const make = (): Float64Array => new Float64Array(room);
    this.first = make();
    this.last = make();
    this.mean = make();
    this.least = make();
    this.most = make();
    this.mm = make();
    this.at = make();
    this.line = make();
  }

  spike(size: number): void {
    if (this.spikes.length < 1000) this.spikes.push({ row: this.rows, size });
  }

  add(time: number, kn: number, mm: number, at: number, line: number): void {
    if (this.rows % this.thin === 0 && this.rows >= 2) this.bend(kn - 2 * this.one + this.two);
    this.two = this.one;
    this.one = kn;
    this.rows += 1;
    const block = this.count;
    if (this.inside === 0) {
      this.first[block] = time;
      this.least[block] = kn;
      this.most[block] = kn;
      this.at[block] = at;
      this.line[block] = line;
      this.sum = 0;
      this.sumMm = 0;
    } else {
      if (kn < (this.least[block] as number)) this.least[block] = kn;
      if (kn > (this.most[block] as number)) this.most[block] = kn;
    }
    this.sum += kn;
    this.sumMm += mm;
    this.inside += 1;
    this.last[block] = time;
    if (this.inside === this.size) this.close();
  }

  end(): void {
    if (this.inside > 0) this.close();
  }

  private close(): void {
    this.mean[this.count] = this.sum / this.inside;
    this.mm[this.count] = this.sumMm / this.inside;
    this.inside = 0;
    this.count += 1;
    if (this.count === this.room) this.halve();
  }

  private bend(value: number): void {
    this.bends.push(Math.abs(value));
    if (this.bends.length < 16_384) return;
    for (let index = 0; index < 8192; index += 1) this.bends[index] = this.bends[2 * index] as number;
    this.bends.length = 8192;
    this.thin *= 2;
  }

  private halve(): void {
    for (let left = 0; left < this.count; left += 2) {
      const right = left + 1;
      const to = left >> 1;
      this.first[to] = this.first[left] as number;
      this.last[to] = this.last[right] as number;
      this.mean[to] = ((this.mean[left] as number) + (this.mean[right] as number)) / 2;
      this.mm[to] = ((this.mm[left] as number) + (this.mm[right] as number)) / 2;
      this.least[to] = Math.min(this.least[left] as number, this.least[right] as number);
      this.most[to] = Math.max(this.most[left] as number, this.most[right] as number);
      this.at[to] = this.at[left] as number;
      this.line[to] = this.line[left] as number;
    }
    this.count >>= 1;
    this.size *= 2;
  }
}
