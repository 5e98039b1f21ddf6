/** Checked by the compiler (`npm run check`): the three kinds of strength do not mix, and advice is not made by hand. */
import type { Advice, AdviceParts } from '../../src/contracts/advice.ts';
import { lognormalCharacteristic, type Result, uniformBond } from '../../src/engineering/index.ts';

declare function compareWithDesign(strength: Result<'design'>): boolean;
declare function showAdvice(advice: Advice): string;
declare const parts: AdviceParts;

const mean = uniformBond.mean({ bondStress: 10, diameter: 12, embedment: 100 });
const characteristic: Result<'characteristic'> = lognormalCharacteristic({ mean: mean.value, scatter: 0.3 });

// @ts-expect-error a mean is not a characteristic value
export const wrongKind: Result<'characteristic'> = mean;
// @ts-expect-error a characteristic value is not a mean
export const wrongWay: Result<'mean'> = characteristic;
// @ts-expect-error a characteristic value is not a design value
compareWithDesign(characteristic);
// @ts-expect-error advice comes from sealAdvice alone, not from its parts
showAdvice({ ...parts, id: 'x', deferral: true });
// @ts-expect-error advice without cautions cannot be written down
export const silent: AdviceParts = { ...parts, cautions: [] };
// @ts-expect-error advice without sources cannot be written down
export const unfounded: AdviceParts = { ...parts, sources: [] };
