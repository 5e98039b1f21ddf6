/** What a choice costs over the years, and how many holes it leaves: only among what is safe at the place. */
import type { Phrase } from '../contracts/phrase.ts';
import { annuityFactor, lifeCycleCost } from '../engineering/index.ts';
import { lifeLine, money, priceLine, rateLine, robustLine, type Terms } from './cost-lines.ts';
import { isPlaceTold, type Option, optionsOf, type Priced, sortOptions } from './cost-options.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

/** Looked ahead when nobody says how far, and the real rate that public handbooks use. */
const usualHorizon = 50;
const usualRate = 3;

const yearlyOf = ({ plan }: Priced, { horizon, rate }: Terms): number =>
  lifeCycleCost(plan, horizon, rate).yearly;

function optionLine(option: Priced, terms: Terms): Phrase {
  const { plan, name, labour } = option;
  const cost = lifeCycleCost(plan, terms.horizon, terms.rate);
  return {
    say: 'cost-option',
    with: {
      name,
      yearly: money(cost.yearly),
      total: money(cost.presentValue),
      holes: cost.holes,
      horizon: terms.horizon,
      parts: { ...money(plan.installed - labour), exact: true },
      labour: { ...money(labour), exact: true },
      life: { value: plan.life, unit: 'a' },
    },
  };
}

const plannedLines = (options: readonly Option[]): Phrase[] =>
  options.flatMap(({ name, planned }) =>
    planned === undefined
      ? []
      : [
          {
            say: 'cost-planned',
            with: {
              name,
              range: {
                say: planned.shortest === planned.longest ? 'life-range-one' : 'life-range',
                with: {
                  low: { value: planned.shortest, unit: '1' },
                  high: { value: planned.longest, unit: '1' },
                },
              },
            },
          },
        ],
  );

/** What is missing before anything can be reckoned, said of the first choice that lacks it. */
function incomplete(
  sheet: Worksheet,
  open: readonly Option[],
  common: Pick<Draft, 'points' | 'reject'>,
): Draft {
  const price = open.find(({ parts }) => parts === undefined);
  const lifeless = open.find(({ life }) => life === undefined);
  const say = open.length === 0 ? 'cost-none-safe' : price !== undefined ? 'cost-price' : 'cost-life';
  const place = lifeless?.metal !== undefined && !isPlaceTold(sheet);
  return {
    ...common,
    stance: 'stop',
    verdict: { say, with: { name: (price ?? lifeless)?.name ?? '' } },
    recommend: {},
    lacking:
      open.length === 0 ? [] : price !== undefined ? ['unit_cost'] : [place ? 'environment' : 'life_years'],
  };
}

function verdictOf(sheet: Worksheet, ranked: readonly Priced[], terms: Terms): Phrase {
  const [best, next] = ranked;
  if (best === undefined) return { say: 'cost-none-safe' };
  const args = { name: best.name, yearly: money(yearlyOf(best, terms)), horizon: terms.horizon };
  if (next === undefined) {
    const { holes } = lifeCycleCost(best.plan, terms.horizon, terms.rate);
    return { say: best.metal === undefined ? 'cost-this' : 'cost-one', with: { ...args, holes } };
  }
  if (best.metal !== undefined && !isPlaceTold(sheet)) return { say: 'cost-place' };
  return {
    say: best.metal === undefined ? 'cost-cheapest-if-safe' : 'cost-cheapest',
    with: { ...args, other: next.name, otherYearly: money(yearlyOf(next, terms)) },
  };
}

export async function cost(sheet: Worksheet): Promise<Draft> {
  const horizon = sheet.number('horizon_years') ?? usualHorizon;
  const percent = sheet.number('discount_pct') ?? usualRate;
  const terms: Terms = { horizon, rate: percent / 100 };
  sheet.cite('iso-15686-5');
  if (isPlaceTold(sheet)) await sheet.decide('exposure');
  const options = optionsOf(sheet);
  const { priced, open, limited, reject } = await sortOptions(sheet, options);
  const limits = limited.map(
    ({ what, why }): Phrase => ({ say: 'limited', with: { what, why: { rule: why } } }),
  );
  const missing = open.map(
    ({ name, parts }): Phrase => ({
      say: parts === undefined ? 'cost-no-price' : 'cost-no-life',
      with: { name },
    }),
  );
  if (priced.length === 0) return incomplete(sheet, open, { points: [...limits, ...missing], reject });
  sheet.compute(annuityFactor({ rate: terms.rate, years: horizon }));
  const compared =
    priced.length > 1 && priced.every(({ metal }) => metal === undefined || isPlaceTold(sheet));
  const ranked = compared ? priced.toSorted((a, b) => yearlyOf(a, terms) - yearlyOf(b, terms)) : priced;
  const [best, next] = ranked;
  const count = sheet.number('count');
  const noLabour = sheet.numbers('labour_cost').length === 0;
  return {
    stance: compared && limited.length === 0 ? 'tell' : 'limit',
    verdict: verdictOf(sheet, ranked, terms),
    points: [
      ...limits,
      ...ranked.map((option) => optionLine(option, terms)),
      ...plannedLines(ranked),
      ...missing,
      ...(count === undefined || best === undefined
        ? []
        : [
            {
              say: 'cost-all',
              with: {
                count,
                name: best.name,
                total: money(count * lifeCycleCost(best.plan, horizon, terms.rate).presentValue),
              },
            },
          ]),
      ...(compared && best && next
        ? [priceLine(best, next, terms), lifeLine(best, next, terms), robustLine(ranked, terms)]
        : []),
      ...(compared || ranked.length === 1 ? [rateLine(ranked, terms)] : []),
      { say: 'cost-terms', with: { horizon, rate: { value: percent, unit: '1', exact: true } } },
      ...(noLabour ? [{ say: 'cost-no-labour' }] : []),
      { say: 'cost-holes' },
    ],
    recommend: {
      options: ranked.map(({ id }) => id),
      yearly: ranked.map((option) => Number(yearlyOf(option, terms).toPrecision(4))),
      holes: ranked.map(({ plan }) => lifeCycleCost(plan, horizon, terms.rate).holes),
      ...(compared && best ? { cheapest: best.id } : {}),
    },
    reject,
  };
}
