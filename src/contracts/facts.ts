/** Where a fact came from. `club` is a setting of the group, `map` a place, `measured` the club's own tests. */
export type FactOrigin = 'said' | 'assumed' | 'club' | 'map' | 'measured';

/**
 * A canonical id ("granite"), a number in the unit that rules/facts.json gives for the fact, or several such
 * numbers where the fact may have many (the results of a row of pull tests, the prices of two options).
 */
export type FactValue = string | number | readonly number[];

export interface Fact {
  readonly value: FactValue;
  readonly from: FactOrigin;
}

/** One flat record, keyed by the ids of rules/facts.json. A fact that nobody told is absent. */
export type Facts = Readonly<Record<string, Fact>>;
