/** What facts tell about the topic of a message that does not name it. */

/** Rock, size and what it is held by: then "strong enough?" is about that size, whatever else is named. */
export const WHOLE: readonly (readonly string[])[] = [
  ['rock', 'length_mm', 'adhesive'],
  ['rock', 'length_mm', 'anchor', 'diameter_mm'],
];

/** Without one of these "strong enough" asks about no load. */
export const LOADS: readonly string[] = ['load_kn', 'fall_factor', 'tension_kn', 'mass_kg'];

/** "10x80 in granite, ok?": the first row of which all facts were said gives the topic. */
export const JUDGED: readonly (readonly [topic: string, facts: readonly string[]])[] = [
  ['spacing', ['spacing_mm']],
  ['spacing', ['edge_distance_mm']],
  ['coating-life', ['coating_um']],
  ['cure', ['hours_since']],
  ['cure', ['step_hours']],
  ['cure', ['sheet_hours']],
  ['embedment', ['length_mm']],
  ['embedment', ['embedment_mm']],
  ['inspect', ['signs']],
  ['adhesive-amount', ['cartridge_ml']],
  ['adhesive-amount', ['hole_diameter_mm', 'diameter_mm']],
  ['adhesive', ['cartridge']],
  ['adhesive', ['adhesive']],
  ['load', ['load_kn']],
  ['load', ['fall_factor']],
  ['load', ['tension_kn']],
  ['anchor', ['anchor', 'diameter_mm']],
  ['embedment', ['diameter_mm']],
  ['material', ['metal']],
  ['material', ['metal_other']],
  ['anchor', ['anchor']],
  ['hole', ['drill']],
  ['hole', ['hole_diameter_mm']],
  ['material', ['environment']],
  ['material', ['sea_distance_m']],
  ['adhesive', ['hole_moisture']],
  ['adhesive', ['temperature_c']],
  ['material', ['climate']],
  ['material', ['rain_washed']],
  ['material', ['rock']],
];

/** "316 or titanium": choosing between values of the fact is the topic. */
export const COMPARED: Readonly<Record<string, string>> = {
  metal: 'material',
  adhesive: 'adhesive',
  anchor: 'anchor',
};

/** Told without any question, these still tell what it is about. */
export const IMPLIED: Readonly<Record<string, string>> = {
  signs: 'inspect',
  hours_since: 'cure',
  step_hours: 'cure',
  sheet_hours: 'cure',
  cartridge: 'adhesive',
  air_temperature_c: 'material',
  fall_factor: 'load',
  tension_kn: 'load',
  span_m: 'load',
  sag_m: 'load',
  angle_deg: 'load',
  leg_a_deg: 'load',
  fall_m: 'load',
  mass_kg: 'load',
};

/** Told in any way, these leave no doubt what it is about. */
export const TOLD: Readonly<Record<string, string>> = {
  proof_tests: 'pulltest-result',
  cartridge: 'adhesive',
  stopped_kn: 'pulltest-result',
  pulls_other_kn: 'compare',
  unit_cost: 'cost',
  labour_cost: 'cost',
  coating_um: 'coating-life',
  test_purpose: 'pulltest-plan',
  angle_deg: 'load',
  leg_a_deg: 'load',
};

/** Where the first is asked, words of the others only belong to it: "remind me to check the belay". */
export const HIDES: Readonly<Record<string, readonly string[]>> = {
  'pulltest-record': ['pulltest-plan', 'pulltest-result', 'load', 'register', 'inspect', 'compare'],
  compare: ['pulltest-plan', 'pulltest-result', 'load', 'inspect', 'hole'],
  spacing: ['hole'],
  'pulltest-result': ['pulltest-plan', 'load', 'embedment', 'spacing'],
  'pulltest-plan': ['load', 'inspect', 'spacing'],
  'coating-life': ['material', 'inspect', 'cure', 'load'],
  cost: ['material', 'coating-life', 'adhesive', 'anchor', 'inspect'],
  remind: ['inspect', 'cure', 'material', 'register', 'cost', 'pulltest-plan', 'cautions'],
  register: ['inspect', 'material'],
  settings: ['adhesive', 'material', 'hole'],
  permission: ['material'],
};

export const RESULTS: readonly string[] = ['pulls_kn', 'proof_tests'];

export const PRICES: readonly string[] = ['unit_cost', 'labour_cost'];

export const PLACE: readonly string[] = ['environment', 'sea_distance_m', 'climate', 'rock'];
