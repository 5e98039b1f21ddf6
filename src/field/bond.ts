/** What the club's pulls say of the bond of one adhesive in one rock, as facts for the adviser. */
import type { Facts } from '../contracts/facts.ts';
import type { ClubRecord } from '../contracts/record.ts';
import { numberCell, type RuleSet } from '../rules/index.ts';
import { type Pull, pullsOf } from './groups.ts';

const letGo = ['adhesive-steel', 'adhesive-rock', 'combined'];
/** So many of the newest; a club pulls fewer in a lifetime. */
const most = 300;

interface BondTest {
  /** MPa */
  readonly bond: number;
  /** What hole and shank left of it; not told counts as the best, so that nothing is made better than it was. */
  readonly share: number;
  readonly failed: boolean;
}

function shareOf(rules: RuleSet, { record }: Pull): number {
  const factor = (table: string, fact: string): number => {
    const value = record.body.facts[fact];
    return typeof value === 'string' && value !== 'unknown'
      ? numberCell(rules.row(table, value), 'bond_factor')
      : 1;
  };
  return factor('hole-moistures', 'hole_moisture') * factor('shanks', 'shank');
}

/**
 * Bond as the load over the glued surface, τ = N/(π·d·h), of both legs together. Null where it cannot be known: no size,
 * no glue, or not pulled straight out (a pull along the rock says nothing of the bond, not even a lower bound).
 * The whole length counts where no depth was told, and two legs where the kind was not: both make the bond smaller.
 */
function bondTest(rules: RuleSet, pull: Pull): BondTest | null {
  const { facts } = pull.record.body;
  const { diameter_mm: diameter, load_direction: direction, anchor } = facts;
  const depth = facts.embedment_mm ?? facts.length_mm;
  if (typeof diameter !== 'number' || typeof depth !== 'number') return null;
  if (direction === 'shear' || direction === 'combined') return null;
  const row = typeof anchor === 'string' && anchor !== 'unknown' ? rules.row('anchors', anchor) : undefined;
  if (row !== undefined && row.is.family !== 'glue-in') return null;
  const legs = row === undefined ? 2 : numberCell(row, 'legs');
  const bond = (1000 * pull.kn) / (Math.PI * diameter * depth * legs);
  return {
    bond: Number(bond.toPrecision(3)),
    share: shareOf(rules, pull),
    failed: letGo.includes(pull.mode),
  };
}

/** Facts of the bond in this rock with this adhesive; none where nothing failed in it. */
export function bondFacts(
  rules: RuleSet,
  records: readonly ClubRecord[],
  rock: string,
  adhesive: string,
): Facts {
  const same = records.filter(({ body }) => body.facts.rock === rock && body.facts.adhesive === adhesive);
  const tests = pullsOf(same.slice(-most)).flatMap((pull) => bondTest(rules, pull) ?? []);
  const failed = tests.filter((one) => one.failed);
  const least = tests.filter((one) => !one.failed);
  const measured = (values: readonly number[]) => ({ value: values, from: 'measured' as const });
  const bonds = (of: readonly BondTest[]) => measured(of.map(({ bond }) => bond));
  const shares = (of: readonly BondTest[]) => measured(of.map(({ share }) => share));
  if (failed.length === 0) return {};
  return {
    club_bond_mpa: bonds(failed),
    club_bond_share: shares(failed),
    ...(least.length === 0
      ? {}
      : { club_bond_least_mpa: bonds(least), club_bond_least_share: shares(least) }),
  };
}
