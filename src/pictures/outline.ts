/** Thins a recording to the least and the greatest value of each stretch of it: what the eye sees, and no more data. */

export interface Dot {
  readonly x: number;
  readonly y: number;
}

/** Keeps the first, the lowest, the highest and the last of each stretch, in their order: no peak is ever lost. */
export function thinned(dots: readonly Dot[], stretches: number): Dot[] {
  if (dots.length <= stretches * 4) return [...dots];
  const long = Math.ceil(dots.length / stretches);
  return Array.from({ length: Math.ceil(dots.length / long) }, (_, index) => {
    const stretch = dots.slice(index * long, (index + 1) * long);
    const heights = stretch.map(({ y }) => y);
    const low = heights.indexOf(Math.min(...heights));
    const high = heights.indexOf(Math.max(...heights));
    const kept = [...new Set([0, Math.min(low, high), Math.max(low, high), stretch.length - 1])];
    return kept.flatMap((at) => stretch[at] ?? []);
  }).flat();
}
