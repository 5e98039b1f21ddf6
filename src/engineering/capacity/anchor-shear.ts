import type { Result } from '../formula.ts';
import {
  type Capacity,
  capacityOf,
  influenced,
  type Mode,
  modeFromCharacteristic,
  modeFromMean,
} from './modes.ts';
import { dowelShearMean, pryOut } from './shear.ts';
import { edgeShearFactor, rockEdgeShearMean } from './shear-edge.ts';
import { leverArmShear, steelShear } from './steel.ts';

export type ShearMode = 'steel' | 'pryOut' | 'edge' | 'dowel';

/** Below this the wall of the hole yields before the metal and the dowel form is added (common practice). */
const yieldingRock = 50;

export interface ShearAnchor {
  readonly rodDiameter: number;
  readonly legs: 1 | 2;
  /** Metal area of one leg where it leaves the rock, mm². */
  readonly metalArea: number;
  readonly steelStrength: number;
  readonly yieldStrength: number;
  /** Effective depth, weathered skin taken off, mm. */
  readonly embedment: number;
  readonly weatheredSkin: number;
  readonly rockStrength: number;
  readonly jointFactor: number;
  readonly rockScatter: number;
  /** Lowest mean of cone and bond in tension, kN. */
  readonly pullOutMean: number;
  /** Distance of the load from the rock face, mm; 0 when recessed or clamped. */
  readonly standOff: number;
  readonly edgeInLoad?: number | undefined;
  readonly edgeAcross?: number | undefined;
  readonly thickness?: number | undefined;
  readonly edgeAngle?: number | undefined;
  readonly steelScatter?: number | undefined;
}

export interface ShearCapacity extends Capacity<ShearMode> {
  /** Of one leg. Present when the load stands off the rock: a reason to reject the placement, not a breaking load. */
  readonly leverArm: Result<'characteristic'> | undefined;
}

/**
 * Radial (shear) resistance of an anchor in rock, a screening model: the lowest of metal in shear, pry-out,
 * rock edge when one is near, and the dowel form in rock below 50 MPa. Pry-out takes
 * the pull-out handed in, the edge credits one leg, metal and dowel count the legs. mm, MPa, kN. `leverArm` warns of bending, it does not govern.
 * Source: EN 1992-4:2018 7.2.2 and CEB-FIP Model Code 1990 3.10; rock coefficients common practice, no source.
 * Worked: one leg 84.27 mm², 700 MPa, hard rock, pull-out 50 kN at 90 mm, no edge → metal, 29.49 kN characteristic.
 */
export function anchorShear(anchor: ShearAnchor): ShearCapacity {
  const { rodDiameter: diameter, rockStrength, embedment, steelStrength, rockScatter } = anchor;
  const metalArea = anchor.metalArea * anchor.legs;
  const modes: Partial<Record<ShearMode, Mode>> = {
    steel: modeFromCharacteristic(steelShear({ metalArea, steelStrength }), anchor.steelScatter ?? 0.05),
    pryOut: modeFromMean(pryOut.mean({ pullOut: anchor.pullOutMean, embedment }), rockScatter),
  };
  if (anchor.edgeInLoad !== undefined) modes.edge = edgeMode(anchor, anchor.edgeInLoad);
  if (rockStrength < yieldingRock) {
    const one = dowelShearMean({
      diameter,
      rockStrength,
      yieldStrength: anchor.yieldStrength,
      standOff: anchor.standOff + anchor.weatheredSkin,
      axialShare: 0,
    });
    const all = influenced.mean({ resistance: one.value, areaRatio: anchor.legs, factor: 1 });
    modes.dowel = modeFromMean(all, rockScatter, [one]);
  }
  const leverArm =
    anchor.standOff !== 0
      ? leverArmShear({
          metalArea: anchor.metalArea,
          steelStrength,
          diameter,
          standOff: anchor.standOff,
          tensionShare: 0,
          restraint: 1,
        })
      : undefined;
  return { ...capacityOf(modes), leverArm };
}

function edgeMode(anchor: ShearAnchor, edgeInLoad: number): Mode {
  const { rodDiameter: diameter, embedment, rockStrength, jointFactor } = anchor;
  const far = 1.5 * edgeInLoad;
  const lone = rockEdgeShearMean({ diameter, embedment, rockStrength, jointFactor, edgeInLoad });
  const around = edgeShearFactor({
    edgeInLoad,
    edgeAcross: anchor.edgeAcross ?? far,
    thickness: anchor.thickness ?? Math.max(far, 40),
    angle: anchor.edgeAngle ?? 0,
  });
  const reduced = influenced.mean({ resistance: lone.value, areaRatio: 1, factor: around.value });
  return modeFromMean(reduced, anchor.rockScatter, [lone, around]);
}
