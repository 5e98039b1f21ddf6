export * from './adhesive/cure.ts';
export * from './adhesive/cure-history.ts';
export * from './adhesive/gap.ts';
export * from './adhesive/volume.ts';
export * from './capacity/anchor-shear.ts';
export * from './capacity/bonded.ts';
export * from './capacity/combined.ts';
export * from './capacity/cone.ts';
export * from './capacity/cone-influence.ts';
export * from './capacity/effective.ts';
export * from './capacity/glue-in-rock.ts';
export * from './capacity/interaction.ts';
export * from './capacity/mechanical.ts';
export * from './capacity/mechanical-in-rock.ts';
export * from './capacity/modes.ts';
export * from './capacity/scatter.ts';
export * from './capacity/shear.ts';
export * from './capacity/shear-edge.ts';
export * from './capacity/sizing.ts';
export * from './capacity/steel.ts';
export type { Influence, Surroundings } from './capacity/surroundings.ts';
export * from './capacity/sustained.ts';
export * from './corrosion/category.ts';
export * from './corrosion/galvanic.ts';
export * from './corrosion/humidity.ts';
export * from './corrosion/iso9223.ts';
export * from './corrosion/iso9224.ts';
export * from './corrosion/pren.ts';
export * from './corrosion/resistance-class.ts';
export * from './corrosion/section.ts';
export * from './corrosion/zinc-life.ts';
export * from './cost/life-cycle.ts';
export * from './cost/present-value.ts';
export * from './en959.ts';
export {
  type Formula,
  type FormulaSpec,
  type InputSpec,
  type Kind,
  OutOfRange,
  type Result,
} from './formula.ts';
export * from './loads/connector.ts';
export * from './loads/energy.ts';
export * from './loads/geometry.ts';
export * from './loads/line.ts';
export * from './loads/rope.ts';
export { formulas, type RegisteredFormula } from './registry.ts';
export * from './reliability.ts';
export * from './rock/grades.ts';
export * from './rock/hoek-brown.ts';
export * from './rock/rebound.ts';
export * from './rock/strength.ts';
export * from './statistics/censored.ts';
export * from './statistics/characteristic.ts';
export * from './statistics/compare.ts';
export * from './statistics/learn.ts';
export * from './statistics/monte-carlo.ts';
export * from './statistics/outliers.ts';
export * from './statistics/proof.ts';
export * from './statistics/regression.ts';
export * from './statistics/sample.ts';
export * from './statistics/tolerance.ts';
export * from './statistics/update.ts';
