/** `npm run fuzz [count] [seed]`: no crash, no answer without cautions and deferral, no flood, no hang, in six languages. */
import type { App } from '../../src/app.ts';
import { messagesFrom, randomFrom } from './fuzz-messages.ts';

const locales = ['en', 'es', 'pt', 'fr', 'it', 'de'];

const noNumber = /NaN|Infinity|undefined|\[object/;

export interface Fuzzed {
  readonly answers: number;
  readonly advice: number;
  readonly longest: number;
  readonly slowest: number;
  readonly faults: readonly string[];
}

export async function fuzz(app: App, count: number, seed: number): Promise<Fuzzed> {
  const random = randomFrom(seed);
  const next = messagesFrom(random);
  const faults: string[] = [];
  let [advice, longest, slowest] = [0, 0, 0];
  for (let index = 0; index < count; index += 1) {
    const locale = locales[Math.floor(random() * locales.length)] ?? 'en';
    const text = next();
    const started = performance.now();
    // Few members, so that talks grow long and odd; each is begun anew now and then.
    const user = `member-${Math.floor(random() * 40)}`;
    const message = random() < 0.02 ? { press: 'c:restart' } : { text };
    const reply = await app.respond({ id: String(index), chat: 'fuzz', user, locale, ...message });
    slowest = Math.max(slowest, performance.now() - started);
    if ('silent' in reply) continue;
    longest = Math.max(longest, reply.text.length);
    const fault = (what: string): number => faults.push(`${what}: ${JSON.stringify(text).slice(0, 200)}`);
    const words = await app.languages.words('en');
    if (reply.text.startsWith(words.say({ say: 'failed' }).slice(0, 20))) fault('it failed');
    if (!reply.text.includes('Chough') && reply.advice === null) fault('no standing line');
    // A reply may quote the member's own "NaN mm", cleaned of odd signs: then it proves nothing.
    if (noNumber.test(reply.text) && !noNumber.test(text))
      fault(`a number that is none in ${reply.text.slice(0, 300)}`);
    if (reply.advice !== null) {
      advice += 1;
      if (reply.advice.cautions.length === 0 || reply.advice.sources.length === 0 || !reply.advice.deferral)
        fault('bare advice');
    } else if (reply.text.length > 2500) fault('a flood');
  }
  return { answers: count, advice, longest, slowest, faults };
}

if (process.argv[1]?.endsWith('fuzz.ts')) {
  const { freshApp } = await import('../support/app.ts');
  const count = Number(process.argv[2] ?? 100_000);
  const result = await fuzz(await freshApp(), count, Number(process.argv[3] ?? 20_261_125));
  console.log(
    `${result.answers} messages, ${result.advice} answered with advice, longest ${result.longest} characters, slowest ${result.slowest.toFixed(0)} ms, ${result.faults.length} faults`,
  );
  for (const fault of result.faults.slice(0, 30)) console.log(fault);
  process.exitCode = result.faults.length === 0 ? 0 : 1;
}
