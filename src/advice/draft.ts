import type { AdviceParts } from '../contracts/advice.ts';
import type { Worksheet } from './worksheet.ts';

/** What a builder gives; the rest of the advice is the worksheet's record. */
export type Draft = Pick<AdviceParts, 'stance' | 'verdict' | 'points' | 'recommend' | 'reject'> &
  Partial<Pick<AdviceParts, 'lacking' | 'pictures'>>;

export type Builder = (sheet: Worksheet) => Promise<Draft>;
