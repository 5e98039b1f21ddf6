import { answerAsked, ids, limitedLines, sortCandidates } from './candidates.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

/** Glue-in or mechanical, and of which kind, for this rock and use. */
export async function anchorKind(sheet: Worksheet): Promise<Draft> {
  const judged = await sheet.decideEach('anchor-kind');
  const kinds = sortCandidates('anchor', judged);
  const none = kinds.suitable.length === 0;
  const best = none ? kinds.limited.map(({ what }) => what) : kinds.suitable;
  return answerAsked(sheet, 'anchor', judged, {
    stance: none ? (best.length === 0 ? 'stop' : 'limit') : 'go',
    verdict:
      best.length === 0
        ? { say: 'anchor-none' }
        : { say: none ? 'anchor-limited' : 'anchor-use', with: { kinds: best } },
    points: [...limitedLines(kinds.limited), { say: 'anchor-next' }],
    recommend: { anchor: ids(kinds.suitable), limited: kinds.limited.map(({ what }) => what.value) },
    reject: kinds.reject,
  });
}
