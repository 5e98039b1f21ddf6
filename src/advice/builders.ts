/** One builder a topic: the file to look for when an answer on that topic is to change. */
import { adhesive } from './adhesive.ts';
import { adhesiveAmount } from './amount.ts';
import { anchorKind } from './anchor-kind.ts';
import { compare } from './compare.ts';
import { cost } from './cost.ts';
import { cure } from './cure.ts';
import type { Builder } from './draft.ts';
import { embedment } from './embedment.ts';
import { hole } from './hole.ts';
import { inspect } from './inspect.ts';
import { load } from './load.ts';
import { material } from './material.ts';
import { metalLife } from './metal-life.ts';
import { cautionsOnly, emergency, permission } from './plain.ts';
import { spacing } from './spacing.ts';
import { pulltestPlan } from './test-plan.ts';
import { pulltestResult } from './test-results.ts';

export const builders: Readonly<Record<string, Builder>> = {
  material,
  anchor: anchorKind,
  embedment,
  adhesive,
  'adhesive-amount': adhesiveAmount,
  cure,
  hole,
  inspect,
  spacing,
  load,
  'coating-life': metalLife,
  cost,
  compare,
  'pulltest-plan': pulltestPlan,
  'pulltest-result': pulltestResult,
  cautions: cautionsOnly,
  permission,
  emergency,
};
