import type { Check, Computed, InputOrigin } from '../contracts/advice.ts';
import type { Fact, Facts, FactValue } from '../contracts/facts.ts';
import { formulas, type Result } from '../engineering/index.ts';
import { assumable, knownValues, type Outcome, type Row, type Situation, situation } from '../rules/index.ts';
import type { Desk } from './desk.ts';

/** A requirement; whether it is met is worked out here. */
export type CheckDraft = Omit<Check, 'ok'>;

/**
 * Where one advice is worked out: it hands out facts, rows and decisions and writes down which of them were
 * used, so that `why`, the sources and the list of assumptions are a record and not an afterthought.
 */
export class Worksheet {
  readonly #facts: Record<string, Fact>;
  readonly #known: Record<string, string> = {};
  #situation: Situation | undefined;
  readonly #used = new Set<string>();
  readonly #assumed = new Set<string>();
  readonly #rules = new Set<string>();
  readonly #sources = new Set<string>();
  readonly #computed: Computed[] = [];
  readonly #checks: Check[] = [];
  readonly #rows: [table: string, row: Row][] = [];

  constructor(
    readonly desk: Desk,
    readonly topic: string,
    facts: Facts,
  ) {
    this.#facts = { ...facts };
    // Where a word was ambiguous the dialogue took the careful reading: it is an assumption like any other.
    for (const [id, fact] of Object.entries(facts)) if (fact.from === 'assumed') this.#assumed.add(id);
  }

  /** Worked out once until a fact changes: an advice looks at it dozens of times. */
  get situation(): Situation {
    const { rules } = this.desk;
    const facts = (): Facts => ({ ...this.#facts, topic: { value: this.topic, from: 'said' } });
    this.#situation ??= situation(rules, facts(), this.#known);
    return this.#situation;
  }

  #setFact(id: string, fact: Fact): void {
    this.#facts[id] = fact;
    this.#situation = undefined;
  }

  /** Hands a computed class or an earlier outcome to the decisions that read it. */
  know(fact: string, value: string): void {
    this.#known[fact] = value;
    this.#situation = undefined;
  }

  /** What was assumed so far, as facts. */
  assumedFacts(): Facts {
    return Object.fromEntries(
      [...this.#assumed].flatMap((fact) => {
        const assumed = this.#facts[fact];
        return assumed ? [[fact, assumed]] : [];
      }),
    );
  }

  told(fact: string): FactValue | undefined {
    const value = this.#facts[fact]?.value;
    return value === 'unknown' ? undefined : value;
  }

  isAssumed(fact: string): boolean {
    return this.#assumed.has(fact);
  }

  get hasAssumed(): boolean {
    return this.#assumed.size > 0;
  }

  /** Takes the worse case of a fact that nobody told; where there is none to take, it stays unknown. */
  assume(fact: string): void {
    if (this.told(fact) !== undefined || this.#assumed.has(fact)) return;
    if (this.situation[fact] !== undefined && this.situation[fact] !== 'unknown') return;
    this.#assumed.add(fact);
    const worse = assumable(this.desk.rules, fact);
    if (worse !== null) this.#setFact(fact, { value: worse, from: 'assumed' });
  }

  /** A choice; `unknown` where it was neither told nor could be assumed. */
  choice(fact: string): string {
    this.assume(fact);
    this.#used.add(fact);
    return this.situation[fact] ?? 'unknown';
  }

  number(fact: string): number | undefined {
    const value = this.told(fact);
    if (typeof value !== 'number') return undefined;
    this.#used.add(fact);
    return value;
  }

  /** Every number of a fact that may have many; empty while none is told. */
  numbers(fact: string): readonly number[] {
    const value = this.told(fact);
    if (value === undefined || typeof value === 'string') return [];
    this.#used.add(fact);
    return typeof value === 'number' ? [value] : value;
  }

  /** The row of a table that a fact names; its sources count as used. */
  row(table: string, id: string): Row {
    const row = this.desk.rules.row(table, id);
    this.#rows.push([table, row]);
    for (const source of row.sources) this.#sources.add(source);
    return row;
  }

  /** A decision that steers the work but is no reason of the advice: not written down. */
  consult(decision: string): Promise<Outcome> {
    return this.desk.judge(decision, this.situation);
  }

  async decide(decision: string, candidate?: string): Promise<Outcome> {
    const outcome = await this.desk.judge(decision, this.situation, candidate);
    this.#record(outcome);
    return outcome;
  }

  /** Takes a decision for each value of the fact it is taken for: each metal, each adhesive. */
  async decideEach(decision: string): Promise<readonly { candidate: string; outcome: Outcome }[]> {
    const { rules } = this.desk;
    const each = rules.facts.get(rules.decisions.get(decision)?.each ?? '');
    if (each === undefined) throw new Error(`decision ${decision} has no candidates`);
    const all = [];
    for (const candidate of knownValues(rules, each))
      all.push({ candidate, outcome: await this.decide(decision, candidate) });
    return all;
  }

  #record(outcome: Outcome): void {
    for (const because of Object.values(outcome.because)) for (const id of because) this.#rules.add(id);
    for (const source of outcome.sources) this.#sources.add(source);
    for (const fact of this.desk.rules.decision(outcome.decision).bases)
      if (fact in this.#facts) this.#used.add(fact);
      else this.#tellDefault(fact);
  }

  /** A default that members should hear of is an assumption like any other. */
  #tellDefault(id: string): void {
    const fact = this.desk.rules.facts.get(id);
    if (fact?.kind !== 'choice' || fact.default === undefined || !fact.tellDefault) return;
    this.#setFact(id, { value: fact.default, from: 'assumed' });
    this.#assumed.add(id);
  }

