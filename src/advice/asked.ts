/** What was told decides what is asked: a size to find or to check, one temperature or several, one metal or two. */
import { gapOf } from './gap.ts';
import type { Worksheet } from './worksheet.ts';

function metalQuestion(sheet: Worksheet): 'pair' | 'humidity' | 'which' {
  if (sheet.told('metal_other') !== undefined) return 'pair';
  const air = sheet.told('air_temperature_c') !== undefined && sheet.told('humidity_pct') !== undefined;
  return air ? 'humidity' : 'which';
}

/** Hands every decision what follows from the numbers that were told. */
export function placeAsked(sheet: Worksheet): void {
  const told = (fact: string): boolean => sheet.told(fact) !== undefined;
  const size = told('diameter_mm') && (told('length_mm') || told('embedment_mm'));
  sheet.know('size_asked', size ? 'check' : 'find');
  sheet.know('cure_asked', told('step_hours') && told('step_temperature_c') ? 'spells' : 'now');
  sheet.know('metal_question', metalQuestion(sheet));
  const gap = gapOf(sheet);
  if (gap === undefined) return;
  sheet.know('gap_check', gap.verdict);
  sheet.know('gap_width', gap.width);
}
