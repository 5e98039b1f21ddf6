import { describe, expect, it } from 'vitest';
import { printScore } from './score.ts';
import { loadCases, loadUnderstand } from './setup.ts';

const { understand } = await loadUnderstand();

const files = [
  'messages-seen.json',
  'messages-late.json',
  'messages-strength.json',
  'messages-results.json',
  'messages-more.json',
];

describe('messages, topic and exact facts', () => {
  it.each(files)('%s', async (name) => {
    const { topic, f1 } = await printScore(name, understand);
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
