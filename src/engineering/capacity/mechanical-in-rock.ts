import type { Result } from '../formula.ts';
import { rockConeMean } from './cone.ts';
import { effectiveDepth } from './effective.ts';
import {
  type Capacity,
  capacityOf,
  influenced,
  type Mode,
  modeFromCharacteristic,
  modeFromMean,
} from './modes.ts';
import { steelTension } from './steel.ts';
import { coneInfluence, type Influence, type Surroundings } from './surroundings.ts';

export type MechanicalMode = 'steel' | 'cone' | 'pullThrough';

export interface Mechanical extends Omit<Surroundings, 'legSpacing'> {
  /** Effective depth h_ef, not the depth of the hole, mm. */
  readonly embedment: number;
  readonly weatheredSkin: number;
  readonly metalArea: number;
  readonly steelStrength: number;
  readonly rockStrength: number;
  readonly jointFactor: number;
  readonly rockScatter: number;
  /** Mean pull-through from tests or assessment, kN; it cannot be computed. */
  readonly pullThroughMean?: number | undefined;
  readonly steelScatter?: number | undefined;
}

export interface MechanicalCapacity extends Capacity<MechanicalMode> {
  readonly effectiveDepth: number;
  readonly coneInfluence: Influence;
}

/**
 * Tension resistance of an expansion anchor or screw in rock, a screening model: the lowest of metal, rock cone
 * and, when a test gave it, pull-through. Without a pull-through value the result is an upper bound.
 * mm, MPa, kN. Source: own model on EN 1992-4:2018 7.2.1, coefficients common practice, no source.
 * Worked: h 90, UCS 150, J 1, 84.27 mm² at 700 MPa → cone 59.52 kN mean, metal 58.99 kN characteristic.
 */
export function mechanicalTension(anchor: Mechanical): MechanicalCapacity {
  const depth = effectiveDepth({ embedment: anchor.embedment, weatheredSkin: anchor.weatheredSkin });
  const embedment = depth.value;
  const around = coneInfluence(embedment, { ...anchor, legSpacing: undefined });
  const { rockStrength, jointFactor, rockScatter, metalArea, steelStrength } = anchor;
  const lone = rockConeMean({ rockStrength, embedment, jointFactor });
  const cone = influenced.mean({
    resistance: lone.value,
    areaRatio: around.areaRatio,
    factor: around.factor,
  });
  const steel = steelTension({ metalArea, steelStrength });
  const modes: Partial<Record<MechanicalMode, Mode>> = {
    steel: modeFromCharacteristic(steel, anchor.steelScatter ?? 0.05),
    cone: modeFromMean(cone, rockScatter, [depth, lone, ...around.steps]),
  };
  if (anchor.pullThroughMean !== undefined)
    modes.pullThrough = modeFromMean(testedPullThrough(anchor.pullThroughMean), rockScatter);
  return { ...capacityOf(modes), effectiveDepth: embedment, coneInfluence: around };
}

/** A tested mean enters as it is, through the same range check as every computed one. */
function testedPullThrough(mean: number): Result<'mean'> {
  return influenced.mean({ resistance: mean, areaRatio: 1, factor: 1 });
}
