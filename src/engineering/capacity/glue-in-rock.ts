import type { Result } from '../formula.ts';
import { holeWallBond, uniformBond } from './bonded.ts';
import { rockConeMean } from './cone.ts';
import { adhesiveBond, effectiveDepth, wallBond } from './effective.ts';
import {
  type Capacity,
  capacityOf,
  influenced,
  type Mode,
  modeFromCharacteristic,
  modeFromMean,
} from './modes.ts';
import { roundBarArea, steelTension } from './steel.ts';
import { bondInfluence, coneInfluence, type Influence, type Surroundings } from './surroundings.ts';

export type GlueInMode = 'steel' | 'bondSteel' | 'bondRock' | 'cone';

export interface GlueIn extends Surroundings {
  readonly rodDiameter: number;
  readonly holeDiameter: number;
  /** From the rock face; the weathered skin is taken off here. */
  readonly embedment: number;
  /** Rock that bears nothing, mm; at least 10 in soft rock. */
  readonly weatheredSkin: number;
  /** Metal area of one leg, mm²; absent: a plain round bar. */
  readonly metalArea?: number | undefined;
  /** Specified minimum ultimate strength of the metal, MPa. */
  readonly steelStrength: number;
  /** Mean bond of the adhesive to the rod, MPa. */
  readonly bondMean: number;
  /** Strength of the rock as it is (wet when wet), MPa. */
  readonly rockStrength: number;
  /** 1 no visible joint, 0.9 one tight joint outside 1.5 h, 0.75 hairlines within, 0.55 blocky. */
  readonly jointFactor: number;
  /** 0.30 tested on the spot, 0.45 named rock with hammer class, 0.60 name only. */
  readonly rockScatter: number;
  /** Share of UCS that the hole wall bears in shear, 0.10 to 0.20. */
  readonly rockBondShare?: number | undefined;
  /** Damp or dirty hole 0.7, load that stays 0.6, both multiplied; 1 when neither. */
  readonly adhesiveFactor?: number | undefined;
  readonly steelScatter?: number | undefined;
}

export interface GlueInCapacity extends Capacity<GlueInMode> {
  readonly modes: Readonly<Record<GlueInMode, Mode>>;
  readonly effectiveDepth: number;
  readonly legs: 1 | 2;
  /** Bond of the whole anchor over that of one leg standing alone, with edges; 2 would be two full legs. */
  readonly bondInfluence: Influence;
  readonly coneInfluence: Influence;
}

/**
 * Tension resistance of a glued-in anchor in rock, a screening model: the lowest of metal (A_s·f_uk), bond at
 * the rod (τ_a·π·d·h'), bond at the wall (min(k_r·UCS, τ_a)·π·d0·h', k_r 0.15) and rock cone
 * (9.0·J·√min(UCS, 60)·h'^1.5), h' = embedment less weathered skin; each with its edges, neighbour and legs.
 * Lengths mm, stresses MPa, results kN. Two legs share their rock: about 0.7 of two lone legs at 50 mm.
 * The 5 % fractile of the rock modes is that of a lognormal with `rockScatter`; metal has V 0.05.
 * Source: own model on EN 1992-4:2018 7.2.1 and EOTA TR 029, coefficients common practice, no source. No code
 * covers rock: a pull test on the spot decides. Errors: OutOfRange of any formula inside.
 * Worked: d 12, d0 14, h 100, skin 10, UCS 150, τ_a 15, J 1 → 50.89 kN mean, bond at the rod.
 */
export function glueInTension(anchor: GlueIn): GlueInCapacity {
  const { rodDiameter: diameter, holeDiameter, rockStrength, rockScatter } = anchor;
  const depth = effectiveDepth({ embedment: anchor.embedment, weatheredSkin: anchor.weatheredSkin });
  const embedment = depth.value;
  const legs = anchor.legSpacing === undefined ? 1 : 2;
  const legArea = anchor.metalArea ?? roundBarArea({ diameter }).value;
  const atRod = adhesiveBond({ bondStress: anchor.bondMean, factor: anchor.adhesiveFactor ?? 1 });
  const atWall = wallBond({
    rockStrength,
    share: anchor.rockBondShare ?? 0.15,
    bondStress: atRod.value,
  });

  const aroundBond = bondInfluence({ diameter, embedment, bond: atRod.value, rock: rockStrength }, anchor);
  const aroundCone = coneInfluence(embedment, anchor);
  const { jointFactor } = anchor;
  const rod = uniformBond.mean({ bondStress: atRod.value, diameter, embedment });
  const wall = holeWallBond.mean({ bondStress: atWall.value, diameter, holeDiameter, embedment });
  const cone = rockConeMean({ rockStrength, embedment, jointFactor });
  const rockMode = (lone: typeof cone, around: Influence, before: readonly Result[] = []) =>
    modeFromMean(
      influenced.mean({ resistance: lone.value, areaRatio: around.areaRatio, factor: around.factor }),
      rockScatter,
      [depth, ...before, lone, ...around.steps],
    );

  const modes = {
    steel: modeFromCharacteristic(
      steelTension({ metalArea: legs * legArea, steelStrength: anchor.steelStrength }),
      anchor.steelScatter ?? 0.05,
    ),
    bondSteel: rockMode(rod, aroundBond, [atRod]),
    bondRock: rockMode(wall, aroundBond, [atRod, atWall]),
    cone: rockMode(cone, aroundCone),
  };
  return {
    ...capacityOf<GlueInMode>(modes),
    modes,
    effectiveDepth: embedment,
    legs,
    bondInfluence: aroundBond,
    coneInfluence: aroundCone,
  };
}
