/** Loading rate, stiffness and energy of the rise up to a block. */
import { middle, type Signal } from './signal.ts';

const lowShare = 0.2;
const highShare = 0.8;
const bands = 12;

/** Where the load crosses a level on the way up: half way between the first time above and the last time below. */
function crossingTime({ kn, time }: Signal, from: number, to: number, level: number): number | null {
  const between = (i: number): number => {
    const [low, high] = [kn[i - 1] as number, kn[i] as number];
    const share = high === low ? 1 : (level - low) / (high - low);
    return (time[i - 1] as number) + share * ((time[i] as number) - (time[i - 1] as number));
  };
  let first: number | null = null;
  for (let i = from + 1; i <= to && first === null; i += 1)
    if ((kn[i] as number) >= level && (kn[i - 1] as number) < level) first = between(i);
  let last: number | null = null;
  for (let i = to; i > from && last === null; i -= 1)
    if ((kn[i] as number) >= level && (kn[i - 1] as number) < level) last = between(i);
  return first === null || last === null ? null : (first + last) / 2;
}

/**
 * kN/s from a fifth to four fifths of the load: the middle one of twelve equal steps of load, so that a pause, a stroke
 * of the pump or a rig that settles does not count.
 */
export function rateOf(signal: Signal, from: number, to: number, kn: number): number | null {
  const times = Array.from({ length: bands + 1 }, (_, band) =>
    crossingTime(signal, from, to, kn * (lowShare + ((highShare - lowShare) * band) / bands)),
  );
  const taken = times.slice(1).flatMap((time, band) => {
    const before = times[band];
    return time == null || before == null || time <= before ? [] : [time - before];
  });
  if (taken.length < 3) return null;
  return (kn * (highShare - lowShare)) / bands / middle(taken);
}

/** Blocks of the last rise through the range. */
function rise({ kn }: Signal, from: number, to: number, peak: number): readonly [number, number] {
  let high = to;
  while (high > from && (kn[high] as number) > highShare * peak) high -= 1;
  let low = high;
  while (low > from && (kn[low] as number) > lowShare * peak) low -= 1;
  return [low, high];
}

const mostPoints = 600;

/**
 * kN/mm: the middle one of the slopes between points half the range apart (after Theil and Sen), movement over load,
 * because the load is by far the better measured of the two.
 */
export function stiffnessOf(signal: Signal, from: number, to: number, kn: number): number | null {
  const { mm } = signal;
  if (mm === null) return null;
  const [low, high] = rise(signal, from, to, kn);
  const every = Math.max(1, Math.floor((high - low) / mostPoints));
  const points: (readonly [number, number])[] = [];
  for (let i = low; i + every - 1 <= high; i += every) {
    let [load, move] = [0, 0];
    for (let j = i; j < i + every; j += 1) {
      load += signal.kn[j] as number;
      move += mm[j] as number;
    }
    points.push([load / every, move / every]);
  }
  const half = points.length >> 1;
  if (half < 2) return null;
  const slopes = points.slice(half).flatMap(([load, move], i) => {
    const [earlierLoad, earlierMove] = points[i] as readonly [number, number];
    return load > earlierLoad ? [(move - earlierMove) / (load - earlierLoad)] : [];
  });
  if (slopes.length < 2) return null;
  const softness = Math.abs(middle(slopes));
  // Less than a thousandth of a millimetre a kilonewton: the gauge did not move.
  return softness > 1e-6 ? 1 / softness : null;
}

/** J: the area under load over movement (1 kN·mm = 1 J). */
export function energyOf({ kn, mm }: Signal, from: number, to: number): number | null {
  if (mm === null) return null;
  let sum = 0;
  const moved = (i: number): number => Math.abs((mm[i] as number) - (mm[i - 1] as number));
  // The row at which it gives way may have jumped already.
  const end = to - 1 > from && moved(to) > 10 * moved(to - 1) + 0.05 ? to - 1 : to;
  for (let i = from + 1; i <= end; i += 1)
    sum += (((kn[i] as number) + (kn[i - 1] as number)) / 2) * ((mm[i] as number) - (mm[i - 1] as number));
  const turned = (mm[to] as number) < (mm[from] as number) ? -1 : 1;
  return Math.max(0, turned * sum);
}
