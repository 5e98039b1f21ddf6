import type { Phrase } from '../contracts/phrase.ts';
import type { Draft } from './draft.ts';
import { gapLines } from './gap.ts';
import type { Worksheet } from './worksheet.ts';

/** How to drill and clean the hole, in order. */
export async function hole(sheet: Worksheet): Promise<Draft> {
  const { values } = await sheet.decide('hole');
  const steps = [values.steps ?? []].flat();
  const diameter = sheet.number('diameter_mm');
  const depth = sheet.number('embedment_mm') ?? sheet.number('length_mm');
  const size: Phrase[] =
    diameter === undefined || depth === undefined
      ? []
      : [
          {
            say: 'hole-size',
            with: {
              hole: { value: sheet.number('hole_diameter_mm') ?? diameter + 2, unit: 'mm', exact: true },
              depth: { value: depth + 10, unit: 'mm', exact: true },
            },
          },
        ];
  return {
    stance: 'tell',
    verdict: { say: 'hole-verdict' },
    points: [
      ...size,
      ...gapLines(sheet),
      ...steps.map((step): Phrase => ({ say: 'line', with: { text: { of: 'row', id: `steps/${step}` } } })),
    ],
    recommend: { steps },
    reject: [],
  };
}
