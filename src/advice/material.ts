/** Which metal for this place, and which kind of anchor with it. */
import type { Phrase } from '../contracts/phrase.ts';
import { answerAsked, ids, limitedLines, sortCandidates } from './candidates.ts';
import { platingCheck } from './coating.ts';
import type { Draft } from './draft.ts';
import { exposureFrom } from './exposure.ts';
import { humidity } from './humidity.ts';
import { pairing } from './pairing.ts';
import type { Worksheet } from './worksheet.ts';

function placeLines(exposure: ReturnType<typeof exposureFrom>): Phrase[] {
  const { crackingRisk, resistanceClass, factor } = exposure;
  return [
    factor === undefined
      ? { say: 'material-beyond' }
      : {
          say: factor.onBoundary ? 'material-class-boundary' : 'material-class',
          with: { class: resistanceClass, factor: String(factor.factor) },
        },
    { say: 'material-cracking', with: { risk: { fact: 'cracking_risk', value: crackingRisk } } },
  ];
}

/** While the rock is not sounded no kind is free of limits; then those that may be used with limits are named. */
type Sorted = ReturnType<typeof sortCandidates>;

function kindLine(kinds: Sorted): Phrase[] {
  if (kinds.suitable.length > 0) return [{ say: 'material-kinds', with: { kinds: kinds.suitable } }];
  const limited = kinds.limited.map(({ what }) => what);
  return limited.length > 0 ? [{ say: 'material-kinds-limited', with: { kinds: limited } }] : [];
}

export async function material(sheet: Worksheet): Promise<Draft> {
  if (sheet.situation.metal_question === 'pair') return pairing(sheet);
  if (sheet.situation.metal_question === 'humidity') return humidity(sheet);
  const exposure = exposureFrom(await sheet.decide('exposure'));
  const judged = await sheet.decideEach('metal');
  const metals = sortCandidates('metal', judged);
  const kinds = sortCandidates('anchor', await sheet.decideEach('anchor-kind'));
  platingCheck(sheet);
  const points: Phrase[] = [
    ...limitedLines(metals.limited),
    ...placeLines(exposure),
    ...kindLine(kinds),
    { say: 'material-one-metal' },
  ];
  const recommend = {
    metal: ids(metals.suitable),
    limited: metals.limited.map(({ what }) => what.value),
    anchor: ids(kinds.suitable),
    cracking_risk: exposure.crackingRisk,
    resistance_class: exposure.resistanceClass,
  };
  return answerAsked(sheet, 'metal', judged, {
    ...best(metals, sheet.choice('environment') === 'unknown' ? 'anywhere' : exposure.crackingRisk),
    points,
    recommend,
    reject: metals.reject,
  });
}

/** The verdict on all metals together; `where` is the cracking risk, or `anywhere` while the place is not told. */
function best(metals: Sorted, where: string): Pick<Draft, 'stance' | 'verdict'> {
  if (metals.suitable.length > 0)
    return {
      stance: 'go',
      verdict: {
        say:
          where === 'anywhere' ? 'material-anywhere' : where === 'severe' ? 'material-only' : 'material-use',
        with: { metals: metals.suitable },
      },
    };
  const limited = metals.limited.map(({ what }) => what);
  return limited.length > 0
    ? { stance: 'limit', verdict: { say: 'material-limited', with: { metals: limited } } }
    : { stance: 'stop', verdict: { say: 'material-none' } };
}
