import type { Understand } from '../../../src/dialogue/understand/index.ts';
import { type Case, contextOf, loadCases, told } from './setup.ts';

/** How well the messages are understood, and which are not. */
function scoreOf(cases: readonly Case[], understand: Understand) {
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

/** The score of a file of messages, printed with all that was not understood. */
export async function printScore(name: string, understand: Understand) {
  const cases = await loadCases(name);
  const { topic, f1, faults } = scoreOf(cases, understand);
  console.log(
    `${name}: ${cases.length} messages, topics ${(100 * topic).toFixed(1)} %, facts F1 ${f1.toFixed(3)}`,
  );
  for (const fault of faults) console.log(`  ${fault}`);
  return { topic, f1 };
}
