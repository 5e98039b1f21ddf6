/** Which question next: the one whose answer can change the advice most. None is asked that cannot change it. */
import { advise, type Desk, isRefused, openFacts } from '../advice/index.ts';
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

async function differentAnswers(desk: Desk, topic: string, facts: Facts, fact: string): Promise<number> {
  const definition = desk.rules.facts.get(fact);
  if (definition === undefined || definition.kind === 'number') return 2;
  const answers = new Set<string>();
  for (const value of knownValues(desk.rules, definition)) {
    const told: Facts = { ...facts, [fact]: { value: value as FactValue, from: 'said' } };
    answers.add(
      await advise(desk, topic, told).then(deeds, (error: unknown) => `none: ${(error as Error).name}`),
    );
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
