import { describe, expect, it } from 'vitest';
import { type Case, contextOf, loadCases, loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand();

const files = ['messages-seen.json', 'messages-late.json', 'messages-strength.json', 'messages-results.json'];

function score(cases: readonly Case[]) {
  let topics = 0;
  let right = 0;
  let wrong = 0;
  let missed = 0;
  const faults: string[] = [];
  for (const one of cases) {
    const parsed = understand(one.say, contextOf(one));
    const got = Object.entries(told(parsed));
    const good = got.filter(([fact, value]) => String(one.facts[fact]) === String(value)).length;
    const sought = Object.keys(one.facts).length;
    right += good;
    wrong += got.length - good;
    missed += sought - good;
    if (parsed.topic === one.topic) topics++;
    if (parsed.topic !== one.topic || good < got.length || good < sought)
      faults.push(`${one.say} → ${parsed.topic} ${JSON.stringify(told(parsed))}`);
  }
  return { topic: topics / cases.length, f1: (2 * right) / (2 * right + wrong + missed), faults };
}

describe('messages, topic and exact facts', () => {
  it.each(files)('%s', async (name) => {
    const cases = await loadCases(name);
    const { topic, f1, faults } = score(cases);
    console.log(
      `${name}: ${cases.length} messages, topics ${(100 * topic).toFixed(1)} %, facts F1 ${f1.toFixed(3)}`,
    );
    for (const fault of faults) console.log(`  ${fault}`);
    expect(topic).toBeGreaterThanOrEqual(0.95);
    expect(f1).toBeGreaterThanOrEqual(0.95);
  });

  it('covers every fact that the vocabulary has words for, and every topic', async () => {
    const { view, vocabulary } = await loadUnderstand();
    const cases = (await Promise.all(files.map(loadCases))).flat();
    const facts = new Set(cases.flatMap(({ facts: found }) => Object.keys(found)));
    const topics = new Set(cases.map(({ topic }) => topic));
    const known = [...Object.keys(vocabulary.values), ...Object.keys(vocabulary.roles)];
    const untold = known.filter((id) => view.facts.has(id) && !facts.has(id));
    expect(untold).toEqual([]);
    const topicFact = view.facts.get('topic');
    const missing =
      topicFact?.kind === 'choice' ? (topicFact.values ?? []).filter((id) => !topics.has(id)) : ['topic'];
    expect(missing).toEqual([]);
  });
});
