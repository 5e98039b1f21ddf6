/** "Will it hold that?": worked out where rock, kind and size are known; otherwise what the standard tests, and no more. */
import type { Draft } from './draft.ts';
import { embedment } from './embedment.ts';
import { compare } from './load-compare.ts';
import { exactly, roundedUp } from './load-weight.ts';
import type { Worksheet } from './worksheet.ts';

/** What a strength follows from; a depth does as well as a length. */
function lackingOf(sheet: Worksheet): string[] {
  const open = ['rock', 'anchor', 'diameter_mm'].filter((fact) => sheet.told(fact) === undefined);
  const deep = sheet.told('length_mm') ?? sheet.told('embedment_mm');
  return deep === undefined ? [...open, 'length_mm'] : open;
}

function signsLine(sheet: Worksheet) {
  const signs = sheet.told('signs');
  return signs === undefined || signs === 'none-seen' ? [] : [{ say: 'load-strength-signs' }];
}

export async function strength(sheet: Worksheet): Promise<Draft> {
  sheet.cite('practice');
  const load = sheet.number('load_kn');
  const lacking = lackingOf(sheet);
  if (lacking.length === 0) {
    const draft = await embedment(sheet);
    return {
      ...draft,
      points: [...draft.points, { say: 'spacing-rule' }, ...signsLine(sheet)],
      recommend: { ...draft.recommend, case: 'strength' },
    };
  }
  sheet.cite('en-959-2018');
  const points = [{ say: 'load-strength-tell' }, ...signsLine(sheet)];
  if (load === undefined)
    return {
      stance: 'stop',
      verdict: { say: 'load-strength-cannot' },
      points: [{ say: 'load-strength-minimums' }, ...points],
      recommend: { case: 'strength' },
      reject: [],
    };
  const compared = compare(sheet, load, 'lead');
  return {
    stance: 'stop',
    verdict: { say: 'load-strength-open', with: { load: exactly(load, 'kN') } },
    points: [...compared.points, ...points],
    recommend: { case: 'strength', load_kn: roundedUp(load) },
    reject: [],
  };
}
