import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

/** What must not be answered with a number or a promise: says so, why, and who can. */
export async function refuse(sheet: Worksheet): Promise<Draft> {
  const { values, because } = await sheet.decide('refusal');
  const reason = String(values.refusal);
  const [rule] = because.refusal ?? [];
  return {
    stance: 'stop',
    verdict: { say: `refusal-${reason}` },
    points: [
      ...(rule === undefined ? [] : [{ say: 'refusal-reason', with: { why: { rule } } }]),
      { say: `refusal-${reason}-next` },
    ],
    recommend: { refusal: reason },
    reject: [],
  };
}
