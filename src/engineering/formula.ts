/**
 * The one way in which a formula is declared: what it needs in which unit and range, what it gives,
 * where it is published. The range is checked here, once, for all formulas: nothing is clamped.
 */

export type Kind = 'mean' | 'characteristic' | 'design' | 'plain';

export interface InputSpec {
  /** The symbol that the source uses, "h_ef". */
  readonly symbol: string;
  /** What it is, in plain words, "embedment depth". */
  readonly words: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

/** A limit on a combination of inputs, "ratio of embedment to diameter, 4 to 20". */
export interface DerivedSpec<I extends string> extends InputSpec {
  readonly of: (inputs: Readonly<Record<I, number>>) => number;
}

export interface FormulaSpec<I extends string, K extends Kind> {
  readonly id: string;
  readonly title: string;
  /** The formula in symbols, "N = τ·π·d·h_ef". */
  readonly symbols: string;
  /** Source id (rules/sources.json) and the place in it. */
  readonly source: string;
  readonly clause: string;
  readonly inputs: Readonly<Record<I, InputSpec>>;
  readonly derived?: readonly DerivedSpec<NoInfer<I>>[];
  readonly unit: string;
  readonly kind: K;
  /** The bare computation, without checks: for loops that have checked their ranges already. */
  readonly compute: (inputs: Readonly<Record<I, number>>) => number;
}

export interface Result<K extends Kind = Kind> {
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
  readonly kind: K;
  readonly inputs: Readonly<Record<string, number>>;
}

export interface Formula<I extends string, K extends Kind> extends FormulaSpec<I, K> {
  (inputs: Readonly<Record<I, number>>): Result<K>;
}

const withUnit = (value: number, unit: string) => {
  const shown = Number(value.toPrecision(6));
  return unit === '' ? `${shown}` : `${shown} ${unit}`;
};

/** An input outside the published range of a formula. The message is for a club member. */
export class OutOfRange extends Error {
  override readonly name = 'OutOfRange';
  constructor(
    readonly formula: string,
    readonly input: string,
    readonly value: number,
    readonly spec: InputSpec,
    readonly source: string,
    readonly clause: string,
  ) {
    super(
      Number.isFinite(value)
        ? `${spec.words} of ${withUnit(value, spec.unit)} is outside the range that the method covers, ` +
            `${spec.min} to ${withUnit(spec.max, spec.unit)} (${source}, ${clause}).`
        : `${spec.words} is not a number.`,
    );
  }
}

const inside = (value: number, limits: InputSpec) => value >= limits.min && value <= limits.max;

export function defineFormula<I extends string, K extends Kind>(spec: FormulaSpec<I, K>): Formula<I, K> {
  const names = Object.keys(spec.inputs) as I[];
  const checked = (given: Readonly<Record<I, number>>): Result<K> => {
    const inputs = {} as Record<I, number>;
    for (const name of names) {
      const limits = spec.inputs[name];
      const value = given[name];
      if (!inside(value, limits))
        throw new OutOfRange(spec.id, name, value, limits, spec.source, spec.clause);
      inputs[name] = value;
    }
    for (const limits of spec.derived ?? []) {
      const value = limits.of(inputs);
      if (!inside(value, limits))
        throw new OutOfRange(spec.id, limits.symbol, value, limits, spec.source, spec.clause);
    }
    const value = spec.compute(inputs);
    if (!Number.isFinite(value)) throw new Error(`formula ${spec.id} gave ${value}`);
    return { formula: spec.id, value, unit: spec.unit, kind: spec.kind, inputs };
  };
  return Object.assign(checked, spec);
}

/**
 * The same computation for mean and for characteristic input: two formulas, so that the type of the
 * result says which of the two went in, and the two can never be compared by accident.
 */
export function defineStrengthPair<I extends string>(
  spec: Omit<FormulaSpec<I, Kind>, 'kind'>,
): {
  readonly mean: Formula<I, 'mean'>;
  readonly characteristic: Formula<I, 'characteristic'>;
} {
  const of = <K extends 'mean' | 'characteristic'>(kind: K) =>
    defineFormula<I, K>({ ...spec, id: `${spec.id}-${kind}`, title: `${spec.title} (${kind})`, kind });
  return { mean: of('mean'), characteristic: of('characteristic') };
}
