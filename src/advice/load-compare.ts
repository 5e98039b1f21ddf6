/** A load beside what anchors are tested for: type tests, the rare highest load, and a strength from tests. */
import type { Phrase } from '../contracts/phrase.ts';
import { en959 } from '../engineering/index.ts';
import { numberCell } from '../rules/index.ts';
import { exactly, metricKn, roundedUp } from './load-weight.ts';
import type { Worksheet } from './worksheet.ts';

/** On loads that come and go: EN 1990, Annex A (from memory). */
export const loadFactor = 1.5;

/**
 * On a 5 % strength of rock: 1.5 for the material times 1.4 for poor installation safety, EN 1992-4, Table 4.1
 * (from memory). Written for concrete; rock has no code, so the worst row is taken.
 */
export const strengthFactor = 2.1;

const share = (load: number, of: number): string => String(Math.ceil((100 * load) / of));

/** Load against the type-test minimums of EN 959: of the direction that was told, else of both. */
function typeTests(sheet: Worksheet, load: number): Phrase {
  sheet.cite('en-959-2018');
  const direction = sheet.told('load_direction') === undefined ? 'unknown' : sheet.choice('load_direction');
  const out = share(load, en959.axialStrength.value);
  const along = share(load, en959.radialStrength.value);
  if (direction === 'tension') return { say: 'load-share-out', with: { out } };
  if (direction === 'shear') return { say: 'load-share-along', with: { along } };
  return { say: 'load-share', with: { out, along } };
}

/** The 5 % strength that the club's tests gave, over its factor, against the load times its own. */
function design(sheet: Worksheet, load: number): Phrase[] {
  const strength = sheet.number('characteristic_kn');
  if (strength === undefined) return [];
  sheet.cite('en-1990-2002');
  sheet.cite('en-1992-4-2018');
  const holds = sheet.check({
    id: 'design',
    name: { say: 'check-load-design' },
    value: strength / strengthFactor,
    limit: roundedUp(load * loadFactor),
    unit: 'kN',
    kind: 'design',
  });
  const factors = { strength: exactly(strengthFactor, '1'), load: exactly(loadFactor, '1') };
  return [{ say: holds ? 'load-design-met' : 'load-design-short', with: factors }];
}

/** What practice plans an anchor of this use for; the rare highest load is also what every load is checked against. */
export function planLine(sheet: Worksheet, row: string): Phrase {
  const use = sheet.row('uses', row);
  return {
    say: 'load-plan',
    with: {
      usual: metricKn(numberCell(use, 'action_kn')),
      rare: metricKn(numberCell(use, 'accidental_kn')),
    },
  };
}

/**
 * Lines and checks on one load, in kN, that one anchor may get. `row` is the use whose rare highest load counts
 * when nobody told the use. `ok` is false when the load is more than that, or more than the tests allow.
 */
export function compare(
  sheet: Worksheet,
  load: number,
  row: string,
): { readonly points: readonly Phrase[]; readonly ok: boolean } {
  const use = sheet.told('use') === undefined ? row : sheet.choice('use');
  const rare = numberCell(sheet.row('uses', use), 'accidental_kn');
  const within = sheet.check({
    id: 'accidental',
    name: { say: 'check-load-rare' },
    value: rare,
    limit: roundedUp(load),
    unit: 'kN',
    kind: 'plain',
  });
  const tested = design(sheet, load);
  return {
    points: [
      typeTests(sheet, load),
      ...(within ? [] : [{ say: 'load-above-rare', with: { rare: metricKn(rare) } }]),
      ...tested,
    ],
    ok: within && tested.every(({ say }) => say === 'load-design-met'),
  };
}
