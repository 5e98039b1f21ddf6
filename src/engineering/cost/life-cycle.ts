import { seriesWorth } from './present-value.ts';

/** A choice that is bought, placed, inspected and replaced. Money in the club's own unit, always handed in. */
export interface CostPlan {
  /** One anchor in the rock: metal, adhesive and labour. */
  readonly installed: number;
  /** Replacing one, removal and patching included; absent: as the first time. */
  readonly replacement?: number | undefined;
  readonly life: number;
  readonly inspection?: { readonly cost: number; readonly every: number } | undefined;
}

export interface LifeCycleCost {
  readonly presentValue: number;
  /** Equivalent annual cost over the horizon. */
  readonly yearly: number;
  readonly replacements: number;
  /** Holes the rock will have at the end, the first one counted, when old holes cannot be used again. */
  readonly holes: number;
  readonly inspections: number;
}

/** A cost question that has no answer. */
export class CostError extends Error {
  override readonly name = 'CostError';
}

/** Times every, 2·every … strictly before the horizon. */
function times(every: number, horizon: number): number[] {
  const count = Math.max(0, Math.ceil(horizon / every - 1e-9) - 1);
  return Array.from({ length: count }, (_, i) => (i + 1) * every);
}

/**
 * Life-cycle cost of one anchor: NPV = Σ C_t/(1+r)^t, yearly cost = NPV/a(r, horizon). Replacement at L, 2L …, strictly
 * before the horizon; no residual value. r real rate 0 to 0.3, years, any money.
 * Source: ISO 15686-5:2017. Errors: CostError for a cost that is negative or no number, a life or interval outside
 * 0.5 to 1000 years, a horizon outside 1 to 200 years, a rate outside 0 to 0.3.
 * Worked: 26, life 10, 50 years, 3 % → NPV 78.42, 3.048 a year, 4 replacements.
 */
export function lifeCycleCost(plan: CostPlan, horizon: number, rate: number): LifeCycleCost {
  const replacement = plan.replacement ?? plan.installed;
  const inspectionCost = plan.inspection?.cost ?? 0;
  if (![plan.installed, replacement, inspectionCost].every((c) => c >= 0 && c < 1e9))
    throw new CostError('A cost must be a number of 0 or more.');
  if (![plan.life, plan.inspection?.every ?? 1].every((y) => y >= 0.5 && y <= 1000))
    throw new CostError('A life or an interval must be half a year to 1000 years.');
  if (!(horizon >= 1 && horizon <= 200)) throw new CostError('The horizon must be 1 to 200 years.');
  if (!(rate >= 0 && rate <= 0.3)) throw new CostError('The real interest rate must be 0 to 30 % a year.');
  const worth = (t: number) => (1 + rate) ** -t;
  const replaced = times(plan.life, horizon);
  const inspected = plan.inspection === undefined ? [] : times(plan.inspection.every, horizon);
  const presentValue =
    plan.installed +
    replaced.reduce((sum, t) => sum + replacement * worth(t), 0) +
    inspected.reduce((sum, t) => sum + inspectionCost * worth(t), 0);
  return {
    presentValue,
    yearly: presentValue / seriesWorth(rate, horizon),
    replacements: replaced.length,
    holes: replaced.length + 1,
    inspections: inspected.length,
  };
}

/**
 * Life at which a plan costs the same a year as another, other things equal: the shortest whole or half year from which
 * `plan` is no dearer; undefined when it never is within the horizon.
 * Source: ISO 15686-5:2017 (comparison). Errors: those of `lifeCycleCost`. Worked: 40 against 26 every 10 years, 50 a, 3 % → 17.5.
 */
export function breakEvenLife(
  plan: Omit<CostPlan, 'life'>,
  other: CostPlan,
  horizon: number,
  rate: number,
): number | undefined {
  const target = lifeCycleCost(other, horizon, rate).presentValue;
  for (let life = 0.5; life <= horizon; life += 0.5)
    if (lifeCycleCost({ ...plan, life }, horizon, rate).presentValue <= target + 1e-9) return life;
  return undefined;
}

/**
 * Installed price up to which a plan is no dearer than another over the horizon (replacement priced as the first time).
 * Source: ISO 15686-5:2017 (comparison). Worked: life 50 against 26 every 10 years, 50 a, 3 % → 78.42.
 */
export function breakEvenPrice(
  plan: Pick<CostPlan, 'life' | 'inspection'>,
  other: CostPlan,
  horizon: number,
  rate: number,
): number {
  const target = lifeCycleCost(other, horizon, rate).presentValue;
  const fixed = lifeCycleCost({ ...plan, installed: 0 }, horizon, rate).presentValue;
  const perUnit = lifeCycleCost({ life: plan.life, installed: 1 }, horizon, rate).presentValue;
  return Math.max(0, (target - fixed) / perUnit);
}

/**
 * Present value at several real rates, since ISO 15686-5 prescribes none and asks for sensitivity.
 * Source: ISO 15686-5:2017. Worked: 26, life 10, 50 a at 0, 3, 7 % → 130.0, 78.42, 51.09.
 */
export function rateSensitivity(
  plan: CostPlan,
  horizon: number,
  rates: readonly number[] = [0, 0.01, 0.03, 0.05, 0.07],
): readonly { readonly rate: number; readonly presentValue: number }[] {
  return rates.map((rate) => ({ rate, presentValue: lifeCycleCost(plan, horizon, rate).presentValue }));
}
