/** Which question next: the one whose answer can change the advice most. None is asked that cannot change it. */
import { advise, type Desk, isRefused, OutOfRange, openFacts } from '../advice/index.ts';
import type { Advice } from '../contracts/advice.ts';
import type { Facts, FactValue } from '../contracts/facts.ts';
import { decideNow, knownValues } from '../rules/index.ts';

/** At most so many before the first useful answer. */
const patience = 3;

export interface NextQuestion {
  readonly fact: string | null;
  /** Everything still open, in the order in which it would be asked. */
  readonly missing: readonly string[];
}

/** The same advice, worked out with the compiled twin of the rules: quick enough to try every answer. */
const exploring = (desk: Desk): Desk => ({
  ...desk,
  judge: async (decision, situation, candidate) => decideNow(desk.rules, decision, situation, candidate),
});

/** What a member would do differently: the verdict, what is recommended and what is rejected. */
const deeds = ({ topic, stance, verdict, recommend, reject }: Advice): string =>
  JSON.stringify([topic, stance, verdict.say, recommend, reject.map(({ what }) => what)]);

/** Answers to try: every value of a choice; of a number one for each step that a band cuts, or its two ends. */
function answersToTry(desk: Desk, id: string): readonly FactValue[] {
  const definition = desk.rules.facts.get(id);
  if (definition === undefined) return [];
  if (definition.kind !== 'number') return knownValues(desk.rules, definition);
  const cuts = [...desk.rules.facts.values()].flatMap((fact) =>
    fact.kind === 'band' && fact.from === id
      ? fact.steps.map((step) => ('below' in step ? step.below : step.upTo))
      : [],
  );
  const [least, most] = definition.possible;
  return [least, ...cuts.flatMap((cut) => [cut, cut + (most - cut) / 1000]), most].filter(
    (value) => value >= least && value <= most,
  );
}

async function differentAnswers(desk: Desk, topic: string, facts: Facts, fact: string): Promise<number> {
  const answers = new Set<string>();
  for (const value of answersToTry(desk, fact)) {
    const told: Facts = { ...facts, [fact]: { value, from: 'said' } };
    try {
      answers.add(deeds(await advise(desk, topic, told)));
    } catch (error) {
      // A value that the method does not cover is no reason to ask.
      if (!(error instanceof OutOfRange)) throw error;
    }
  }
  return answers.size;
}

export async function nextQuestion(
  desk: Desk,
  topic: string,
  facts: Facts,
  asked: readonly string[],
): Promise<NextQuestion> {
  if (await isRefused(desk, topic, facts)) return { fact: null, missing: [] };
  const { need, ask } = await openFacts(desk, topic, facts);
  const missing = [...new Set([...need, ...ask])];
  const [first] = need;
  if (first !== undefined && asked.length < patience) return { fact: first, missing };
  if (asked.length >= patience) return { fact: null, missing };
  const twin = exploring(desk);
  const scored = [];
  for (const fact of ask) scored.push({ fact, answers: await differentAnswers(twin, topic, facts, fact) });
  const decisive = scored.filter(({ answers }) => answers > 1).toSorted((a, b) => b.answers - a.answers);
  const order = [...decisive, ...scored.filter(({ answers }) => answers <= 1)].map(({ fact }) => fact);
  return { fact: decisive[0]?.fact ?? null, missing: [...need, ...order] };
}
