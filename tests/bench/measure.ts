export interface Figures {
  readonly median: number;
  readonly p99: number;
}

/** Runs a task warm, many times, and gives milliseconds. */
export async function measure(times: number, task: (index: number) => Promise<unknown>): Promise<Figures> {
  for (let index = 0; index < Math.ceil(times / 5); index += 1) await task(index);
  const taken: number[] = [];
  for (let index = 0; index < times; index += 1) {
    const started = performance.now();
    await task(index);
    taken.push(performance.now() - started);
  }
  taken.sort((a, b) => a - b);
  const at = (share: number): number => taken[Math.min(times - 1, Math.floor(times * share))] ?? 0;
  return { median: at(0.5), p99: at(0.99) };
}

export const row = (name: string, { median, p99 }: Figures): string =>
  `  ${name.padEnd(58)} median ${median.toFixed(2).padStart(8)} ms   p99 ${p99.toFixed(2).padStart(8)} ms`;
