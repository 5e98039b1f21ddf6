export { OutOfRange } from '../engineering/index.ts';
export { advise, canAdvise, cautionsOn, covers, isRefused, openFacts } from './advise.ts';
export type { Desk, Judge } from './desk.ts';
export { guardedJudge } from './judge.ts';
