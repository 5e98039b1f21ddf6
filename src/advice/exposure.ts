/** What the place does to metal: the parts of the resistance factor, the class that follows, and the cracking risk. */
import { type ResistanceFactor, resistanceFactor } from '../engineering/index.ts';
import type { Outcome } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

export interface Exposure {
  readonly crackingRisk: string;
  /** `beyond`: the structural code does not cover such a place. */
  readonly resistanceClass: string;
  readonly factor: ResistanceFactor | undefined;
}

/** "F-15" is the rule files' way to write the table's −15. */
const part = (outcome: Outcome, name: string): number => Number(String(outcome.values[name]).slice(1));

export function exposureFrom(outcome: Outcome): Exposure {
  const crackingRisk = String(outcome.values.cracking_risk);
  if (outcome.values.scope === 'beyond')
    return { crackingRisk, resistanceClass: 'beyond', factor: undefined };
  const factor = resistanceFactor({
    chloride: part(outcome, 'chloride_factor'),
    sulphur: part(outcome, 'sulphur_factor'),
    cleaning: part(outcome, 'washing_factor'),
  });
  return { crackingRisk, resistanceClass: factor.advised, factor };
}

/** Lets every later decision know the place. Builders whose answer rests on it decide again, to have it on record. */
export async function placeExposure(sheet: Worksheet): Promise<void> {
  const exposure = exposureFrom(await sheet.consult('exposure'));
  sheet.know('cracking_risk', exposure.crackingRisk);
  sheet.know('resistance_class', exposure.resistanceClass);
}
