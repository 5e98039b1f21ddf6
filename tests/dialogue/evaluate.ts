/** `npm run evaluate`: how well messages are understood, by language and by fact, and whether a slip ever made advice bolder. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { advise, canAdvise, type Desk, OutOfRange } from '../../src/advice/index.ts';
import type { Advice } from '../../src/contracts/advice.ts';
import type { FactValue } from '../../src/contracts/facts.ts';
import { Languages } from '../../src/languages.ts';
import { contradictions, decideNow, impossible } from '../../src/rules/index.ts';
import { desk, rules, rulesFolder, said } from '../support/desk.ts';
import type { Case } from './understand/setup.ts';

const folder = fileURLToPath(new URL('understand/', import.meta.url));

function casesIn(place: string): [file: string, cases: readonly Case[]][] {
  if (!existsSync(place)) return [];
  return readdirSync(place)
    .filter((name) => name.startsWith('messages') && name.endsWith('.json'))
    .map((name) => [name, (JSON.parse(readFileSync(`${place}/${name}`, 'utf8')) as { cases: Case[] }).cases]);
}

interface Tally {
  right: number;
  wrong: number;
  missed: number;
}
const empty = (): Tally => ({ right: 0, wrong: 0, missed: 0 });
const ratio = (part: number, whole: number): string => (whole === 0 ? '  –  ' : (part / whole).toFixed(3));
const f1 = ({ right, wrong, missed }: Tally): string => ratio(2 * right, 2 * right + wrong + missed);

const twin: Desk = {
  ...desk,
  judge: async (decision, situation, candidate) => decideNow(rules, decision, situation, candidate),
};
const stances = ['stop', 'limit', 'tell', 'go'];

/** The advice on facts that can be true at all; null where there is none. */
async function adviceOn(topic: string, facts: Record<string, FactValue>): Promise<Advice | null> {
  const told = said(facts);
  if (!canAdvise(topic) || contradictions(rules, told).length > 0) return null;
  if (Object.entries(facts).some(([id, value]) => impossible(rules, id, value))) return null;
  try {
    return await advise(twin, topic, told);
  } catch (error) {
    if (error instanceof OutOfRange) return null;
    throw error;
  }
}

/** Bolder: a better stance, or something recommended that the right facts do not recommend. */
function isBolder(got: Advice | null, right: Advice | null): boolean {
  if (got === null || right === null) return false;
  if (stances.indexOf(got.stance) > stances.indexOf(right.stance)) return true;
  return ['metal', 'adhesive', 'anchor'].some((list) => {
    const [ours, theirs] = [got.recommend[list], right.recommend[list]];
    return Array.isArray(ours) && Array.isArray(theirs) && ours.some((one) => !theirs.includes(one));
  });
}

const languages = await Languages.find(rulesFolder, rules);
const codes = ['en', 'es', 'pt', 'fr', 'it', 'de'].filter((code) =>
  existsSync(`${rulesFolder}/vocabulary/${code}.json`),
);
const byFact = new Map<string, Tally>();
const confusions = new Map<string, number>();
const bold: string[] = [];

for (const code of codes) {
  const understand = await languages.understand(code);
  for (const [file, cases] of casesIn(code === 'en' ? folder : `${folder}${code}`)) {
    const tally = empty();
    let topics = 0;
    for (const one of cases) {
      const parsed = understand(one.say, {
        language: code,
        ...(one.context?.pending === undefined ? {} : { pending: one.context.pending }),
        ...(one.context?.topic === undefined ? {} : { topic: one.context.topic }),
      });
      const got: Record<string, FactValue> = Object.fromEntries(
        parsed.found.map(({ fact, value }) => [fact, value]),
      );
      if (parsed.topic === one.topic) topics += 1;
      else {
        const pair = `${code}: ${one.topic} taken for ${parsed.topic}`;
        confusions.set(pair, (confusions.get(pair) ?? 0) + 1);
      }
      let same = true;
      for (const fact of new Set([...Object.keys(got), ...Object.keys(one.facts)])) {
        const of = byFact.get(fact) ?? empty();
        byFact.set(fact, of);
        const hit = String(got[fact]) === String(one.facts[fact]);
        same &&= hit;
        for (const count of [tally, of]) {
          if (hit) count.right += 1;
          else {
            if (fact in got) count.wrong += 1;
            if (fact in one.facts) count.missed += 1;
          }
        }
      }
      const topic = one.topic ?? one.context?.topic;
      if (
        !same &&
        topic !== undefined &&
        isBolder(await adviceOn(topic, got), await adviceOn(topic, one.facts))
      )
        bold.push(`${code}: ${one.say}`);
    }
    console.log(
      `${code} ${file.padEnd(26)} ${String(cases.length).padStart(4)} messages   topic ${ratio(topics, cases.length)}` +
        `   precision ${ratio(tally.right, tally.right + tally.wrong)}   recall ${ratio(tally.right, tally.right + tally.missed)}   F1 ${f1(tally)}`,
    );
  }
}

console.log('\nFacts understood worst');
const worst = [...byFact].filter(([, { wrong, missed }]) => wrong + missed > 0);
for (const [fact, tally] of worst.toSorted((a, b) => (f1(a[1]) < f1(b[1]) ? -1 : 1)).slice(0, 15))
  console.log(
    `  ${fact.padEnd(24)} F1 ${f1(tally)}   ${tally.right} right, ${tally.wrong} wrong, ${tally.missed} missed`,
  );
console.log('\nTopics confused most');
for (const [pair, count] of [...confusions].toSorted((a, b) => b[1] - a[1]).slice(0, 15))
  console.log(`  ${count} × ${pair}`);
console.log(`\nMessages of which a slip made the advice bolder: ${bold.length}`);
for (const message of bold) console.log(`  ${message}`);
process.exitCode = bold.length === 0 ? 0 : 1;
