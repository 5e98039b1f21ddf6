/** A small seeded generator of random numbers: mulberry32, public domain, from memory. */
export class Random {
  constructor(private state: number) {}

  unit(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let value = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    value = (value + Math.imul(value ^ (value >>> 7), 61 | value)) ^ value;
    return ((value ^ (value >>> 14)) >>> 0) / 2 ** 32;
  }

  between(least: number, most: number): number {
    return least + (most - least) * this.unit();
  }

  whole(least: number, most: number): number {
    return Math.floor(this.between(least, most + 1));
  }

  pick<T>(of: readonly T[]): T {
    return of[Math.floor(this.unit() * of.length)] as T;
  }

  chance(share: number): boolean {
    return this.unit() < share;
  }

  normal(): number {
    return Math.sqrt(-2 * Math.log(1 - this.unit())) * Math.cos(2 * Math.PI * this.unit());
  }
}
