/** One builder a topic: the file to look for when an answer on that topic is to change. */
import { adhesive } from './adhesive.ts';
import { adhesiveAmount } from './amount.ts';
import { anchorKind } from './anchor-kind.ts';
import { coatingLife } from './coating.ts';
import { cure } from './cure.ts';
import type { Builder } from './draft.ts';
import { embedment } from './embedment.ts';
import { hole } from './hole.ts';
import { material } from './material.ts';
import { cautionsOnly, emergency, permission } from './plain.ts';
import { spacing } from './spacing.ts';

export const builders: Readonly<Record<string, Builder>> = {
  material,
  anchor: anchorKind,
  embedment,
  adhesive,
  'adhesive-amount': adhesiveAmount,
  cure,
  hole,
  spacing,
  'coating-life': coatingLife,
  cautions: cautionsOnly,
  permission,
  emergency,
};
