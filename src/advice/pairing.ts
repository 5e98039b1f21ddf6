/** May these two metals touch? The decision, how far apart they stand in sea water, and which of the two goes. */
import type { Rejected, Stance } from '../contracts/advice.ts';
import type { Measure, Phrase, Term } from '../contracts/phrase.ts';
import { potentialDifference } from '../engineering/index.ts';
import { numberCell, rangeCell } from '../rules/index.ts';
import { limitedLines, sortCandidates } from './candidates.ts';
import type { Draft } from './draft.ts';
import { pittingLines } from './pitting.ts';
import type { Worksheet } from './worksheet.ts';

const stances: Readonly<Record<string, Stance>> = { good: 'tell', poor: 'limit', never: 'stop' };

const volts = (value: number): Measure => ({ value, unit: 'V' });
const term = (value: string): Term => ({ fact: 'metal', value });

/** The row of the limits: a place that nobody told may be by the sea. */
function siteOf(sheet: Worksheet): string {
  const { setting, salt } = sheet.situation;
  if (setting === 'indoor') return 'indoors';
  return setting === 'open' && salt === 'none' ? 'outdoors' : 'marine';
}

const potentials = (sheet: Worksheet, metal: string): readonly [number, number] =>
  rangeCell(sheet.row('metals', metal), 'potential_v');

/** The most that two ranges can lie apart. */
function apart(sheet: Worksheet, a: readonly [number, number], b: readonly [number, number]): number {
  const ends = [
    { first: a[0], second: b[1] },
    { first: a[1], second: b[0] },
  ];
  const differences = ends.map((pair) => potentialDifference(pair));
  return sheet.compute(differences.reduce((most, one) => (one.value > most.value ? one : most)));
}

/** In a salty crevice stainless steel loses its shield and falls far below. */
function activeLines(sheet: Worksheet, pair: readonly [string, string]): Phrase[] {
  const rows = sheet.desk.rules.table('potentials').rows;
  return pair.flatMap((metal, index): Phrase[] => {
    const row = rows.find(({ id }) => id === `${metal}-active`);
    const other = pair[1 - index];
    if (row === undefined || other === undefined || other === metal) return [];
    const active = rangeCell(sheet.row('potentials', row.id), 'potential_v');
    return [
      {
        say: 'pairing-active',
        with: { metal: term(metal), volts: volts(apart(sheet, active, potentials(sheet, other))) },
      },
    ];
  });
}

function galvanicLines(sheet: Worksheet, metal: string, other: string): Phrase[] {
  if (metal === other) return [];
  const [own, its] = [potentials(sheet, metal), potentials(sheet, other)];
  const site = siteOf(sheet);
  sheet.check({
    id: 'galvanic',
    name: { say: `check-galvanic-${site}` },
    value: apart(sheet, own, its),
    limit: numberCell(sheet.row('potential-limits', site), 'limit_v'),
    unit: 'V',
    kind: 'plain',
    atMost: true,
  });
  const boltGoes = own[0] + own[1] < its[0] + its[1];
  return [
    { say: 'pairing-goes', with: { metal: term(boltGoes ? metal : other) } },
    ...(boltGoes ? [{ say: 'pairing-small-anode' }] : []),
    ...activeLines(sheet, [metal, other]),
  ];
}

/** That two metals bear each other says nothing of the place: each is judged for it once it is told. */
async function placeJudged(
  sheet: Worksheet,
  metals: readonly string[],
): Promise<{ readonly lines: readonly Phrase[]; readonly reject: readonly Rejected[] }> {
  if (sheet.told('environment') === undefined) return { lines: [{ say: 'pairing-place' }], reject: [] };
  const judged = [];
  for (const candidate of new Set(metals))
    judged.push({ candidate, outcome: await sheet.decide('metal', candidate) });
  const { limited, reject } = sortCandidates('metal', judged);
  return { lines: limitedLines(limited), reject };
}

export async function pairing(sheet: Worksheet): Promise<Draft> {
  const metal = sheet.choice('metal');
  const other = sheet.choice('metal_other');
  const { values, because } = await sheet.decide('pairing');
  const verdict = String(values.pairing);
  const reasons = (because.pairing ?? []).map((rule): Phrase => ({ say: 'reason', with: { why: { rule } } }));
  sheet.cite('en-959-2018');
  if (metal === 'unknown' || other === 'unknown')
    return {
      stance: 'stop',
      verdict: { say: 'pairing-untold' },
      points: [...reasons, { say: 'material-one-metal' }],
      recommend: { pairing: verdict },
      reject: [],
    };
  const galvanic = galvanicLines(sheet, metal, other);
  const place = await placeJudged(sheet, [metal, other]);
  return {
    stance: stances[verdict] ?? 'stop',
    verdict: { say: `pairing-${verdict}`, with: { metal: term(metal), other: term(other) } },
    points: [
      ...reasons,
      ...galvanic,
      ...place.lines,
      ...pittingLines(sheet, [metal, other]),
      { say: 'material-one-metal' },
    ],
    recommend: { pairing: verdict },
    reject: place.reject,
  };
}
