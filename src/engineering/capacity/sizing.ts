/** A standard size that can be bought and drilled, mm. */
export interface Size {
  readonly diameter: number;
  readonly holeDiameter: number;
  readonly length: number;
}

export interface SizeVerdict<S extends Size = Size> {
  readonly size: S;
  readonly ok: boolean;
}

export interface Sizing<S extends Size = Size> {
  /** Smallest size that meets everything; undefined: none does, and that is an answer. */
  readonly smallest: S | undefined;
  /** The next size up, to be offered as the margin. */
  readonly next: S | undefined;
  readonly tried: readonly SizeVerdict<S>[];
}

const order = (a: Size, b: Size) =>
  a.diameter - b.diameter || a.length - b.length || a.holeDiameter - b.holeDiameter;

/**
 * Smallest standard size that meets every check, diameters first, then lengths. A size of which the checks are outside
 * the range of the formulas (OutOfRange) does not meet them; any other error is passed on.
 * Since a larger load only ever takes sizes away, a larger load never gives a smaller bolt.
 * Source: common practice. Errors: none of its own. Worked: see the tests.
 */
export function findSize<S extends Size>(sizes: readonly S[], meets: (size: S) => boolean): Sizing<S> {
  const tried = [...sizes].sort(order).map((size) => ({ size, ok: within(() => meets(size)) }));
  const passed = tried.filter((t) => t.ok);
  return { smallest: passed[0]?.size, next: passed[1]?.size, tried };
}

function within(check: () => boolean): boolean {
  try {
    return check();
  } catch (error) {
    if (error instanceof Error && error.name === 'OutOfRange') return false;
    throw error;
  }
}
