/** Recordings with known truth, the same for the same seed. */
import { disturb, type Faults } from './faults.ts';
import { Load } from './load.ts';
import { addPull, type EndingKind, endings, type PullTruth } from './pulls.ts';
import { Random } from './random.ts';
import { randomStyle, type Style, write } from './writing.ts';

export interface MadePull extends PullTruth {
  /** J up to the peak, without noise: the area under the clean curve. */
  readonly energy: number;
}

export interface Made {
  readonly bytes: Buffer;
  readonly style: Style;
  readonly step: number;
  readonly rows: number;
  readonly stiffness: number;
  readonly faults: Faults;
  readonly pulls: readonly MadePull[];
  /** Clean load and load as written, row by row. */
  readonly clean: readonly number[];
  readonly written: readonly number[];
  readonly what: string;
}

const rates = [10, 20, 50, 100, 100, 200, 500, 1000, 2000, 5000, 10_000];

const area = (kn: readonly number[], mm: readonly number[], from: number, to: number): number => {
  let sum = 0;
  for (let i = from + 1; i <= to; i += 1)
    sum += (((kn[i] as number) + (kn[i - 1] as number)) / 2) * ((mm[i] as number) - (mm[i - 1] as number));
  return sum;
};

export function makeRecording(random: Random, index: number): Made {
  const rate = rates[index % rates.length] as number;
  const step = 1 / rate;
  // Fast loggers are run for seconds, slow ones for minutes.
  const seconds = (): number => (rate > 1000 ? random.between(4, 8) : random.between(8, 40));
  const stiffness = random.between(1.5, 12);
  const load = new Load(random, step, stiffness);
  const pullCount = random.chance(0.3) ? random.whole(2, 4) : 1;
  const peak = random.between(8, 45);
  load.rest(random.between(1, 3));
  const sectionRows: number[] = [];
  const pulls: PullTruth[] = [];
  for (let i = 0; i < pullCount; i += 1) {
    if (i > 0) sectionRows.push(load.rows);
    const ending = endings[(index + i) % endings.length] as EndingKind;
    pulls.push(
      addPull(load, {
        ending,
        peak: peak * random.between(0.6, 1),
        seconds: seconds(),
        reSeat: random.chance(0.25),
        preLoad: random.chance(0.25),
        cycle: random.chance(0.15),
        pump: random.chance(0.2),
        cutOff: ending === 'stopped' && i === pullCount - 1 && random.chance(0.2),
      }),
    );
  }
  // A cell at its end may hide a small drop altogether: then nobody can find it.
  const single = pulls.length === 1 && (pulls[0]?.ending === 'brittle' || pulls[0]?.ending === 'stopped');
  const faults: Faults = {
    noise: peak * random.pick([0.0002, 0.0005, 0.001, 0.002]),
    offset: random.chance(0.5) ? peak * random.between(-0.012, 0.012) : 0,
    clipAt: single && random.chance(0.1) ? (pulls[0]?.peakKn ?? 0) * random.between(0.8, 0.95) : null,
    spikes: random.chance(0.15) ? random.whole(1, 8) : 0,
    dropOuts: random.chance(0.08) ? 1 : 0,
  };
  const written = disturb(load.kn, pulls, step, faults, random);
  const style = randomStyle(random, index, rate);
  const mm = load.mm.map((one) => one + 0.003 * random.normal());
  const bytes = write({ kn: written, mm, step, sectionRows }, style, random);
  const made = pulls.map((pull) => {
    const energy = area(load.kn, load.mm, pull.firstRow, pull.peakRow);
    // At its end the cell hides what lies above.
    return faults.clipAt === null
      ? { ...pull, energy }
      : { ...pull, energy, peakKn: faults.clipAt - faults.offset };
  });
  const what = `${index}: ${pulls.map(({ ending }) => ending).join('+')} ${rate} Hz ${style.time} ${style.unit} ${JSON.stringify(faults)}`;
  return {
    bytes,
    style,
    step,
    rows: written.length,
    stiffness,
    faults,
    pulls: made,
    clean: load.kn,
    written,
    what,
  };
}

export function* makeRecordings(seed: number, count: number): Generator<Made> {
  const random = new Random(seed);
  for (let index = 0; index < count; index += 1) yield makeRecording(random, index);
}
