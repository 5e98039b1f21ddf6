/**
 * What a picture shows, and its words. Data come from records and computations; names may hold anything a member types.
 * The words come from the renderer, whole and in the member's language; a picture only places them.
 */

interface PictureTexts {
  /** The decimal mark of the language, for ticks and figures. */
  readonly decimal: '.' | ',';
  readonly title: string;
  /** In place of the drawing where there is nothing to draw. */
  readonly nothing: string;
}

export interface Need {
  /** Whose demand it is: "type test of EN 959", in the member's language. */
  readonly name: string;
  readonly kn: number;
}

export interface ForcePoint {
  /** From the start of the recording. */
  readonly t_s: number;
  readonly kn: number;
  /** Displacement, where it was recorded. */
  readonly mm?: number;
}

/** A recording, already thinned to the outline of its least and greatest values. */
export interface ForceData {
  readonly name: string;
  readonly outline: readonly ForcePoint[];
  readonly pulls: readonly { readonly peak: ForcePoint; readonly firstDrop?: ForcePoint }[];
  readonly needs: readonly Need[];
}

export interface ForceTexts extends PictureTexts {
  readonly displacementTitle: string;
  readonly time: string;
  readonly force: string;
  readonly displacement: string;
  readonly peak: string;
  readonly firstDrop: string;
  /** One line for each pull, with its figures, in the order of the data; the same for the needs. */
  readonly pulls: readonly string[];
  readonly needs: readonly string[];
  /** For what is left out, by how many. */
  readonly more: (count: number) => string;
}

/** One pull test. A stopped one held at least this. */
export interface TestValue {
  readonly value: number;
  readonly stopped: boolean;
}

export interface GroupData {
  readonly name: string;
  readonly groups: readonly {
    readonly name: string;
    /** In kN. */
    readonly tests: readonly TestValue[];
    readonly mean_kn?: number;
    /** The 5 % fractile: 19 of 20 hold more. */
    readonly characteristic_kn?: number;
  }[];
  readonly need?: Need;
}

export interface GroupTexts extends PictureTexts {
  readonly force: string;
  readonly failed: string;
  readonly stopped: string;
  readonly mean: string;
  readonly characteristic: string;
  readonly need: string;
  readonly groups: readonly string[];
}

/** All in MPa. */
export interface BondData {
  readonly name: string;
  readonly published?: { readonly low: number; readonly high: number };
  readonly tests: readonly TestValue[];
  /** The mean after counting the tests in, and the interval that holds it with `share` (0.9) probability. */
  readonly learned?: {
    readonly mean: number;
    readonly low: number;
    readonly high: number;
    readonly share: number;
  };
  readonly used: number;
}

export interface BondTexts extends PictureTexts {
  readonly strength: string;
  readonly published: string;
  readonly tests: string;
  readonly learned: string;
  readonly used: string;
  readonly failed: string;
  readonly stopped: string;
}

export interface CostData {
  readonly name: string;
  /** "€"; empty where nobody told it. */
  readonly currency: string;
  readonly firstYear: number;
  readonly policies: readonly {
    readonly name: string;
    readonly perYear: readonly number[];
  }[];
}

export interface CostTexts extends PictureTexts {
  readonly cost: string;
  /** Name and sum of each policy. */
  readonly policies: readonly string[];
}

export interface RiskData {
  readonly name: string;
  readonly anchors: readonly {
    readonly name: string;
    /** Probability of failing within a year, 0 to 1. */
    readonly perYear: number;
    /** To be replaced or closed first. */
    readonly act: boolean;
  }[];
}

export interface RiskTexts extends PictureTexts {
  readonly risk: string;
  readonly act: string;
  readonly watch: string;
  readonly share: (perYear: number) => string;
  readonly more: (count: number) => string;
}
