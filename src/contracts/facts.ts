/** Where a fact came from. `club` is a setting of the group, `map` a place, `measured` the club's own tests. */
export type FactOrigin = 'said' | 'assumed' | 'club' | 'map' | 'measured';

/** A canonical id ("granite"), or a number in the unit that rules/facts.json gives for the fact. */
export type FactValue = string | number;

export interface Fact {
  readonly value: FactValue;
  readonly from: FactOrigin;
}

/** One flat record, keyed by the ids of rules/facts.json. A fact that nobody told is absent. */
export type Facts = Readonly<Record<string, Fact>>;
