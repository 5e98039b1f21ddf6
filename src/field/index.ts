export {
  atSamePlace,
  factsOfAnchor,
  foldedName,
  isSpan,
  looksAt,
  placeOf,
  yearsSince,
} from './anchor.ts';
export { type DayRead, dayIn, isFuture } from './days.ts';
export { freshId, idsIn, markOf } from './ids.ts';
export { factsOfKind, lacksCrag, openIn, textsOfKind } from './kinds.ts';
export { isSensitive, sheltered, shelteredRecords } from './shelter.ts';
export { bodyLines, changeLines, historyLines, valueShown } from './show.ts';
