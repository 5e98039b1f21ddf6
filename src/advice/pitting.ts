/** Rank of stainless steels by their resistance to pitting; it says nothing of cracking, and nothing of other metals. */
import type { Phrase } from '../contracts/phrase.ts';
import { hasCell, numberCell } from '../rules/index.ts';
import type { Worksheet } from './worksheet.ts';

/** One line for each of those asked about that is a stainless steel. */
export function pittingLines(sheet: Worksheet, asked: readonly string[]): Phrase[] {
  const ranked = sheet.desk.rules
    .table('metals')
    .rows.filter((row) => hasCell(row, 'pren'))
    .toSorted((a, b) => numberCell(b, 'pren') - numberCell(a, 'pren'));
  const lines = ranked.flatMap((row, place): Phrase[] =>
    asked.includes(row.id)
      ? [
          {
            say: 'pitting-line',
            with: {
              metal: { fact: 'metal', value: row.id },
              pren: { value: numberCell(sheet.row('metals', row.id), 'pren'), unit: '1' },
              place: place + 1,
              count: ranked.length,
            },
          },
        ]
      : [],
  );
  if (lines.length > 0) sheet.cite('iso-15156-3');
  return lines;
}
