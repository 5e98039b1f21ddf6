/** Days as people write them; a slash is refused, because 3/5 is in March for some and in May for others. */

const iso = /(?<!\d)(\d{4})-(\d{1,2})-(\d{1,2})(?!\d)/;
const dotted = /(?<!\d)(\d{1,2})\.(\d{1,2})\.(\d{4})(?!\d)/;

export type DayRead =
  | { readonly kind: 'day'; readonly day: string; readonly text: string }
  | { readonly kind: 'no-day'; readonly text: string };

function made(year: string, month: string, day: string, text: string): DayRead {
  const wanted = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const date = new Date(`${wanted}T00:00:00Z`);
  const real = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(wanted);
  return real && Number(year) >= 1950 ? { kind: 'day', day: wanted, text } : { kind: 'no-day', text };
}

/** The first day in a text, or undefined where there is none. */
export function dayIn(text: string): DayRead | undefined {
  const one = iso.exec(text);
  if (one) return made(one[1] ?? '', one[2] ?? '', one[3] ?? '', one[0]);
  const other = dotted.exec(text);
  return other ? made(other[3] ?? '', other[2] ?? '', other[1] ?? '', other[0]) : undefined;
}

/** Clocks differ by at most a day around the world. */
export const isFuture = (day: string, now: string): boolean =>
  Date.parse(`${day}T00:00:00Z`) > Date.parse(now) + 24 * 3600 * 1000;
