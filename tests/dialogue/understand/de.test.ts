import { describe, expect, it } from 'vitest';
import { scoreOf } from './score.ts';
import { loadCases, loadUnderstand } from './setup.ts';

const { understand } = await loadUnderstand('de');

describe('German messages, topic and exact facts', () => {
  it.each(['de/messages.json', 'de/messages-late.json'])('%s', async (name) => {
    const cases = await loadCases(name);
    const { topic, f1, faults } = scoreOf(cases, understand);
    console.log(
      `${name}: ${cases.length} messages, topics ${(100 * topic).toFixed(1)} %, facts F1 ${f1.toFixed(3)}`,
    );
    for (const fault of faults) console.log(`  ${fault}`);
    expect(topic).toBeGreaterThanOrEqual(0.95);
    expect(f1).toBeGreaterThanOrEqual(0.9);
  });
});
