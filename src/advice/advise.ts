import type { Advice } from '../contracts/advice.ts';
import type { Facts } from '../contracts/facts.ts';
import type { NonEmpty } from '../contracts/phrase.ts';
import { placeAsked } from './asked.ts';
import { builders } from './builders.ts';
import type { Desk } from './desk.ts';
import { placeExposure } from './exposure.ts';
import { refuse } from './refusal.ts';
import { sealAdvice } from './seal.ts';
import { Worksheet } from './worksheet.ts';

/** Facts that a topic needs, or that may change its answer, as far as nobody has told them. */
export interface OpenFacts {
  readonly need: readonly string[];
  readonly ask: readonly string[];
}

export const canAdvise = (topic: string): boolean => Object.hasOwn(builders, topic);

/** Topics whose answer an answer on this topic contains already. */
export const covers: Readonly<Record<string, readonly string[]>> = { adhesive: ['adhesive-amount', 'cure'] };

/** What every decision may want to know, worked out from what was told. */
async function settle(sheet: Worksheet): Promise<void> {
  await placeExposure(sheet);
  placeAsked(sheet);
}

const refuses = async (sheet: Worksheet): Promise<boolean> =>
  (await sheet.consult('refusal')).values.refusal !== 'none';

/** Whether what was told is refused already: then there is nothing to ask. */
export async function isRefused(desk: Desk, topic: string, facts: Facts): Promise<boolean> {
  const sheet = new Worksheet(desk, topic, facts);
  await settle(sheet);
  return refuses(sheet);
}

/** Another fact that was told makes this one needless: the depth, the length. */
const isStoodFor = (desk: Desk, facts: Facts, fact: string): boolean =>
  Object.keys(facts).some((told) => {
    const definition = desk.rules.facts.get(told);
    return definition?.kind === 'number' && definition.standsFor?.includes(fact);
  });

export async function openFacts(desk: Desk, topic: string, facts: Facts): Promise<OpenFacts> {
  const sheet = new Worksheet(desk, topic, facts);
  await settle(sheet);
  const { situation } = sheet;
  const { values } = await sheet.consult('questions');
  const open = (ids: string | readonly string[] | undefined): string[] =>
    [ids ?? []]
      .flat()
      .filter((fact) => facts[fact] === undefined && (situation[fact] ?? 'unknown') === 'unknown')
      .filter((fact) => !isStoodFor(desk, facts, fact));
  return { need: open(values.need), ask: open(values.ask) };
}

/**
 * Works out the advice on a topic from what was told. What is still open is taken as the worse case and listed.
 * A request that must not be answered with a number gives a refusal, which is an advice too: with cautions,
 * deferral and the right next step.
 */
export async function advise(desk: Desk, topic: string, told: Facts): Promise<Advice> {
  const sheet = new Worksheet(desk, topic, told);
  await assumeOpen(sheet, told);
  await settle(sheet);
  const refused = await refuses(sheet);
  const build = refused ? refuse : builders[topic];
  if (build === undefined) throw new Error(`no advice is built on topic ${topic}`);
  const draft = await build(sheet);
  const cautions = await cautionsOf(sheet);
  for (const id of cautions) for (const source of desk.rules.caution(id).sources) sheet.cite(source);
  const record = sheet.record();
  return sealAdvice({
    topic: refused ? 'refuse' : topic,
    lacking: [],
    ...draft,
    ...record,
    cautions: nonEmpty(cautions, 'cautions'),
    sources: nonEmpty(record.sources, 'sources'),
    ruleset: desk.rules.hash,
  });
}

async function cautionsOf(sheet: Worksheet): Promise<readonly string[]> {
  const { rules } = sheet.desk;
  const { values } = await sheet.consult('cautions');
  return [values.set ?? []].flat().toSorted((a, b) => rules.caution(a).order - rules.caution(b).order);
}

/** What is cautioned on a topic where no advice is given: a record that is written down. */
export async function cautionsOn(desk: Desk, topic: string): Promise<readonly string[]> {
  const sheet = new Worksheet(desk, topic, {});
  await settle(sheet);
  return cautionsOf(sheet);
}

function nonEmpty<T>(list: readonly T[], what: string): NonEmpty<T> {
  const [first, ...rest] = list;
  if (first === undefined) throw new Error(`advice without ${what}`);
  return [first, ...rest];
}

/** An assumed place may open further questions (its climate), so this is repeated until nothing new is open. */
async function assumeOpen(sheet: Worksheet, told: Facts): Promise<void> {
  const known = Object.fromEntries(Object.entries(told).filter(([, fact]) => fact.value !== 'unknown'));
  const seen = new Set<string>();
  for (;;) {
    const { need, ask } = await openFacts(sheet.desk, sheet.topic, { ...known, ...sheet.assumedFacts() });
    const fresh = [...need, ...ask].filter((fact) => !seen.has(fact));
    if (fresh.length === 0) return;
    for (const fact of fresh) {
      seen.add(fact);
      sheet.assume(fact);
    }
  }
}
