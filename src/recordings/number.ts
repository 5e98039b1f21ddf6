/** Reads a decimal number from bytes without making a string: the hot loop of a recording of millions of rows. */
import { RecordingError } from './problem.ts';

const powers = Float64Array.from({ length: 23 }, (_, exponent) => 10 ** exponent);
const scaled = (mantissa: number, exponent: number): number => {
  // Both are exact up to here, so one division or product rounds correctly (IEEE 754).
  if (exponent < 0)
    return exponent >= -22 ? mantissa / (powers[-exponent] as number) : mantissa * 10 ** exponent;
  return exponent <= 22 ? mantissa * (powers[exponent] as number) : mantissa * 10 ** exponent;
};

/** More digits than a double holds. */
const mostDigits = 15;

export class NumberReader {
  value = 0;
  constructor(private readonly decimal: number) {}

  /** Reads at `at` and gives the place behind; what stands there must be a number. */
  read(bytes: Uint8Array, at: number, end: number, line: number): number {
    let place = at;
    let byte = place < end ? (bytes[place] as number) : 0;
    const negative = byte === 45;
    if (negative || byte === 43) byte = ++place < end ? (bytes[place] as number) : 0;
    let mantissa = 0;
    let digits = 0;
    let exponent = 0;
    const start = place;
    for (; byte >= 48 && byte <= 57; byte = ++place < end ? (bytes[place] as number) : 0) {
      if (digits < mostDigits) mantissa = mantissa * 10 + (byte - 48);
      else exponent += 1;
      if (mantissa > 0) digits += 1;
    }
    let any = place > start;
    if (byte === this.decimal) {
      byte = ++place < end ? (bytes[place] as number) : 0;
      for (; byte >= 48 && byte <= 57; byte = ++place < end ? (bytes[place] as number) : 0) {
        any = true;
        if (digits >= mostDigits) continue;
        mantissa = mantissa * 10 + (byte - 48);
        exponent -= 1;
        if (mantissa > 0) digits += 1;
      }
    }
    if (!any) throw new RecordingError(this.isFormula(bytes, at, end) ? 'formula' : 'no-number', line);
    if (byte === 101 || byte === 69) {
      let power = 0;
      byte = ++place < end ? (bytes[place] as number) : 0;
      const down = byte === 45;
      if (down || byte === 43) byte = ++place < end ? (bytes[place] as number) : 0;
      const from = place;
      for (; byte >= 48 && byte <= 57; byte = ++place < end ? (bytes[place] as number) : 0)
        power = Math.min(999, power * 10 + (byte - 48));
      if (place === from) throw new RecordingError('no-number', line);
      exponent += down ? -power : power;
    }
    const value = scaled(mantissa, exponent);
    if (!Number.isFinite(value)) throw new RecordingError('no-number', line);
    this.value = negative ? -value : value;
    return place;
  }

  private isFormula(bytes: Uint8Array, at: number, end: number): boolean {
    const byte = bytes[at];
    if (byte === 61 || byte === 64) return true;
    const next = at + 1 < end ? (bytes[at + 1] as number) | 32 : 0;
    return (byte === 43 || byte === 45) && next >= 97 && next <= 122;
  }
}
