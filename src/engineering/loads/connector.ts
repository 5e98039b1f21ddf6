/**
 * Least strength of connectors, kN, by class and direction: EN 12275:2013, strength table. `open` is the major
 * axis with the gate open, `minor` across. A class without a value there is not tested that way. They are
 * type-test minimums of new connectors, not loads to hang on.
 */
export const connectorStrengths = {
  B: { closed: 20, open: 7, minor: 7 },
  H: { closed: 20, open: 6, minor: 7 },
  K: { closed: 25, open: 8, minor: 7 },
  A: { closed: 20, open: 7 },
  T: { closed: 20, open: 7 },
  Q: { closed: 25, minor: 10 },
  X: { closed: 18, open: 5, minor: 7 },
} as const satisfies Record<string, { closed: number; open?: number; minor?: number }>;

export type ConnectorClass = keyof typeof connectorStrengths;
export type ConnectorAxis = 'closed' | 'open' | 'minor';

/**
 * Least strength of a connector class in a direction, kN; undefined where the standard asks none.
 * Source: EN 12275:2013, strength table. Worked: B, open gate → 7.
 */
export function connectorStrength(of: ConnectorClass, axis: ConnectorAxis): number | undefined {
  const strengths: Partial<Record<ConnectorAxis, number>> = connectorStrengths[of];
  return strengths[axis];
}
