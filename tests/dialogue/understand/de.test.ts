import { describe, expect, it } from 'vitest';
import { printScore } from './score.ts';
import { loadCases, loadUnderstand } from './setup.ts';

const { understand, vocabulary, view } = await loadUnderstand('de');

const files = ['', '-late', '-late2', '-late3', '-late4', '-more'].map((lot) => `de/messages${lot}.json`);

describe('German messages, topic and exact facts', () => {
  it.each(files)('%s', async (name) => {
    const { topic, f1 } = await printScore(name, understand);
    expect(topic).toBeGreaterThanOrEqual(0.95);
    expect(f1).toBeGreaterThanOrEqual(0.9);
  });

  it('cover every topic, and every fact that the vocabulary has words for', async () => {
    const cases = (await Promise.all(files.map(loadCases))).flat();
    const facts = new Set(cases.flatMap(({ facts: found }) => Object.keys(found)));
    const known = [...Object.keys(vocabulary.values), ...Object.keys(vocabulary.roles)];
    expect(known.filter((id) => view.facts.has(id) && !facts.has(id))).toEqual([]);
    const topics = new Set(cases.map(({ topic }) => topic));
    const topic = view.facts.get('topic');
    expect(topic?.kind === 'choice' ? topic.values?.filter((id) => !topics.has(id)) : ['topic']).toEqual([]);
  });
});
