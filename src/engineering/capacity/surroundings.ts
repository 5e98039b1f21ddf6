import type { Result } from '../formula.ts';
import {
  bondAreaRatio,
  bondCriticalSpacing,
  bondEdgeFactor,
  coneLimitedBondStress,
  groupFactor,
  groupFactorAtZeroSpacing,
} from './combined.ts';
import { coneAreaRatio, coneEdgeFactor, criticalEdge } from './cone-influence.ts';

/** What is near an anchor, mm. Absent: nothing that counts. */
export interface Surroundings {
  readonly edge?: number | undefined;
  readonly edgeAcross?: number | undefined;
  /** Distance to the next anchor that is loaded at the same time. */
  readonly neighbour?: number | undefined;
  /** Distance of the two legs of a twin-leg anchor. */
  readonly legSpacing?: number | undefined;
}

export interface Influence {
  readonly areaRatio: number;
  readonly factor: number;
  readonly steps: readonly Result[];
}

const nearest = (near: Surroundings, far: number) => Math.min(near.edge ?? far, near.edgeAcross ?? far);

/** Influence on a cone of the given depth: area, edge factor, share with a neighbour. */
export function coneInfluence(embedment: number, near: Surroundings): Influence {
  const far = criticalEdge(embedment);
  const area = coneAreaRatio({
    embedment,
    edge: near.edge ?? far,
    edgeAcross: near.edgeAcross ?? far,
    spacing: near.legSpacing ?? 0,
  });
  const edge = coneEdgeFactor({ embedment, edge: nearest(near, far) });
  const shared =
    near.neighbour === undefined
      ? undefined
      : coneAreaRatio({ embedment, edge: far, edgeAcross: far, spacing: near.neighbour });
  return {
    areaRatio: area.value,
    factor: edge.value * ((shared?.value ?? 2) / 2),
    steps: shared === undefined ? [area, edge] : [area, edge, shared],
  };
}

/**
 * Influence on bond. `bond` is the stress of the adhesive side, the larger one, so that the critical spacing
 * and with it the reduction come out on the safe side.
 */
export function bondInfluence(
  anchor: {
    readonly diameter: number;
    readonly embedment: number;
    readonly bond: number;
    readonly rock: number;
  },
  near: Surroundings,
): Influence {
  const { diameter, embedment } = anchor;
  const critical = bondCriticalSpacing({ diameter, bondStress: anchor.bond, embedment });
  const criticalSpacing = critical.value;
  const far = criticalSpacing / 2;
  const area = bondAreaRatio({
    criticalSpacing,
    edge: near.edge ?? far,
    edgeAcross: near.edgeAcross ?? far,
    spacing: near.legSpacing ?? 0,
  });
  const edge = bondEdgeFactor({ edge: nearest(near, far), criticalSpacing });
  const steps: Result[] = [critical, area, edge];
  let factor = edge.value;
  if (near.legSpacing !== undefined) {
    const limit = coneLimitedBondStress({ factor: 11, diameter, embedment, strength: anchor.rock });
    const zero = groupFactorAtZeroSpacing({ count: 2, bondStress: anchor.bond, coneStress: limit.value });
    const spacing = Math.min(near.legSpacing, criticalSpacing);
    const group = groupFactor({ zeroSpacingFactor: zero.value, spacing, criticalSpacing });
    steps.push(limit, zero, group);
    factor *= group.value;
  }
  if (near.neighbour !== undefined) {
    const shared = bondAreaRatio({ criticalSpacing, edge: far, edgeAcross: far, spacing: near.neighbour });
    steps.push(shared);
    factor *= shared.value / 2;
  }
  return { areaRatio: area.value, factor, steps };
}
