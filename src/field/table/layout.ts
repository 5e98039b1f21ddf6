/** Which columns a table of one kind of record has. A register of anchors is another layout, not other code. */
import type { RecordKind } from '../../contracts/record.ts';
import { factsOfKind, textsOfKind } from '../kinds.ts';

export interface Layout {
  readonly kind: RecordKind;
  readonly facts: readonly string[];
  readonly texts: readonly string[];
  /** Without these a row is no record. */
  readonly needed: readonly string[];
  /** Known columns beside the needed ones that make a table one of these, and no other list of numbers. */
  readonly atLeast: number;
  /** Another fact whose possible values a fact must keep to as well. */
  readonly alsoAs: Readonly<Record<string, string>>;
}

export const testLayout: Layout = {
  kind: 'test',
  facts: factsOfKind('test'),
  texts: textsOfKind('test'),
  needed: ['load_kn'],
  atLeast: 2,
  alsoAs: { load_kn: 'pulls_kn' },
};

/** Of an old anchor the kind is often not known: the cell may say so, but a place it must have. */
export const anchorLayout: Layout = {
  kind: 'anchor',
  facts: factsOfKind('anchor'),
  texts: textsOfKind('anchor'),
  needed: ['crag', 'anchor'],
  atLeast: 1,
  alsoAs: {},
};
