export { type DayRead, dayIn, isFuture } from './days.ts';
export { freshId, idsIn, markOf } from './ids.ts';
export { factsOfKind, openIn, textsOfKind } from './kinds.ts';
export { bodyLines, changeLines, historyLines, valueShown } from './show.ts';