  /** Writes a formula's result down for `why`, and gives its number. */
  compute(result: Result): number {
    const spec = formulas.get(result.formula);
    if (spec === undefined) throw new Error(`formula ${result.formula} is not in the registry`);
    this.#sources.add(spec.source);
    if (!this.#computed.some((one) => one.id === result.formula && one.value === result.value))
      this.#computed.push({
        id: result.formula,
        symbols: spec.symbols,
        inputs: Object.entries(result.inputs).map(([input, value]) => {
          const { symbol = input, unit = '1', min = 0, max = 0 } = spec.inputs[input] ?? {};
          return {
            symbol,
            value,
            unit: unit || '1',
            least: min,
            most: max,
            from: this.#originOf(value, unit || '1'),
          };
        }),
        value: result.value,
        unit: result.unit || '1',
        kind: result.kind,
        source: spec.source,
        clause: spec.clause,
      });
    return result.value;
  }

  /** Told by the value and its unit: an earlier result, a fact, a cell of a row that was used, or the method's own. */
  #originOf(value: number, unit: string): InputOrigin {
    // Nought and one turn up everywhere: to trace them would be guessing.
    if (value === 0 || (value === 1 && unit === '1')) return { kind: 'method' };
    const earlier = this.#computed.find((one) => one.value === value && one.unit === unit);
    if (earlier !== undefined) return { kind: 'formula', id: earlier.id };
    for (const fact of this.#used) {
      const definition = this.desk.rules.facts.get(fact);
      const known = this.#facts[fact];
      if (definition?.kind === 'number' && definition.unit === unit && known?.value === value)
        return { kind: 'fact', fact, origin: known.from };
    }
    for (const [table, row] of this.#rows)
      for (const [column, cell] of Object.entries(row.is)) {
        const spec = this.desk.rules.table(table).columns[column];
        const of = spec !== undefined && 'unit' in spec ? (spec.unit ?? '1') : '1';
        if (cell === value && of === unit) return { kind: 'row', row: `${table}/${row.id}` };
      }
    return { kind: 'method' };
  }

  check(draft: CheckDraft): boolean {
    const ok = draft.atMost ? draft.value <= draft.limit : draft.value >= draft.limit;
    this.#checks.push({ ...draft, ok });
    return ok;
  }

  cite(source: string): void {
    this.#sources.add(source);
  }

  /** What was used and assumed, for the seal. */
  record(): {
    readonly facts: Readonly<Record<string, FactValue>>;
    readonly assumed: readonly string[];
    readonly rules: readonly string[];
    readonly sources: readonly string[];
    readonly computed: readonly Computed[];
    readonly checks: readonly Check[];
  } {
    const assumed = [...this.#assumed];
    const facts = Object.fromEntries(
      [...this.#used]
        .filter((fact) => this.told(fact) !== undefined || this.#assumed.has(fact))
        .map((fact) => [fact, this.#facts[fact]?.value ?? 'unknown']),
    );
    return {
      facts: { ...facts, ...Object.fromEntries(assumed.map((f) => [f, this.#facts[f]?.value ?? 'unknown'])) },
      assumed,
      rules: [...this.#rules],
      sources: [...this.#sources],
      computed: this.#computed,
      checks: this.#checks,
    };
  }
}
