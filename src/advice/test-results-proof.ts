/** Proof tests only: what it proves that they held, and what follows when one did not. */
import type { Phrase } from '../contracts/phrase.ts';
import { zeroFailureBound } from '../engineering/index.ts';
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

const confidence = 0.95;
/** So many must hold before at most one in twenty of the others can be bad: ln 0.05/ln 0.95 = 58.4. */
const forOneInTwenty = 59;

function loadOf(sheet: Worksheet): Phrase {
  const load = sheet.number('load_kn');
  return load === undefined
    ? { say: 'proof-load-untold' }
    : { say: 'proof-load', with: { load: { value: load, unit: 'kN', exact: true } } };
}

export async function proofResult(sheet: Worksheet): Promise<Draft> {
  const outcome = sheet.choice('proof_tests');
  const told = sheet.number('count');
  const count = told === undefined ? undefined : Math.floor(told);
  sheet.cite('bs-8539-2012');
  const load = loadOf(sheet);
  if (outcome !== 'all-held')
    return {
      stance: 'stop',
      verdict: { say: `proof-${outcome}` },
      points: [
        { say: 'proof-failed-out' },
        { say: outcome === 'one-gave-way' ? 'proof-double' : 'proof-all' },
        { say: 'proof-why' },
      ],
      recommend: { outcome },
      reject: [],
    };
  if (count === undefined)
    return {
      stance: 'stop',
      verdict: { say: 'proof-count' },
      points: [{ say: 'proof-little' }],
      recommend: { outcome },
      reject: [],
      lacking: ['count'],
    };
  const share = sheet.compute(zeroFailureBound({ count, confidence }));
  const percent = Math.round(100 * share);
  return {
    stance: 'limit',
    verdict: { say: 'proof-held', with: { count, load, share: percent } },
    points: [
      { say: 'proof-proves', with: { load } },
      ...(count < forOneInTwenty ? [{ say: 'proof-needed', with: { needed: forOneInTwenty } }] : []),
      { say: 'proof-little' },
      { say: 'proof-failure-instead' },
    ],
    recommend: { outcome, count, bad_share_pct: percent },
    reject: [],
  };
}
