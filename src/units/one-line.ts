/** Names that members type, made fit for one line: no control characters, no marks that turn the direction of writing. */

/** All but those that keep a figure with its unit. */
const blanks = /[^\S\u00a0\u202f]+/g;
const invisible = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]|\p{Variation_Selector}/gu;
/** More than two marks on one letter would be drawn over the neighbouring lines. */
const heaped = /(\p{M}{2})\p{M}+/gu;
const rightToLeft = ['Hebrew', 'Arabic', 'Syriac', 'Thaana', 'Nko']
  .map((name) => `\\p{Script=${name}}`)
  .join('');
/** The end of a stretch of letters written from right to left. */
const turned = new RegExp(`[${rightToLeft}](?!\\s*[${rightToLeft}])`, 'gu');
/** Behind such a stretch, so that it does not pull the figures after it to its other side. */
const leftToRight = '\u200e';
const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** At most so many letters as a reader counts them, with an ellipsis where something was cut. */
export function oneLine(text: string, most = 80): string {
  // A name of a megabyte is not worth counting letter by letter.
  const start = text.slice(0, most * 20);
  const plain = start.replace(blanks, ' ').replace(invisible, '').replace(heaped, '$1').trim();
  const parts = [...letters.segment(plain)].map(({ segment }) => segment);
  const kept =
    parts.length > most || text.length > start.length
      ? `${parts
          .slice(0, most - 1)
          .join('')
          .trimEnd()}…`
      : plain;
  return kept.replace(turned, `$&${leftToRight}`);
}
