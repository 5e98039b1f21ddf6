/** Which numbers can be drawn, how ticks and short labels write them. */
import { twoDigits } from '../units/show.ts';

/** No instrument gives more; a slip of the keyboard must not break the scales. */
const greatest = 1e12;
/** Nothing here is measured finer; a narrower axis would have ticks of a hundred digits. */
const finest = 1e-3;

export const drawable = (value: number | undefined): value is number =>
  value !== undefined && Number.isFinite(value) && Math.abs(value) < greatest;

/** In d3's notation: plain as long as that is short. */
export const tickFormat = (most: number): string => (most < 1e5 ? '.6~r' : '.3~s');

export function short(value: number, decimal: string): string {
  const text = Math.abs(value) < 1e6 ? twoDigits(value) : value.toExponential(1);
  return text.replace('.', decimal);
}

/** From zero to somewhat above the greatest value, or below zero where a value is there. */
export function domainFromZero(values: readonly number[], room = 1.15): [number, number] {
  const top = values.reduce((most, one) => Math.max(most, one), 0);
  const bottom = values.reduce((least, one) => Math.min(least, one), 0);
  return top - bottom < finest ? [0, 1] : [bottom * room, top * room];
}

/** From the least to the greatest; a single value gets room on both sides. */
export function domainOf(values: readonly number[]): [number, number] {
  const least = values.reduce((one, other) => Math.min(one, other), Number.POSITIVE_INFINITY);
  const most = values.reduce((one, other) => Math.max(one, other), Number.NEGATIVE_INFINITY);
  if (values.length === 0) return [0, 1];
  if (most - least > Math.max(finest, Math.abs(least) * 1e-6)) return [least, most];
  const room = Math.max(1, Math.abs(least) * 0.1);
  return [least - room, least + room];
}
