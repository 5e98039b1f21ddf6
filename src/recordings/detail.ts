/** A stretch of a recording row by row: from the blocks where each is one row, else from the file once more. */
import { Despiker } from './despike.ts';
import { readRows, type Script } from './rows.ts';
import type { Signal } from './signal.ts';
import type { Source } from './source.ts';

export interface Detail {
  readonly firstRow: number;
  readonly time: Float64Array;
  readonly kn: Float64Array;
}

/** Rows from the first up to but without the last. */
export type ReadDetail = (firstRow: number, lastRow: number) => Promise<Detail>;

/** So many rows earlier, so that spikes are known by their neighbours. */
const warmUp = 256;

export function detailReader(source: Source, script: Script, signal: Signal): ReadDetail {
  const { blocks, sign, restKn, holes } = signal;
  const { size, rows } = blocks;
  return async (wantedFirst, wantedLast) => {
    const firstRow = Math.max(0, wantedFirst);
    const lastRow = Math.max(firstRow, Math.min(rows, wantedLast));
    if (size === 1)
      return {
        firstRow,
        time: signal.time.slice(firstRow, lastRow),
        kn: signal.kn.slice(firstRow, lastRow),
      };
    const count = lastRow - firstRow;
    const time = new Float64Array(count);
    const kn = new Float64Array(count);
    const block = Math.max(0, Math.floor((firstRow - warmUp) / size));
    let row = block * size;
    const despiker = new Despiker({
      spike: () => undefined,
      add: (_, load) => {
        const index = row - firstRow;
        if (index >= 0 && index < count) kn[index] = sign * load - restKn;
        row += 1;
      },
    });
    let read = row;
    await readRows(
      source,
      script,
      { at: blocks.at[block] as number, line: (blocks.line[block] as number) - 1 },
      {
        section: () => undefined,
        row: (_, load, mm, at, line) => {
          despiker.take(0, load, mm, at, line);
          read += 1;
          return read >= lastRow + 8;
        },
      },
    );
    despiker.end();
    for (let index = 0; index < count; index += 1) {
      const [of, within] = [Math.floor((firstRow + index) / size), (firstRow + index) % size];
      const [first, last] = [blocks.first[of] as number, blocks.last[of] as number];
      time[index] = first + ((last - first) * within) / Math.max(1, size - 1);
      if (holes.some(([from, to]) => of >= from && of <= to)) kn[index] = signal.kn[of] as number;
    }
    return { firstRow, time, kn };
  };
}
