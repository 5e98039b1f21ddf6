/** Which adhesive for this hole, cold and rock; with its cure, and the amount once the size is told. */
import { amountOf } from './amount.ts';
import { answerAsked, ids, limitedLines, sortCandidates } from './candidates.ts';
import { cureLine } from './cure-guide.ts';
import type { Draft } from './draft.ts';
import { gapLines } from './gap.ts';
import type { Worksheet } from './worksheet.ts';

export async function adhesive(sheet: Worksheet): Promise<Draft> {
  const judged = await sheet.decideEach('adhesive');
  const chemistries = sortCandidates('adhesive', judged);
  const limited = chemistries.limited.map(({ what }) => what);
  const usable = [...chemistries.suitable, ...limited];
  const temperature = sheet.number('temperature_c');
  const amount = amountOf(sheet);
  const best = chemistries.suitable.length > 0 ? chemistries.suitable : limited;
  const say =
    chemistries.suitable.length > 0
      ? 'adhesive-use'
      : limited.length > 0
        ? 'adhesive-limited'
        : 'adhesive-none';
  return answerAsked(sheet, 'adhesive', judged, {
    stance: chemistries.suitable.length > 0 ? 'go' : limited.length > 0 ? 'limit' : 'stop',
    verdict: best.length === 0 ? { say } : { say, with: { what: best } },
    points: [
      ...limitedLines(chemistries.limited),
      ...(temperature === undefined
        ? [{ say: 'adhesive-cure-unknown' }]
        : usable.map(({ value }) => cureLine(sheet, value, temperature))),
      { say: 'cure-sheet' },
      ...(amount?.lines ?? gapLines(sheet)),
    ],
    recommend: {
      adhesive: ids(chemistries.suitable),
      limited: ids(limited),
      ...amount?.recommend,
    },
    reject: chemistries.reject,
  });
}
