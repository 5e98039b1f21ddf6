/** Reads "10:00:00.125", "2026-05-01T10:00:00Z", "01.05.2026 10:00:00,125", "1:02:03 PM" from bytes as seconds. */
import { RecordingError } from './problem.ts';

const isDigit = (byte: number): boolean => byte >= 48 && byte <= 57;

/** Days since 1970; the order of day and month only matters where a recording runs over several days. */
function daysOf(text: string, line: number): number {
  const parts = text.split(/\D+/).filter(Boolean).map(Number);
  const [a = Number.NaN, b = Number.NaN, c = Number.NaN] = parts;
  const [year, month, day] = (text.match(/^\d{4}/) !== null ? [a, b, c] : b > 12 ? [c, a, b] : [c, b, a]) as [
    number,
    number,
    number,
  ];
  const time = Date.UTC(year < 100 ? 2000 + year : year, month - 1, day);
  if (!Number.isFinite(time) || month < 1 || month > 12 || day < 1 || day > 31)
    throw new RecordingError('no-clock', line);
  return time / 86_400_000;
}

export class ClockReader {
  private cached = '';
  private cachedDays = 0;
  private hash = -1;

  /** The cell from `at` up to `end`. */
  seconds(bytes: Uint8Array, at: number, end: number, line: number): number {
    let colon = at;
    while (colon < end && bytes[colon] !== 58) colon += 1;
    let from = colon;
    while (from > at && colon - from < 2 && isDigit(bytes[from - 1] as number)) from -= 1;
    if (colon >= end || from === colon) throw new RecordingError('no-clock', line);
    const parts = [0, 0, 0];
    let part = 0;
    let place = from;
    let fraction = 0;
    let unit = 1;
    for (; place < end; place += 1) {
      const byte = bytes[place] as number;
      if (isDigit(byte)) {
        if (unit < 1) {
          fraction += (byte - 48) * unit;
          unit /= 10;
        } else parts[part] = (parts[part] as number) * 10 + (byte - 48);
      } else if (byte === 58 && part < 2 && unit === 1) part += 1;
      else if ((byte === 46 || byte === 44 || byte === 58) && unit === 1) unit = 0.1;
      else break;
    }
    // "02:15.5" has no hours.
    let [hours = 0, minutes = 0, seconds = 0] = parts;
    if (part === 1 && unit < 1) [hours, minutes, seconds] = [0, hours, minutes];
    while (bytes[place] === 32 && place < end) place += 1;
    const half = place < end ? (bytes[place] as number) | 32 : 0;
    if (half === 112 && hours < 12) hours += 12;
    if (half === 97 && hours === 12) hours = 0;
    if (hours > 24 || minutes > 59 || seconds > 60) throw new RecordingError('no-clock', line);
    return this.days(bytes, at, from, line) * 86_400 + hours * 3600 + minutes * 60 + seconds + fraction;
  }

  /** Dates change once a day and rows come ten thousand a second: looked at only when their bytes change. */
  days(bytes: Uint8Array, at: number, end: number, line: number): number {
    let hash = end - at;
    for (let place = at; place < end; place += 1) hash = (hash * 31 + (bytes[place] as number)) | 0;
    if (hash === this.hash) return this.cachedDays;
    const text = String.fromCharCode(...bytes.subarray(at, Math.min(end, at + 40)))
      .replace(/T$/i, '')
      .trim();
    this.hash = hash;
    if (text !== this.cached) {
      this.cached = text;
      this.cachedDays = text === '' ? 0 : daysOf(text, line);
    }
    return this.cachedDays;
  }
}
