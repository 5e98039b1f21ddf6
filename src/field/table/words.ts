/** What columns and units are called in tables of records: rules/words/tables.json. */
import { z } from 'zod';
import { plain } from '../../units/plain.ts';

const names = z.array(z.string().min(1)).min(1);

export const tableWordsSchema = z.strictObject({
  about: z.string(),
  /** Column → language → names, the first is the one that is written. */
  columns: z.record(z.string(), z.record(z.string(), names)),
  /** Unit → how it is spelt in brackets. */
  units: z.record(z.string(), names),
});

export type TableWords = z.infer<typeof tableWordsSchema>;

/** Small letters without accents, marks as blanks. */
export const folded = (text: string): string =>
  plain(text)
    .replaceAll(/[’`]/g, "'")
    .replaceAll(/[_\s-]+/g, ' ')
    .trim();

const lookups = new WeakMap<TableWords, ReadonlyMap<string, string>>();

/** Name in any language, or the id itself → column. */
export function columnNamed(words: TableWords, name: string): string | undefined {
  const known =
    lookups.get(words) ??
    new Map(
      Object.entries(words.columns).flatMap(([column, byLanguage]) =>
        [column, ...Object.values(byLanguage).flat()].map((one) => [folded(one), column] as const),
      ),
    );
  lookups.set(words, known);
  return known.get(folded(name));
}

export const unitSpelt = (words: TableWords, text: string): string | undefined =>
  Object.entries(words.units).find(([, spellings]) =>
    spellings.some((one) => folded(one) === folded(text)),
  )?.[0];
