/** Which anchors of the register to see to first: an order of work by the rules, never a clearance of the rest. */
import type { Facts } from '../../contracts/facts.ts';
import type { Phrase } from '../../contracts/phrase.ts';
import type { ClubRecord } from '../../contracts/record.ts';
import { looksAt, valueShown, yearsSince } from '../../field/index.ts';
import { whereOf } from '../../field/listing.ts';
import { advised, type Recorded, type Said, saying, type Tools } from './context.ts';
import { anchorFacts } from './looks.ts';

const mostRanked = 15;

/** Smaller comes first; what is not known stands before what is known to be good, never behind it. */
const verdicts = ['replace-now', 'do-not-use', 'limit', 'trust'];
const unlooked = verdicts.indexOf('trust');
const bad = 0;
const unknown = 1;
const limited = 2;
const good = 3;

interface Ranked {
  readonly record: ClubRecord;
  readonly order: readonly number[];
  readonly reasons: readonly Phrase[];
}

interface MetalJudged {
  readonly order: number;
  readonly why: Phrase;
  /** Years to plan with in that place: shortest, longest. */
  readonly years: readonly [number, number] | null;
}

/** The metal against the place. */
async function metalOf(tools: Tools, facts: Facts): Promise<MetalJudged> {
  if (facts.metal === undefined)
    return { order: unknown, why: { say: 'register-metal-unknown' }, years: null };
  const advice = facts.environment === undefined ? null : await advised(tools, 'coating-life', facts);
  if (advice === null || advice.lacking.length > 0)
    return { order: unknown, why: { say: 'register-place-unknown' }, years: null };
  const { years, years_from: from = years, years_to: to = years } = advice.recommend;
  const order = advice.stance === 'stop' ? bad : advice.stance === 'limit' ? limited : good;
  const known = typeof from === 'number' && typeof to === 'number';
  return { order, why: advice.verdict, years: known ? [from, to] : null };
}

/** The age against the years to plan for; what is not known counts as past the shortest. */
function ageOf(day: string | undefined, years: MetalJudged['years'], now: string): [number, number, Phrase] {
  if (day === undefined) return [unknown, 0, { say: 'register-age-unknown' }];
  const age = yearsSince(day, now);
  const shown = Math.floor(age);
  if (years === null) return [unknown, -age, { say: 'register-age-only', with: { years: shown } }];
  const [shortest, longest] = years;
  const order = age >= longest ? bad : age >= shortest ? unknown : good;
  const planned = { years: shown, low: Math.floor(shortest), high: Math.floor(longest) };
  const say = order === good ? 'register-age-within' : 'register-age-past';
  return [order, -age / Math.max(shortest, 0.5), { say, with: planned }];
}

/** More people hang on it, or a load that stays, before a single climber's. */
function useOf(tools: Tools, use: string | undefined): number {
  if (use === undefined) return bad;
  const { is } = tools.rules.row('uses', use);
  if (is.sustained === 'yes') return bad;
  return is.two_anchors === true ? unknown : limited;
}

async function lookOf(
  tools: Tools,
  facts: Facts,
  look: ClubRecord | undefined,
): Promise<[number, Phrase | null]> {
  const signs = look?.body.facts.signs;
  if (look === undefined || signs === undefined) return [unlooked, null];
  const advice = await advised(tools, 'inspect', { ...facts, signs: { value: signs, from: 'club' } });
  const order = verdicts.indexOf(String(advice?.recommend.verdict));
  const seen = { id: look.id, day: look.body.texts.day ?? look.at.slice(0, 10) };
  const shown = valueShown(tools.rules, 'signs', signs);
  return [
    Math.max(order, 0),
    { say: 'register-first-seen', with: { ...seen, signs: shown, verdict: advice?.verdict ?? '' } },
  ];
}

async function ranked(
  tools: Tools,
  said: Said,
  record: ClubRecord,
  looks: readonly ClubRecord[],
): Promise<Ranked> {
  const facts = anchorFacts(said.session, record.body);
  const metal = await metalOf(tools, facts);
  const [age, ratio, why] = ageOf(record.body.texts.day, metal.years, said.at);
  const use = facts.use?.value;
  const worst = await worstLook(tools, facts, looks);
  const reasons = [...(worst[1] === null ? [] : [worst[1]]), metal.why, why];
  const order = [worst[0], metal.order, age, useOf(tools, typeof use === 'string' ? use : undefined), ratio];
  return { record, order, reasons };
}

/** The newest look counts, of several on one day the worst; but what was to be replaced does not heal by a later look. */
async function worstLook(
  tools: Tools,
  facts: Facts,
  looks: readonly ClubRecord[],
): Promise<[number, Phrase | null]> {
  const newest = looks.at(-1)?.body.texts.day;
  const all = await Promise.all(
    looks.map(async (look) => ({
      judged: await lookOf(tools, facts, look),
      isNewest: look.body.texts.day === newest,
    })),
  );
  const counting = all.filter(({ judged, isNewest }) => isNewest || judged[0] === 0);
  return counting.map(({ judged }) => judged).toSorted((a, b) => a[0] - b[0])[0] ?? [unlooked, null];
}

const before = (a: Ranked, b: Ranked): number =>
  a.order.map((one, at) => one - (b.order[at] ?? 0)).find((difference) => difference !== 0) ?? 0;

export async function rankedFirst(
  tools: Tools,
  said: Said,
  anchors: readonly ClubRecord[],
): Promise<Recorded> {
  const looks = await tools.records.list(said.message.chat, 'inspection');
  const looked = new Set(looks.map(({ body }) => body.texts.anchor));
  const all: Ranked[] = [];
  for (const record of anchors)
    all.push(await ranked(tools, said, record, looked.has(record.id) ? looksAt(looks, record.id) : []));
  const first = all.toSorted(before).slice(0, mostRanked);
  const lines = first.flatMap(({ record, reasons }, index): Phrase[] => [
    { say: 'register-first-one', with: { place: index + 1, id: record.id, where: whereOf(record.body) } },
    ...reasons.map((why): Phrase => ({ say: 'register-first-why', with: { why } })),
  ]);
  return saying(
    tools,
    said.session,
    [
      { say: 'register-first', with: { shown: first.length, count: anchors.length } },
      ...lines,
      { say: 'register-first-limits' },
    ],
    { topic: 'register' },
  );
}
