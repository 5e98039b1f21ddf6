/** Where the ranking turns: the price, the life, the rate of interest. */
import type { Measure, Phrase } from '../contracts/phrase.ts';
import { breakEvenLife, breakEvenPrice, lifeCycleCost, rateSensitivity } from '../engineering/index.ts';
import type { Priced } from './cost-options.ts';

export interface Terms {
  readonly horizon: number;
  readonly rate: number;
}

/** Money without a unit: it is in whatever the club pays with. */
export const money = (value: number): Measure => ({ value, unit: 'money' });

const rates = [0, 0.03, 0.05] as const;
/** A life may as well be a quarter shorter or longer than planned. */
const lifeSpread = 0.25;

/** Up to which price of its parts the second would be no dearer than the first. */
export function priceLine(best: Priced, next: Priced, { horizon, rate }: Terms): Phrase {
  const parts = breakEvenPrice({ life: next.plan.life }, best.plan, horizon, rate) - next.labour;
  return {
    say: parts > 0 ? 'cost-break-price' : 'cost-break-price-never',
    with: { name: next.name, other: best.name, price: money(Math.max(0, parts)) },
  };
}

/** From which life on the second would be no dearer than the first. */
export function lifeLine(best: Priced, next: Priced, { horizon, rate }: Terms): Phrase {
  const life = breakEvenLife({ installed: next.plan.installed }, best.plan, horizon, rate);
  return life === undefined
    ? { say: 'cost-break-life-never', with: { name: next.name, other: best.name } }
    : {
        say: 'cost-break-life',
        with: { name: next.name, other: best.name, life: { value: life, unit: 'a', exact: true } },
      };
}

/** Whether the cheapest stays the cheapest when its own life is shorter and that of all others longer. */
export function robustLine(ranked: readonly Priced[], { horizon, rate }: Terms): Phrase {
  const [best, ...others] = ranked;
  // A varied life is kept within what is reckoned; past the years looked ahead a longer one changes nothing.
  const varied = (life: number): number => Math.min(1000, Math.max(0.5, life));
  const yearly = (option: Priced, factor: number): number =>
    lifeCycleCost({ ...option.plan, life: varied(option.plan.life * factor) }, horizon, rate).yearly;
  const stays =
    best !== undefined &&
    others.every((other) => yearly(best, 1 - lifeSpread) <= yearly(other, 1 + lifeSpread));
  return { say: stays ? 'cost-robust' : 'cost-not-robust' };
}

/** The present value of each choice at three rates of interest, the rate that decides beside the life. */
export function rateLine(ranked: readonly Priced[], { horizon }: Terms): Phrase {
  const worths = ranked.map(({ plan }) => rateSensitivity(plan, horizon, rates));
  const cheapest = rates.map((_, index) => {
    const values = worths.map((one) => one[index]?.presentValue ?? Number.POSITIVE_INFINITY);
    return values.indexOf(Math.min(...values));
  });
  const [first] = ranked;
  const own = worths[0]?.map(({ presentValue }) => money(presentValue)) ?? [];
  if (ranked.length === 1)
    return { say: 'cost-rates', with: { none: own[0] ?? '', three: own[1] ?? '', five: own[2] ?? '' } };
  return {
    say: new Set(cheapest).size === 1 ? 'cost-rates-same' : 'cost-rates-turn',
    with: {
      first: first?.name ?? '',
      none: ranked[cheapest[0] ?? 0]?.name ?? '',
      three: ranked[cheapest[1] ?? 0]?.name ?? '',
      five: ranked[cheapest[2] ?? 0]?.name ?? '',
    },
  };
}
