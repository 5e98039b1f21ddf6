/** All formulas by id, for `why`, for the ledger and for the test that each has a published check. */
import * as cure from './adhesive/cure.ts';
import * as cureHistory from './adhesive/cure-history.ts';
import * as volume from './adhesive/volume.ts';
import * as bonded from './capacity/bonded.ts';
import * as combined from './capacity/combined.ts';
import * as cone from './capacity/cone.ts';
import * as coneInfluence from './capacity/cone-influence.ts';
import * as effective from './capacity/effective.ts';
import * as interaction from './capacity/interaction.ts';
import * as mechanical from './capacity/mechanical.ts';
import * as modes from './capacity/modes.ts';
import * as scatter from './capacity/scatter.ts';
import * as shear from './capacity/shear.ts';
import * as shearEdge from './capacity/shear-edge.ts';
import * as steel from './capacity/steel.ts';
import * as sustained from './capacity/sustained.ts';
import * as galvanic from './corrosion/galvanic.ts';
import * as humidity from './corrosion/humidity.ts';
import * as iso9223 from './corrosion/iso9223.ts';
import * as iso9224 from './corrosion/iso9224.ts';
import * as pren from './corrosion/pren.ts';
import * as section from './corrosion/section.ts';
import * as zincLife from './corrosion/zinc-life.ts';
import * as presentValue from './cost/present-value.ts';
import type { Formula, Kind } from './formula.ts';
import * as energy from './loads/energy.ts';
import * as geometry from './loads/geometry.ts';
import * as line from './loads/line.ts';
import * as rope from './loads/rope.ts';
import * as reliability from './reliability.ts';
import * as hoekBrown from './rock/hoek-brown.ts';
import * as rebound from './rock/rebound.ts';
import * as strength from './rock/strength.ts';
import * as outliers from './statistics/outliers.ts';
import * as proof from './statistics/proof.ts';
import * as tolerance from './statistics/tolerance.ts';

export type RegisteredFormula = Formula<string, Kind>;

const modules: readonly object[] = [
  bonded,
  combined,
  cone,
  coneInfluence,
  cure,
  cureHistory,
  effective,
  galvanic,
  humidity,
  interaction,
  iso9223,
  iso9224,
  mechanical,
  modes,
  pren,
  scatter,
  section,
  shear,
  shearEdge,
  steel,
  sustained,
  volume,
  zincLife,
  presentValue,
  energy,
  geometry,
  line,
  rope,
  reliability,
  hoekBrown,
  rebound,
  strength,
  outliers,
  proof,
  tolerance,
];

const isFormula = (x: unknown): x is RegisteredFormula =>
  typeof x === 'function' && 'symbols' in x && 'clause' in x && 'inputs' in x;

/** An export is a formula, or a pair of them for mean and characteristic. */
function formulasIn(exported: unknown): RegisteredFormula[] {
  if (isFormula(exported)) return [exported];
  if (typeof exported !== 'object' || exported === null) return [];
  return Object.values(exported).filter(isFormula);
}

function collect(): ReadonlyMap<string, RegisteredFormula> {
  const found = new Map<string, RegisteredFormula>();
  for (const formula of modules.flatMap((m) => Object.values(m).flatMap(formulasIn))) {
    if (found.has(formula.id)) throw new Error(`two formulas have the id ${formula.id}`);
    found.set(formula.id, formula);
  }
  return found;
}

export const formulas: ReadonlyMap<string, RegisteredFormula> = collect();
