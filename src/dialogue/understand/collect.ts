/** Takes numbers for facts, within what is possible; what is not clear becomes a problem to ask back. */
import {
  BARE_MM_FROM,
  HIGH_IS_CAREFUL,
  LIMIT_IS_VALUE,
  SHORTEST_MM,
  SURELY_CELSIUS,
  THICKEST_MM,
} from './careful.ts';
import type { FactsView } from './facts-view.ts';
import { inFactUnit } from './measure.ts';
import type { Mention } from './mention.ts';
import type { Problem } from './parsed.ts';
import type { Quantity } from './quantities.ts';
import { SHORTEST, type Size } from './sizes.ts';

export class Collector {
  readonly mentions: Mention[] = [];
  readonly problems: Problem[] = [];
  readonly #facts: FactsView;
  readonly #textOf: (from: number, to: number) => string;

  constructor(facts: FactsView, textOf: (from: number, to: number) => string) {
    this.#facts = facts;
    this.#textOf = textOf;
  }

  #limit(fact: string) {
    const definition = this.#facts.facts.get(fact);
    return definition?.kind === 'number' ? definition : null;
  }

  isMany(fact: string): boolean {
    return this.#limit(fact)?.many === true;
  }

  unitOf(fact: string): string {
    return this.#limit(fact)?.unit ?? '1';
  }

  isPossible(fact: string, { low, unit, fraction }: Quantity): boolean {
    const limit = this.#limit(fact);
    if (!limit) return true;
    const value = inFactUnit(low, unit ?? (fraction && limit.unit === 'mm' ? 'in' : null), limit.unit);
    return value === null || (value >= limit.possible[0] && value <= limit.possible[1]);
  }

  /** A number that fits no limit of the fact is no slip, it is of something else. */
  possible(fact: string, quantity: Quantity): void {
    if (this.isPossible(fact, quantity)) this.quantity(fact, quantity);
  }

  put(fact: string, value: number, from: number, to: number, unit: string | null, weak = false): void {
    const limit = this.#limit(fact);
    if (!limit) return;
    const rounded = Math.round(value * 1000) / 1000;
    const [least, most] = limit.possible;
    if (rounded >= least && rounded <= most) {
      this.mentions.push({
        fact,
        value: rounded,
        from,
        to,
        ...(unit ? { unit } : {}),
        ...(weak ? { weak } : {}),
      });
    } else {
      const detail = { least, most, unit: limit.unit };
      this.problems.push({ kind: 'impossible', fact, value: rounded, text: this.#textOf(from, to), detail });
    }
  }

  /** `careful` is the value that may be assumed; without one there is none. */
  unclear(fact: string, { from, to }: { from: number; to: number }, careful?: number): void {
    const value = careful === undefined ? {} : { value: Math.round(careful * 1000) / 1000 };
    this.problems.push({ kind: 'ambiguous', fact, ...value, text: this.#textOf(from, to) });
  }

  mismatch(fact: string, { from, to, low, unit }: Quantity): void {
    const detail = unit ? { unit, expected: this.unitOf(fact) } : {};
    this.problems.push({ kind: 'unit-mismatch', fact, value: low, text: this.#textOf(from, to), detail });
  }

  quantity(fact: string, quantity: Quantity, weak = false): void {
    const limit = this.#limit(fact);
    if (!limit) return;
    const said = HIGH_IS_CAREFUL.has(fact) ? quantity.high : quantity.low;
    const unit = quantity.unit ?? (quantity.fraction && limit.unit === 'mm' ? 'in' : null);
    const value = inFactUnit(said, unit, limit.unit);
    const warm = fact === 'temperature_c' && (unit === '°' || unit === null);
    if (value === null) this.mismatch(fact, quantity);
    else if (quantity.bound === 'most' && !LIMIT_IS_VALUE.has(fact)) this.unclear(fact, quantity);
    else if (unit === null && value < (BARE_MM_FROM[fact] ?? Number.NEGATIVE_INFINITY))
      this.unclear(fact, quantity, value);
    else if (warm && value > SURELY_CELSIUS)
      this.unclear(fact, quantity, inFactUnit(said, 'F', '°C') ?? value);
    else this.put(fact, value, quantity.from, quantity.to, unit, weak);
  }

  /** A lone length: the size tells whether it is the thickness of a bolt or its length. */
  lone(quantity: Quantity): void {
    const unit = quantity.unit ?? (quantity.fraction ? 'in' : 'mm');
    const value = inFactUnit(quantity.low, unit, 'mm') ?? Number.NaN;
    if (value <= THICKEST_MM) this.quantity('diameter_mm', quantity, true);
    else if (value >= SHORTEST_MM) this.quantity('length_mm', quantity, true);
    else this.unclear('diameter_mm', quantity);
  }

  size({ from, to, parts, unit, count }: Size, ofHole: boolean, holeNamed: boolean): void {
    const [small = 0, middle = 0, large = middle] = [...parts].sort((a, b) => a - b);
    if (count !== null) this.put('count', count, from, to, null);
    if (parts.length === 3 && !holeNamed) {
      this.unclear('diameter_mm', { from, to });
      return;
    }
    if (parts.length === 3) this.put('hole_diameter_mm', middle, from, to, unit);
    const thin = holeNamed && small < large && large < SHORTEST;
    if (large < SHORTEST && !thin) {
      this.problems.push({
        kind: 'impossible',
        fact: 'length_mm',
        value: large,
        text: this.#textOf(from, to),
      });
    } else {
      this.put(ofHole ? 'hole_diameter_mm' : 'diameter_mm', small, from, to, unit);
      this.put(ofHole ? 'embedment_mm' : thin ? 'hole_diameter_mm' : 'length_mm', large, from, to, unit);
    }
  }
}
