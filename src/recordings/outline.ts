import type { Outline } from '../contracts/recording.ts';
import type { Segment } from './segments.ts';
import type { Signal } from './signal.ts';

const mostSlices = 1000;
/** Shown before and after the pull, of its length. */
const margin = 0.03;

const rounded = (value: number): number => Number(value.toPrecision(6));

export function outlineOf({ time, least, most, mm, count }: Signal, { from, to }: Segment): Outline {
  const around = Math.ceil(margin * (to - from));
  const [first, last] = [Math.max(0, from - around), Math.min(count - 1, to + around)];
  const every = Math.ceil((last - first + 1) / mostSlices);
  const timeS: number[] = [];
  const leastKn: number[] = [];
  const mostKn: number[] = [];
  const moved: number[] = [];
  for (let i = first; i <= last; i += every) {
    const end = Math.min(last + 1, i + every);
    let [low, high] = [least[i] as number, most[i] as number];
    for (let j = i + 1; j < end; j += 1) {
      low = Math.min(low, least[j] as number);
      high = Math.max(high, most[j] as number);
    }
    timeS.push(rounded(((time[i] as number) + (time[end - 1] as number)) / 2));
    leastKn.push(rounded(low));
    mostKn.push(rounded(high));
    if (mm !== null) moved.push(rounded(mm[(i + end - 1) >> 1] as number));
  }
  return { timeS, leastKn, mostKn, mm: mm === null ? null : moved };
}
