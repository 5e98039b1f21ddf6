/** The choices whose costs are compared: from what was said, in the order in which it was said. */
import type { Rejected } from '../contracts/advice.ts';
import type { Phrase, PhraseArg } from '../contracts/phrase.ts';
import type { CostPlan } from '../engineering/index.ts';
import { type PlanningLife, planningLife } from './metal-life.ts';
import type { Worksheet } from './worksheet.ts';

/** What was told of one choice. Money in the club's own unit. */
export interface Option {
  readonly name: PhraseArg;
  /** Id of the metal, or "option 1". */
  readonly id: string;
  readonly metal: string | undefined;
  readonly parts: number | undefined;
  readonly labour: number;
  readonly life: number | undefined;
  /** Where the life was planned from the place and not told. */
  readonly planned: PlanningLife | undefined;
}

/** A choice of which price and life are known. */
export interface Priced extends Option {
  readonly plan: CostPlan;
}

const named = ['option_1', 'option_2', 'option_3'] as const;

/** One value each in the order said; a single one for the work is meant for all. */
const valueAt = (values: readonly number[], index: number, shared: boolean): number | undefined =>
  values[index] ?? (shared && values.length === 1 ? values[0] : undefined);

export const isPlaceTold = (sheet: Worksheet): boolean => sheet.choice('environment') !== 'unknown';

export function optionsOf(sheet: Worksheet): readonly Option[] {
  const metals = named.flatMap((fact) => {
    const metal = sheet.told(fact);
    return typeof metal === 'string' ? [sheet.choice(fact)] : [];
  });
  const single = metals.length === 0 ? sheet.told('metal') : undefined;
  if (typeof single === 'string') metals.push(sheet.choice('metal'));
  const parts = sheet.numbers('unit_cost');
  const labour = sheet.numbers('labour_cost');
  const lives = sheet.numbers('life_years');
  const count = Math.max(metals.length, metals.length > 1 ? 0 : Math.max(parts.length, lives.length), 1);
  return Array.from({ length: count }, (_, index) => {
    const metal = count === metals.length ? metals[index] : undefined;
    const told = valueAt(lives, index, false);
    const planned = told === undefined && metal !== undefined ? planningLife(sheet, metal) : undefined;
    return {
      id: metal ?? `option ${index + 1}`,
      name: metal === undefined ? optionName(index, count) : { fact: 'metal', value: metal },
      metal,
      parts: valueAt(parts, index, false),
      labour: valueAt(labour, index, true) ?? 0,
      life: told ?? planned?.shortest,
      planned,
    };
  });
}

const optionName = (index: number, count: number): Phrase =>
  count === 1 ? { say: 'cost-anchor' } : { say: 'cost-nth', with: { number: index + 1 } };

export interface Sorted {
  readonly priced: readonly Priced[];
  /** Safe, but a price or a life is missing. */
  readonly open: readonly Option[];
  readonly limited: readonly { readonly what: PhraseArg; readonly why: string }[];
  readonly reject: readonly Rejected[];
}

/** Safety first: what is not fit for the place is not reckoned at all. */
export async function sortOptions(sheet: Worksheet, options: readonly Option[]): Promise<Sorted> {
  const priced: Priced[] = [];
  const open: Option[] = [];
  const limited: { what: PhraseArg; why: string }[] = [];
  const reject: Rejected[] = [];
  for (const option of options) {
    const { metal, parts, life } = option;
    if (metal !== undefined && isPlaceTold(sheet)) {
      const { values, because } = await sheet.decide('metal', metal);
      const [rule = ''] = because.suitability ?? [];
      if (values.suitability === 'unsuitable') {
        reject.push({ what: { fact: 'metal', value: metal }, why: [rule] });
        continue;
      }
      if (values.suitability === 'limited') limited.push({ what: option.name, why: rule });
    }
    if (parts === undefined || life === undefined) open.push(option);
    else priced.push({ ...option, plan: { installed: parts + option.labour, life } });
  }
  return { priced, open, limited, reject };
}
