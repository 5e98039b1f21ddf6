import { decide, decideNow, domain, type RuleSet, type Situation } from '../../../src/rules/index.ts';

/** Repeatable numbers from 0 to 1 (mulberry32, a public-domain generator). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Any value for every fact of the decision, also where they do not go together. */
export function randomSituation(rules: RuleSet, name: string, random: () => number): Situation {
  const values: Record<string, string> = Object.create(null);
  for (const fact of rules.decision(name).inputs) {
    const all = domain(rules, fact);
    values[fact] = all[Math.floor(random() * all.length)] ?? '';
  }
  return values;
}

const answered = async (take: () => unknown): Promise<unknown> => {
  try {
    return await take();
  } catch (error) {
    return error instanceof Error ? `${error.name}: ${error.message}` : error;
  }
};

/** Situations in which the rules engine and its compiled twin do not say the same, errors included. */
export async function differences(
  rules: RuleSet,
  name: string,
  situations: Iterable<Situation>,
): Promise<readonly string[]> {
  const found: string[] = [];
  for (const situation of situations) {
    const byEngine = JSON.stringify(await answered(() => decide(rules, name, situation)));
    const compiled = JSON.stringify(await answered(() => decideNow(rules, name, situation)));
    if (byEngine !== compiled) found.push(`${JSON.stringify(situation)}: ${byEngine} against ${compiled}`);
  }
  return found;
}

/** The full product of the domains of the decision's facts. */
export function* everySituation(rules: RuleSet, name: string): Generator<Situation> {
  const { inputs } = rules.decision(name);
  const go = function* (place: number, values: Record<string, string>): Generator<Situation> {
    const fact = inputs[place];
    if (fact === undefined) yield values;
    else
      for (const value of domain(rules, fact))
        yield* go(place + 1, Object.assign(Object.create(null), values, { [fact]: value }));
  };
  yield* go(0, Object.create(null));
}
