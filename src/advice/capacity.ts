/** The strength of one anchor in one rock, pulled out and sideways, by every way in which it can fail. */
import {
  anchorShear,
  type Capacity,
  capacityOf,
  glueInTension,
  type Mode,
  mechanicalTension,
  OutOfRange,
  type Result,
  roundBarArea,
  threadStressArea,
} from '../engineering/index.ts';
import type { Bond } from './capacity-bond.ts';
import type { Setting } from './capacity-setting.ts';

export interface Governs {
  readonly mode: string;
  readonly mean: number;
  readonly characteristic: number;
}

export interface Side {
  readonly modes: Readonly<Record<string, Mode>>;
  readonly governs: Governs;
  /** Upper estimate of the chance that some mode fails at or below a load in kN. */
  readonly chanceBelow: (loadKn: number) => number;
}

export interface Strength {
  readonly tension: Side;
  readonly shear: Side;
  /** Present where the load stands off the rock and bends the shank. */
  readonly leverArm: Result<'characteristic'> | undefined;
  /** Pull-through of a mechanical anchor cannot be computed: without a test the result is an upper bound. */
  readonly upperBound: boolean;
}

/** Pitch of the metric coarse thread (ISO 261). */
const coarsePitch: readonly (readonly [diameter: number, pitch: number])[] = [
  [6, 1],
  [8, 1.25],
  [10, 1.5],
  [12, 1.75],
  [14, 2],
  [16, 2],
  [20, 2.5],
  [27, 3],
  [30, 3.5],
  [36, 4],
  [42, 4.5],
  [50, 5],
];

function metalArea(diameter: number, threaded: boolean): number {
  if (!threaded) return roundBarArea({ diameter }).value;
  const pitch = coarsePitch.find(([upTo]) => diameter <= upTo)?.[1] ?? 5;
  return threadStressArea({ diameter, pitch }).value;
}

function sideOf({ modes, governing, chanceBelow }: Capacity<string>): Side {
  const { mode, mean, characteristic } = governing;
  return {
    modes: modes as Readonly<Record<string, Mode>>,
    governs: { mode, mean: mean.value, characteristic: characteristic.value },
    chanceBelow,
  };
}

/**
 * A weaker bond reaches less far into the rock and shares less of it, so that some other mode may come out stronger: with
 * a bond that was learned to be lower, each mode is the weaker of the two.
 */
function notBolder({ mean, learned }: Bond, strength: (bond: number) => Capacity<string>): Capacity<string> {
  const own = strength(mean);
  if (learned === undefined || mean > learned.published) return own;
  const { modes } = strength(learned.published);
  const weaker = Object.entries(own.modes).flatMap(([id, mode]) => {
    const other = modes[id];
    return mode === undefined || other === undefined
      ? []
      : [[id, mode.mean.value <= other.mean.value ? mode : other] as const];
  });
  return capacityOf<string>(Object.fromEntries(weaker));
}

/** Errors: OutOfRange where a formula does not cover the size. */
export function strengthOf(setting: Setting): Strength {
  const { ground, bond } = setting;
  const common = {
    embedment: setting.embedment,
    weatheredSkin: setting.skin,
    steelStrength: setting.steelStrength,
    rockStrength: ground.strength,
    jointFactor: setting.jointFactor,
    rockScatter: ground.scatter,
    metalArea: metalArea(setting.diameter, setting.threaded),
    edge: setting.edge,
    neighbour: setting.neighbour,
  };
  const gluedIn = (bondMean: number): Capacity<string> =>
    glueInTension({
      ...common,
      rodDiameter: setting.diameter,
      holeDiameter: setting.holeDiameter,
      bondMean,
      adhesiveFactor: setting.adhesiveFactor,
      // The legs of a twin-leg anchor are taken as close together: that shares the most rock.
      legSpacing: setting.legs === 2 ? 2 * setting.diameter : undefined,
    });
  const tension = bond === undefined ? mechanicalTension(common) : notBolder(bond, gluedIn);
  const pulledOut = sideOf(tension);
  const rockMeans = Object.entries(pulledOut.modes).flatMap(([mode, { mean }]) =>
    mode === 'steel' ? [] : [mean.value],
  );
  const shear = anchorShear({
    ...common,
    embedment: setting.embedment - setting.skin,
    rodDiameter: setting.diameter,
    legs: setting.legs,
    yieldStrength: setting.yieldStrength,
    pullOutMean: Math.min(...rockMeans),
    standOff: setting.standOff,
    edgeInLoad: setting.edge,
  });
  return {
    tension: pulledOut,
    shear: sideOf(shear),
    leverArm: shear.leverArm,
    upperBound: bond === undefined,
  };
}

/** Undefined for a size that the method does not cover: it is then not offered. */
export function strengthWithin(setting: Setting): Strength | undefined {
  try {
    return strengthOf(setting);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}
