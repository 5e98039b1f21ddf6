/** Pulls of every kind with the truth about them. */
import type { Load } from './load.ts';

export const endings = ['brittle', 'bond', 'slow', 'stopped'] as const;
export type EndingKind = (typeof endings)[number];

export interface PullTruth {
  readonly ending: EndingKind;
  readonly failed: boolean;
  readonly peakKn: number;
  /** Rows between which the load is at its peak, nearly. */
  readonly peakRow: number;
  readonly dropRow: number | null;
  readonly dropFrom: number | null;
  readonly dropTo: number | null;
  /** Steady rise, kN/s, where it is one. */
  readonly rate: number | null;
  readonly firstRow: number;
  readonly lastRow: number;
  /** Rows in which a spike would hide what is to be found. */
  readonly keep: readonly number[];
  readonly reSeated: boolean;
  readonly cycled: boolean;
}

export interface PullWish {
  readonly ending: EndingKind;
  readonly peak: number;
  readonly seconds: number;
  readonly reSeat: boolean;
  readonly preLoad: boolean;
  readonly cycle: boolean;
  readonly pump: boolean;
  /** The recording ends with the load on. */
  readonly cutOff: boolean;
}

function rise(load: Load, wish: PullWish, rate: number): void {
  const { random } = load;
  const { peak } = wish;
  const up = (to: number): void => (wish.pump ? load.strokes(to, rate) : load.ramp(to, rate));
  if (wish.preLoad) {
    load.go(peak * random.between(0.05, 0.1), random.between(0.8, 1.5));
    load.rest(random.between(1, 3));
  }
  if (wish.reSeat) {
    up(peak * random.between(0.15, 0.4));
    load.drop(load.load * random.between(0.7, 0.93), random.between(0.003, 0.02), random.between(0.5, 3));
  }
  if (wish.cycle) {
    up(peak * random.between(0.45, 0.75));
    load.rest(random.between(0.5, 2));
    load.go(load.load * random.between(0.3, 0.6), random.between(0.8, 2));
    load.rest(random.between(0.3, 1));
  }
  up(peak);
}

/** Valve opened: at once or after holding, evenly or fading, in one go or in steps. */
function takeOff(load: Load, seconds: number): void {
  const { random } = load;
  const quick = Math.max(0.6, seconds * random.between(0.05, 0.4));
  if (random.chance(0.5))
    load.go(load.load * random.between(0.93, 0.99), random.between(1, 5), (x) => 1 - (1 - x) ** 3);
  switch (random.whole(0, 2)) {
    case 0:
      load.go(0, quick);
      break;
    case 1: {
      const fade = Math.max(0.4, quick / 3);
      load.go(0, 6 * fade, (x) => (1 - Math.exp(-6 * x)) / (1 - Math.exp(-6)));
      break;
    }
    default: {
      const from = load.load;
      for (const share of [0.65, 0.35, 0]) {
        load.go(from * share, Math.max(0.5, quick / 3), (x) => x * x * (3 - 2 * x));
        load.rest(random.between(0.5, 2));
      }
    }
  }
}

export function addPull(load: Load, wish: PullWish): PullTruth {
  const { random } = load;
  const { peak, seconds } = wish;
  const firstRow = load.rows;
  const rate = peak / seconds;
  rise(load, wish, rate);
  let peakRow = load.rows - 1;
  let peakKn = load.load;
  let dropRow: number | null = null;
  let dropTo: number | null = null;
  switch (wish.ending) {
    case 'brittle':
      if (random.chance(0.2)) {
        // Held, and then it goes.
        load.go(load.load * random.between(0.985, 0.998), random.between(0.5, 2));
      }
      dropTo = random.chance(0.7) ? 0 : peak * random.between(0.01, 0.06);
      dropRow = load.drop(dropTo, random.between(0.002, 0.015), 5);
      load.rest(random.between(0.5, 2));
      if (dropTo > 0) load.go(0, 1);
      break;
    case 'bond': {
      dropTo = peak * random.between(0.35, 0.85);
      dropRow = load.drop(dropTo, random.between(0.003, 0.02), random.between(0.2, 2));
      load.slide(dropTo * random.between(0.8, 1.02), random.between(2, 6), random.between(0.2, 1));
      takeOff(load, seconds);
      break;
    }
    case 'slow': {
      load.go(peak * 1.02, 0.05 * seconds + 3 * load.step, (x) => 1 - (1 - x) ** 2, 0.3);
      peakRow = load.rows - 1;
      peakKn = load.load;
      const left = random.between(0.4, 0.75);
      // Softening is slower than the rise was.
      const slow = ((1 - left) * seconds) / random.between(0.2, 0.6);
      load.go(peak * left, slow, (x) => x * x * (3 - 2 * x) * 0.5 + x * 0.5, random.between(8, 25));
      takeOff(load, seconds);
      break;
    }
    case 'stopped':
      if (wish.cutOff) load.go(load.load * random.between(0.96, 1), random.between(1, 4));
      else takeOff(load, seconds);
  }
  const dropFrom = dropRow === null ? null : (load.kn[dropRow] as number);
  const lastRow = load.rows - 1;
  if (!wish.cutOff) load.rest(random.between(1, 3));
  return {
    ending: wish.ending,
    failed: wish.ending !== 'stopped',
    peakKn,
    peakRow,
    dropRow,
    dropFrom,
    dropTo,
    rate: wish.pump || wish.ending === 'slow' ? null : rate,
    firstRow,
    lastRow,
    keep: [peakRow, ...(dropRow === null ? [] : [dropRow])],
    reSeated: wish.reSeat,
    cycled: wish.cycle,
  };
}
