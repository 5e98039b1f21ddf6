import { defineStrengthPair, type Result } from '../formula.ts';
import { input, resistance } from '../quantities.ts';
import { chanceBelow, lognormalCharacteristic, lognormalMean } from './scatter.ts';

/** One way in which an anchor can fail, as mean and as 5 % fractile, with the chain of results behind it. */
export interface Mode {
  readonly mean: Result<'mean'>;
  readonly characteristic: Result<'characteristic'>;
  readonly scatter: number;
  readonly steps: readonly Result[];
}

export interface Governing<M extends string> {
  readonly mode: M;
  readonly mean: Result<'mean'>;
  readonly characteristic: Result<'characteristic'>;
}

export interface Capacity<M extends string> {
  readonly modes: Readonly<Partial<Record<M, Mode>>>;
  /** The mode with the lowest 5 % fractile; `weakestMean` is the one with the lowest mean. */
  readonly governing: Governing<M>;
  readonly weakestMean: Governing<M>;
  /** Upper estimate of the chance that some mode fails at or below a load in kN (modes taken as independent). */
  readonly chanceBelow: (loadKn: number) => number;
}

/**
 * Resistance with its surroundings: N = N0·(A/A0)·ψ. N0 resistance of the lone anchor kN, A/A0 area ratio
 * (above 1 for two legs), ψ product of edge, neighbour and group factors; kN.
 * Source: EN 1992-4:2018 Eq. (7.1), (7.13). Worked: 37.70, 0.7888, 0.8733 → 25.97 kN.
 */
export const influenced = defineStrengthPair({
  id: 'influenced-resistance',
  title: 'Resistance with edges, neighbours and legs',
  symbols: 'N = N0·(A/A0)·ψ',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.1), (7.13)',
  inputs: {
    resistance,
    areaRatio: input('A/A0', 'area ratio', '', 0.01, 4),
    factor: input('ψ', 'product of the influence factors', '', 0.01, 3),
  },
  unit: 'kN',
  compute: (i) => i.resistance * i.areaRatio * i.factor,
});

/** A mode of which the mean is computed: its 5 % fractile follows from the scatter. */
export function modeFromMean(mean: Result<'mean'>, scatter: number, steps: readonly Result[] = []): Mode {
  const characteristic = lognormalCharacteristic({ mean: mean.value, scatter });
  return { mean, characteristic, scatter, steps: [...steps, mean, characteristic] };
}

/** A mode of which the 5 % fractile is specified (metal): its mean follows from the scatter. */
export function modeFromCharacteristic(
  characteristic: Result<'characteristic'>,
  scatter: number,
  steps: readonly Result[] = [],
): Mode {
  const mean = lognormalMean({ characteristic: characteristic.value, scatter });
  return { mean, characteristic, scatter, steps: [...steps, characteristic, mean] };
}

export function capacityOf<M extends string>(modes: Readonly<Partial<Record<M, Mode>>>): Capacity<M> {
  const present = Object.entries(modes) as [M, Mode][];
  const lowest = (level: 'mean' | 'characteristic'): Governing<M> => {
    const [first, ...rest] = present;
    if (first === undefined) throw new Error('a capacity needs at least one mode');
    const [mode, found] = rest.reduce(
      (worst, next) => (next[1][level].value < worst[1][level].value ? next : worst),
      first,
    );
    return { mode, mean: found.mean, characteristic: found.characteristic };
  };
  return {
    modes,
    governing: lowest('characteristic'),
    weakestMean: lowest('mean'),
    chanceBelow: (load) =>
      0 -
      Math.expm1(
        present.reduce(
          (sum, [, m]) =>
            sum + Math.log1p(-chanceBelow({ mean: m.mean.value, scatter: m.scatter, load }).value),
          0,
        ),
      ),
  };
}
